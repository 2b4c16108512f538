package org.neckgeom.design;

import java.util.Objects;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * The shape of the neck's back: how deep the wood is below the glue face at two frets, and the curve across, such as
 * {@code back 14.5 mm deep at fret 1, 16.5 mm at fret 12, rounded}. Immutable.
 *
 * <p>Depth is that of the wood alone, the fingerboard not counted. It is linear between the two frets, and beyond. Across,
 * each side follows {@code |y/a|^p + |z/b|^p = 1}, a the half-width and b the depth: p = 2 is half an ellipse, larger is
 * fuller, smaller more pointed. Unless told the frets are the 1st and the 12th, and the back is rounded.
 */
public final class BackProfile implements Answer, SaysLengths<BackProfile> {

    /** Exponent of a rounded back: half an ellipse. */
    public static final double ROUNDED = 2;

    /** Exponent of a full back, with high shoulders. */
    public static final double FULL = 2.5;

    /** Exponent of a flat back with quick shoulders. */
    public static final double FLAT_BACKED = 3.5;

    /** Exponent of a pointed back, with a soft ridge on the middle. */
    public static final double POINTED = 1.5;

    private static final double LEAST_POWER = 1;
    private static final double MOST_POWER = 20;

    private final double firstDepth;
    private final double secondDepth;
    private final double firstFret;
    private final double secondFret;
    private final double bassPower;
    private final double treblePower;
    private final ShopUnit<Length> unit;

    private BackProfile(
            double firstDepth,
            double secondDepth,
            double firstFret,
            double secondFret,
            double bassPower,
            double treblePower,
            ShopUnit<Length> unit) {
        this.firstDepth = firstDepth;
        this.secondDepth = secondDepth;
        this.firstFret = firstFret;
        this.secondFret = secondFret;
        this.bassPower = bassPower;
        this.treblePower = treblePower;
        this.unit = unit;
    }

    /**
     * Returns a rounded back between two depths.
     *
     * @param first depth of the wood at the 1st fret, more than 0; its unit is the one answers are given in
     * @param second depth of the wood at the 12th fret, more than 0
     * @return the back
     */
    public static BackProfile between(Quantity<Length> first, Quantity<Length> second) {
        return new BackProfile(
                HouseUnits.mmPositive(first, "first depth"),
                HouseUnits.mmPositive(second, "second depth"),
                1,
                12,
                ROUNDED,
                ROUNDED,
                LengthStyle.of(first).unit());
    }

    /**
     * Returns this back with its depths at other frets.
     *
     * @param first 0 (the nut) or more
     * @param second more than the first
     * @return the back
     */
    public BackProfile atFrets(int first, int second) {
        if (first < 0 || second <= first) {
            throw Refusal.of(
                    "frets of the two depths",
                    "at-least",
                    "be 0 or more and ascending",
                    "were",
                    first + " and " + second);
        }
        return new BackProfile(firstDepth, secondDepth, first, second, bassPower, treblePower, unit);
    }

    /**
     * Returns this back rounded: half an ellipse.
     *
     * @return the back
     */
    public BackProfile rounded() {
        return power(ROUNDED);
    }

    /**
     * Returns this back full, with high shoulders.
     *
     * @return the back
     */
    public BackProfile full() {
        return power(FULL);
    }

    /**
     * Returns this back flat, with quick shoulders.
     *
     * @return the back
     */
    public BackProfile flatBacked() {
        return power(FLAT_BACKED);
    }

    /**
     * Returns this back pointed, with a soft ridge on the middle.
     *
     * @return the back
     */
    public BackProfile pointed() {
        return power(POINTED);
    }

    /**
     * Returns this back with an exponent of its own.
     *
     * @param p in [1, 20]: 1 is a wedge, 2 half an ellipse, 20 nearly a box
     * @return the back
     */
    public BackProfile power(double p) {
        return asymmetric(p, p);
    }

    /**
     * Returns this back with another shape on each side; the two meet on the centreline, at the full depth.
     *
     * @param bass exponent on the bass side, in [1, 20]
     * @param treble exponent on the treble side, in [1, 20]
     * @return the back
     */
    public BackProfile asymmetric(double bass, double treble) {
        return new BackProfile(
                firstDepth,
                secondDepth,
                firstFret,
                secondFret,
                checked(bass, "bass side's exponent"),
                checked(treble, "treble side's exponent"),
                unit);
    }

    private static double checked(double p, String name) {
        if (!(p >= LEAST_POWER && p <= MOST_POWER)) {
            throw Refusal.of(name, "range", "be between 1 and 20", Numbers.plain(p));
        }
        return p;
    }

