/**
 * The shape of a neck: fret places, the scarfed head, the heel and the neck's angle, the fingerboard, the back, and how
 * much wood is left under the rod's channel.
 *
 * <p>Axes: x runs along the centreline, 0 at the fingerboard-side face of the nut, positive toward the body; y runs
 * across, positive toward the treble side; z is square to the fingerboard's glue face, 0 on that face, positive toward
 * the strings, so the neck's wood has negative z. Depths below the glue face are given as positive numbers.
 *
 * <p>Pure functions: the same question gets the same answer, bit for bit, on every machine. Open
 * {@link org.neckgeom.geometry.Scarf} first.
 *
 * @since 0.1.0
 */
package org.neckgeom.geometry;
