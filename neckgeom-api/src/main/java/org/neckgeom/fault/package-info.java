/**
 * What is wrong, and where? {@link org.neckgeom.fault.Refusal} is thrown for what cannot be,
 * {@link org.neckgeom.fault.NoAnswer} for good inputs without an answer. Both carry a sentence for people and a
 * {@link org.neckgeom.fault.Fault} for programs. No argument may be null.
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * try {
 *     Limits.within(mm(-0.1));
 * } catch (Refusal refusal) {
 *     println(refusal.getMessage());
 *     println(refusal.faults().get(0).rule());
 * }
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * limit must be more than 0 mm, but was -0.1 mm
 * more-than
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.fault;

import org.jspecify.annotations.NullMarked;
