/**
 * What do I do, in which order, and is it good so far? The whole neck at once: settings, passes, layouts, checks with
 * their limits, budgets, the order of work.
 *
 * <p>Open first: {@link org.neckgeom.plan.NeckPlan}; for the order of work alone {@link org.neckgeom.plan.OrderOfWork}. No
 * argument may be null. Nothing here replaces the machine's own instructions, which come first, then local rules.
 *
 * <h2>What the words mean</h2>
 *
 * <pre>
 * good    keeps its limit, by twice its standard uncertainty where it has one
 * open    not known yet, or too near to tell: read, then ask again
 * stop    breaks its limit: do not cut
 *
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
 * Clashes: 1 clash, with a remedy
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
package org.neckgeom.plan;

import org.jspecify.annotations.NullMarked;
