/**
 * A small vocabulary of solid geometry: points, directions, planes, frames, lines, outlines with arcs, curves with
 * knots, prisms and meshes, as plain immutable values that other software can take as numbers.
 *
 * <p>Axes: x runs along the centreline, 0 at the fingerboard-side face of the nut, positive toward the body; y runs
 * across, positive toward the treble side; z is square to the fingerboard's glue face, 0 on that face, positive toward
 * the strings. Numbers are in mm and rad; every array that leaves is a fresh copy.
 *
 * <p>Errors: a number that is not finite, or larger than 1e9 mm, throws {@link org.neckgeom.fault.Refusal} (an
 * {@code IllegalArgumentException}).
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * var corner = Polyline.closed(List.of(new Spot(0, 0), new Spot(60, 0), new Spot(60, 40), new Spot(0, 40)));
 * println(corner.areaMm2());
 * println(corner.insetMm(new Spot(10, 20)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * 2400.0
 * 10.0
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.shape;

import org.jspecify.annotations.NullMarked;
