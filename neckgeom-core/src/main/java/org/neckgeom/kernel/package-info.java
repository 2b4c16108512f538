/**
 * Formulas on plain doubles that board, head, heel and solid share: shares of a scale, the neck's angle and the drop of a
 * crown, tails of a spread; and angles as people read them. Not exported, so nothing here is promised.
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.kernel;

import org.jspecify.annotations.NullMarked;
