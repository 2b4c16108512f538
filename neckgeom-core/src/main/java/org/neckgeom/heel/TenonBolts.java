package org.neckgeom.heel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;

/**
 * A bolted tenon: where its barrels or inserts sit and how much wood stands around them, such as two 10 mm barrels 28.5
 * and 57.5 mm below the glue face. Immutable.
 *
 * <p>Depths are measured from the glue face down the mating face to each hole's centre; the holes lie across the tenon,
 * set back from its shoulder. Edge distances are from the hole's wall, not its centre. Exact.
 */
public final class TenonBolts implements Answer {

    private static final Form<Hole> HOLE = Form.<Hole>of("tenon-hole")
            .fact("diameter", Kind.MM, "of the hole; 0: not given", Hole::diameter)
            .fact("depth", Kind.MM, "of its centre below the glue face", Hole::depth);

    private static final Form<TenonBolts> FORM = Form.<TenonBolts>of("tenon-bolts")
            .fact("height", Kind.MM, "from the glue face down", t -> t.height)
            .fact("length", Kind.MM, "past the shoulder", t -> t.length)
            .fact("holes", Kind.table(HOLE), "from the top down", TenonBolts::holes)
            .finds("tenon", "Tenon {height:brief} high, {length:brief} long")
            .each("holes", "hole {diameter:brief}", "{depth:text} below the glue face")
            .fact(
                    "centreFromShoulder",
                    Kind.MM,
                    "of the holes",
                    t -> t.hasHoles() ? t.setBack + t.diameter / 2 : Double.NaN)
            .line("centreFromShoulder", "centres", "{centreFromShoulder:text} from the shoulder")
            .fact(
                    "leastWood",
                    Kind.MM,
                    "around any hole; negative: breaks out",
                    t -> t.hasHoles() ? t.leastMm() : Double.NaN)
            .line("leastWood", "least wood", "{leastWood:text} around a hole");

    private final double height;
    private final double length;
    private final double diameter;
    private final double setBack;
    private final double[] depths;
    private final LengthStyle style;

    private record Hole(double diameter, double depth) {}

    private TenonBolts(
            double height, double length, double diameter, double setBack, double[] depths, LengthStyle style) {
        this.height = height;
        this.length = length;
        this.diameter = diameter;
        this.setBack = setBack;
        this.depths = depths;
        this.style = style;
    }

    /**
     * Returns a tenon without bolts yet.
     *
     * @param height from the glue face down to its lower end, more than 0
     * @param length how far it reaches past the shoulder, more than 0
     * @return the tenon
     */
    public static TenonBolts tenon(Quantity<Length> height, Quantity<Length> length) {
        return new TenonBolts(
                HouseUnits.mmPositive(height, "tenon height"),
                HouseUnits.mmPositive(length, "tenon length"),
                0,
                0,
                new double[0],
                LengthStyle.of(height));
    }

    /**
     * Returns a copy with the holes for barrels or inserts.
     *
     * @param diameter of each hole, more than 0
     * @param setBack of the hole's wall from the shoulder, 0 or more
     * @return the tenon
     */
    public TenonBolts holes(Quantity<Length> diameter, Quantity<Length> setBack) {
        double d = HouseUnits.mmPositive(diameter, "hole diameter");
        double s = HouseUnits.mmNotNegative(setBack, "set-back of the hole");
        if (!(s + d < length)) {
            throw HouseUnits.refused(
                    "hole diameter",
                    "less-than",
                    "less than the " + style.brief(length - s) + " of tenon behind its set-back",
                    diameter);
        }
        return new TenonBolts(height, length, d, s, depths, style);
    }

    /**
     * Returns a copy with one more hole.
     *
     * @param depth of its centre below the glue face, more than 0
     * @return the tenon
     */
    public TenonBolts at(Quantity<Length> depth) {
        double mm = HouseUnits.mmPositive(depth, "hole depth");
        double[] more = Arrays.copyOf(depths, depths.length + 1);
        more[depths.length] = mm;
        Arrays.sort(more);
        return new TenonBolts(height, length, diameter, setBack, more, style);
    }

    /**
     * Returns the height of the tenon.
     *
     * @return from the glue face down to its lower end
     */
    public Amount<Length> height() {
        return style.amount(height);
    }

    /**
     * Returns the length of the tenon.
     *
     * @return how far it reaches past the shoulder
     */
    public Amount<Length> length() {
        return style.amount(length);
    }

    /**
     * Returns the diameter of the holes.
     *
     * @return 0 when none have been told
     */
    public Amount<Length> holeDiameter() {
        return style.amount(diameter);
    }

    /**
     * Returns how far the holes' walls stand back from the shoulder.
     *
     * @return 0 or more
     */
    public Amount<Length> setBack() {
        return style.amount(setBack);
    }

    /**
     * Returns the holes' depths in order, from the top.
     *
     * @return the depths of their centres
     */
    public List<Amount<Length>> depths() {
        List<Amount<Length>> all = new ArrayList<>();
        for (double depth : depths) {
            all.add(style.amount(depth));
        }
        return List.copyOf(all);
    }

    /**
     * Returns the distance of a hole's centre from the shoulder.
     *
     * @return set-back and half the diameter
     */
    public Amount<Length> centreFromShoulder() {
        return style.amount(setBack + diameter / 2);
    }

    /**
     * Returns the least wood around any hole: to the glue face, the lower end, the shoulder, the tenon's far end, and
     * to the next hole.
     *
     * @return the distance from the hole's wall, negative when it breaks out; infinite lengths do not occur
     * @throws IllegalArgumentException if no hole has been told
     */
    public Amount<Length> leastWood() {
        return style.amount(leastMm());
    }

    private boolean hasHoles() {
        return depths.length > 0 && diameter > 0;
    }

    private List<Hole> holes() {
        return Arrays.stream(depths)
                .mapToObj(depth -> new Hole(diameter, depth))
                .toList();
    }

    private double leastMm() {
        if (!hasHoles()) {
            throw Refusal.because(
                    "holes", "missing", "a tenon needs its holes for this, but has none: add .holes(...) and .at(...)");
        }
        double r = diameter / 2;
        double least = Math.min(setBack, length - setBack - diameter);
        for (int i = 0; i < depths.length; i++) {
            least = Math.min(least, Math.min(depths[i] - r, height - depths[i] - r));
            if (i > 0) {
                least = Math.min(least, depths[i] - depths[i - 1] - diameter);
            }
        }
        return least;
    }

    private double[] parts() {
        return new double[] {height, length, diameter, setBack};
    }

    @Override
    public Form<TenonBolts> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return style;
    }

    /** True for the same tenon and holes. */
    @Override
    public boolean equals(Object other) {
        return other instanceof TenonBolts that
                && Arrays.equals(parts(), that.parts())
                && Arrays.equals(depths, that.depths);
    }

    @Override
    public int hashCode() {
        return Objects.hash(Arrays.hashCode(parts()), Arrays.hashCode(depths));
    }

    /** Returns the holes and the least wood around them. */
    @Override
    public String toString() {
        return text(style);
    }
}
