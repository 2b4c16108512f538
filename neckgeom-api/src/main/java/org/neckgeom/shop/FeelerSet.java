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
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/**
 * A set of feeler gauges ({@index leaves}), such as {@code 20 gauges, 0.05 to 1 mm}, to set fence moves. Immutable.
 *
 * <p>Thicknesses are more than 0. The ready-made sets are common practice. Default: no thickness error; {@link #halfWidth}
 * gives one (uniform, GUM 4.3.7). {@code FeelerStack} finds the stack for a move.
 *
 * <pre>{@code
 * println(FeelerSet.metric20());
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * 20 gauges, 0.05 mm to 1 mm
 * }</pre>
 */
public final class FeelerSet extends Noun<FeelerSet> {

    /** Its keys. */
    public static final Table<FeelerSet> TABLE =
            Table.of("feeler gauges", "feeler gauges", FeelerSet::new).printedBy(FeelerSet::sentences);

    private static final int MOST = 60;

    private static final Key<FeelerSet, Common> SET = TABLE.optional(
            "set",
            Types.words(Common.class, set -> set.word),
            "common set: metric 20 (0.05 to 1 mm), metric 13 (0.05 to 1 mm) or inch 26 (1.5 to 25 thou)");
    private static final Key<FeelerSet, List<Amount<Length>>> GAUGES = TABLE.optional(
                    "gauges",
                    Types.list(Types.SIZE.stamped(), 1, MOST),
                    "thicknesses of your own gauges, instead of a common set")
            .called("feeler gauges");
    private static final Key<FeelerSet, Amount<Length>> HALF_WIDTH = TABLE.usual(
                    "half-width",
                    Types.SIZE_OR_NOTHING,
                    ShopUnits.mm(0),
                    "half-width of a gauge's thickness error. Default: 0")
            .called("half-width of a gauge's error");

    static {
        TABLE.moved(Moves.none().and("leaves", "gauges").and("each within", "half-width"));
    }

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

    private final double[] thicknesses;
    private final LengthStyle stamped;

    private FeelerSet(Values<FeelerSet> values) {
        super(thinnestFirst(values));
        if (values.has(SET) == values.has(GAUGES)) {
            throw Refusal.because("set", "one-of", "either set or gauges must be given, and not both");
        }
        List<Amount<Length>> own = values().find(GAUGES).orElse(List.of());
        this.thicknesses = values.find(SET)
                .map(Common::mm)
                .orElseGet(() -> own.stream().mapToDouble(Amount::libraryValue).toArray());
        this.stamped = values.find(SET).map(set -> set.stamped).orElseGet(() -> LengthStyle.of(own.get(0)));
        if (!(halfWidthMm() < thicknesses[0])) {
            Amount<Length> thinnest = Amount.ofLibrary(thicknesses[0], style().fineUnit());
            throw values.refused(
                    HALF_WIDTH,
                    "less-than",
                    "be less than " + thinnest + ", the thinnest gauge",
                    values.at(HALF_WIDTH));
        }
    }

    private static Values<FeelerSet> thinnestFirst(Values<FeelerSet> values) {
        return values.find(GAUGES)
                .map(own -> values.with(
                        GAUGES,
                        own.stream()
                                .sorted(Comparator.comparingDouble(Amount::libraryValue))
                                .toList()))
                .orElse(values);
    }

    /**
     * {@return the common metric set of 20 gauges, 0.05 to 1.00 mm in steps of 0.05} Common practice.
     */
    public static FeelerSet metric20() {
        return common(Common.METRIC_20);
    }

    /**
     * {@return the common metric set of 13 gauges: 0.05 to 0.30 mm in steps of 0.05, then to 1.00 in steps of 0.10}
     * Common practice.
     */
    public static FeelerSet metric13() {
        return common(Common.METRIC_13);
    }

    /**
     * {@return the common inch set of 26 gauges: 1.5, 2, 2.5 thou, then 3 to 25 thou in steps of 1} Common practice.
     */
    public static FeelerSet inch26() {
        return common(Common.INCH_26);
    }

    private static FeelerSet common(Common set) {
        return new FeelerSet(TABLE.values().with(SET, set));
    }

    /**
     * {@return a set of your own: gauges, cards, shims of known thickness}
     *
     * @param gauges one to sixty, each more than 0; the thinnest one's unit is the one answers are given in
     */
    public static FeelerSet of(List<? extends Quantity<Length>> gauges) {
        return new FeelerSet(TABLE.values().amounts(GAUGES, gauges));
    }

    /**
     * {@return this set with the half-width of a gauge's thickness error}
     *
     * @param halfWidth half-width of a uniform error, 0 or more, less than the thinnest gauge
     */
    public FeelerSet halfWidth(Quantity<Length> halfWidth) {
        return new FeelerSet(values().amount(HALF_WIDTH, halfWidth));
    }

    /** {@return the thicknesses in mm; ascending} */
    public double[] thicknessesMm() {
        return thicknesses.clone();
    }

    /** {@return the half-width of a gauge's thickness error (uniform) in mm; 0 or more} */
    public double halfWidthMm() {
        return values().libraryValue(HALF_WIDTH);
    }

    /**
     * {@return the style the gauges are stamped in, that of the thinnest gauge}
     */
    public LengthStyle stampedIn() {
        return stamped;
    }

    /** Returns the style the gauges are stamped in, where none was asked for. */
    @Override
    public LengthStyle style() {
        return values().without(HALF_WIDTH).style(stamped);
    }

    private static Form<FeelerSet> sentences() {
        return TABLE.facts("feeler-gauges")
                .fact("count", Kind.WHOLE, "how many gauges", set -> set.thicknesses.length)
                .fact(
                        "thicknesses",
                        Kind.list(Kind.MM),
                        "of each, ascending",
                        set -> Arrays.stream(set.thicknesses).boxed().toList())
                .fact("thinnest", Kind.MM, "of them", set -> set.thicknesses[0])
                .fact("thickest", Kind.MM, "of them", set -> set.thicknesses[set.thicknesses.length - 1])
                .phrase("range", set -> set.thicknesses.length > 1, "{thinnest:fine} to ")
                .phrase("each", set -> set.halfWidthMm() > 0, ", half-width {halfWidth:fine}")
                .finds("gauges", "{count:of gauge/gauges}, {range}{thickest:fine}{each}");
    }
}
