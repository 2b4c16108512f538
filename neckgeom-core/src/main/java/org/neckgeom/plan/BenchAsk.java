package org.neckgeom.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.measure.Limits;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * A question of a step at the bench with what its answer can be at all; questions of one group are kept together.
 *
 * @param question as it is asked
 * @param group the questions whose answers make one entry
 * @param lowest the least that can be, in library units
 * @param highest the most that can be, in library units
 */
record BenchAsk(BenchQuestion question, String group, double lowest, double highest) {

    private static final double HAIR = 1e-9;

    /** An answer: a quantity or a word. */
    record Given(BenchAsk ask, Optional<Amount<?>> amount, String word) {

        double libraryValue() {
            return amount.orElseThrow().libraryValue();
        }

        Amount<Length> length() {
            return Amount.from(amount.orElseThrow().asType(Length.class), ask.code());
        }

        Amount<Angle> angle() {
            return Amount.from(amount.orElseThrow().asType(Angle.class), ask.code());
        }

        /** Such as {@code near wall 29.84 mm}. */
        String words() {
            return Stream.of(
                            ask.question().words(), amount.map(Amount::toString).orElse(""), word)
                    .filter(part -> !part.isEmpty())
                    .collect(Collectors.joining(" "));
        }
    }

    String code() {
        return question.code();
    }

    /** A length of which more than nothing is known: usually about a middle, and never outside the two ends. */
    static BenchAsk length(
            String code,
            String words,
            String group,
            LengthStyle style,
            double middleMm,
            double aboutMm,
            double lowestMm,
            double highestMm) {
        return new BenchAsk(
                BenchQuestion.of(
                        code,
                        words,
                        style == LengthStyle.MILLIMETRES ? ShopUnit.MILLIMETRE : ShopUnit.INCH,
                        usual(style, middleMm, aboutMm, lowestMm)),
                group,
                lowestMm,
                highestMm);
    }

    /** The usual range to a tenth of a millimetre or a hundredth of an inch, as a rule reads. */
    private static Limits<Length> usual(LengthStyle style, double middleMm, double aboutMm, double lowestMm) {
        ShopUnit<Length> unit = style == LengthStyle.MILLIMETRES ? ShopUnit.MILLIMETRE : ShopUnit.INCH;
        double steps = style == LengthStyle.MILLIMETRES ? 10 : 100;
        double low = Math.floor(unit.fromLibrary(Math.max(lowestMm, middleMm - aboutMm)) * steps) / steps;
        double high = Math.ceil(unit.fromLibrary(middleMm + aboutMm) * steps) / steps;
        return Limits.between(Amount.of(low, unit), Amount.of(high, unit));
    }

    static BenchAsk angle(String code, String words, String group, double middleRad, double aboutDegrees) {
        double middle = ShopUnit.DEGREE.fromLibrary(middleRad);
        Limits<Angle> usual = Limits.between(
                ShopUnit.DEGREE.of(Math.rint(middle - aboutDegrees)),
                ShopUnit.DEGREE.of(Math.rint(middle + aboutDegrees)));
        return new BenchAsk(
                BenchQuestion.of(code, words, ShopUnit.DEGREE, usual),
                group,
                ShopUnit.DEGREE.toLibrary(1),
                ShopUnit.DEGREE.toLibrary(45));
    }

    static BenchAsk choice(String code, String words, String group, String... choices) {
        return new BenchAsk(BenchQuestion.choice(code, words, List.of(choices)), group, 0, 0);
    }

    /** The same, which may be left out. */
    BenchAsk leftOut() {
        return new BenchAsk(question.notNeeded(), group, lowest, highest);
    }

    boolean isPossible(double value) {
        return value >= lowest && value <= highest;
    }

    boolean isUsual(double value) {
        return question.usual()
                .map(range -> value >= range.libraryLower() - HAIR && value <= range.libraryUpper() + HAIR)
                .orElse(true);
    }
}
