package org.neckgeom.units;

import javax.measure.Quantity;

/** Mass in a volume, such as {@code 610 kg/m3}: a kind of quantity that JSR 385 leaves to its users. */
public interface MassDensity extends Quantity<MassDensity> {}
