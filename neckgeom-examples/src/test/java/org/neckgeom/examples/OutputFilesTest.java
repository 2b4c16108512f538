package org.neckgeom.examples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sets of files written at the same time, broken off, and attacked. How often is set by system properties:
 * {@code -Dneckgeom.races=10000}, {@code -Dneckgeom.kills=200}.
 */
class OutputFilesTest {

    private static final int RACES = Integer.getInteger("neckgeom.races", 100);
    private static final int KILLS = Integer.getInteger("neckgeom.kills", 5);
    private static final Duration LONG = Duration.ofMinutes(2);
    private static final Duration SHORT = Duration.ofMillis(30);

    @TempDir
    Path folder;

    /** As a process that is killed here. */
    private static final class Killed extends Error {

        private static final long serialVersionUID = 1L;

        Killed() {
            super("killed", null, false, false);
        }
    }

    private void isExactly(Path where, Map<Path, byte[]> files) throws IOException {
        try (Stream<Path> all = Files.list(where)) {
            assertThat(all.toList()).containsExactlyInAnyOrderElementsOf(files.keySet());
        }
        for (Map.Entry<Path, byte[]> file : files.entrySet()) {
            assertThat(Files.readAllBytes(file.getKey()))
                    .as("%s", file.getKey())
                    .isEqualTo(file.getValue());
        }
    }

