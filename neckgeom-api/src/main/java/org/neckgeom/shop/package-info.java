/**
 * Bench equipment: cutters (router bits), fences, feeler gauges, test pieces, and the trial cuts read on them.
 *
 * <p>The near wall is the wood between slot and fence; the far wall is on the other side. Open first: {@link
 * org.neckgeom.shop.TrialCut}. Errors: a value outside its limits throws
 * {@code IllegalArgumentException}, which names the value, the limit and the remedy; null throws {@code
 * NullPointerException}, which names the parameter.
 *
 * <h2>What belongs together</h2>
 *
 * <pre>
 * trial cut      near wall + slot + far wall = width of the piece
 * feeler stack   as thick as its gauges together; each is used once
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * println(TrialCut.walls(mm(29.84), mm(31.26)).slot(mm(6.01)).piece(mm(67.11)).repeatability(mm(0.02)));
 * println(Cutter.straight(mm(6)).flutes(2, mm(22)).shank(mm(12.7)).stickOut(mm(30)).carbide());
 * println(Fence.pivoting(mm(600)).fromPivot(mm(300), mm(450)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * Trial cut
 *   near wall  29.840 mm, u 0.020 mm
 *   far wall   31.260 mm, u 0.020 mm
 *   slot       6.010 mm, u 0.020 mm
 *   piece      67.110 mm, u 0.020 mm
 * 6 mm straight cutter, 2 flutes of 22 mm, shank 12.7 mm, stick-out 30 mm, carbide
 * pivoting fence, 600 mm, cutter 300 mm and stop 450 mm from the pivot
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.shop;

import org.jspecify.annotations.NullMarked;
