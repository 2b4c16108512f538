/**
 * Full-size templates (1:1 drawings) to lay on the wood, for paper and for machines.
 *
 * <p>Everything is returned as text or drawn on a canvas of yours; nothing here writes a file. Templates use the frame of
 * the design: x along the centreline from the nut, positive toward the body, y across, z up from the fingerboard's glue
 * face.
 *
 * <p>Open first: {@link org.neckgeom.template.Template}. No argument may be null.
 *
 * <h2>Output</h2>
 *
 * <pre>
 * templates   1 mm is 1 mm: SVG, PDF in pages, DXF with layers; a line to measure after printing
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var job = Job.of(SampleNecks.octaveMandolin(), SampleBench.octaveBlank(), SampleBench.metricShop());
 * println(Template.of(job).toSvg().lines().findFirst().get());
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
