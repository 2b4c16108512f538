/**
 * Probability distributions for readings and budgets: the normal law and Student's t, on plain doubles.
 *
 * <p>All methods are static, pure and give the same bits on every machine. Open {@link org.neckgeom.numeric.NormalLaw}
 * first. The package is meant for the library itself and is exported to the core module only.
 */
@NullMarked
package org.neckgeom.numeric;

import org.jspecify.annotations.NullMarked;
