/**
 * The neck file: a whole neck, the shop that makes it, what has been read so far, and the limits to keep, as text that a
 * maker writes and {@link org.neckgeom.examples.neck.NeckFile} reads.
 *
 * <p>Each part of the file has a class here that holds its keys and makes the library's noun of them. Quantities are
 * written with their units, in any mixture: {@code 44.5 mm}, {@code 1 3/4 in}. Stations count from the nut toward the
 * body, widths across, depths down from the fingerboard's glue face.
 */
package org.neckgeom.examples.neck;
