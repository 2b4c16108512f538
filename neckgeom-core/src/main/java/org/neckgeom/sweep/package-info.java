/**
 * Parameter study: which of many designs conform, and which is best? One question asked of a grid of values over a
 * design, or of a list of designs. Each design is made, asked and dropped as the stream is read, so that a million need
 * no more memory than one.
 *
 * <p>Open first: {@link org.neckgeom.sweep.Sweep}. The question must be a pure function; then the answers and their order
 * are the same however many threads the stream uses. No argument may be null.
 *
 * <h2>Formulas</h2>
 *
 * <pre>
 * designs of a sweep   number of designs it starts from, times the values of each axis
 * value i of an axis   from + i step, i from 0
 * the last value       i = floor((to - from) / step)
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var neck = Neck.named("Practice neck")
 *     .scale(mm(560))
 *     .fingerboard(Fingerboard.tapered(mm(34), mm(46)))
 *     .back(BackProfile.between(mm(14.5), mm(16.5)).rounded())
 *     .frets(20).bodyAtFret(14)
 *     .trussRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)));
 * var sweep = Sweep.of(neck)
 *     .over("nut width", Axis.steps(mm(32), mm(36), mm(0.5)), (n, w) -> n.fingerboard(Fingerboard.tapered(w, mm(46))))
 *     .over("depth", Axis.steps(mm(12), mm(16), mm(0.5)), (n, d) -> n.back(BackProfile.between(d, d).rounded()));
 * println(sweep);
 * println(sweep.keeping(n -> FloorThickness.under(n).least().woodMm() >= 3));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * Sweep of 81 designs
 *   nut width  9 values, 32 mm to 36 mm
 *   depth      9 values, 12 mm to 16 mm
 * 72 of 81 designs will do
 *   nut width  32 mm to 36 mm
 *   depth      12.5 mm to 16 mm
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.sweep;

import org.jspecify.annotations.NullMarked;
