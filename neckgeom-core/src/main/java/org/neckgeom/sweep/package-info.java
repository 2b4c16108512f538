/**
 * One question asked of many designs: a grid of values over a design, or a list of designs, each made, asked and forgotten
 * as the stream goes on, so that a million need no more memory than one.
 *
 * <p>Open first: {@link org.neckgeom.sweep.Sweep}. The question must be a pure function; then the answers and their order
 * are the same however many threads the stream uses. No argument may be null.
 */
package org.neckgeom.sweep;
