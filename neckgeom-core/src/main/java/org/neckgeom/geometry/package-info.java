/**
 * Which shape does the neck have, and how much wood is left under the rod's channel? Fret places, the scarfed head, the
 * heel and the neck's angle, the fingerboard, the strings, the back.
 *
 * <p>Axes: x runs along the centreline, 0 at the fingerboard-side face of the nut, positive toward the body; y runs
 * across, positive toward the treble side; z is square to the fingerboard's glue face, 0 on that face, positive toward
 * the strings, so the neck's wood has negative z. Depths below the glue face are given as positive numbers.
 *
 * <p>Pure functions: the same question gets the same answer, bit for bit, on every machine. Open
 * {@link org.neckgeom.geometry.Scarf} first.
 *
 * <h2>Formulas</h2>
 *
 * <pre>
 * scarf, pitch a      glue face t / sin a in the head, T / sin a in the shaft; t head, T shaft
 * head in one piece    L sin a + t cos a of blank below the glue face, L cos a before the nut; L its length
 * break over the nut  atan((h - z) / -x), string's place at the post (x, z), h the slot's height
 * neck angle          asin(H / sqrt(S^2 + s^2)) - atan2(s, S)
 *                     S from body joint to saddle, s string over the fret plane there, H saddle over fret plane
 * wedge off the heel  heel's height times the change at the bridge / S
 * dovetail            a shim of s on each side lifts the neck s / sin(taper)
 * wood left           least distance from channel to back, over the whole channel and in every direction
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var scarf = Scarf.at(deg(13)).shaft(mm(20)).head(mm(15));
 * println(scarf.inTheHead());
 * println(FretTable.of(Scale.of(mm(560)), 20).fret(12));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * Scarf joint in the head, 13.00 deg
 *   glue face          66.681 mm
 *   its run            64.972 mm
 *   line on the front  88.908 mm along the head's face from the break line
 *   line on the back   19.948 mm in front of the break line
 *   head with veneers  15.000 mm
 * fret 12 at 280.000 mm
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.geometry;

import org.jspecify.annotations.NullMarked;
