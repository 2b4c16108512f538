/**
 * How a text file becomes a noun of the library: YAML in, the noun or a list of everything that is wrong out.
 *
 * <p>{@link org.neckgeom.examples.file.YamlText} turns text into plain data and the line of each of its parts, and refuses
 * what a bench file never needs (tags, anchors, several documents, very large or very deep files). The noun's own table of
 * keys reads the data; {@link org.neckgeom.examples.file.NounFile} puts a line to each fault, and {@link
 * org.neckgeom.examples.file.FileRefused} carries the list. Nothing here knows what a neck is.
 */
package org.neckgeom.examples.file;
