package org.neckgeom.examples;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.neckgeom.examples.file.Trouble;
import org.neckgeom.form.Json;
import org.neckgeom.page.Document;
import org.neckgeom.plan.Job;
import org.neckgeom.text.Words;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * What belongs together in a folder: a list with the hash of every file, written beside them as the last of all. Sheets on
 * paper have the first digits of the plan's hash on them.
 */
final class OutputSet {

    static final String NAME = "neckgeom-set.json";

    private static final String FORMAT = "neckgeom set";
    private static final int VERSION = 1;
    private static final int MOST_BYTES = 100_000;
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    /**
     * What a look at a folder showed.
     *
     * @param isWhole whether its files belong together
     * @param text what to print
     */
    record Checked(boolean isWhole, String text) {}

    private OutputSet() {}

    /**
     * The list of a set.
     *
     * @param neckFile the neck file's name
     * @param neckText the neck file's text
     * @param plan what was planned from it
     * @param files the set's files, without their folder
     */
    static byte[] list(String neckFile, String neckText, Job plan, Map<String, byte[]> files) {
        Map<String, String> hashes = new TreeMap<>();
        files.forEach((name, bytes) -> hashes.put(name, Hash.of(bytes)));
        Map<String, Object> list = new LinkedHashMap<>();
        list.put("format", FORMAT);
        list.put("version", VERSION);
        list.put("neckgeom", Version.current());
        list.put("set", Document.mark(plan));
        list.put("plan's hash", Document.hash(plan));
        list.put("neck file", neckFile);
        list.put("neck file's hash", Hash.of(neckText.getBytes(StandardCharsets.UTF_8)));
        list.put("units", plan.style().word());
        list.put("files", hashes);
        return Json.of(list).getBytes(StandardCharsets.UTF_8);
    }

    /** Whether the files of a folder belong together, and which do not. */
    static Checked check(Path folder) {
        Path list = folder.resolve(NAME);
        if (!Files.isDirectory(folder)) {
            return new Checked(false, folder + " is not a folder that is there\n");
        }
        if (!Files.exists(list)) {
            return new Checked(
                    false, folder + " has no " + NAME + ": nothing shows whether its files belong together\n");
        }
        try {
            return check(folder, read(list));
        } catch (IOException | IllegalArgumentException | YamlEngineException unreadable) {
            String why = unreadable instanceof IOException failed ? ": " + Trouble.inWords(failed) : "";
            return new Checked(false, list + " can't be read as the list of a set" + why + "\n");
        }
    }

    /**
     * Refuses to write a set into a folder whose list has other files: they would be in no list any more.
     *
     * @param names of the files to write
     */
    static void checkRoom(Path folder, Set<String> names) throws Unwritable {
        Path list = folder.resolve(NAME);
        if (!Files.isRegularFile(list)) {
            return;
        }
        Map<?, ?> files;
        try {
            files = (Map<?, ?>) read(list).get("files");
        } catch (IOException | IllegalArgumentException | YamlEngineException unreadable) {
            throw new Unwritable(list + " can't be read as the list of a set: name another folder");
        }
        if (!names.containsAll(files.keySet())) {
            throw new Unwritable(
                    folder
                            + " holds a set of other files: write it anew with --all, which has the cards too, or name another folder");
        }
    }

    private static Checked check(Path folder, Map<?, ?> list) throws IOException {
        List<String> wrong = new ArrayList<>();
        if (!Staging.left(folder).isEmpty()) {
            wrong.add("a run was broken off here or is still at work; the next run puts the files back as they were");
        }
        Map<?, ?> files = (Map<?, ?>) list.get("files");
        for (Map.Entry<?, ?> file : files.entrySet()) {
            Path path = folder.resolve(file.getKey().toString());
            if (!Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
                wrong.add(path.getFileName() + " is missing");
            } else if (!Hash.of(Files.readAllBytes(path)).equals(file.getValue())) {
                wrong.add(path.getFileName() + " is not of this set: it was written or changed by another run or hand");
            }
        }
        for (Output output : Output.values()) {
            String name = output.usualName();
            if (!files.containsKey(name) && Files.exists(folder.resolve(name))) {
                wrong.add(name + " is not of this set: its list does not have it");
            }
        }
        String set = "set " + list.get("set") + " of " + list.get("neck file") + ", in " + list.get("units");
        if (wrong.isEmpty()) {
            return new Checked(
                    true, folder + " is whole: " + set + ", its " + files.size() + " files belong together\n");
        }
        return new Checked(
                false,
                folder + " is NOT whole: " + set + "\n"
                        + String.join(
                                "",
                                wrong.stream()
                                        .map(line -> "  " + Words.shown(line) + "\n")
                                        .toList()));
    }

    /** The list, its shape looked at. */
    private static Map<?, ?> read(Path list) throws IOException {
        if (Files.size(list) > MOST_BYTES) {
            throw new IllegalArgumentException("more than a list has");
        }
        LoadSettings settings =
                LoadSettings.builder().setMaxAliasesForCollections(0).build();
        Object read = new Load(settings).loadFromString(Files.readString(list));
        if (!(read instanceof Map<?, ?> map)
                || !FORMAT.equals(map.get("format"))
                || !Integer.valueOf(VERSION).equals(map.get("version"))
                || !(map.get("set") instanceof String)
                || !isHash(map.get("plan's hash"))
                || !(map.get("neck file") instanceof String)
                || !(map.get("units") instanceof String)
                || !(map.get("files") instanceof Map<?, ?> files)
                || !files.entrySet().stream().allMatch(file -> isName(file.getKey()) && isHash(file.getValue()))) {
            throw new IllegalArgumentException("not the list of a set");
        }
        return map;
    }

    /** A file of this folder, not of another. */
    private static boolean isName(Object name) {
        return name instanceof String text && text.matches("[^/\\\\]+") && !text.matches("\\.{1,2}");
    }

    private static boolean isHash(Object hash) {
        return hash instanceof String text && HASH.matcher(text).matches();
    }
}
