package org.neckgeom.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;

import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Limits;
import org.neckgeom.state.DatumTree;
import org.neckgeom.testing.Approved;
import org.neckgeom.units.ShopUnit;

/** What every answer of this package owes its reader: it compares by value, and prints itself. */
class BudgetValuesTest {

    private static final Limits<Length> LIMITS = Limits.within(mm(0.2));

    private static Budget<Length> slot(double d) {
        return Budget.named("slot offset")
                .with("fence", ErrorDistribution.rectangular(mm(0.05 + d)))
                .with("blank", 0.5, ErrorDistribution.triangular(mm(0.12)))
                .with("depth gauge", -1.0, ErrorDistribution.normal(mm(0.02)));
    }

    private static Budget<Length> many(double d) {
        Budget<Length> budget = Budget.named("a dozen");
        for (int i = 1; i <= 12; i++) {
            budget = budget.with("part " + i, ErrorDistribution.normal(mm(0.01 * i + d)));
        }
        return budget;
    }

    private static DatumTree placed(double d) {
        return DatumTree.from("rod channel", ErrorDistribution.normal(mm(0.05)))
                .skewed(ErrorDistribution.rectangular(deg(0.05)), mm(300))
                .place("heel")
                .on("rod channel")
                .at(mm(30), mm(290))
                .each(ErrorDistribution.rectangular(mm(0.1 + d)));
    }

    private static Propagation<Length> side(double d) {
        return Propagation.to("a third of the width", ShopUnit.MILLIMETRE)
                .input("wide", mm(40 + d), ErrorDistribution.normal(mm(0.1)))
                .through(x -> x[0] / 3);
    }

    private static Workmanship work(double d) {
        return Workmanship.withDefaults().cutting(ErrorDistribution.normal(mm(0.05 + d)));
    }

    /** Each answer from a figure; 0.01 more must be another answer. */
    static Stream<DoubleFunction<Object>> values() {
        return Stream.of(
                BudgetValuesTest::slot,
                BudgetValuesTest::many,
                d -> slot(d).in(ShopUnit.THOU),
                d -> slot(0).with("jig", ErrorDistribution.bias(mm(0.03 + d))),
                d -> slot(0).replaced("fence", ErrorDistribution.normal(mm(0.03 + d))),
                d -> many(0).correlated(new Correlation("part 1", "part 2", 0.5 + d)),
                d -> slot(d).worstCase(),
                d -> slot(0).worstCase(2 + d),
                d -> slot(0).yield(Limits.within(mm(0.1 + d))),
                d -> slot(0).yield(Limits.within(mm(1 + d))),
                d -> slot(d).shares(),
                d -> many(d).shares(),
                d -> slot(d).shares().largest(),
                d -> placed(d).across("heel", DatumTree.BLANK, mm(280)).sharesByStep(),
                d -> slot(d).allowance("fence", LIMITS, percent(99)),
                d -> Allocation.of(slot(d), LIMITS, percent(99)),
                d -> Allocation.of(slot(0), LIMITS, percent(99), Map.of("fence", 2 + d)),
                d -> slot(d).components().get(0),
                d -> new Correlation("fence", "stop", 0.5 + d),
                BudgetValuesTest::placed,
                d -> placed(d).across("heel", DatumTree.BLANK, mm(280)),
                d -> side(d).budget(),
                d -> Dual.input(1.0 / 3 + d, 1).sin(),
                BudgetValuesTest::work);
    }

    @ParameterizedTest
    @MethodSource("values")
    void value_isEqualWhenMadeAlikeAndUnlikeWhenAFigureDiffers(DoubleFunction<Object> made) {
        Object one = made.apply(0);

        assertThat(one).isEqualTo(one).isEqualTo(made.apply(0)).hasSameHashCodeAs(made.apply(0));
        assertThat(one).isNotEqualTo(made.apply(0.01)).isNotEqualTo(null).isNotEqualTo("text");
        // Allowed to be the same, but then hash tables would be lists.
        assertThat(one).doesNotHaveSameHashCodeAs(made.apply(0.01));
    }

    @Test
    void texts_areTheApprovedOnes() {
        Stream<Object> answers = Stream.of(
                slot(0).distribution(),
                slot(0).in(ShopUnit.INCH).distribution(),
                slot(0).simulate(42),
                slot(0).simulate(42).withLimits(LIMITS).trials(10_000),
                slot(0).simulate(42).withoutQuantiles().trials(2),
                side(0),
                side(0).compared(42, 2),
                Budget.named("nothing yet"),
                Budget.named("one")
                        .with("fence", ErrorDistribution.normal(inch(0.002)))
                        .rootSumSquare());

        Approved.hold(
                "budget",
                Map.of("texts.txt", Approved.texts(Stream.concat(values().map(made -> made.apply(0)), answers))));
    }
}
