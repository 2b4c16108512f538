/**
 * How do I hang the plan by the machine, and lay it on the wood? The whole plan as plain text or as one page with
 * drawings, templates at full size, and the same figures as data for other programs.
 *
 * <p>Everything is returned as text; nothing here writes a file. Drawings and templates use the frame of the design: x
 * along the centreline from the nut, positive toward the body, y across, z up from the fingerboard's glue face.
 *
 * <p>Open first: {@link org.neckgeom.sheet.Sheet}. No argument may be null.
 *
 * @since 0.1.0
 */
package org.neckgeom.sheet;
