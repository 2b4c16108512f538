package org.neckgeom.units;

import javax.measure.Quantity;

/** Moment of a force, such as {@code 8.5 N.m}: a kind of quantity that JSR 385 leaves to its users. */
public interface Torque extends Quantity<Torque> {}
