package org.neckgeom.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Reading;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** One indication, a list of them, or an estimate as a group of value and standard uncertainty. */
final class ReadingType<Q extends Quantity<Q>> extends Type<Reading<Q>> {

    private static final String U = "standard uncertainty";
    private static final String DEGREES = "degrees of freedom";

    private final QuantityType<Q> quantity;
    private final Type<List<Amount<Q>>> indications;
    private final Table<Estimate<Q>> known;

    ReadingType(QuantityType<Q> quantity, int most) {
        this.quantity = quantity;
        this.indications = Types.oneOrMore(quantity, most);
        this.known = known(quantity);
    }

    private static <Q extends Quantity<Q>> Table<Estimate<Q>> known(QuantityType<Q> quantity) {
        List<Key<Estimate<Q>, Amount<Q>>> both = new ArrayList<>();
        List<Key<Estimate<Q>, Double>> degrees = new ArrayList<>();
        Table<Estimate<Q>> table = Table.of(
                "",
                "a value with its standard uncertainty",
                values -> Estimate.of(values.at(both.get(0)), values.at(both.get(1)), values.at(degrees.get(0))),
                estimate -> whole(estimate, both, degrees));
        both.add(table.needed("value", quantity, "the value"));
        both.add(table.needed(U, quantity.size(), "its standard uncertainty"));
        degrees.add(table.usual(
                DEGREES,
                Types.number(1, 1e6),
                Double.POSITIVE_INFINITY,
                "of the uncertainty; well known when left out"));
        return table;
    }

    private static <Q extends Quantity<Q>> Values<Estimate<Q>> whole(
            Estimate<Q> estimate, List<Key<Estimate<Q>, Amount<Q>>> both, List<Key<Estimate<Q>, Double>> degrees) {
        Values<Estimate<Q>> values = both.get(0)
                .table
                .values()
                .with(both.get(0), estimate.value())
                .with(both.get(1), estimate.standardUncertainty());
        return Double.isInfinite(estimate.degreesOfFreedom())
                ? values
                : values.with(degrees.get(0), estimate.degreesOfFreedom());
    }

    @Override
    @Nullable
    Reading<Q> read(Object data, String path, Faults faults) {
        if (data instanceof Map<?, ?> map && (map.containsKey(U) || map.containsKey(Spelling.JSON.of(U)))) {
            Estimate<Q> estimate = known.read(data, path, faults);
            return estimate == null ? null : Reading.of(estimate);
        }
        List<Amount<Q>> read = indications.read(data, path, faults);
        return read == null ? null : Reading.of(read);
    }

    @Override
    Object write(Reading<Q> value, Spelling spelling) {
        return value.known().isPresent()
                ? known.plain(value.known().get(), spelling)
                : indications.write(value.indications(), spelling);
    }

    @Override
    void check(Reading<Q> value, String name) {
        if (value.known().isPresent()) {
            quantity.check(value.known().get().value(), name);
        } else {
            indications.check(value.indications(), name);
        }
    }

    @Override
    Reading<Q> in(Reading<Q> value, LengthStyle style) {
        return value.in(style);
    }

    @Override
    Optional<LengthStyle> style(Reading<Q> value) {
        return value.known().isPresent()
                ? quantity.style(value.known().get().value())
                : indications.style(value.indications());
    }

    @Override
    Map<String, Object> schema(Spelling spelling) {
        return Types.map("oneOf", List.of(quantity.schema(spelling), listSchema(spelling), known.schema(spelling)));
    }

    private Object listSchema(Spelling spelling) {
        Object oneOf = indications.schema(spelling).get("oneOf");
        return oneOf instanceof List<?> both ? both.get(1) : Map.of();
    }

    @Override
    public String allowed() {
        return indications.allowed();
    }
}
