package org.neckgeom.testing;

import javax.measure.Quantity;
import javax.measure.Unit;

/** A quantity whose provider fails at every question. */
public final class Unreadable<Q extends Quantity<Q>> implements Quantity<Q> {

    private static UnsupportedOperationException failure() {
        return new UnsupportedOperationException("the provider gave up");
    }

    @Override
    public Number getValue() {
        throw failure();
    }

    @Override
    public Unit<Q> getUnit() {
        throw failure();
    }

    @Override
    public Scale getScale() {
        throw failure();
    }

    @Override
    public boolean isEquivalentTo(Quantity<Q> that) {
        throw failure();
    }

    @Override
    public Quantity<Q> add(Quantity<Q> augend) {
        throw failure();
    }

    @Override
    public Quantity<Q> subtract(Quantity<Q> subtrahend) {
        throw failure();
    }

    @Override
    public Quantity<?> divide(Quantity<?> divisor) {
        throw failure();
    }

    @Override
    public Quantity<Q> divide(Number divisor) {
        throw failure();
    }

    @Override
    public Quantity<?> multiply(Quantity<?> multiplicand) {
        throw failure();
    }

    @Override
    public Quantity<Q> multiply(Number multiplicand) {
        throw failure();
    }

    @Override
    public Quantity<Q> to(Unit<Q> other) {
        throw failure();
    }

    @Override
    public Quantity<?> inverse() {
        throw failure();
    }

    @Override
    public Quantity<Q> negate() {
        throw failure();
    }

    @Override
    public <T extends Quantity<T>> Quantity<T> asType(Class<T> type) {
        throw failure();
    }
}
