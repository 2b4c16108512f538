/**
 * The solid neck: which shape does it have, how much wood is left under the truss rod channel, and which neck blank
 * holds it? The back profile and its facets, sections across the shaft, the wood under the channel and the probability
 * of less, the minimum blank, the cutting list.
 *
 * <p>Axes: x runs along the centreline, 0 at the fingerboard-side face of the nut, positive toward the body; y runs
 * across, positive toward the treble side; z is square to the fingerboard's glue face, 0 on that face, positive toward
 * the strings, so the neck's wood has negative z. Depths below the glue face are given as positive numbers.
 *
 * <p>Pure functions: the same question gets the same answer, bit for bit, on every machine. Open
 * {@link org.neckgeom.solid.FloorThickness} first.
 *
 * <h2>Formulas</h2>
 *
 * <pre>
 * back, across        |y/a|^p + |z/b|^p = 1, a half the width, b the depth
 * wood left           least distance from channel to back, over the whole channel and in every direction
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var channel = Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)));
 * var back = BackProfile.between(mm(15), mm(15));
 * println(FloorThickness.under(channel, BackShape.of(back, Scale.of(mm(560)), Curve.level(18))));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * Wood left: 5.713 mm at the nut
 *   straight down  6.000 mm
 *   under channel 0 mm to 300 mm from the nut, 6 mm wide, 9 mm deep
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.solid;

import org.jspecify.annotations.NullMarked;
