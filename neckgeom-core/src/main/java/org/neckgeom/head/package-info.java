/**
 * The head (headstock, peghead): how does it join the shaft, and how do the strings leave the nut for their tuner
 * posts? Both scarf joints, square or slanted, before and after planing and veneering, the board they are cut from, a
 * head in one piece with the shaft, the head's outline, posts and the forces on the nut.
 *
 * <p>Axes: x runs along the centreline, 0 at the fingerboard-side face of the nut, positive toward the body, so the head
 * has negative x; y runs across, positive toward the treble side; z is square to the fingerboard's glue face, 0 on that
 * face, positive toward the strings. Depths below the glue face are given as positive numbers.
 *
 * <p>Pure functions: the same question gets the same answer, bit for bit, on every machine. Open
 * {@link org.neckgeom.head.Scarf} first.
 *
 * <h2>Formulas</h2>
 *
 * <pre>
 * scarf, pitch a      glue face t / sin a in the head, T / sin a in the shaft; t head, T shaft
 * slanted nut, s      t cos m / cos s for t, sin m = cos a sin s; lines on the centreline, parallel to the nut
 * head in one piece    L sin a + t cos a of blank below the glue face, L cos a before the nut; L its length
 * break over the nut  atan((h - z) / -x), string's place at the post (x, z), h the slot's height
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var scarf = Scarf.of(deg(13), mm(20), mm(15));
 * println(ScarfJoint.inTheHead(scarf));
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
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.head;

import org.jspecify.annotations.NullMarked;
