/**
 * What do I do, and is it good so far? The whole neck at once: settings, passes, layouts, checks with their limits,
 * budgets, and its {@linkplain org.neckgeom.order order of work}.
 *
 * <p>Open first: {@link org.neckgeom.plan.NeckPlan}; for the order of work alone
 * {@link org.neckgeom.order.OrderOfWork}. No argument may be null. Nothing here replaces the machine's own instructions,
 * which come first, then local rules.
 *
 * <h2>What the words mean</h2>
 *
 * <pre>
 * good    keeps its limit, by twice its standard uncertainty where it has one
 * open    not known yet, or too near to tell: read, then ask again
 * stop    breaks its limit: do not cut
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var plan = NeckPlan.of(SampleNecks.octaveMandolin(), SampleBench.octaveBlank(), SampleBench.metricShop());
 * println(plan.checks().get(0));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * open  channel centred: not read yet (allowed: within 0.1 mm). Make a trial cut in a test piece, and read both walls, the piece and the slot.
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.plan;

import org.jspecify.annotations.NullMarked;