    @Test
    void write_letsOneOfTwoThreadsWriteAtATime() throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(2);
        CyclicBarrier together = new CyclicBarrier(2);
        int first = 0;
        try {
            for (int race = 0; race < RACES; race++) {
                List<Map<Path, byte[]>> sets =
                        List.of(ForkedWriter.set(folder, "one " + race), ForkedWriter.set(folder, "two " + race));
                List<Future<OutputFiles.Written>> writers = new ArrayList<>();
                for (Map<Path, byte[]> own : sets) {
                    writers.add(pool.submit(() -> {
                        together.await();
                        return OutputFiles.write(own, Staging.Step.UNBROKEN, LONG);
                    }));
                }
                for (Future<OutputFiles.Written> writer : writers) {
                    assertThat(writer.get(3, TimeUnit.MINUTES).mended()).isEmpty();
                }

                OutputSet.Checked whole = OutputSet.check(folder);
                assertThat(whole.isWhole())
                        .as("race %d: %s", race, whole.text())
                        .isTrue();
                boolean isFirst = whole.text().contains("one " + race);
                isExactly(folder, sets.get(isFirst ? 0 : 1));
                first += isFirst ? 1 : 0;
            }
        } finally {
            pool.shutdownNow();
        }
        System.out.println("two threads into one folder: " + RACES + " races, no mixture; the one that began second "
                + "wrote last in " + (RACES - first));
    }

    /** Each of two processes writes as often as it can, and looks at the folder while no other may write. */
    @Test
    void write_letsOneOfTwoProcessesWriteAtATime() throws Exception {
        List<Process> writers =
                List.of(ForkedWriter.start(folder, "one", RACES, -1), ForkedWriter.start(folder, "two", RACES, -1));
        for (Process writer : writers) {
            String printed = new String(writer.getInputStream().readAllBytes(), UTF_8);
            assertThat(writer.waitFor()).as(printed).isZero();
            assertThat(printed).isEqualTo(RACES + " times whole\n");
        }

        assertThat(OutputSet.check(folder).isWhole()).isTrue();
        assertThat(folder.resolve(FolderLock.NAME)).doesNotExist();
        System.out.println("two processes into one folder: " + RACES + " writings each, no mixture");
    }

    @Test
    void write_isRefusedWhileAnotherHoldsTheFolder_andNamesIt() throws Exception {
        Map<Path, byte[]> files = ForkedWriter.set(folder, "late");
        FolderLock here = FolderLock.of(folder, SHORT);
        try {
            assertThatThrownBy(() -> OutputFiles.write(files, Staging.Step.UNBROKEN, SHORT))
                    .isInstanceOf(Unwritable.class)
                    .hasMessage(folder + " is being written to by this very program; try again when that is done");
        } finally {
            here.close();
        }
        Process holder = ForkedWriter.start(folder, "slow", 1, 0);
        try {
            assertThat(holder.inputReader().readLine()).isEqualTo("holding");
            assertThatThrownBy(() -> OutputFiles.write(files, Staging.Step.UNBROKEN, SHORT))
                    .isInstanceOf(Unwritable.class)
                    .hasMessage(folder + " is being written to by process " + holder.pid()
                            + "; try again when that is done");
        } finally {
            holder.destroyForcibly().waitFor();
        }

        // The system gives a killed process's lock back.
        assertThat(OutputFiles.write(files, Staging.Step.UNBROKEN, LONG).mended())
                .containsExactly(folder);
        isExactly(folder, files);
    }

    /** Every step of a writing, in an empty folder and over an older set, fails: nothing changes, but where all was done. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void write_changesNothingWhereAnyStepFails(boolean isOver) throws IOException {
        int steps = steps(ForkedWriter.set(folder.resolve("count"), "x"), isOver);
        for (int step = 0; step < steps; step++) {
            Path at = Files.createDirectory(folder.resolve("fail-" + step));
            Map<Path, byte[]> older = isOver ? ForkedWriter.set(at, "older") : Map.of();
            OutputFiles.write(older);
            Map<Path, byte[]> newer = ForkedWriter.set(at, "newer");
            int broken = step;
            int[] done = {0};
            ThrowingCallable writing = () -> OutputFiles.write(
                    newer,
                    what -> {
                        if (done[0]++ == broken) {
                            throw new IOException("No space left on device");
                        }
                    },
                    LONG);

            if (step == steps - 1) {
                assertThatCode(writing).doesNotThrowAnyException();
                OutputFiles.write(Map.of());
                assertThat(OutputSet.check(at).text()).contains("a run was broken off here");
            } else {
                assertThatThrownBy(writing)
                        .as("step %d", step)
                        .isInstanceOf(Unwritable.class)
                        .hasMessageEndingWith(" can't be written: no space left on device");
                isExactly(at, older);
            }
        }
    }

    private int steps(Map<Path, byte[]> files, boolean isOver) throws IOException {
        Path counted = files.keySet().iterator().next().getParent();
        if (isOver) {
            OutputFiles.write(files);
        }
        int[] steps = {0};
        OutputFiles.write(files, what -> steps[0]++, LONG);
        try (Stream<Path> all = Files.list(counted)) {
            for (Path file : all.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(counted);
        return steps[0];
    }

    /** A process killed before any step: the folder's set is whole, or named as broken and put back by the next run. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void write_killedAtAnyStepIsNamedAndMended(boolean isOver) throws IOException {
        int steps = steps(ForkedWriter.set(folder.resolve("count"), "x"), isOver);
        int broken = 0;
        for (int kill = 0; kill < steps; kill++) {
            Path at = Files.createDirectory(folder.resolve("kill-" + kill));
            Map<Path, byte[]> older = isOver ? ForkedWriter.set(at, "older") : Map.of();
            OutputFiles.write(older);
            Map<Path, byte[]> newer = ForkedWriter.set(at, "newer");
            int last = kill;
            int[] done = {0};
            assertThatThrownBy(() -> OutputFiles.write(
                            newer,
                            what -> {
                                if (done[0]++ == last) {
                                    throw new Killed();
                                }
                            },
                            LONG))
                    .isInstanceOf(Killed.class);

            broken += judgeAndMend(at, older, newer, kill < steps - 1);
        }
        System.out.println(
                "killed at each of " + steps + " steps " + (isOver ? "over an older set" : "in an empty folder")
                        + ": named as broken " + broken + " times, else whole; put right each time");
    }

    /** What a kill left; 1 where it was named as broken. */
    private int judgeAndMend(Path at, Map<Path, byte[]> older, Map<Path, byte[]> newer, boolean isUndone)
            throws IOException {
        OutputSet.Checked found = OutputSet.check(at);
        boolean left = !Staging.left(at).isEmpty();
        if (found.isWhole()) {
            assertThat(left).isFalse();
        } else if (Files.exists(at.resolve(OutputSet.NAME))) {
            assertThat(found.text()).contains("is NOT whole: ").contains("a run was broken off here");
        }
        Path other = at.resolve("other.csv");
        assertThat(OutputFiles.write(Map.of(other, new byte[] {1})).mended().contains(at))
                .isEqualTo(left);
        Files.delete(other);
        isExactly(at, isUndone ? older : newer);
        return found.isWhole() ? 0 : 1;
    }

    /** Killed for good by the system, at moments that nothing chose. */
    @Test
    void write_killedAtAnyMomentLeavesAWholeSetToTheNextRun() throws Exception {
        OutputFiles.write(ForkedWriter.set(folder, "first"));
        int named = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            Process writer = ForkedWriter.start(folder, "killed-" + kill, Integer.MAX_VALUE, -1);
            assertThat(writer.inputReader().readLine()).isEqualTo("begun");
            Thread.sleep(kill * 7 % 50);
            writer.destroyForcibly().waitFor();

            OutputSet.Checked found = OutputSet.check(folder);
            boolean left = !Staging.left(folder).isEmpty();
            assertThat(found.isWhole()).as("kill %d: %s", kill, found.text()).isEqualTo(!left);
            named += left ? 1 : 0;
            Path other = folder.resolve("other.csv");
            OutputFiles.write(Map.of(other, new byte[] {1}));
            Files.delete(other);
            OutputSet.Checked mended = OutputSet.check(folder);
            assertThat(mended.isWhole()).as("kill %d: %s", kill, mended.text()).isTrue();
            try (Stream<Path> all = Files.list(folder)) {
                assertThat(all).hasSize(5);
            }
        }
        System.out.println("processes killed while writing: " + KILLS + ", broken and named so " + named
                + ", each whole after the next run");
    }

    @Test
    void write_goesThroughNoLink_andLeavesWhatIsNotItsOwn() throws IOException {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Path victim = Files.writeString(elsewhere.resolve("victim"), "mine");
        Path sheets = Files.createDirectory(folder.resolve("sheets"));
        Path own = Files.writeString(sheets.resolve(".plan.html.part"), "my own");
        Files.createSymbolicLink(sheets.resolve(".templates.svg.part"), victim);
        Files.createSymbolicLink(sheets.resolve("frets.csv"), victim);
        Files.createSymbolicLink(sheets.resolve(".neckgeom-0123456789abcdef"), elsewhere);
        Path similar = Files.createDirectory(sheets.resolve(".neckgeom-fedcba9876543210"));
        Files.writeString(similar.resolve("diary"), "dear diary");

        OutputFiles.write(ForkedWriter.set(sheets, "new"));

        assertThat(victim).hasContent("mine");
        assertThat(elsewhere.toFile().list()).containsExactly("victim");
        assertThat(own).hasContent("my own");
        assertThat(similar.resolve("diary")).hasContent("dear diary");
        assertThat(Files.isSymbolicLink(sheets.resolve("frets.csv"))).isFalse();
        assertThat(OutputSet.check(sheets).isWhole()).isTrue();
    }

    @Test
    void write_refusesALockThatIsSomeonesOwnOrALink() throws IOException {
        Path lock = folder.resolve(FolderLock.NAME);
        Path victim = Files.writeString(folder.resolve("victim"), "mine");
        Files.createSymbolicLink(lock, victim);
        assertThatThrownBy(() -> OutputFiles.write(ForkedWriter.set(folder, "x")))
                .isInstanceOf(Unwritable.class)
                .hasMessage(folder.toRealPath().resolve(FolderLock.NAME)
                        + " is not a lock of neckgeom; move it away to have this folder written to");
        Files.delete(lock);
        Files.writeString(lock, "my own");
        assertThatThrownBy(() -> OutputFiles.write(ForkedWriter.set(folder, "x")))
                .isInstanceOf(Unwritable.class);

        assertThat(victim).hasContent("mine");
        assertThat(lock).hasContent("my own");
    }

    /** A journal that names a file elsewhere is no reason to touch it. */
    @Test
    void mend_touchesNothingOutsideItsFolder() throws IOException {
        byte[] mine = {1, 2, 3};
        Path victim = Files.write(folder.resolve("victim"), mine);
        Path sheets = Files.createDirectory(folder.resolve("sheets"));
        Path left = Files.createDirectory(sheets.resolve(".neckgeom-0123456789abcdef"));
        Files.write(
                left.resolve("journal"),
                List.of("neckgeom journal 1", Hash.of(mine) + " none ..%2Fvictim", Hash.of(mine) + " none ../victim"));

        OutputFiles.write(ForkedWriter.set(sheets, "new"));

        assertThat(victim).hasBinaryContent(mine);
        assertThat(left).doesNotExist();
    }

    @Test
    void write_keepsWhatWasChangedAfterAKill() throws IOException {
        OutputFiles.write(ForkedWriter.set(folder, "older"));
        assertThatThrownBy(() -> OutputFiles.write(
                        ForkedWriter.set(folder, "newer"),
                        what -> {
                            if (what.equals("move " + folder.resolve("templates.pdf"))) {
                                throw new Killed();
                            }
                        },
                        LONG))
                .isInstanceOf(Killed.class);
        Path page = Files.writeString(folder.resolve("plan.html"), "edited by hand");

        OutputFiles.write(Map.of(folder.resolve("other.csv"), new byte[] {1}));

        assertThat(page).hasContent("edited by hand");
        assertThat(OutputSet.check(folder).text())
                .contains("  plan.html is not of this set: ")
                .doesNotContain("templates", "frets");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plan.html | plan.html is not of this set: it was written or changed by another run or hand",
                "templates.dxf | templates.dxf is not of this set: its list does not have it"
            })
    void check_namesWhatDoesNotBelong(String name, String sentence) throws IOException {
        OutputFiles.write(ForkedWriter.set(folder, "0f1e2d3c"));
        assertThat(OutputSet.check(folder))
                .isEqualTo(new OutputSet.Checked(
                        true, folder + " is whole: set 0f1e2d3c of own.yaml, in mm, its 4 files belong together\n"));
        Files.writeString(folder.resolve(name), "of another set");
        Files.delete(folder.resolve("frets.csv"));

        OutputSet.Checked checked = OutputSet.check(folder);

        assertThat(checked.isWhole()).isFalse();
        assertThat(checked.text().lines())
                .containsExactlyInAnyOrder(
                        folder + " is NOT whole: set 0f1e2d3c of own.yaml, in mm",
                        "  " + sentence,
                        "  frets.csv is missing");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{}",
                "not a list: [",
                "{\"format\": \"neckgeom set\", \"version\": 2}",
                "{\"format\": \"neckgeom set\", \"version\": 1, \"set\": \"x\", \"plan's hash\": 3, \"files\": []}",
                "&a [*a]"
            })
    void check_refusesAListThatIsNone(String text) throws IOException {
        Path list = Files.writeString(folder.resolve(OutputSet.NAME), text);

        assertThat(OutputSet.check(folder))
                .isEqualTo(new OutputSet.Checked(false, list + " can't be read as the list of a set\n"));
    }

    @Test
    void check_looksAtNoFileElsewhere() throws IOException {
        OutputFiles.write(ForkedWriter.set(folder, "x"));
        Path list = folder.resolve(OutputSet.NAME);
        Files.writeString(list, Files.readString(list).replace("\"frets.csv\"", "\"../frets.csv\""));

        assertThat(OutputSet.check(folder).text()).endsWith(" can't be read as the list of a set\n");
    }

    @Test
    void write_takesSeveralFoldersAtOnce_allOrNone() throws IOException {
        Path one = folder.resolve("one");
        Path two = Files.createDirectory(folder.resolve("two"));
        Map<Path, byte[]> files = new LinkedHashMap<>(ForkedWriter.set(one, "a"));
        files.putAll(ForkedWriter.set(two, "a"));
        assertThatThrownBy(() -> OutputFiles.write(
                        files,
                        what -> {
                            if (what.startsWith("move " + two)) {
                                throw new IOException("No space left on device");
                            }
                        },
                        LONG))
                .isInstanceOf(Unwritable.class);
        assertThat(one).doesNotExist();
        assertThat(two).isEmptyDirectory();

        assertThatCode(() -> OutputFiles.write(files)).doesNotThrowAnyException();
        assertThat(OutputSet.check(one).isWhole()).isTrue();
        assertThat(OutputSet.check(two).isWhole()).isTrue();
    }
}
