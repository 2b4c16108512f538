/**
 * Design search: which design is best, and which limit keeps it from being better? The least or greatest of an aim over
 * variables with units, while limits such as a plan's own checks are kept; of several aims the Pareto front.
 *
 * <p>Open first: {@link org.neckgeom.search.Search}. A small grid is asked as a whole; {@link org.neckgeom.sweep} streams
 * larger ones. Functions must be pure; then the answer is the same for the same seed, in one thread or in parallel. No
 * argument may be null.
 *
 * <h2>Methods</h2>
 *
 * <pre>
 * limits            a design that keeps all is better than one that does not; of two that do not, the one that
 *                   breaks them less, each in its own scale (Deb 2000); of two with equal aims the one with more room
 * over the range    differential evolution (Storn, Price 1997) drawn toward the best (Zhang, Sanderson 2009), chosen
 *                   by domination and crowding (Kukkonen, Lampinen 2005; Deb and others 2002)
 * near a design     sequential quadratic programming in a box of trust on differences (Han 1977, Powell 1978),
 *                   second-order correction (Fletcher 1982); steps and choices by their neighbours, alone and in pairs
 * a front           the ends aim by aim; between them one aim at least with bounds on the other (Haimes, Lasdon,
 *                   Wismer 1971); over steps alone the neighbours of the front (Paquete and others 2004)
 * what binds        each limit eased by one of its units, or left out where it has no figure, and the search run
 *                   again from the best: a finite difference. Of several aims none may get worse by it
 * </pre>
 *
 * <p>The literature was cited from memory.
 *
 * <h2>For instance</h2>
 *
 * <p>How shallow may a channel be for a rod of 9 mm under a fillet of 2 mm or more, 0.2 mm clear of it? By hand 9 mm + 2 mm +
 * 0.2 mm. With a millimetre less of clearance there is none left, and the channel is 0.2 mm less deep.
 *
 * <pre>{@code
 * var search = Search.of(Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9))))
 *     .over("fillet", Axis.steps(mm(2), mm(4), mm(0.5)), (channel, fillet) -> channel.fillet(fillet))
 *     .between("clearance", mm(0), mm(1), (channel, clear) -> channel.depthClearance(clear))
 *     .least("depth", channel -> mm(channel.depthMm()))
 *     .within("clearance", channel -> mm(channel.depthClearanceMm()), Limits.atLeast(mm(0.2)));
 * println(search.result());
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * depth 11.2 mm after 247 designs
 *   fillet     2 mm
 *   clearance  0.2 mm
 *   binds      clearance eased by 1 mm: depth 0.2 mm better
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.search;

import org.jspecify.annotations.NullMarked;
