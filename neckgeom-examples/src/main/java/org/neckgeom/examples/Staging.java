package org.neckgeom.examples;

import java.io.IOException;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Files on their way into a folder, in a folder of their own inside it, made new: nothing that is there can be in its place.
 *
 * <p>All files are whole there, and copies of those they replace beside them, before a journal is written that names both;
 * only then they are moved. While the journal is there they can all be put back as they were, by this process or by the
 * next one; with it goes the way back.
 */
final class Staging {

    private static final Pattern NAME = Pattern.compile("\\.neckgeom-[0-9a-f]{16}");
    private static final Pattern OWN = Pattern.compile("(new|old)-\\d{1,4}|journal(\\.part)?");
    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64}) (old|none) (\\S+)");
    private static final String JOURNAL = "journal";
    private static final String HEAD = "neckgeom journal 1";

    /** A thing about to be done; tests break it. */
    interface Step {
        Step UNBROKEN = what -> {};

        void before(String what) throws IOException;
    }

    private final Path place;
    private final Step step;
    private final List<Path> files = new ArrayList<>();
    private final List<String> journal = new ArrayList<>(List.of(HEAD));

    private Staging(Path place, Step step) {
        this.place = place;
        this.step = step;
    }

    static Staging in(Path folder, Step step) throws IOException {
        String id = UUID.randomUUID().toString().replace("-", "").substring(0, 16);
        Path place = folder.resolve(".neckgeom-" + id);
        step.before("make " + place);
        return new Staging(Files.createDirectory(place), step);
    }

    /** Writes a file, not yet in its place. */
    void put(Path file, byte[] bytes) throws IOException {
        int at = files.size();
        step.before("write " + file);
        files.add(file);
        Files.write(place.resolve("new-" + at), bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        boolean replaces = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
        if (replaces) {
            step.before("copy " + file);
            Files.copy(file, place.resolve("old-" + at), LinkOption.NOFOLLOW_LINKS, StandardCopyOption.COPY_ATTRIBUTES);
        }
        String name = URLEncoder.encode(file.getFileName().toString(), StandardCharsets.UTF_8);
        journal.add(Hash.of(bytes) + (replaces ? " old " : " none ") + name);
    }

    /** Writes the journal, whole or not at all. */
    void ready() throws IOException {
        step.before("write the journal");
        Path part = Files.write(place.resolve(JOURNAL + ".part"), journal, StandardOpenOption.CREATE_NEW);
        step.before("name the journal");
        Files.move(part, place.resolve(JOURNAL), StandardCopyOption.ATOMIC_MOVE);
    }

    /** Moves the files to their places, in the order in which they were put here. */
    void move() throws IOException {
        for (int i = 0; i < files.size(); i++) {
            step.before("move " + files.get(i));
            Files.move(place.resolve("new-" + i), files.get(i), StandardCopyOption.ATOMIC_MOVE);
        }
    }

    /** Keeps what was moved. */
    void keep() throws IOException {
        step.before("drop the journal");
        Files.delete(place.resolve(JOURNAL));
    }

    /** Takes away what is left of the work. */
    void clear() throws IOException {
        step.before("clear " + place);
        clear(place);
    }

    void undo() throws IOException {
        undo(place);
    }

    /**
     * Puts a folder back as it was before a run that was broken off. Only for the one who has the folder's lock.
     *
     * @return whether there was anything of such a run
     */
    static boolean mend(Path folder, Step step) throws IOException {
        List<Path> left = left(folder);
        for (Path place : left) {
            step.before("mend " + place);
            undo(place);
        }
        return !left.isEmpty();
    }

    /** What runs have left that were broken off, or are at it now. */
    static List<Path> left(Path folder) throws IOException {
        List<Path> left = new ArrayList<>();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path place : all.sorted().toList()) {
                if (NAME.matcher(place.getFileName().toString()).matches()
                        && Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)
                        && isOwn(place)) {
                    left.add(place);
                }
            }
        }
        return left;
    }

    /** A folder of such a name with anything else in it is someone's own. */
    private static boolean isOwn(Path place) throws IOException {
        try (Stream<Path> all = Files.list(place)) {
            return all.allMatch(
                    file -> OWN.matcher(file.getFileName().toString()).matches());
        }
    }

    private static void undo(Path place) throws IOException {
        Path journal = place.resolve(JOURNAL);
        if (Files.isRegularFile(journal, LinkOption.NOFOLLOW_LINKS)) {
            List<String> lines = Files.readAllLines(journal);
            if (lines.isEmpty() || !lines.get(0).equals(HEAD)) {
                return;
            }
            for (int i = 1; i < lines.size(); i++) {
                Matcher line = LINE.matcher(lines.get(i));
                if (line.matches()) {
                    putBack(place, i - 1, line);
                }
            }
            Files.delete(journal);
        }
        clear(place);
    }

    /** Only what was moved is put back: not what someone has changed since. */
    private static void putBack(Path place, int at, Matcher line) throws IOException {
        Path folder = place.getParent();
        Path file = folder.resolve(URLDecoder.decode(line.group(3), StandardCharsets.UTF_8));
        Path old = place.resolve("old-" + at);
        if (!folder.equals(file.normalize().getParent())
                || !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                || !Hash.of(Files.readAllBytes(file)).equals(line.group(1))) {
            return;
        }
        if (line.group(2).equals("none")) {
            Files.delete(file);
        } else if (Files.exists(old, LinkOption.NOFOLLOW_LINKS)) {
            Files.move(old, file, StandardCopyOption.ATOMIC_MOVE);
        }
    }

    private static void clear(Path place) throws IOException {
        List<Path> all;
        try (Stream<Path> listed = Files.list(place)) {
            all = listed.toList();
        }
        for (Path file : all) {
            if (OWN.matcher(file.getFileName().toString()).matches()) {
                Files.deleteIfExists(file);
            }
        }
        try {
            Files.delete(place);
        } catch (DirectoryNotEmptyException someones) {
            // What someone has put there stays.
        }
    }
}
