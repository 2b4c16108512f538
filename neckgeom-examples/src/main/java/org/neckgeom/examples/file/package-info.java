/**
 * How a text file becomes checked values: YAML in, values or a list of everything that is wrong out.
 *
 * <p>A file is read in three steps. {@link org.neckgeom.examples.file.YamlText} turns text into {@link
 * org.neckgeom.examples.file.Node}s that know their line and key path, and refuses what a bench file never needs
 * (tags, anchors, several documents, very large or very deep files). A {@link org.neckgeom.examples.file.Shape}
 * says which {@link org.neckgeom.examples.file.Key}s a section may hold and of which {@link
 * org.neckgeom.examples.file.Kind} each value is. A {@link org.neckgeom.examples.file.Section} is a map of the file
 * checked against its shape; its values come as {@link org.neckgeom.examples.file.Found}.
 *
 * <p>Problems are collected, not thrown one by one: {@link org.neckgeom.examples.file.Problems} gathers them all and
 * {@link org.neckgeom.examples.file.FileRefused} carries the list. Nothing here knows what a neck is.
 */
package org.neckgeom.examples.file;
