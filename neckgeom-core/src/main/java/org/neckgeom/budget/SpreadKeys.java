package org.neckgeom.budget;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.ErrorDistribution.Law;
import org.neckgeom.table.Key;
import org.neckgeom.table.QuantityType;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/**
 * How an error is given: how far off it may be, and where between the two ends it lies.
 *
 * @param <Q> the kind of quantity
 */
final class SpreadKeys<Q extends Quantity<Q>> {

    private static final int MOST_SAMPLES = 10_000;

    /** The keys of an error of length. */
    static final Table<ErrorDistribution<Length>> LENGTH = of(Types.SIZE_OR_NOTHING, Types.EITHER_WAY);

    private final Table<ErrorDistribution<Q>> table;
    private final Key<ErrorDistribution<Q>, Amount<Q>> within;
    private final Key<ErrorDistribution<Q>, Law> lies;
    private final Key<ErrorDistribution<Q>, Amount<Q>> flat;
    private final Key<ErrorDistribution<Q>, Amount<Q>> deviation;
    private final Key<ErrorDistribution<Q>, Double> degrees;
    private final Key<ErrorDistribution<Q>, List<Amount<Q>>> samples;
    private final Key<ErrorDistribution<Q>, Amount<Q>> shift;

    private SpreadKeys(QuantityType<Q> size, QuantityType<Q> eitherWay) {
        table = Table.of("", "how well a step is done", this::spread, this::values);
        within = table.optional("within", size, "how far off it may be, either way; instead of a deviation");
        lies = table.usual(
                "lies",
                Types.words(words()),
                Law.RECTANGULAR,
                "where between the two ends; anywhere alike when left out");
        flat = table.optional(
                "flat within",
                size,
                "equally likely anywhere within this, and less toward the two ends; instead of lies");
        deviation = table.optional(
                "deviation", size, "one standard deviation, as repeated readings give it; instead of within");
        degrees = table.usual(
                "degrees of freedom",
                Types.number(1e-9, 1e9),
                Double.POSITIVE_INFINITY,
                "how well the deviation is known; well when left out");
        samples = table.optional(
                "from their mean",
                Types.list(eitherWay, 1, MOST_SAMPLES),
                "errors as they were read, less their mean, in ascending order; instead of within");
        shift = table.optional("shift", eitherWay, "a known error of all; none when left out");
    }

    /**
     * {@return the keys of an error of any kind of quantity; their table}
     *
     * @param <Q> the kind of quantity
     * @param size how far off it may be
     * @param eitherWay an error with its sign
     */
    static <Q extends Quantity<Q>> Table<ErrorDistribution<Q>> of(QuantityType<Q> size, QuantityType<Q> eitherWay) {
        return new SpreadKeys<>(size, eitherWay).table;
    }

    private static Map<String, Law> words() {
        Map<String, Law> words = new LinkedHashMap<>();
        words.put("anywhere alike", Law.RECTANGULAR);
        words.put("mostly near the middle", Law.TRIANGULAR);
        words.put("mostly near the ends", Law.ARCSINE);
        return words;
    }

    private ErrorDistribution<Q> spread(Values<ErrorDistribution<Q>> given) {
        long ways = List.<Key<ErrorDistribution<Q>, ?>>of(within, deviation, samples).stream()
                .filter(given::has)
                .count();
        if (ways != 1 && !(ways == 0 && given.has(shift))) {
            throw Refusal.because("", "one-of", "either within or deviation must be given, and not both");
        }
        if (!given.has(within) && (given.has(lies) || given.has(flat)) || given.has(lies) && given.has(flat)) {
            throw Refusal.because(lies.name(), "belongs", "lies belongs to within; with a deviation leave it out");
        }
        ErrorDistribution<Q> about = about(given);
        ErrorDistribution<Q> shifted = given.has(shift) ? about.shifted(given.at(shift)) : about;
        return given.has(degrees) ? shifted.degreesOfFreedom(given.at(degrees)) : shifted;
    }

    private ErrorDistribution<Q> about(Values<ErrorDistribution<Q>> given) {
        if (given.has(deviation)) {
            return ErrorDistribution.normal(given.at(deviation));
        }
        if (given.has(samples)) {
            return ErrorDistribution.centredSamples(given.at(samples));
        }
        if (!given.has(within)) {
            return ErrorDistribution.bias(Amount.ofLibrary(0, given.at(shift).unit()));
        }
        Amount<Q> end = given.at(within);
        if (given.has(flat)) {
            return ErrorDistribution.trapezoidal(end, given.at(flat));
        }
        return switch (given.at(lies)) {
            case TRIANGULAR -> ErrorDistribution.triangular(end);
            case ARCSINE -> ErrorDistribution.arcsine(end);
            default -> ErrorDistribution.rectangular(end);
        };
    }

    private Values<ErrorDistribution<Q>> values(ErrorDistribution<Q> spread) {
        ShopUnit<Q> unit = spread.unit();
        Amount<Q> scale = Amount.ofLibrary(spread.libraryScale(), unit);
        Values<ErrorDistribution<Q>> none = table.values();
        Values<ErrorDistribution<Q>> values = switch (spread.law()) {
            case NORMAL -> none.with(deviation, scale);
            case RECTANGULAR -> none.with(within, scale);
            case TRIANGULAR, ARCSINE -> none.with(within, scale).with(lies, spread.law());
            case TRAPEZOIDAL -> none.with(within, scale).with(flat, Amount.ofLibrary(spread.libraryTopScale(), unit));
            case SAMPLES ->
                none.with(
                        samples,
                        Arrays.stream(spread.libraryCentredSamples())
                                .mapToObj(error -> Amount.ofLibrary(error, unit))
                                .toList());
            case BIAS -> none;
        };
        if (spread.libraryMean() != 0 || spread.law() == Law.BIAS) {
            values = values.with(shift, Amount.ofLibrary(spread.libraryMean(), unit));
        }
        return Double.isInfinite(spread.degreesOfFreedom()) ? values : values.with(degrees, spread.degreesOfFreedom());
    }
}
