package org.neckgeom.examples.file;

import java.util.Objects;

/**
 * A place in a file, such as {@code my-neck.yaml, line 12, blank.length}. Immutable.
 *
 * @param file the file's name as the reader was given it
 * @param line the line, counted from 1, or 0 for the file as a whole
 * @param path the keys from the top of the file down to here, joined by dots; empty at the top
 */
public record Place(String file, int line, String path) {

    public Place {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(path, "path");
        if (line < 0) {
            throw new IllegalArgumentException("line must be 0 or more, but was " + line);
        }
    }

    /**
     * {@return the top of a file; line 1, empty path}
     *
     * @param file the file's name
     */
    public static Place topOf(String file) {
        return new Place(file, 1, "");
    }

    /**
     * {@return the file as a whole, for problems that have no line; line 0, empty path}
     *
     * @param file the file's name
     */
    public static Place whole(String file) {
        return new Place(file, 0, "");
    }

    /**
     * {@return the place of a key inside this one; a place one step further down}
     *
     * @param key the key
     * @param line the key's line, from 1
     */
    public Place key(String key, int line) {
        return new Place(file, line, path.isEmpty() ? key : path + "." + key);
    }

    /**
     * {@return the place of an item in a list at this place; a place such as {@code strings.pitches[2]}}
     *
     * @param number the item's number, counted from 1 as a reader would
     * @param line the item's line, from 1
     */
    public Place item(int number, int line) {
        return new Place(file, line, path + "[" + number + "]");
    }

    /** The file, and the line where there is one, as in {@code my-neck.yaml, line 12}. */
    @Override
    public String toString() {
        return line == 0 ? file : file + ", line " + line;
    }
}
