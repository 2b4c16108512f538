/**
 * How does an answer become text, JSON, CSV? Each answer declares its facts once, in a {@link org.neckgeom.form.Form}:
 * keys, meanings, kinds. Sentences name facts in braces; text, data and schema are written from the same facts, and
 * nothing reads a text back.
 *
 * <pre>{@code
 * Form<Pass> FORM = Form.<Pass>of("pass")
 *         .fact("number", Kind.WHOLE, "which pass, from 1", Pass::number)
 *         .fact("step", Kind.MM, "what it takes off", Pass::stepMm)
 *         .finds("pass", "pass {number}: {step:brief}");
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.form;

import org.jspecify.annotations.NullMarked;
