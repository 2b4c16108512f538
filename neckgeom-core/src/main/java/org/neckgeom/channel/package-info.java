/**
 * The truss rod channel (slot, groove, rout), from the first trial cut to the finished depth: what do I set at the
 * machine, and how sure is that?
 *
 * <p>Open {@link org.neckgeom.channel.Centring} first. The fence lies on one side of the cutter; offsets are positive when
 * the slot lies too far from it. Stations run in x from the nut, positive toward the body. Every answer is a value that
 * prints itself in the units it was asked in and carries its standard uncertainty. {@code offset()} of a centring is an
 * {@link org.neckgeom.channel.SlotOffset}, whose quantity is {@code offset().amount()}.
 *
 * <h2>Formulas</h2>
 *
 * <pre>
 * centring       e = (a - b)/2, a wall on the fence side, b on the far side      u(e) = u_r / sqrt(2)
 * misclosure     a + slot + b - width of the piece, 0 but for its uncertainty
 * turned pass    the slot grows by 2 |e|
 * several rounds K = P/(P + u_z^2), e + K (z - e), (1 - K) P; a move m takes m off e and adds u_m^2 to P
 * pivoting fence block's gap = move times (pivot to block) / (pivot to cutter)
 * depth          rod + fillet + clearance
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var centring = Centring.of(TrialCut.walls(mm(29.84), mm(31.26)).repeatability(mm(0.02)));
 * println(centring.offset());
 * println(centring.move());
 * println(centring.move().leaves(FeelerSet.metric20()));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * slot 0.710 mm nearer the fence, u 0.014 mm
 * fence away from the cutter by 0.710 mm
 * 0.70 leaf, 0.010 mm short
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.channel;

import org.jspecify.annotations.NullMarked;
