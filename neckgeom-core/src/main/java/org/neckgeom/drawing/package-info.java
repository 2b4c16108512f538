/**
 * The neck as points and stations, its lengths as drawings show them, and markup that is always well-formed: what page and
 * template share. Not exported, so nothing here is promised.
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.drawing;

import org.jspecify.annotations.NullMarked;
