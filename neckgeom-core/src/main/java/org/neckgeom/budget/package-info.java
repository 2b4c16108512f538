/**
 * Uncertainty budgets (tolerance stack-up), exact and by Monte Carlo: how do many small errors add up, and which step
 * is worth improving? Budgets of named components with their exact distribution; registration trees (datum trees)
 * that make budgets from features located on each other; trials (JCGM 101:2008); first-order propagation through any
 * function.
 *
 * <p>Open {@link org.neckgeom.budget.Budget} first, then {@link org.neckgeom.state.DatumTree}. Errors count in the
 * library unit of their kind; lateral errors are positive toward the treble side, heights toward the strings, places
 * along the neck toward the body. No argument may be null.
 *
 * <h2>Formulas</h2>
 *
 * <pre>
 * result           y = sum of c_i e_i, the errors e_i independent
 * root sum square  u(y)^2 = sum of c_i^2 u_i^2
 * worst case       sum of |c_i| a_i, normal errors at three standard deviations
 * freedom          u^4 / sum of (c_i u_i)^4 / nu_i                                 GUM G.4, Welch-Satterthwaite
 * located on two   at x: d1 (x2 - x)/(x2 - x1) + d2 (x - x1)/(x2 - x1)
 * stations         and what two features share cancels between them
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var slot = Budget.named("slot offset")
 *     .with("fence", ErrorDistribution.rectangular(mm(0.05)))
 *     .with("blank", ErrorDistribution.rectangular(mm(0.05)));
 * println(slot.worstCase());
 * println(slot.rootSumSquare());
 * println(slot.yield(Limits.within(mm(0.05))));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * slot offset: worst case -0.100 to 0.100 mm
 * 0.000 mm, u 0.041 mm
 * slot offset: 75.0 % within 0.05 mm
 *   outside  1 in 4
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.budget;

import org.jspecify.annotations.NullMarked;
