package org.neckgeom.shop;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/**
 * A set of feeler leaves, such as {@code 20 leaves, 0.05 to 1 mm}: what the fence can be moved by. Immutable.
 *
 * <p>The ready-made sets are common practice (no leaf tolerance is claimed for them: state it with {@link #eachWithin}).
 */
public final class FeelerSet extends Noun<FeelerSet> {

    /** Its keys. */
    public static final Table<FeelerSet> TABLE =
            Table.of("feeler leaves", "feeler leaves", FeelerSet::new).printedBy(FeelerSet::sentences);

    private static final int MOST = 60;

    private static final Key<FeelerSet, Common> SET = TABLE.optional(
            "set",
            Types.words(Common.class, set -> set.word),
            "a common set: metric 20 (0.05 to 1 mm), metric 13 (0.05 to 1 mm), inch 26 (1.5 to 25 thou)");
    private static final Key<FeelerSet, List<Amount<Length>>> LEAVES = TABLE.optional(
                    "leaves", Types.list(Types.SIZE.stamped(), 1, MOST), "your own leaves, instead of a common set")
            .called("feeler leaves");
    private static final Key<FeelerSet, Amount<Length>> EACH_WITHIN = TABLE.usual(
                    "each within",
                    Types.SIZE_OR_NOTHING,
                    ShopUnits.mm(0),
                    "how far a leaf may be off what is stamped on it, either way; 0 when left out")
            .called("leaf tolerance");

    /** A set as it is sold; common practice. */
    private enum Common {
        METRIC_20("metric 20", LengthStyle.MILLIMETRES),
        METRIC_13("metric 13", LengthStyle.MILLIMETRES),
        INCH_26("inch 26", LengthStyle.DECIMAL_INCHES);

        private final String word;
        private final LengthStyle stamped;

        Common(String word, LengthStyle stamped) {
            this.word = word;
            this.stamped = stamped;
        }

        double[] mm() {
            return switch (this) {
                case METRIC_20 ->
                    IntStream.rangeClosed(1, 20).mapToDouble(i -> i / 20.0).toArray();
                case METRIC_13 ->
                    new double[] {0.05, 0.10, 0.15, 0.20, 0.25, 0.30, 0.40, 0.50, 0.60, 0.70, 0.80, 0.90, 1.00};
                case INCH_26 ->
                    DoubleStream.concat(
                                    DoubleStream.of(1.5, 2, 2.5),
                                    IntStream.rangeClosed(3, 25).asDoubleStream())
                            .map(ShopUnit.THOU::toLibrary)
                            .toArray();
            };
        }
    }

    private final double[] leaves;
    private final LengthStyle stamped;

    private FeelerSet(Values<FeelerSet> values) {
        super(thinnestFirst(values));
        if (values.has(SET) == values.has(LEAVES)) {
            throw Refusal.because("set", "one-of", "either set or leaves must be given, and not both");
        }
        List<Amount<Length>> own = values().find(LEAVES).orElse(List.of());
        this.leaves = values.find(SET)
                .map(Common::mm)
                .orElseGet(() -> own.stream().mapToDouble(Amount::libraryValue).toArray());
        this.stamped = values.find(SET).map(set -> set.stamped).orElseGet(() -> LengthStyle.of(own.get(0)));
        if (!(leafHalfWidthMm() < leaves[0])) {
            Amount<Length> thinnest = Amount.ofLibrary(leaves[0], style().fineUnit());
            throw values.refused(
                    EACH_WITHIN,
                    "less-than",
                    "be less than " + thinnest + ", the thinnest leaf",
                    values.at(EACH_WITHIN));
        }
    }

    private static Values<FeelerSet> thinnestFirst(Values<FeelerSet> values) {
        return values.find(LEAVES)
                .map(own -> values.with(
                        LEAVES,
                        own.stream()
                                .sorted(Comparator.comparingDouble(Amount::libraryValue))
                                .toList()))
                .orElse(values);
    }

    /**
     * {@return the common metric set of 20 leaves, 0.05 to 1.00 mm in steps of 0.05} Common practice.
     */
    public static FeelerSet metric20() {
        return common(Common.METRIC_20);
    }

    /**
     * {@return the common metric set of 13 leaves: 0.05 to 0.30 mm in steps of 0.05, then to 1.00 in steps of 0.10}
     * Common practice.
     */
    public static FeelerSet metric13() {
        return common(Common.METRIC_13);
    }

    /**
     * {@return the common inch set of 26 leaves: 1.5, 2, 2.5 thou, then 3 to 25 thou in steps of 1} Common practice.
     */
    public static FeelerSet inch26() {
        return common(Common.INCH_26);
    }

    private static FeelerSet common(Common set) {
        return new FeelerSet(TABLE.values().with(SET, set));
    }

    /**
     * {@return a set of one's own: leaves, cards, shims, anything of known thickness}
     *
     * @param leaves one to sixty, each more than 0; the thinnest one's unit is the one answers are given in
     */
    public static FeelerSet of(List<? extends Quantity<Length>> leaves) {
        return new FeelerSet(TABLE.values().amounts(LEAVES, leaves));
    }

    /**
     * {@return this set with the tolerance of its leaves}
     *
     * @param halfWidth how far a leaf may be off its marking, 0 or more, less than the thinnest leaf
     */
    public FeelerSet eachWithin(Quantity<Length> halfWidth) {
        return new FeelerSet(values().amount(EACH_WITHIN, halfWidth));
    }

    /** {@return the leaves in mm; ascending} */
    public double[] leavesMm() {
        return leaves.clone();
    }

    /** {@return how far a leaf may be off its marking, in mm; half-width of a rectangular spread, 0 or more} */
    public double leafHalfWidthMm() {
        return values().libraryValue(EACH_WITHIN);
    }

    /**
     * {@return the style its leaves are stamped in, in any style the set is printed in; the style of its thinnest leaf}
     */
    public LengthStyle stampedIn() {
        return stamped;
    }

    /** Returns the style its leaves are stamped in, where none was asked for. */
    @Override
    public LengthStyle style() {
        return values().without(EACH_WITHIN).style(stamped);
    }

    private static Form<FeelerSet> sentences() {
        return TABLE.facts("feeler-gauges")
                .fact("count", Kind.WHOLE, "how many gauges", set -> set.leaves.length)
                .fact(
                        "thicknesses",
                        Kind.list(Kind.MM),
                        "of each, ascending",
                        set -> Arrays.stream(set.leaves).boxed().toList())
                .fact("thinnest", Kind.MM, "of them", set -> set.leaves[0])
                .fact("thickest", Kind.MM, "of them", set -> set.leaves[set.leaves.length - 1])
                .phrase("range", set -> set.leaves.length > 1, "{thinnest:fine} to ")
                .phrase("each", set -> set.leafHalfWidthMm() > 0, ", each within {eachWithin:fine}")
                .finds("gauges", "{count:of leaf/leaves}, {range}{thickest:fine}{each}");
    }
}
