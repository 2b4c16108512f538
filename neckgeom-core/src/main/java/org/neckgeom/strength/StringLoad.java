package org.neckgeom.strength;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Force;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Interval;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.StringHeights;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.Torque;

/**
 * String tension ({@index pull}) as a load on the neck, such as {@code 760 N, 9.1 N.m at fret 7}: the tension of each string,
 * of all, and the moment it makes about the neutral axis of each section. Immutable.
 *
 * <p>Tension from pitch by {@code T = mu (2 L f)^2} (Mersenne, Taylor; exact for an ideal string) unless the tension is
 * given. Moment {@code M(x) = sum T cos s (h(x) - zN(x))}, h the height of the string's middle over the glue face and zN the neutral
 * axis, on the straight neck. Estimate through zN, which depends on the moduli of neck and fingerboard.
 */
public final class StringLoad extends ValueAnswer {

    private static final Kind<Double> NEWTON = Kind.libraryValue(ShopUnit.NEWTON);

    /** How near to breaking the string stressed most is: by common practice. */
    public enum Strain {
        /** Under 15 % of its strength. */
        SLACK("slack"),
        /** From 15 to 70 %. */
        USUAL("usual"),
        /** From 70 to 85 %. */
        BREAKS_EARLY("breaks early"),
        /** Over 85 %. */
        WILL_NOT_LAST("will not last");

        private final String words;

        Strain(String words) {
            this.words = words;
        }

