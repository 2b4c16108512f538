/**
 * In which order do I do the work, and what is in the way? Operations with what they need and leave, orders that must be
 * kept, clashes with their remedies and what each remedy adds to the errors.
 *
 * <p>Open first: {@link org.neckgeom.order.OrderOfWork}. No argument may be null. Nothing here replaces the machine's own
 * instructions, which come first, then local rules.
 *
 * <h2>What is looked for</h2>
 *
 * <pre>
 * Order of work: every step finds what it needs and nothing that blocks it; of all such orders the one nearest the usual.
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var order = OrderOfWork.forNeck().keep("glue ears").before("cut rod channel").plan();
 * println(order.clashes());
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * Conflicts: 1 clash, with a remedy
 * 1. cut rod channel: ears in the way, from "glue ears"
 *   why     the ears meet the fence before the shaft does
 *   kept    glue ears before cut rod channel
 *   remedy  parallel spacer between shaft and fence
 *   how     thicker than the head stands proud; centre the cutter with the spacer in place
 *   adds    spacer's thickness, across: rectangular, half-width 0.05 mm
 *   or      straight carrier board, plunge router between rails
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.order;

import org.jspecify.annotations.NullMarked;
