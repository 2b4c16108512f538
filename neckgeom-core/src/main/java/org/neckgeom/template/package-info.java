/**
 * How do I lay the plan on the wood? Templates at full size, for paper and for machines.
 *
 * <p>Everything is returned as text or drawn on a canvas of yours; nothing here writes a file. Templates use the frame of
 * the design: x along the centreline from the nut, positive toward the body, y across, z up from the fingerboard's glue
 * face.
 *
 * <p>Open first: {@link org.neckgeom.template.Template}. No argument may be null.
 *
 * <h2>What it writes</h2>
 *
 * <pre>
 * templates   1 mm is 1 mm: SVG, PDF in pages, DXF with layers; a line to measure after printing
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
 * println(Template.of(plan).toSvg().lines().findFirst().get());
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * <?xml version="1.0" encoding="UTF-8"?>
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.template;

import org.jspecify.annotations.NullMarked;
