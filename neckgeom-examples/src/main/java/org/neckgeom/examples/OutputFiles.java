package org.neckgeom.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** Files to write, all of them or none, into folders that are there or can be made where they shall stand. */
final class OutputFiles {

    /** Where something can't be written, as a sentence. */
    static final class Unwritable extends IOException {

        private static final long serialVersionUID = 1L;

        private Unwritable(String sentence) {
            super(sentence);
        }
    }

    private OutputFiles() {}

    /** Refuses places that can't be written to, before anything is worked out for them. */
    static void check(Collection<Path> files) throws Unwritable {
        for (Path file : files) {
            if (Files.isDirectory(file)) {
                throw new Unwritable(file + " must be a file to write, but is a folder");
            }
            Path folder = folder(file);
            if (Files.exists(folder)) {
                if (!Files.isDirectory(folder)) {
                    throw new Unwritable(shown(file) + " must be a folder to write to, but is a file");
                }
            } else if (!Files.isDirectory(folder.getParent())) {
                throw new Unwritable(shown(file) + " can't be made, as " + folder.getParent()
                        + " is not a folder that is there; make that first");
            }
        }
    }

    /**
     * Writes each file beside its place first, and moves them there when all are whole: a failure leaves old files as they
     * were and no new ones.
     *
     * @return the folders that were made for them
     */
    static Set<Path> write(Map<Path, byte[]> files) throws IOException {
        check(files.keySet());
        Set<Path> made = new LinkedHashSet<>();
        Map<Path, Path> parts = new LinkedHashMap<>();
        try {
            for (Map.Entry<Path, byte[]> file : files.entrySet()) {
                Path folder = folder(file.getKey());
                if (!Files.exists(folder)) {
                    Files.createDirectory(folder);
                    made.add(file.getKey().getParent());
                }
                // Not a temporary file: those are for their owner's eyes only, and so would be what they become.
                Path beside = file.getKey().resolveSibling("." + file.getKey().getFileName() + ".part");
                beside.toFile().deleteOnExit(); // when the work is broken off
                parts.put(beside, file.getKey());
                Files.write(beside, file.getValue());
            }
            for (Map.Entry<Path, Path> part : parts.entrySet()) {
                Files.move(part.getKey(), part.getValue(), StandardCopyOption.REPLACE_EXISTING);
            }
            return made;
        } catch (IOException failed) {
            for (Path part : parts.keySet()) {
                undo(part);
            }
            for (Path folder : made) {
                undo(folder);
            }
            throw failed;
        }
    }

    private static void undo(Path made) throws IOException {
        if (Files.exists(made)) {
            Files.delete(made);
        }
    }

    private static Path folder(Path file) {
        return file.toAbsolutePath().normalize().getParent();
    }

    /** The folder as it was named. */
    private static Path shown(Path file) {
        return file.getParent() == null ? folder(file) : file.getParent();
    }
}
