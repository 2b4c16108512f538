package org.neckgeom.examples.neck;

import java.nio.file.Files;
import java.nio.file.Path;
import org.neckgeom.examples.file.FileRefused;
import org.neckgeom.examples.file.NounFile;
import org.neckgeom.examples.file.TextFile;
import org.neckgeom.plan.Job;
import org.neckgeom.table.Spelling;

/** A neck file: YAML with the keys of {@link Job#TABLE}, read into the plan of the neck it describes. */
public final class NeckFile {

    private NeckFile() {}

    /**
     * Reads a neck file from disk, or a shipped neck where there is no such file.
     *
     * @param file a path, or the file name of a shipped neck such as {@code octave-mandolin.yaml}
     * @return the plan of its neck
     * @throws FileRefused with everything that is wrong, if anything is
     */
    public static Job read(String file) {
        return parse(file, text(file));
    }

    /**
     * {@return the text of a neck file on disk, or of a shipped neck where there is no such file}
     *
     * @param file a path, or the file name of a shipped neck
     * @throws FileRefused if it can't be had
     */
    public static String text(String file) {
        Path path = Path.of(file);
        return !Files.exists(path) && ShippedNecks.names().contains(file)
                ? ShippedNecks.text(file)
                : TextFile.read(path);
    }

    /**
     * Reads a neck file from disk.
     *
     * @param file a path
     * @return the plan of its neck
     * @throws FileRefused with everything that is wrong, if anything is
     */
    public static Job read(Path file) {
        return parse(file.toString(), TextFile.read(file));
    }

    /**
     * Reads the text of a neck file.
     *
     * @param name the file's name, for messages
     * @param text YAML 1.2
     * @return the plan of its neck
     * @throws FileRefused with everything that is wrong, if anything is
     */
    public static Job parse(String name, String text) {
        return NounFile.read(name, text, Job.TABLE);
    }

    /**
     * {@return what may stand in a neck file as a JSON Schema (draft 2020-12), for editors that complete and check;
     * keys in their order}
     */
    public static String schema() {
        return Job.TABLE.schema("Neck file", Spelling.WORDS);
    }

    /** {@return every key of a neck file, a line each, indented as in the file, with its meaning} */
    public static String keys() {
        return Job.TABLE.help();
    }
}
