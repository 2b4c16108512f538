/**
 * What was measured, how well, and does it conform? Estimates with their standard uncertainty, tolerance limits,
 * verdicts with their conformance probability, coverage intervals, chances that print no more nines than they have
 * earned, and error distributions (spreads) of what has not been read. Terms: GUM (JCGM 100:2008), JCGM 106:2012.
 *
 * <p>A standard uncertainty is one standard deviation, never a half-width or an expanded uncertainty. Open first:
 * {@link org.neckgeom.measure.Estimate}. No argument may be null.
 *
 * <h2>Formulas</h2>
 *
 * <pre>
 * mean of n readings        u = s / sqrt(n), with n - 1 degrees of freedom     GUM 4.2
 * uniform, half-width a     u = a / sqrt(3)                                    GUM 4.3.7
 * next of n errors          s sqrt(1 + 1/n) about the mean, n - 1 degrees of freedom
 * conformance probability   Phi((b - y)/u) - Phi((a - y)/u)                    JCGM 106, 7
 * accepted though outside   integral outside of f(x) P(accepted | x) dx        JCGM 106, 9.5
 * within                    a + 2 u &lt;= y &lt;= b - 2 u                            ISO 14253-1, guard factor 2
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var width = Estimate.repeated(List.of(mm(61.02), mm(61.06), mm(61.04)));
 * println(width);
 * println(Verdict.of(Estimate.of(mm(0.06), mm(0.014)), Limits.within(mm(0.1))));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * 61.040 mm, u 0.012 mm, 2 degrees of freedom
 * WITHIN: conformance probability 99.8 % (within 0.1 mm)
 *   estimate  0.060 mm, u 0.014 mm
 *   limit     within 0.1 mm
 *   guard     2 u on the safe side
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.measure;

import org.jspecify.annotations.NullMarked;
