/**
 * What do I do, in which order, and is it good so far? The whole neck at once: settings, passes, layouts, checks with
 * their limits, budgets, the order of work.
 *
 * <p>Open first: {@link org.neckgeom.plan.NeckPlan}; for the order of work alone {@link org.neckgeom.plan.OrderOfWork}. No
 * argument may be null. Nothing here replaces the machine's own instructions, which come first, then local rules.
 *
 * @since 0.1.0
 */
package org.neckgeom.plan;
