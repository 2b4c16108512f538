package org.neckgeom.shop;

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
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * A set of feeler leaves, such as {@code 20 leaves, 0.05 to 1 mm}: what the fence can be moved by. Immutable.
 *
 * <p>The ready-made sets are common practice (no leaf tolerance is claimed for them: state it with {@link #eachWithin}).
 */
public final class FeelerSet implements Answer, SaysLengths<FeelerSet> {

    static final Form<FeelerSet> FORM = Form.<FeelerSet>of("feeler-gauges")
            .fact("count", Kind.WHOLE, "how many gauges", set -> set.leaves.length)
            .fact(
                    "thicknesses",
                    Kind.list(Kind.MM),
                    "of each, ascending",
                    set -> Arrays.stream(set.leaves).boxed().toList())
            .fact("thinnest", Kind.MM, "of them", set -> set.leaves[0])
            .fact("thickest", Kind.MM, "of them", set -> set.leaves[set.leaves.length - 1])
            .fact("halfWidth", Kind.MM, "how far a gauge may be off its marking, 0 or more", FeelerSet::leafHalfWidthMm)
            .phrase("range", set -> set.leaves.length > 1, "{thinnest:fine} to ")
            .phrase("each", set -> set.leafHalfWidth > 0, ", each within {halfWidth:fine}")
            .finds("gauges", "{count:of leaf/leaves}, {range}{thickest:fine}{each}");

    private final double[] leaves;
    private final double leafHalfWidth;
    private final LengthStyle stamped;
    private final LengthStyle style;

    private FeelerSet(double[] leaves, double leafHalfWidth, LengthStyle stamped, LengthStyle style) {
        this.leaves = leaves;
        this.leafHalfWidth = leafHalfWidth;
        this.stamped = stamped;
        this.style = style;
    }

    /**
     * Returns the common metric set of 20 leaves, 0.05 to 1.00 mm in steps of 0.05. Common practice.
     *
     * @return the set
     */
    public static FeelerSet metric20() {
        double[] mm = new double[20];
        for (int i = 0; i < mm.length; i++) {
            mm[i] = (i + 1) / 20.0;
        }
        return stamped(mm, LengthStyle.MILLIMETRES);
    }

    /**
     * Returns the common metric set of 13 leaves: 0.05 to 0.30 mm in steps of 0.05, then to 1.00 in steps of 0.10.
     * Common practice.
     *
     * @return the set
     */
    public static FeelerSet metric13() {
        double[] mm = {0.05, 0.10, 0.15, 0.20, 0.25, 0.30, 0.40, 0.50, 0.60, 0.70, 0.80, 0.90, 1.00};
        return stamped(mm, LengthStyle.MILLIMETRES);
    }

    /**
     * Returns the common inch set of 26 leaves: 1.5, 2, 2.5 thou, then 3 to 25 thou in steps of 1. Common practice.
     *
     * @return the set
     */
    public static FeelerSet inch26() {
        double[] mm = new double[26];
        mm[0] = ShopUnit.THOU.toHouse(1.5);
        mm[1] = ShopUnit.THOU.toHouse(2);
        mm[2] = ShopUnit.THOU.toHouse(2.5);
        for (int i = 3; i < mm.length; i++) {
            mm[i] = ShopUnit.THOU.toHouse(i);
        }
        return stamped(mm, LengthStyle.DECIMAL_INCHES);
    }

    /**
     * Returns a set of one's own: leaves, cards, shims, whatever has a known thickness.
     *
     * @param leaves one or more, each more than 0; the first one's unit is the one answers are given in
     * @return the set
     */
    public static FeelerSet of(List<? extends Quantity<Length>> leaves) {
        if (Objects.requireNonNull(leaves, "leaves").isEmpty()) {
            throw Refusal.of("leaves", "at-least", "be 1 or more", "there were none", "");
        }
        double[] mm = new double[leaves.size()];
        for (int i = 0; i < mm.length; i++) {
            mm[i] = HouseUnits.mmPositive(leaves.get(i), "leaf");
        }
        Arrays.sort(mm);
        return stamped(mm, LengthStyle.of(leaves.get(0)));
    }

    /**
     * Returns this set with the tolerance of its leaves.
     *
     * @param halfWidth how far a leaf may be off its marking, 0 or more, less than the thinnest leaf
     * @return the set
     */
    public FeelerSet eachWithin(Quantity<Length> halfWidth) {
        double mm = HouseUnits.mmNotNegative(halfWidth, "leaf tolerance");
        if (!(mm < leaves[0])) {
            Amount<Length> thinnest = Amount.ofHouse(leaves[0], style.fineUnit());
            throw HouseUnits.refused(
                    "leaf tolerance", "less-than", "less than the thinnest leaf of " + thinnest.toString(), halfWidth);
        }
        return new FeelerSet(leaves, mm, stamped, style);
    }

    /**
     * Returns the leaves in mm.
     *
     * @return a fresh array, ascending
     */
    public double[] leavesMm() {
        return leaves.clone();
    }

    /**
     * Returns how far a leaf may be off its marking, in mm.
     *
     * @return half-width of a rectangular spread, 0 or more
     */
    public double leafHalfWidthMm() {
        return leafHalfWidth;
    }

    /**
     * Returns the style its leaves are stamped in, whatever style the set is printed in.
     *
     * @return the style of its first leaf
     */
    public LengthStyle stampedIn() {
        return stamped;
    }

    private static FeelerSet stamped(double[] mm, LengthStyle stamped) {
        return new FeelerSet(mm, 0, stamped, stamped);
    }

    @Override
    public Form<FeelerSet> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return style;
    }

    @Override
    public FeelerSet in(LengthStyle other) {
        return new FeelerSet(leaves, leafHalfWidth, stamped, Objects.requireNonNull(other, "style"));
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof FeelerSet other
                && Arrays.equals(leaves, other.leaves)
                && Double.compare(leafHalfWidth, other.leafHalfWidth) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(Arrays.hashCode(leaves), leafHalfWidth);
    }

    /** Returns such as {@code 20 leaves, 0.05 to 1 mm}. */
    @Override
    public String toString() {
        return text(style());
    }
}
