package org.neckgeom.testing;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/** A quantity of a JSR 385 provider nobody has heard of: a number and a unit, and no arithmetic. */
public final class OtherQuantity<Q extends Quantity<Q>> implements Quantity<Q> {

    private final Number value;
    private final Unit<Q> unit;
    private final Scale scale;

    public OtherQuantity(Number value, Unit<Q> unit) {
        this(value, unit, Scale.ABSOLUTE);
    }

    public OtherQuantity(Number value, Unit<Q> unit, Scale scale) {
        this.value = value;
        this.unit = unit;
        this.scale = scale;
    }

    /** The same object under another type parameter, as a raw type would smuggle it in. */
    @SuppressWarnings("unchecked") // the lie is the purpose
    public static <Q extends Quantity<Q>> Quantity<Q> lie(Quantity<?> quantity) {
        return (Quantity<Q>) quantity;
    }

    @Override
    public Number getValue() {
        return value;
    }

    @Override
    public Unit<Q> getUnit() {
        return unit;
    }

    @Override
    public Scale getScale() {
        return scale;
    }

    @Override
    public boolean isEquivalentTo(Quantity<Q> that) {
        return Objects.equals(value, that.getValue()) && unit.equals(that.getUnit());
    }

    @Override
    public Quantity<Q> add(Quantity<Q> augend) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Quantity<Q> subtract(Quantity<Q> subtrahend) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Quantity<?> divide(Quantity<?> divisor) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Quantity<Q> divide(Number divisor) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Quantity<?> multiply(Quantity<?> multiplicand) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Quantity<Q> multiply(Number multiplicand) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Quantity<Q> to(Unit<Q> other) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Quantity<?> inverse() {
        throw new UnsupportedOperationException();
    }

    @Override
    public Quantity<Q> negate() {
        throw new UnsupportedOperationException();
    }

    @Override
    public <T extends Quantity<T>> Quantity<T> asType(Class<T> type) {
        throw new UnsupportedOperationException();
    }
}
