/**
 * What was read, how well, and is it good enough? Estimates with their standard uncertainty, limits, verdicts, and the
 * spreads of what has not been read yet, in the terms of the GUM (JCGM 100:2008).
 *
 * <p>A standard uncertainty is one standard deviation, never a half-width or an expanded uncertainty. Open first:
 * {@link org.neckgeom.measure.Estimate}. No argument may be null.
 *
 * @since 0.1.0
 */
package org.neckgeom.measure;
