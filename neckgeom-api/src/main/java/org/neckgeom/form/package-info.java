/**
 * How does an answer become text, JSON, CSV? Each answer declares its facts once, in a {@link org.neckgeom.form.Form}:
 * keys, meanings, kinds. Sentences name facts in braces; text, data and schema are written from the same facts, and
 * nothing reads a text back. No argument may be null.
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var form = Form.<Blank>of("blank-width")
 *         .fact("width", Kind.MM, "across the blank", Blank::widthMm)
 *         .fact("nut", Kind.MM, "from the head's end", Blank::nutFromHeadEndMm)
 *         .finds("blank", "blank {width:brief} wide, nut at {nut:text}");
 * var blank = Blank.ofLength(mm(640)).section(mm(61), mm(20)).nutAt(mm(190.5));
 * println(form.text(blank, MILLIMETRES));
 * println(form.text(blank, DECIMAL_INCHES));
 * println(Json.of(form.data(blank, MILLIMETRES)).strip());
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * blank 61 mm wide, nut at 190.500 mm
 * blank 2.4016 in wide, nut at 7.5000 in
 * {
 *   "answer": "blank-width",
 *   "width": { "value": 61, "unit": "mm", "ucum": "mm" },
 *   "nut": { "value": 190.5, "unit": "mm", "ucum": "mm" },
 *   "finding": "blank",
 *   "text": "blank 61 mm wide, nut at 190.500 mm"
 * }
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.form;

import org.jspecify.annotations.NullMarked;
