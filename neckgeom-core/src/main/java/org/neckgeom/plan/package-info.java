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
 * var neck = NeckDesign.named("Practice neck")
 *     .scale(mm(560))
 *     .fingerboard(Fingerboard.tapered(mm(34), mm(46)).thickness(mm(6)).radius(mm(400)))
 *     .back(BackProfile.between(mm(14.5), mm(16.5)).rounded())
 *     .frets(20).bodyAtFret(14)
 *     .rod(Rod.twoWay(mm(300)).section(mm(6), mm(9)));
 * var plan = NeckPlan.of(neck, Blank.ofLength(mm(640)).section(mm(60), mm(25)), Shop.with(Cutter.straight(mm(6))));
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
