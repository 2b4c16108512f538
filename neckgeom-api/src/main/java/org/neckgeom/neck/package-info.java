/**
 * The neck and its parts: scale length, head (headstock), fingerboard (fretboard), back (neck profile), truss rod and rod
 * channel, strings, heel and its joint, neck set, and the design that joins them.
 *
 * <p>Frame: x runs along the centreline, 0 at the fingerboard-side face of the nut, positive toward the body, so the head
 * has x &lt; 0; y runs across, 0 on the centreline, positive toward the treble side; z is normal to the fingerboard's glue
 * face, 0 on that face, positive toward the strings, so the neck's wood has z &lt; 0. Depths are given as positive numbers
 * below the glue face.
 *
 * <p>Open first: {@link org.neckgeom.neck.Neck}. Errors: a value outside its limits throws
 * {@code IllegalArgumentException}, which names the value, the limit and the remedy; null throws {@code
 * NullPointerException}, which names the parameter.
 *
 * <h2>Formulas</h2>
 *
 * <pre>
 * fret n               scale (1 - 2^(-n/12)) from the nut
 * width, thickness     straight along the board between two places
 * crown at y           R - sqrt(R^2 - y^2) below the middle, R straight along the board
 * back, across         |y/a|^p + |z/b|^p = 1, half as wide as the board (a), as deep as given (b)
 * arched channel       s = middle - ends, R = (L^2/4 + s^2) / (2 s)
 * dovetail             a shim of thickness s on each side lifts the neck s / sin(taper)
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * println("fret 12 at " + Scale.of(mm(648)).fretMm(12) + " mm");
 * println(Fingerboard.tapered(mm(34), mm(46)).thickness(mm(6)).radius(mm(400)));
 * println(BackProfile.between(mm(14.5), mm(16.5)).rounded());
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * fret 12 at 324.0 mm
 * fingerboard 34 mm at the nut, 46 mm at the body joint, 6 mm thick, radius 400 mm
 * back 14.5 mm deep at fret 1, 16.5 mm at fret 12, rounded
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.neck;

import org.jspecify.annotations.NullMarked;
