/**
 * How large is it, and in which unit? Quantities as a shop writes them, and the one border between quantities and
 * plain numbers.
 *
 * <p>Everything public in the library takes any JSR 385 {@code Quantity} and gives back an {@link
 * org.neckgeom.units.Amount}. Inside, lengths are doubles in mm, angles in rad, forces in N, pressures in MPa,
 * temperatures in degrees Celsius, times in s: the <em>library units</em>. {@link org.neckgeom.units.LibraryUnits} is the
 * only place where one turns into the other. Nothing here depends on the locale.
 *
 * <p>Open first: {@link org.neckgeom.units.ShopUnits}, the words a maker types. No argument may be null.
 *
 * <h2>Formulas</h2>
 *
 * <pre>
 * 1 in = 25.4 mm     1 thou = 0.001 in     1 ft = 12 in          exactly, by definition
 * 1 lbf = 4.4482216152605 N                                      exactly: 0.45359237 kg times 9.80665 m/s2
 * 1 deg = pi/180 rad
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var width = inch("1 3/4");
 * println(width);
 * println(width.in(ShopUnit.MILLIMETRE));
 * println(width.equals(mm(44.45)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * 1.75 in
 * 44.45 mm
 * true
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.units;

import org.jspecify.annotations.NullMarked;
