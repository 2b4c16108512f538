package org.neckgeom.examples;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.neckgeom.examples.file.Trouble;

/**
 * Files to write, all of them or none, into folders that are there or can be made where they shall stand. One writer at a
 * time has a folder; what one that was killed has left is put right by the next.
 */
final class OutputFiles {

    private static final Duration PATIENCE = Duration.ofSeconds(20);

    /**
     * What was done besides.
     *
     * @param made folders that were made
     * @param mended folders in which a run had been broken off
     */
    record Written(Set<Path> made, Set<Path> mended) {}

    private final Map<Path, byte[]> files;
    private final Staging.Step step;
    private final Duration patience;
    private final Set<Path> made = new LinkedHashSet<>();
    private final Set<Path> mended = new LinkedHashSet<>();
    private final Map<Path, FolderLock> locks = new LinkedHashMap<>();

    /** What is being written, for the sentence when it fails. */
    private Path at = Path.of("");

    private OutputFiles(Map<Path, byte[]> files, Staging.Step step, Duration patience) {
        this.files = files;
        this.step = step;
        this.patience = patience;
    }

    /** Refuses places that can't be written to, before anything is worked out for them. */
    static void check(Collection<Path> files) throws Unwritable {
        for (Path file : files) {
            if (Files.isDirectory(file)) {
                throw new Unwritable(file + " must be a file to write, but is a folder");
            }
            Path folder = folder(file);
            if (Files.isSymbolicLink(folder) && !Files.exists(folder)) {
                throw new Unwritable(shown(file) + " is a link to nothing");
            }
            if (Files.exists(folder)) {
                if (!Files.isDirectory(folder)) {
                    throw new Unwritable(shown(file) + " must be a folder to write to, but is a file");
                }
                if (!Files.isWritable(folder)) {
                    throw new Unwritable(shown(file) + " can't be written to: you have no right to");
                }
            } else if (!Files.isDirectory(folder.getParent())) {
                throw new Unwritable(shown(file) + " can't be made, as " + folder.getParent()
                        + " is not a folder that is there; make that first");
            }
        }
    }

    /**
     * Writes the files beside their places first, and moves them there, in the order given, when all are whole: a failure
     * leaves old files as they were and no new ones.
     *
     * @throws Unwritable with what is in the way, such as another writer
     */
    static Written write(Map<Path, byte[]> files) throws Unwritable {
        return write(files, Staging.Step.UNBROKEN, PATIENCE);
    }

    /** The same, broken where a step is. */
    static Written write(Map<Path, byte[]> files, Staging.Step step, Duration patience) throws Unwritable {
        check(files.keySet());
        return new OutputFiles(files, step, patience).written();
    }

    private Written written() throws Unwritable {
        try {
            return writtenWhole();
        } catch (Unwritable sentence) {
            throw sentence;
        } catch (IOException failed) {
            Unwritable sentence = new Unwritable(at + " can't be written: " + Trouble.inWords(failed));
            sentence.initCause(failed);
            throw sentence;
        }
    }

    private Written writtenWhole() throws IOException {
        Exception failed = null;
        try {
            // In one order for all writers, so that no two wait for each other.
            Map<Path, Path> folders = new TreeMap<>();
            files.keySet().forEach(file -> folders.put(folder(file), shown(file)));
            for (Map.Entry<Path, Path> folder : folders.entrySet()) {
                lock(folder.getKey(), folder.getValue());
            }
            stage();
            return new Written(made, mended);
        } catch (IOException | RuntimeException broken) {
            failed = broken;
            throw broken;
        } finally {
            unlock(failed);
            if (failed != null) {
                for (Path folder : made) {
                    undo(folder, failed);
                }
            }
        }
    }

    private void lock(Path folder, Path shown) throws IOException {
        at = shown;
        while (!locks.containsKey(folder)) {
            try {
                step.before("make " + folder);
                Files.createDirectory(folder);
                made.add(shown);
            } catch (FileAlreadyExistsException there) {
                // The usual case, or another writer was quicker.
            }
            try {
                locks.put(folder, FolderLock.of(folder, patience));
            } catch (NoSuchFileException gone) {
                // By a writer that failed and took with it the folder it had made: try again.
                made.remove(shown);
            }
        }
        if (Staging.mend(folder, step)) {
            mended.add(shown);
        }
    }

    private void stage() throws IOException {
        Map<Path, Staging> places = new LinkedHashMap<>();
        List<Staging> begun = new ArrayList<>();
        try {
            for (Map.Entry<Path, byte[]> file : files.entrySet()) {
                at = file.getKey();
                Path folder = folder(at);
                Staging place = places.get(folder);
                if (place == null) {
                    place = Staging.in(folder, step);
                    begun.add(place);
                    places.put(folder, place);
                }
                place.put(folder.resolve(at.getFileName()), file.getValue());
            }
            for (Staging place : begun) {
                place.ready();
            }
            for (Staging place : begun) {
                place.move();
            }
            for (Staging place : begun) {
                place.keep();
            }
            clear(begun);
        } catch (IOException | RuntimeException failed) {
            for (Staging place : begun) {
                try {
                    place.undo();
                } catch (IOException alsoFailed) {
                    failed.addSuppressed(alsoFailed);
                }
            }
            throw failed;
        }
    }

    /** All is written: what can't be taken away now is no failure, and the next run takes it. */
    private static void clear(List<Staging> done) {
        for (Staging place : done) {
            try {
                place.clear();
            } catch (IOException ignored) {
                // The next run takes it.
            }
        }
    }

    private void unlock(Exception failed) throws IOException {
        for (FolderLock lock : locks.values()) {
            try {
                lock.close();
            } catch (IOException alsoFailed) {
                if (failed == null) {
                    throw alsoFailed;
                }
                failed.addSuppressed(alsoFailed);
            }
        }
    }

    private static void undo(Path made, Exception failed) {
        try {
            Files.deleteIfExists(made);
        } catch (DirectoryNotEmptyException another) {
            // Another writer is in it already.
        } catch (IOException alsoFailed) {
            failed.addSuppressed(alsoFailed);
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
