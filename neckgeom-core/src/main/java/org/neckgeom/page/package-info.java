/**
 * The cut sheet (printout) of a plan: plain text, one page with drawings, and the same figures as data for other
 * programs.
 *
 * <p>Everything is returned as text; nothing here writes a file. Drawings use the frame of the design: x along the
 * centreline from the nut, positive toward the body, y across, z up from the fingerboard's glue face. What is laid on the
 * wood at full size is in {@link org.neckgeom.template}.
 *
 * <p>Open first: {@link org.neckgeom.page.Sheet}. No argument may be null.
 *
 * <h2>Output</h2>
 *
 * <pre>
 * text        one section after another, as wide as a terminal
 * page        HTML with drawings, for a browser or a printer
 * data        JSON whose design reads back, tables as comma-separated values
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var neck = Neck.named("Practice neck")
 *     .scale(mm(560))
 *     .fingerboard(Fingerboard.tapered(mm(34), mm(46)).thickness(mm(6)).radius(mm(400)))
 *     .back(BackProfile.between(mm(14.5), mm(16.5)).rounded())
 *     .frets(20).bodyAtFret(14)
 *     .trussRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)));
 * var job = Job.of(neck, Blank.ofLength(mm(640)).section(mm(60), mm(25)), Shop.with(Cutter.straight(mm(6))));
 * println(Sheet.of(job));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * Sheet: Practice neck
 *   checks    4 of 5 checks OK, 1 open
 *   settings  7 sections
 *   toText() for a terminal, toHtml() for a page with drawings, fretCsv() and stationCsv() for tables
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.page;

import org.jspecify.annotations.NullMarked;
