package org.neckgeom.budget;

import java.util.List;
import javax.measure.Quantity;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.table.Key;
import org.neckgeom.table.QuantityType;
import org.neckgeom.table.Table;
import org.neckgeom.table.Type;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** The keys of an uncertainty budget: its unit and its components, each with sensitivity and error. */
public final class BudgetKeys {

    private static final int MOST = 10_000;
    private static final String FRACTIONS = "fractional in";

    /** An error of any kind of quantity, by its units. */
    private static final Type<ErrorDistribution<?>> SPREAD = Types.anyOf(List.<Types.Case<ErrorDistribution<?>>>of(
            spread(Types.LENGTH, ShopUnit.MILLIMETRE),
            spread(Types.ANGLE, ShopUnit.RADIAN),
            spread(Types.FORCE, ShopUnit.NEWTON),
            spread(Types.TURNING, ShopUnit.HERTZ),
            spread(Types.SPEED, ShopUnit.MM_PER_SECOND),
            spread(Types.PERCENT, ShopUnit.ONE),
            spread(Types.TEMPERATURE, ShopUnit.CELSIUS),
            spread(Types.LINEAR_DENSITY, ShopUnit.GRAM_PER_METRE),
            spread(Types.PRESSURE, ShopUnit.MEGAPASCAL),
            spread(Types.MOMENT, ShopUnit.NEWTON_MM),
            spread(Types.DENSITY, ShopUnit.KG_PER_M3)));

    private static final Table<UncertaintyComponent> COMPONENT =
            Table.of("", "a component of a budget", BudgetKeys::component, BudgetKeys::values);
    private static final Key<UncertaintyComponent, String> NAME =
            COMPONENT.needed("name", Types.TEXT, "of the component");
    private static final Key<UncertaintyComponent, String> STEP =
            COMPONENT.needed("step", Types.TEXT, "of the work that it comes from");
    private static final Key<UncertaintyComponent, Double> SENSITIVITY = COMPONENT.needed(
            "sensitivity", Types.number(-1e300, 1e300), "change of the result by this, in library units");
    private static final Key<UncertaintyComponent, ErrorDistribution<?>> ERROR =
            COMPONENT.needed("spread", SPREAD, "how far off it may be");

    /** The keys of a budget of any kind of result; title, unit and components. */
    public static final Table<Budget<?>> TABLE =
            Table.of("", "an uncertainty budget", BudgetKeys::budget, BudgetKeys::values);

    private static final Key<Budget<?>, String> TITLE = TABLE.needed("title", Types.TEXT, "of the result");
    private static final Key<Budget<?>, ShopUnit<?>> UNIT =
            TABLE.needed("unit", Types.named(BudgetKeys::unit, BudgetKeys::name), "of the result");
    private static final Key<Budget<?>, List<UncertaintyComponent>> COMPONENTS =
            TABLE.needed("components", Types.list(Types.group(COMPONENT), 0, MOST), "its components");

    private static final Table<Correlation> CORRELATION =
            Table.of("", "a correlation of two components", BudgetKeys::correlation, BudgetKeys::values);
    private static final Key<Correlation, String> ONE = CORRELATION.needed("one", Types.TEXT, "a component");
    private static final Key<Correlation, String> OTHER = CORRELATION.needed("other", Types.TEXT, "another one");
    private static final Key<Correlation, Double> COEFFICIENT =
            CORRELATION.needed("coefficient", Types.number(-1, 1), "of correlation");
    private static final Key<Budget<?>, List<Correlation>> CORRELATIONS = TABLE.usual(
            "correlations",
            Types.list(Types.group(CORRELATION), 0, MOST),
            List.of(),
            "correlations of its components. Default: none");

    private BudgetKeys() {}

    private static Correlation correlation(Values<Correlation> given) {
        return new Correlation(given.at(ONE), given.at(OTHER), given.at(COEFFICIENT));
    }

    private static Values<Correlation> values(Correlation pair) {
        return CORRELATION
                .values()
                .with(ONE, pair.one())
                .with(OTHER, pair.other())
                .with(COEFFICIENT, pair.coefficient());
    }

    private static <Q extends Quantity<Q>> Types.Case<ErrorDistribution<?>> spread(
            QuantityType<Q> type, ShopUnit<Q> unit) {
        Type<ErrorDistribution<Q>> group = Types.group(SpreadKeys.of(type.atLeast(Amount.ofLibrary(0, unit)), type));
        return Types.caseOf(group, spread -> spread.unit().kind() == (Class<?>) unit.kind());
    }

    private static ShopUnit<?> unit(String name) {
        return name.equals(FRACTIONS) ? ShopUnit.INCH_FRACTION : ShopUnit.named(name);
    }

    private static String name(ShopUnit<?> unit) {
        return unit == (ShopUnit<?>) ShopUnit.INCH_FRACTION ? FRACTIONS : unit.toString();
    }

    private static UncertaintyComponent component(Values<UncertaintyComponent> given) {
        return new UncertaintyComponent(given.at(NAME), given.at(STEP), given.at(SENSITIVITY), given.at(ERROR));
    }

    private static Values<UncertaintyComponent> values(UncertaintyComponent one) {
        return COMPONENT
                .values()
                .with(NAME, one.name())
                .with(STEP, one.step())
                .with(SENSITIVITY, one.sensitivity())
                .with(ERROR, one.spread());
    }

    private static Budget<?> budget(Values<Budget<?>> given) {
        return with(Budget.of(given.at(TITLE), given.at(UNIT)), given.at(COMPONENTS))
                .correlated(given.at(CORRELATIONS).toArray(Correlation[]::new));
    }

    private static <Q extends Quantity<Q>> Budget<Q> with(Budget<Q> none, List<UncertaintyComponent> all) {
        Budget<Q> budget = none;
        for (UncertaintyComponent one : all) {
            budget = budget.with(one);
        }
        return budget;
    }

    private static Values<Budget<?>> values(Budget<?> budget) {
        Values<Budget<?>> values = TABLE.values()
                .with(TITLE, budget.title())
                .with(UNIT, budget.unit())
                .with(COMPONENTS, budget.components());
        return budget.correlations().isEmpty() ? values : values.with(CORRELATIONS, budget.correlations());
    }
}
