package org.neckgeom.budget;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.ErrorDistribution.Law;
import org.neckgeom.measure.Limits;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/** What several answers of this package print in the same words. */
final class Shown {

    private static final Set<Law> UNSIZED = EnumSet.of(Law.BIAS, Law.SAMPLES);

    private Shown() {}

    /** A size to three significant digits or thereabouts. */
    static <Q extends Quantity<Q>> String size(double libraryValue, ShopUnit<Q> unit) {
        double shown = unit.fromLibrary(libraryValue);
        return Numbers.fixed(shown, Numbers.decimalsFor(Math.abs(shown), 3) + (shown == 0.0 ? 0 : 1))
                + (unit.symbol().isEmpty() ? "" : " " + unit.symbol());
    }

    /** A form with a factor, and the phrase {times} for it, such as {@code 0.730}. */
    static <T> Form<T> withFactor(Form<T> form, String key, String meaning, Function<T, Double> factor) {
        return form.fact(key, Kind.RATIO, meaning, factor)
                .phrase("times", answer -> factor.apply(answer) >= 100, "{" + key + ":0}")
                .phrase("times", answer -> factor.apply(answer) < 0.1, "{" + key + ":4}")
                .phrase("times", "{" + key + ":3}");
    }

    /** A form with limits, if there are any, and the phrase {kept} for them, such as {@code within 3 to 5 mm}. */
    static <T> Form<T> withLimits(Form<T> form, Function<T, @Nullable Limits<?>> limits) {
        return form.factIfAny("limits", Kind.LIMITS, "to be kept", answer -> Optional.ofNullable(limits.apply(answer)))
                .phrase("kept", answer -> isWithin(limits.apply(answer)), "{limits:own fine}")
                .phrase("kept", "within {limits:own fine}");
    }

    /** A form with a spread and its size, and the phrase {wide} for them, such as {@code normal, u 0.0384 mm}. */
    static <T> Form<T> withSpread(Form<T> form, Function<T, ErrorDistribution<?>> spread) {
        return form.fact("spread", Kind.SPREAD, "of its error", spread)
                .fact(
                        "law",
                        Kind.code(ErrorDistribution.Law.class),
                        "of the spread",
                        answer -> spread.apply(answer).law())
                .fact(
                        "size",
                        Kind.AMOUNT,
                        "half-width of the spread, standard deviation of a normal one",
                        answer -> size(spread.apply(answer)))
                .phrase("wide", answer -> spread.apply(answer).law() == Law.NORMAL, "normal, u {size:fine digits 3}")
                .phrase("wide", answer -> UNSIZED.contains(spread.apply(answer).law()), "{spread}")
                .phrase("wide", "{law}, +/- {size:fine digits 3}");
    }

    static <Q extends Quantity<Q>> Amount<Q> size(ErrorDistribution<Q> spread) {
        return Amount.ofLibrary(spread.libraryScale(), spread.unit());
    }

    /** Limits in the words of a refusal. */
    static String kept(Limits<?> limits) {
        return isWithin(limits) ? limits.toString() : "within " + limits;
    }

    private static boolean isWithin(@Nullable Limits<?> limits) {
        return limits != null && limits.libraryLower() == -limits.libraryUpper();
    }

    /** The style of the first length among a unit and spreads. */
    static LengthStyle style(ShopUnit<?> unit, Stream<ErrorDistribution<?>> spreads) {
        return Stream.concat(Stream.of(unit), spreads.map(ErrorDistribution::unit))
                .filter(one -> one.kind() == (Class<?>) Length.class)
                .findFirst()
                .map(LengthStyle::ofUnit)
                .orElse(LengthStyle.MILLIMETRES);
    }
}
