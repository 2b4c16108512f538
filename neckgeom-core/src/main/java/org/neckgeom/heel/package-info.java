/**
 * Neck angle and heel: at which angle does the neck meet the body, and how does the heel hold it there? The neck's
 * angle and its uncertainty, the wood to take off heel or cheek in a neck reset, heel blocks and mating face.
 *
 * <p>Axes: x runs along the centreline, 0 at the fingerboard-side face of the nut, positive toward the body; y runs
 * across, positive toward the treble side; z is square to the fingerboard's glue face, 0 on that face, positive toward
 * the strings, so the neck's wood has negative z. The neck's angle is positive with the head back. Depths below the glue
 * face are given as positive numbers.
 *
 * <p>Pure functions: the same question gets the same answer, bit for bit, on every machine. Open
 * {@link org.neckgeom.heel.BackSet} first.
 *
 * <h2>Formulas</h2>
 *
 * <pre>
 * neck angle          asin(H / sqrt(S^2 + s^2)) - atan2(s, S)
 *                     S from body joint to saddle, s string over the fret plane there, H saddle over fret plane
 * wedge off the heel  heel's height times the change at the bridge / S
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var set = BackSet.of(Scale.of(mm(648)), 14, NeckSet.saddle(mm(15)).atNut(mm(0.4)).action(mm(2.2)).fretPlane(mm(7)));
 * println(set.angle());
 * println(set.wedge(mm(80), mm(3)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * 0.79 deg, head back
 *   straightedge on the frets  11.000 mm over the top at the saddle
 *   angle between fret plane and body top at the joint
 * Heel wedge: 0.831 mm at the cap
 *   runs out to nothing  at the top edge
 *   bridge reading       3 mm higher, head back
 *   strings              0.073 mm longer
 *   estimate: lever rule for a small turn
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.heel;

import org.jspecify.annotations.NullMarked;
