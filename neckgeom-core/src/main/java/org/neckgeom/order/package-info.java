/**
 * The order of work: in which order do I do the operations, and which of them conflict? Operations with their needs and
 * effects, orders that must be kept, conflicts (conflicts) with their remedies and the error each remedy adds.
 *
 * <p>Open first: {@link org.neckgeom.order.OrderOfWork}. No argument may be null. Nothing here replaces the machine's own
 * instructions, which come first, then local rules.
 *
 * <h2>What is looked for</h2>
 *
 * <pre>
 * Order of work: the needs of every step are met and nothing blocks it; of all such orders the one nearest the usual.
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var order = OrderOfWork.forNeck().keep("glue wings").before("cut rod channel").plan();
 * println(order.conflicts());
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * Conflicts: 1 conflict, with a remedy
 * 1. cut rod channel: wings in the way, from "glue wings"
 *   why     the wings meet the fence before the shaft does
 *   kept    glue wings before cut rod channel
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
