/**
 * What is known of a neck: independent causes of error, readings that inform them, and every answer that follows from both.
 *
 * <p>Open {@link org.neckgeom.state.NeckErrors} first: the causes of a usual neck and its deviations; then {@link
 * org.neckgeom.state.NeckState}. Lengths in mm; across positive toward the treble side, in height toward the strings, along
 * toward the body. No argument may be null.
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.state;

import org.jspecify.annotations.NullMarked;
