/**
 * What is it made of? Blanks with their size and their faults, and woods with what is published about them.
 *
 * <p>A blank lies with its edges along x, the neck's length, and its thickness along z; it is out of parallel by as much
 * as one end is wider than the other. Figures of a species are means between boards; each names its source, and a single
 * board may differ by a fifth and more.
 *
 * <p>Open first: {@link org.neckgeom.stock.Blank}, then {@link org.neckgeom.stock.Wood}. No argument may be null.
 *
 * @since 0.1.0
 */
package org.neckgeom.stock;
