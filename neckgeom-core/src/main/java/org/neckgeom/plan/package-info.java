/**
 * What do I do, in which order, and is it good so far? The whole neck at once: settings, passes, layouts, checks with
 * their limits, budgets, the order of work.
 *
 * <p>Open first: {@link org.neckgeom.plan.NeckPlan}. No argument may be null.
 */
package org.neckgeom.plan;
