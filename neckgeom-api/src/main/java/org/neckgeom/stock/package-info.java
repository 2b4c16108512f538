/**
 * The material: neck blanks (neck stock) with their size and faults, and woods with their published properties.
 *
 * <p>A blank lies with its edges along x, the neck's length, and its thickness along z; it is out of parallel by as much
 * as one end is wider than the other. Figures of a species are means between boards; each names its source, and a single
 * board may differ by a fifth and more.
 *
 * <p>Open first: {@link org.neckgeom.stock.Blank}, then {@link org.neckgeom.stock.Wood}. Errors: a value outside its limits
 * throws
 * {@code IllegalArgumentException}, which names the value, the limit and the remedy; null throws {@code
 * NullPointerException}, which names the parameter.
 *
 * <h2>Formulas</h2>
 *
 * <pre>
 * width along a blank out of parallel    straight from one end to the other
 * change of a size with moisture         size times C times (M2 - M1), C in one part per percent of moisture
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * println(Blank.ofLength(mm(640)).section(mm(61), mm(20)).outOfParallel(mm(0.06)));
 * println(Wood.BLACK_WALNUT.modulus());
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * blank 640 mm x 61 mm x 20 mm, edges out of parallel by 0.06 mm, wider at the heel end
 * 11.6 GPa
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.stock;

import org.jspecify.annotations.NullMarked;
