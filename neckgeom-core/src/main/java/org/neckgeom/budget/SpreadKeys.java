package org.neckgeom.budget;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.ErrorDistribution.Law;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.QuantityType;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/**
 * The keys of an error distribution: its half-width or its standard uncertainty.
 *
 * @param <Q> the kind of quantity
 */
final class SpreadKeys<Q extends Quantity<Q>> {

    private static final int MOST_SAMPLES = 10_000;

    /** Words of earlier versions for a distribution. */
    private static final Map<String, String> OLD_WORDS = Map.of(
            "anywhere alike", "uniform", "mostly near the middle", "triangular", "mostly near the ends", "arcsine");

    /** The keys of an error of length. */
    static final Table<ErrorDistribution<Length>> LENGTH = of(Types.SIZE_OR_NOTHING, Types.EITHER_WAY);

    private final Table<ErrorDistribution<Q>> table;
    private final Key<ErrorDistribution<Q>, Amount<Q>> halfWidth;
    private final Key<ErrorDistribution<Q>, Law> distribution;
    private final Key<ErrorDistribution<Q>, Amount<Q>> flatHalfWidth;
    private final Key<ErrorDistribution<Q>, Amount<Q>> standardUncertainty;
    private final Key<ErrorDistribution<Q>, Double> degrees;
    private final Key<ErrorDistribution<Q>, List<Amount<Q>>> samples;
    private final Key<ErrorDistribution<Q>, Amount<Q>> shift;

    private SpreadKeys(QuantityType<Q> size, QuantityType<Q> eitherWay) {
        table = Table.of("", "error distribution of a step", this::spread, this::values);
        halfWidth = table.optional(
                "half-width", size, "half-width of the error, either way. Instead of a standard uncertainty");
        distribution = table.usual(
                "distribution",
                Types.words(words()),
                Law.RECTANGULAR,
                "distribution of the error in the half-width. Default: uniform");
        flatHalfWidth = table.optional(
                "flat half-width",
                size,
                "half-width of the flat top of a trapezoidal distribution. Instead of distribution");
        standardUncertainty = table.optional(
                "standard uncertainty",
                size,
                "standard uncertainty of a normal error, from repeated readings. Instead of a half-width");
        degrees = table.usual(
                "degrees of freedom",
                Types.number(1, 1e9),
                Double.POSITIVE_INFINITY,
                "degrees of freedom of the standard uncertainty. Default: infinite; for samples one fewer than their number");
        samples = table.optional(
                "from their mean",
                Types.list(eitherWay, 2, MOST_SAMPLES),
                "errors as read, minus their mean, ascending. Instead of a half-width");
        shift = table.optional("shift", eitherWay, "known (systematic) part of the error. Default: 0");
        table.moved(Moves.none()
                .and("within", "half-width")
                .and("flat within", "flat half-width")
                .and("deviation", "standard uncertainty")
                .and("lies", "distribution")
                .and(
                        OLD_WORDS.entrySet().stream()
                                .sorted(Map.Entry.comparingByKey())
                                .map(word -> word.getKey() + " -> " + word.getValue())
                                .collect(Collectors.joining(", ")),
                        old -> old.worded("distribution", OLD_WORDS)));
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
        words.put("uniform", Law.RECTANGULAR);
        words.put("triangular", Law.TRIANGULAR);
        words.put("arcsine", Law.ARCSINE);
        return words;
    }

    private ErrorDistribution<Q> spread(Values<ErrorDistribution<Q>> given) {
        long ways = List.<Key<ErrorDistribution<Q>, ?>>of(halfWidth, standardUncertainty, samples).stream()
                .filter(given::has)
                .count();
        if (ways != 1 && !(ways == 0 && given.has(shift))) {
            throw Refusal.because(
                    "", "one-of", "either half-width or standard uncertainty must be given, and not both");
        }
        if (!given.has(halfWidth) && (given.has(distribution) || given.has(flatHalfWidth))
                || given.has(distribution) && given.has(flatHalfWidth)) {
            throw Refusal.because(
                    distribution.name(),
                    "belongs",
                    "distribution belongs to half-width; with a standard uncertainty leave it out");
        }
        ErrorDistribution<Q> about = about(given);
        ErrorDistribution<Q> shifted = given.has(shift) ? about.shifted(given.at(shift)) : about;
        return given.has(degrees) ? shifted.degreesOfFreedom(given.at(degrees)) : shifted;
    }

    private ErrorDistribution<Q> about(Values<ErrorDistribution<Q>> given) {
        if (given.has(standardUncertainty)) {
            return ErrorDistribution.normal(given.at(standardUncertainty));
        }
        if (given.has(samples)) {
            return ErrorDistribution.centredSamples(given.at(samples));
        }
        if (!given.has(halfWidth)) {
            return ErrorDistribution.bias(Amount.ofLibrary(0, given.at(shift).unit()));
        }
        Amount<Q> end = given.at(halfWidth);
        if (given.has(flatHalfWidth)) {
            return ErrorDistribution.trapezoidal(end, given.at(flatHalfWidth));
        }
        return switch (given.at(distribution)) {
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
            case NORMAL -> none.with(standardUncertainty, scale);
            case RECTANGULAR -> none.with(halfWidth, scale);
            case TRIANGULAR, ARCSINE -> none.with(halfWidth, scale).with(distribution, spread.law());
            case TRAPEZOIDAL ->
                none.with(halfWidth, scale).with(flatHalfWidth, Amount.ofLibrary(spread.libraryTopScale(), unit));
            case SAMPLES ->
                none.with(
                        samples,
                        Arrays.stream(spread.librarySamples())
                                .mapToObj(error -> Amount.ofLibrary(error, unit))
                                .toList());
            case BIAS -> none;
        };
        if (spread.libraryMean() != 0 || spread.law() == Law.BIAS) {
            values = values.with(shift, Amount.ofLibrary(spread.libraryMean(), unit));
        }
        double usual = spread.law() == Law.SAMPLES ? spread.librarySamples().length - 1.0 : Double.POSITIVE_INFINITY;
        return spread.degreesOfFreedom() == usual ? values : values.with(degrees, spread.degreesOfFreedom());
    }
}
