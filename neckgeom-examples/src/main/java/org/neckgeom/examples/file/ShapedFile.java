package org.neckgeom.examples.file;

import java.util.function.Function;

/** A file read against a shape: the one door from text to values. */
public final class ShapedFile {

    private ShapedFile() {}

    /**
     * Reads a text into what it describes, or refuses it with everything that is wrong.
     *
     * @param <T> what the file describes
     * @param file the file's name, for the places
     * @param text the file's text, YAML 1.2
     * @param shape the shape of its top
     * @param making makes the thing from the checked top section
     * @return the thing; never half of it
     * @throws FileRefused with all problems, in the order of their lines
     */
    public static <T> T read(String file, String text, Shape shape, Function<Section, Found<T>> making) {
        Problems problems = new Problems();
        Node top = YamlText.read(file, text, problems);
        Found<Section> section = shape.read(top, problems);
        Found<T> made = section.isThere() ? making.apply(section.value()) : Found.unusable();
        problems.refuseIfAny(file);
        return made.value();
    }
}
