package org.neckgeom.strength;

import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.StringSpacing;
import org.neckgeom.fault.Refusal;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.StringHeights;
import org.neckgeom.neck.StringMaterial;
import org.neckgeom.neck.StringSet;
import org.neckgeom.solid.StringLine;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/**
 * The tension of a single string of each course, as given or by {@code T = mu (2 L f)^2} from its mass, and how much of its
 * strength that takes.
 *
 * <p>Strength of steel wire {@code 2060/d^0.163} MPa (ASTM A228, its constants as in two engineering tables), standard
 * uncertainty 5 %; in a wound string the core bears.
 */
final class StringTensions {

    /** How far a tension given may differ from that of mass and pitch given. */
    private static final double MOST_APART = 0.03;

    private static final double STRENGTH_MPA = 2060;
    private static final double STRENGTH_POWER = 0.163;

    /** Standard uncertainty of the strength of steel wire, a ratio. */
    static final double STRENGTH_U = 0.05;

    /** Mass of a wound steel string over solid steel of its diameter. */
    static final double LEAST_WOUND = 0.70;

    static final double MOST_WOUND = 0.98;

    private final StringSet strings;
    private final double[] newton;

    private StringTensions(StringSet strings, double[] newton) {
        this.strings = strings;
        this.newton = newton;
    }

    /** Refuses strings whose tension is not known, contradicts itself, or breaks them. */
    static StringTensions of(Neck neck) {
        StringSet strings = NeckModel.strings(neck);
        double[] speaking = speaking(neck);
        double[] given = strings.tensionsN();
        double[] newton = new double[strings.courses()];
        boolean haveMass = strings.linearDensitiesGramPerMetre().length > 0 || strings.coresMm().length > 0;
        for (int i = 0; i < newton.length; i++) {
            double gram = strings.gramPerMetre(i).orElse(Double.NaN);
            double byMass = NeckModel.newton(gram / 1000, speaking[i], strings.pitchesHz()[i]);
            newton[i] = given.length > 0 ? given[i] : byMass;
            if (Double.isNaN(newton[i])) {
                throw unknown(neck, i);
            }
            if (given.length > 0 && haveMass && Math.abs(given[i] / byMass - 1) > MOST_APART) {
                throw Refusal.of(
                        "strings.tensions",
                        "contradiction",
                        "be " + newtons(byMass) + " for string " + (i + 1)
                                + ", as its linear density, its pitch and its speaking length of "
                                + neck.style().brief(speaking[i]) + " give",
                        newtons(given[i]));
            }
        }
        StringTensions tensions = new StringTensions(strings, newton);
        tensions.requireUnbroken();
        return tensions;
    }

    private static Refusal unknown(Neck neck, int course) {
        double[] diameters = NeckModel.strings(neck).diametersMm();
        return diameters.length == 0
                ? Refusal.because(
                        "string tension",
                        "missing",
                        "\"" + neck.name() + "\" needs its string tensions for this, but has none: add .tensions(...),"
                                + " .linearDensities(...) or .diameters(...) to the strings")
                : Refusal.because(
                        "strings.linear densities",
                        "wound",
                        "strings.linear densities, or cores with wraps, must be given: a steel string of "
                                + neck.style().brief(diameters[course]) + " is wound (plain up to "
                                + neck.style().brief(StringSet.THICKEST_PLAIN_MM)
                                + "), and its diameter alone does not give its mass");
    }

    private void requireUnbroken() {
        for (int i = 0; i < newton.length; i++) {
            if (shareOfStrength(i) > 1) {
                throw Refusal.of(
                        "strings",
                        "breaks",
                        "be tuned lower or lie on a shorter scale: string " + (i + 1) + " breaks at "
                                + newtons(newton[i] / shareOfStrength(i)),
                        "are",
                        "tuned to " + newtons(newton[i]));
            }
        }
    }

    private static String newtons(double newton) {
        return Numbers.fixed(newton, newton < 10 ? 2 : 0) + " N";
    }

    /** N, of a single string of each course, from bass to treble. */
    double[] newton() {
        return newton.clone();
    }

    /** Tension over breaking load of a steel string, NaN for another material or a wound string whose core is not known. */
    double shareOfStrength(int course) {
        double bears = bearingMm(course);
        if (Double.isNaN(bears)) {
            return Double.NaN;
        }
        return newton[course] / (Math.PI / 4 * bears * bears) / wireStrengthMPa(bears);
    }

    /** Least strength of music wire of a diameter in mm, MPa. */
    static double wireStrengthMPa(double mm) {
        return STRENGTH_MPA / StrictMath.pow(mm, STRENGTH_POWER);
    }

    /** The course stressed most for its strength, -1 where none is known. */
    int weakest() {
        int weakest = -1;
        for (int i = 0; i < newton.length; i++) {
            if (!Double.isNaN(shareOfStrength(i)) && (weakest < 0 || shareOfStrength(i) > shareOfStrength(weakest))) {
                weakest = i;
            }
        }
        return weakest;
    }

    /** Diameter of what bears the tension: the core, or all of a plain string. */
    private double bearingMm(int course) {
        double[] diameters = strings.diametersMm();
        double[] cores = strings.coresMm();
        if (diameters.length == 0 || strings.materials().get(course) != StringMaterial.STEEL) {
            return Double.NaN;
        }
        if (cores.length > 0 && cores[course] > 0) {
            return cores[course];
        }
        boolean isPlain = cores.length > 0 || diameters[course] <= StringSet.THICKEST_PLAIN_MM;
        return isPlain ? diameters[course] : Double.NaN;
    }

    /** A wound steel string whose mass given is none that such a string has, -1 where there is none. */
    int unlikely() {
        double[] grams = strings.linearDensitiesGramPerMetre();
        double[] diameters = strings.diametersMm();
        for (int i = 0; i < newton.length && grams.length > 0 && diameters.length > 0; i++) {
            boolean isWound = diameters[i] > StringSet.THICKEST_PLAIN_MM
                    && strings.materials().get(i) == StringMaterial.STEEL;
            if (isWound && !(overSolidSteel(i) >= LEAST_WOUND && overSolidSteel(i) <= MOST_WOUND)) {
                return i;
            }
        }
        return -1;
    }

    /** Mass given over that of solid steel of its diameter. */
    double overSolidSteel(int course) {
        double solid = StringMaterial.STEEL
                .plain(Amount.ofLibrary(strings.diametersMm()[course], ShopUnit.MILLIMETRE))
                .valueIn(ShopUnit.GRAM_PER_METRE);
        return strings.linearDensitiesGramPerMetre()[course] / solid;
    }

    /**
     * Speaking length of each course in plan, mm: its own scale and its compensation, the middle of both strings of a pair.
     * Fanned frets give the scales along their outermost strings.
     */
    private static double[] speaking(Neck neck) {
        double[] scales = FannedFrets.of(neck)
                .map(fan -> fan.scales(
                        StringSpacing.atNut(neck).orElseThrow(),
                        StringSpacing.atSaddle(neck).orElseThrow()))
                .orElseGet(() -> StringLine.overBoard(neck, StringHeights.usual()).stream()
                        .map(StringLine::scale)
                        .toList())
                .stream()
                .mapToDouble(Amount::libraryValue)
                .toArray();
        double compensation =
                neck.neckSet().map(set -> set.compensation().libraryValue()).orElse(0.0);
        double[] speaking = new double[NeckModel.strings(neck).courses()];
        int inCourse = scales.length / speaking.length;
        for (int i = 0; i < scales.length; i++) {
            speaking[i / inCourse] += (scales[i] + compensation) / inCourse;
        }
        return speaking;
    }
}