        static Strain of(double share) {
            if (share < 0.15) {
                return SLACK;
            }
            if (share <= 0.70) {
                return USUAL;
            }
            return share <= 0.85 ? BREAKS_EARLY : WILL_NOT_LAST;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    private static final Form<StringLoad> FORM = Form.<StringLoad>of("string-load")
            .fact("neck", Kind.NAME, "its name", load -> load.neck.name())
            .factIfAny("obstacle", Kind.NAME, "why there is no moment", StringLoad::obstacle)
            .findsOnly(
                    "incomplete",
                    x -> x.obstacle().isPresent(),
                    "String tension of {neck} cannot be computed: {obstacle}")
            .fact("total", NEWTON, "tension of all strings together", StringLoad::totalNewton)
            .finds("string-load", "Strings of {neck}: {total:0}")
            .fact("tensions", Kind.list(NEWTON), "of one string of each course, bass first", StringLoad::newtons)
            .fact("pullLower", NEWTON, "least of them", load -> Collections.min(load.newtons()))
            .fact("pullUpper", NEWTON, "greatest of them", load -> Collections.max(load.newtons()))
            .fact(
                    "inCourse",
                    Kind.WHOLE,
                    "strings in a course",
                    load -> NeckModel.strings(load.neck).inCourse())
            .phrase("course", load -> NeckModel.strings(load.neck).inCourse() > 1, ", {inCourse} to a course")
            .line(
                    "tensions",
                    "each string",
                    load -> load.tensions.length > 10,
                    "from {pullLower:1 bare} to {pullUpper:1}{course}")
            .line("tensions", "each string", load -> load.tensions.length <= 10, "{tensions:1 bare} N{course}")
            .factIfAny(
                    "weakest",
                    Kind.WHOLE,
                    "string stressed most for its strength",
                    load -> load.weakest().map(i -> i + 1))
            .factIfAny(
                    "shareOfStrength",
                    Kind.RATIO,
                    "its tension over its breaking load; steel, standard uncertainty 5 %",
                    StringLoad::shareOfStrength)
            .factIfAny("strain", Kind.code(Strain.class), "of that string", StringLoad::strain)
            .line(
                    "weakest",
                    "stressed most",
                    "string {weakest}: {shareOfStrength:percent 0} of its breaking load, {strain}")
            .factIfAny("momentAtNut", Likely.KIND, "positive bows the neck forward", load -> load.likely(0))
            .line("momentAtNut", "moment at the nut", "{momentAtNut}")
            .fact("middleFret", Kind.WHOLE, "half way to the body", StringLoad::middleFret)
            .factIfAny("momentAtMiddle", Likely.KIND, "at that fret", load -> load.likely(load.middleFret()))
            .line("momentAtMiddle", "at fret {middleFret}", "{momentAtMiddle}")
            .fact("bodyFret", Kind.WHOLE, "at the body", load -> load.neck.bodyAtFret())
            .factIfAny("momentAtBody", Likely.KIND, "at that fret", load -> load.likely(load.neck.bodyAtFret()))
            .line("momentAtBody", "at fret {bodyFret}", "{momentAtBody}")
            .row("heights", "heights", StringLoads.HEIGHTS, "of the strings", load -> load.strings)
            .factIfAny(
                    "unlikely",
                    Kind.WHOLE,
                    "wound string whose mass none has",
                    load -> load.unlikely().map(i -> i + 1))
            .factIfAny(
                    "overSolidSteel",
                    Kind.RATIO,
                    "its mass over that of solid steel of its diameter",
                    load -> load.unlikely().map(load.strung::overSolidSteel))
            .fact("leastWound", Kind.RATIO, "least of that for wound steel", load -> StringTensions.LEAST_WOUND)
            .fact("mostWound", Kind.RATIO, "most of that for wound steel", load -> StringTensions.MOST_WOUND)
            .note(
                    "unlikely-mass",
                    load -> load.unlikely().isPresent(),
                    "Check the linear density of string {unlikely}: {overSolidSteel:2} of solid steel; wound steel has {leastWound:2} to {mostWound:2}.")
            .note(
                    "no-diameters",
                    load -> !load.strings.haveDiameters(),
                    "No diameters given: the load is taken at the strings' undersides.")
            .note(
                    "estimate",
                    "Estimate of the moment: about the neutral axis, whose place rests on the woods' moduli.");

    private final Neck neck;
    private final StringLoads strings;
    private final StringTensions strung;
    private final double[] tensions;
    private final StringPull pull;

    private StringLoad(StringLoads strings) {
        super(FORM, strings.neck().style());
        this.neck = strings.neck();
        this.strings = strings;
        this.strung = StringTensions.of(neck);
        this.tensions = strung.newton();
        this.pull = strings.pull();
    }

    /**
     * {@return the load on a neck, its strings as it is set, or at the usual heights}
     *
     * @param neck with scale, fingerboard and strings, whose tension is given or follows from linear density or
     *     diameter
     * @throws IllegalArgumentException if a part is missing
     */
    public static StringLoad of(Neck neck) {
        return new StringLoad(StringLoads.of(Objects.requireNonNull(neck, "neck")));
    }

    /**
     * {@return the load with the strings at other heights}
     *
     * @param other the heights
     */
    public StringLoad heights(StringHeights other) {
        return new StringLoad(new StringLoads(neck, Objects.requireNonNull(other, "heights")));
    }

    /** {@return the tension of a single string of each course, from bass to treble; one to a course} */
    public List<Amount<Force>> tensions() {
        return Arrays.stream(tensions).mapToObj(StringLoad::force).toList();
    }

    /**
     * {@return the tension of the string stressed most over its breaking load, a ratio; nothing where no string's strength is
     * known} Steel wire, {@code 2060/d^0.163} MPa (ASTM A228), standard uncertainty 5 %; of a wound string the core bears.
     */
    public Optional<Double> shareOfStrength() {
        return weakest().map(strung::shareOfStrength);
    }

    /** {@return how near to breaking that string is, in words; nothing where no string's strength is known} */
    public Optional<Strain> strain() {
        return shareOfStrength().map(Strain::of);
    }

    private Optional<Integer> weakest() {
        return Optional.of(strung.weakest()).filter(i -> i >= 0);
    }

    private Optional<Integer> unlikely() {
        return Optional.of(strung.unlikely()).filter(i -> i >= 0);
    }

    /** {@return the tension of all strings together, along the neck} */
    public Amount<Force> total() {
        return force(totalNewton());
    }

    private double totalNewton() {
        double sum = 0;
        for (double tension : tensions) {
            sum += tension * NeckModel.strings(neck).inCourse();
        }
        return sum;
    }

    /**
     * {@return the moment of the strings about the neutral axis at a fret, positive: bows the neck forward}
     *
     * @param fret 0 (the nut) to the fret at the body
     */
    public Amount<Torque> momentAtFret(int fret) {
        return likelyAtFret(fret).amount();
    }

    /**
     * {@return the 95 % interval of the moment at a fret over pairs of woods}
     *
     * @param fret 0 (the nut) to the fret at the body
     */
    public Interval<Torque> momentIntervalAtFret(int fret) {
        return likelyAtFret(fret).interval();
    }

    private Likely<Torque> likelyAtFret(int fret) {
        if (fret < 0 || fret > neck.bodyAtFret()) {
            throw Refusal.of("fret", "range", "be between 0 and that at the body, " + neck.bodyAtFret(), fret);
        }
        NeckBeam beam = NeckModel.beam(neck);
        double x = neck.scale().fretMm(fret);
        SectionMoments section = new SectionMoments();
        double[] found = NeckModel.spread(neck).interval((back, board) -> {
            beam.stiffer(back, board).section(x, section);
            return pull.moment(x, section.neutralAxis());
        });
        return Likely.of(found, ShopUnit.NEWTON_METRE);
    }

    private static Amount<Force> force(double newton) {
        return Amount.ofLibrary(newton, ShopUnit.NEWTON);
    }

    private List<Double> newtons() {
        return Arrays.stream(tensions).boxed().toList();
    }

    private int middleFret() {
        return (neck.bodyAtFret() + 1) / 2;
    }

    private Optional<Likely<Torque>> likely(int fret) {
        return obstacle().isEmpty() ? Optional.of(likelyAtFret(fret)) : Optional.empty();
    }

    private Optional<String> obstacle() {
        try {
            likelyAtFret(0);
            likelyAtFret(middleFret());
            likelyAtFret(neck.bodyAtFret());
            return Optional.empty();
        } catch (IllegalArgumentException | ArithmeticException none) {
            return Optional.ofNullable(none.getMessage());
        }
    }

    @Override
    protected Object[] parts() {
        return new Object[] {strings};
    }
}
