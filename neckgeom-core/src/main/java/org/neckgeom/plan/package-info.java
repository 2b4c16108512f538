/**
 * The plan of a whole neck, read from a neck file or built as a job: settings, fence move, passes, layouts, checks with their
 * limits, budgets, and its {@linkplain org.neckgeom.order order of work}.
 *
 * <p>Open first: {@link org.neckgeom.plan.Job}, which asks for its {@link org.neckgeom.plan.Plan}; for the order of work alone
 * {@link org.neckgeom.order.OrderOfWork}. No argument may be null. Nothing here replaces the machine's own instructions,
 * which come first, then local rules.
 *
 * <h2>What the words mean</h2>
 *
 * <pre>
 * OK      keeps its limit, by twice its standard uncertainty where it has one
 * open    not measured, too near the limit to decide, or outside it in a way that the step shown puts right
 * stop    breaks its limit: do not cut
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var job = Job.of(SampleNecks.octaveMandolin(), SampleBench.octaveBlank(), SampleBench.metricShop());
 * println(job.plan().checks().get(0));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * open  channel centred: not measured, limit: within 0.1 mm. Make a trial cut in a test piece, and read both walls, the piece and the slot.
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.plan;

import org.jspecify.annotations.NullMarked;
