/**
 * How large is it, and in which unit? Quantities as a shop writes them, and the one border between quantities and
 * plain numbers.
 *
 * <p>Everything public in the library takes any JSR 385 {@code Quantity} and gives back an {@link
 * org.neckgeom.units.Amount}. Inside, lengths are doubles in mm, angles in rad, forces in N, pressures in MPa,
 * temperatures in degrees Celsius, times in s: the <em>house units</em>. {@link org.neckgeom.units.HouseUnits} is the
 * only place where one turns into the other. Nothing here depends on the locale.
 *
 * <p>Open first: {@link org.neckgeom.units.ShopUnits}, the words a maker types. No argument may be null.
 *
 * @since 0.1.0
 */
package org.neckgeom.units;
