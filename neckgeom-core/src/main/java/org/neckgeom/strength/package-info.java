/**
 * Bending, relief, truss rod force and humidity: will the neck bear its strings? Stiffness of its sections, string
 * tension, the relief under the strings, the force and range of the truss rod, and the effect of dry or damp air on the
 * wood.
 *
 * <p>x runs along the centreline from the nut toward the body, z up from the fingerboard's glue face toward the
 * strings. A moment, a curvature or a bow is positive when it lifts the head: relief. A force in a rod is positive when
 * it works against that. Every answer that depends on the modulus of wood is an estimate and carries its 95 % interval
 * over pieces of a species. No argument may be null.
 *
 * <p>Open first: {@link org.neckgeom.strength.Relief}, then {@link org.neckgeom.strength.Weather}.
 *
 * <h2>Formulas</h2>
 *
 * <pre>
 * curvature            moment / EI, E I of fingerboard, neck and bonded bars about their common neutral axis
 * half an ellipse      A = pi a b / 2, centroid 4 b / (3 pi), I = a b^3 (pi/8 - 8/(9 pi))
 * string tension       mu (2 L f)^2, mu mass per length, L scale, f pitch
 * relief               greatest gap under a straightedge from the first fret to the body
 * rod                  its force times its distance from the neutral axis; a two-way rod: a pair of forces
 * creep                0.7 (t/10 years)^0.25 of the elastic bow of strings less rod
 * bow by moisture      kappa = -e EA_b EA_n/(EA_b + EA_n) (z_b - z_n)/EI, e free strain of board over neck
 * share of a change    1 - sum 8/(pi^2 (2k+1)^2) exp(-(2k+1)^2 pi^2 D t/(4 l^2))
 * moisture             Wood Handbook (2010), Eq. 4-5; across the grain C between tangential and radial
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * println(Weather.from(percent(45), celsius(21)).to(percent(25), celsius(21)).across(mm(46), Wood.INDIAN_ROSEWOOD));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * 46 mm across Indian rosewood: smaller
 *   change    -0.21 mm (95 %: -0.38 to -0.09 mm)
 *   moisture  8.5 % to 5.4 %
 *   rings     not known: any way from along the rays to along the rings
 *   Estimate (Wood Handbook 2010, Eq. 4-5 and 13-3): balance before and after, bare wood,
 *   shrinkage of a piece: its species' plus or minus 29 % (95 % interval).
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.strength;

import org.jspecify.annotations.NullMarked;
