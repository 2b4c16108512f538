/**
 * The neck file: a whole neck, the shop that makes it, what has been read so far, and the limits to keep, as text that a
 * maker writes and {@link org.neckgeom.examples.neck.NeckFile} reads; and the necks that are shipped.
 */
package org.neckgeom.examples.neck;
