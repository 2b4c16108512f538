/**
 * How does it read aloud? Numbers rounded for people, and the shape of a printed answer. Not part of the public
 * promise: exported to {@code org.neckgeom.core} only. Nothing here depends on the locale.
 */
@NullMarked
package org.neckgeom.text;

import org.jspecify.annotations.NullMarked;
