/**
 * Fret positions, the shape of the fingerboard (fretboard) and the strings across it: straight and fanned frets, the
 * crown and its fall-away, string spacing and edge margins.
 *
 * <p>Axes: x runs along the centreline, 0 at the fingerboard-side face of the nut, positive toward the body; y runs
 * across, positive toward the treble side; z is square to the fingerboard's glue face, 0 on that face, positive toward
 * the strings. Widths and thicknesses are given as positive numbers.
 *
 * <p>Pure functions: the same question gets the same answer, bit for bit, on every machine. Open
 * {@link org.neckgeom.board.FretTable} first.
 *
 * <h2>Formulas</h2>
 *
 * <pre>
 * fret n of d         scale (1 - 2^(-n/d)) from the nut, d steps to the octave
 * cents of an error e 1200 log2(l / (l - e)), l from the fret to the saddle
 * crown               R - sqrt(R^2 - y^2) lower at y than in the middle
 * equal gaps          (span - sum of the strings) / (strings - 1)
 * </pre>
 *
 * <h2>For instance</h2>
 *
 * <pre>{@code
 * println(FretTable.of(Scale.of(mm(560)), 20).fret(12));
 * println(StringSpacing.diameters(mm(1), mm(0.7), mm(0.4)).across(mm(29)).equalGaps());
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * fret 12 at 280.000 mm
 * 3 strings across 28.300 mm, centre to centre
 *   centres  -14.000, 0.300, 14.300 mm
 *   gaps     13.450, 13.450 mm
 * }</pre>
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.board;

import org.jspecify.annotations.NullMarked;