    /**
     * Returns the depth of the wood at the first fret told, in mm.
     *
     * @return more than 0
     */
    public double firstDepthMm() {
        return firstDepth;
    }

    /**
     * Returns the depth of the wood at the second fret told, in mm.
     *
     * @return more than 0
     */
    public double secondDepthMm() {
        return secondDepth;
    }

    /**
     * Returns the fret of the first depth.
     *
     * @return 0 or more
     */
    public double firstFret() {
        return firstFret;
    }

    /**
     * Returns the fret of the second depth.
     *
     * @return more than the first
     */
    public double secondFret() {
        return secondFret;
    }

    /**
     * Returns the exponent on the bass side, y &lt; 0.
     *
     * @return in [1, 20]
     */
    public double bassPower() {
        return bassPower;
    }

    /**
     * Returns the exponent on the treble side, y &gt; 0.
     *
     * @return in [1, 20]
     */
    public double treblePower() {
        return treblePower;
    }

    /**
     * Returns the depth at a station: linear through the two frets' stations.
     *
     * @param xMm station in mm
     * @param scale the scale the frets belong to
     * @return depth in mm; may be 0 or less far outside the two frets
     */
    public double depthAtMm(double xMm, Scale scale) {
        double from = Objects.requireNonNull(scale, "scale").fretMm(firstFret);
        double to = scale.fretMm(secondFret);
        return firstDepth + (secondDepth - firstDepth) * (HouseUnits.stationMm(xMm) - from) / (to - from);
    }

    /**
     * Returns the style answers about this back are printed in.
     *
     * @return the style
     */
    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(unit);
    }

    @Override
    public BackProfile in(LengthStyle other) {
        return new BackProfile(
                firstDepth,
                secondDepth,
                firstFret,
                secondFret,
                bassPower,
                treblePower,
                Objects.requireNonNull(other, "style").unit());
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        private static final Form<BackProfile> FORM = form("back ");

        /** The same without its title, for the row of a neck. */
        static final Form<BackProfile> UNTITLED = form("");

        private static Form<BackProfile> form(String title) {
            Form<BackProfile> form = Form.<BackProfile>of("back")
                    .fact("firstDepth", Kind.MM, "of the wood below the glue face", BackProfile::firstDepthMm)
                    .fact("firstFret", Kind.WHOLE, "where the first depth is; 0: the nut", BackProfile::firstFret)
                    .fact("secondDepth", Kind.MM, "of the wood below the glue face", BackProfile::secondDepthMm)
                    .fact("secondFret", Kind.WHOLE, "where the second depth is", BackProfile::secondFret)
                    .fact("bassExponent", Kind.RATIO, "2: half an ellipse; larger: fuller", BackProfile::bassPower)
                    .fact("trebleExponent", Kind.RATIO, "the same on the treble side", BackProfile::treblePower);
            form = shape(shape(form, "bass", BackProfile::bassPower), "treble", BackProfile::treblePower);
            return form.phrase("shape", back -> back.bassPower == back.treblePower, "{bass}")
                    .phrase("shape", "{bass} on the bass side, {treble} on the treble side")
                    .finds(
                            "back",
                            title
                                    + "{firstDepth} deep at fret {firstFret}, {secondDepth} at fret {secondFret}, {shape}");
        }

        private static Form<BackProfile> shape(
                Form<BackProfile> form, String side, ToDoubleFunction<BackProfile> power) {
            return form.phrase(side, back -> power.applyAsDouble(back) == ROUNDED, "rounded")
                    .phrase(side, back -> power.applyAsDouble(back) == FULL, "full")
                    .phrase(side, back -> power.applyAsDouble(back) == FLAT_BACKED, "flat-backed")
                    .phrase(side, back -> power.applyAsDouble(back) == POINTED, "pointed")
                    .phrase(side, "exponent {" + side + "Exponent}");
        }
    }

    @Override
    public Form<BackProfile> form() {
        return Sentences.FORM;
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof BackProfile other
                && Double.compare(firstDepth, other.firstDepth) == 0
                && Double.compare(secondDepth, other.secondDepth) == 0
                && Double.compare(firstFret, other.firstFret) == 0
                && Double.compare(secondFret, other.secondFret) == 0
                && Double.compare(bassPower, other.bassPower) == 0
                && Double.compare(treblePower, other.treblePower) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(firstDepth, secondDepth, firstFret, secondFret, bassPower, treblePower);
    }

    /** Returns such as {@code back 14.5 mm deep at fret 1, 16.5 mm at fret 12, rounded}. */
    @Override
    public String toString() {
        return text(style());
    }
}
