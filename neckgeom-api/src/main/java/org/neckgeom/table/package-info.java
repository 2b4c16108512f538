/**
 * The keys of the nouns, and how a value is read and written. A {@link org.neckgeom.table.Table} lists the keys of one noun beside the noun
 * itself; the neck file, JSON, schema and help are read off it, and every way in ends in the noun's own constructor.
 *
 * @since 0.1.0
 */
@NullMarked
package org.neckgeom.table;

import org.jspecify.annotations.NullMarked;
