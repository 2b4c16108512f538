package org.neckgeom.units;

import javax.measure.Quantity;

/** Mass of a string in a length of it, such as {@code 6.5 g/m}: a kind of quantity that JSR 385 leaves to its users. */
public interface LinearDensity extends Quantity<LinearDensity> {}
