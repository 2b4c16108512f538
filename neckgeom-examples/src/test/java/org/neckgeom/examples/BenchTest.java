package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.neckgeom.units.ShopUnits.mm;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.Reader;
import java.io.StringReader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.channel.SlotStep;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.plan.BenchSession;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.NeckFeature;
import org.neckgeom.shop.TrialCut;

/** A session at the bench by pipe. Readings by hand: walls and slot add up to the piece, e = (near - far)/2. */
class BenchTest {

    private static final List<String> CHANNEL = List.of(
            // round 1: 0.71 too near the fence
            "26.79",
            "28.21",
            "6.02",
            "61.02",
            "0.71 away",
            // round 2: one wall misread by 1 mm, then right but of another piece, taken back
            "28.49",
            "27.51",
            "6.02",
            "61.02",
            "27.10",
            "27.90",
            "6.02",
            "61.02",
            "undo",
            // round 3
            "27.50",
            "27.50",
            "6.02",
            "61.02");

    private static final List<String> TRIAL = List.of("slot", "piece");

    @TempDir
    Path folder;

    private Path file;
    private String shipped;

    @BeforeEach
    void copy() throws IOException {
        shipped = ShippedNecks.text("octave-mandolin.yaml");
        file = Files.writeString(folder.resolve("my-neck.yaml"), shipped);
    }

    private record Ended(int status, String out, String err) {}

    private Ended bench(String... entries) {
        return bench(new StringReader(String.join("\n", entries) + "\n"));
    }

    private Ended bench(Reader entries) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = PlanANeck.run(
                List.of("--bench", file.toString()),
                new BufferedReader(entries),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                Progress.none(),
                Terminal.plain());
        return new Ended(status, text(out), text(err));
    }

    private static String text(ByteArrayOutputStream bytes) {
        return bytes.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
    }

    @Test
    void bench_leadsThroughTheChannel_threeRoundsOneMisreadOneUndo() {
        Ended ended = bench(CHANNEL.toArray(String[]::new));

        assertThat(ended.status()).isZero();
        assertThat(ended.err()).isEmpty();
        assertThat(ended.out())
                .contains("Make a trial cut in a test piece", "near wall, usually 22.5 to 32.5 mm")
                .contains("before  open, not measured")
                .contains("mm AWAY from the cutter", "OK fence moved by 0.71 mm away")
                .contains("?? Read the same cut again: readings do not close: 1.000 mm too long")
                .contains("OK taken back: near wall 27.1 mm")
                .contains("Cut the rod channel", "1.45, 2.9, 4.35, 5.8, 7.25, 8.7, 9.2 mm")
                .endsWith("ENDED  5 entries kept in " + file + "; the next session goes on from here.\n")
                .doesNotContain("\u001b");
        Job kept = NeckFile.read(file);
        assertThat(kept)
                .isEqualTo(NeckFile.read("octave-mandolin.yaml")
                        .trialCut(TrialCut.walls(mm(26.79), mm(28.21))
                                .slot(mm(6.02))
                                .piece(mm(61.02)))
                        .fenceMoved(FenceMove.away(mm(0.71)))
                        .trialCut(TrialCut.walls(mm(27.5), mm(27.5))
                                .slot(mm(6.02))
                                .piece(mm(61.02))));
        assertThat(kept.plan().slot().step()).isEqualTo(SlotStep.CUT);
    }

    @Test
    void bench_goesOnWhereItStopped_andKeepsEveryOtherLine() throws IOException {
        bench(CHANNEL.subList(0, 5).toArray(String[]::new));
        String between = Files.readString(file);
        bench(Stream.concat(CHANNEL.subList(5, 18).stream(), Stream.of("9.21", "end"))
                .toArray(String[]::new));

        assertThat(between).startsWith(shipped).contains("trial cuts:\n  - near wall: 26.79 mm\n");
        assertThat(Files.readString(file)).startsWith(shipped);
        assertThat(NeckFile.read(file)
                        .measured()
                        .of(NeckFeature.CHANNEL_DEPTH)
                        .orElseThrow()
                        .libraryValue())
                .isEqualTo(9.21);
        assertThat(BenchSession.of(NeckFile.read(file)).question().orElseThrow().code())
                .isEqualTo("channel-width");
    }

    @Test
    void bench_keepsTheCommentsOfTheRecord() throws IOException {
        Files.writeString(
                file,
                shipped + "\ntrial cuts:\n  # on the first piece\n  - near wall: 26.79 mm # cold hands\n"
                        + "    far wall: 28.21 mm\n    slot: 6.02 mm\n    piece: 61.02 mm\n# the end\n");

        bench("0.7 away", "end");

        assertThat(Files.readString(file))
                .isEqualTo(shipped + "\ntrial cuts:\n  # on the first piece\n  - near wall: 26.79 mm # cold hands\n"
                        + "    far wall: 28.21 mm\n    slot: 6.02 mm\n    piece: 61.02 mm\n"
                        + "  - moved:\n      distance: 0.7 mm\n      direction: away from cutter\n# the end\n");
    }

    /** In inches, with an order to keep and a step done already: (1.2 - 1.201)/2 = -0.0005 in off. */
    @Test
    void bench_keepsAnOrderAndWhatWasDone() throws IOException {
        shipped = ShippedNecks.text("short-scale-bass.yaml");
        Files.writeString(file, shipped);

        Ended ended = bench("3/8", "1/4 in", "", "", "1.2", "1.201", "done", "undo", "end");

        assertThat(ended.out()).contains("ENDED  5 entries kept");
        assertThat(Files.readString(file))
                .contains(
                        "  done: [rest the stock, flatten the face, square the edges, mark the lines, cut rod channel]"
                                + "            # what has been done already\n")
                .contains(
                        "measured:\n  channel depth: 0.375 in\n  channel width: 0.25 in\n  slot offset:\n    value: -0.0005 in");
    }

    @Test
    void bench_writesNothingOfAnEntryThatIsNotTaken() throws IOException {
        Ended ended = bench("-5", "wall", "2.7", "26.79", "end");

        assertThat(ended.out())
                .contains("?? The near wall cannot be -5 mm. Read it again.")
                .contains("?? Near wall 2.7 mm is out of the usual 22.5 to 32.5 mm.")
                .contains("ENDED  0 entries kept");
        assertThat(file).hasContent(shipped);
        assertThat(folder).isDirectoryContaining(path -> path.equals(file));
    }

    /** Readings, a step done and the trial cuts are taken back one by one by sessions that know of them from the file alone. */
    @Test
    void undo_goesOnAfterARestart_downToTheFileAsItWas() throws IOException {
        bench(Stream.concat(CHANNEL.stream(), Stream.of("9.21", "6.02", "done", "end"))
                .toArray(String[]::new));
        assertThat(NeckFile.read(file).plan().work().finished())
                .anyMatch(done -> done.name().equals("cut rod channel"));

        assertThat(bench("undo", "end").out()).contains("OK taken back: done: cut rod channel", "ENDED  1 entry kept");
        assertThat(bench("undo", "end").out())
                .contains("OK taken back: channel width 6.02 mm, read at cut rod channel");
        assertThat(bench("undo", "end").out())
                .contains("OK taken back: channel depth 9.21 mm, read at cut rod channel");
        assertThat(NeckFile.read(file).measured().isEmpty()).isTrue();
        for (int left = 2; left >= 0; left--) {
            assertThat(bench("undo", "end").out()).contains("OK taken back: ");
            assertThat(NeckFile.read(file).steps()).hasSize(left);
        }
        while (!NeckFile.read(file).plan().work().finished().isEmpty()) {
            assertThat(bench("undo", "end").out()).contains("OK taken back: done: ");
        }
        assertThat(bench("undo", "end").out()).contains("?? There is no entry to take back.");
        assertThat(NeckFile.read(file)).isEqualTo(NeckFile.read("octave-mandolin.yaml"));
    }

    /** A full disk at each step of keeping an entry: the entry is lost, the record and the session are not. */
    @Test
    void bench_losesTheEntryAlone_whereTheDiskIsFull() throws Exception {
        List<String> steps = new ArrayList<>();
        BenchFile counting = BenchFile.at(file, steps::add);
        cut(counting, "26.79", "28.21");
        String kept = Files.readString(file);
        assertThat(steps).hasSizeGreaterThan(1);
        for (int at = 0; at < steps.size(); at++) {
            String full = steps.get(at);
            int step = at;
            Files.writeString(file, shipped);
            int[] passed = {0};
            BenchFile bench = BenchFile.at(file, what -> {
                if (passed[0]++ == step) {
                    throw new IOException("No space left on device");
                }
            });

            BenchFile.Answer answer = cut(bench, "26.79", "28.21");
            // What is cleared away after the entry is in its place costs nothing.
            boolean isIn = full.startsWith("clear ");
            assertThat(answer.fate()).as(full).isEqualTo(isIn ? BenchFile.Fate.KEPT : BenchFile.Fate.NOT_KEPT);
            assertThat(file).as(full).hasContent(isIn ? kept : shipped);
            if (!isIn) {
                assertThat(bench.session().job().steps()).as(full).isEmpty();
                assertThat(cut(bench, "26.79", "28.21").fate()).as(full).isEqualTo(BenchFile.Fate.KEPT);
                assertThat(file).as(full).hasContent(kept);
            }
        }
    }

    private static BenchFile.Answer cut(BenchFile bench, String near, String far) throws Exception {
        Map<String, String> readings = new LinkedHashMap<>();
        readings.put("near-wall", near);
        readings.put("far-wall", far);
        readings.put("slot", "6.02");
        readings.put("piece", "61.02");
        return bench.enter(readings);
    }

    /** A process that is killed while an entry is typed has kept what was entered before. */
    @Test
    void bench_killed_losesTheEntryBeingTyped() throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        PlanANeck.class.getName(),
                        "--bench",
                        file.toString())
                .redirectErrorStream(true)
                .start();
        try (Writer keys = process.outputWriter(StandardCharsets.UTF_8);
                BufferedReader screen = process.inputReader(StandardCharsets.UTF_8)) {
            keys.write("26.79\n28.21\n6.02\n61.02\n");
            keys.flush();
            String line = screen.readLine();
            while (line != null && !line.contains("Move the fence")) {
                line = screen.readLine();
            }
            assertThat(line).contains("Move the fence");
            keys.write("0.71 aw");
            keys.flush();
            process.destroyForcibly();
            assertThat(process.waitFor()).isNotZero();
        }

        assertThat(NeckFile.read(file).steps()).hasSize(1);
        assertThat(bench("0.71 away", "end").out()).contains("OK fence moved by 0.71 mm away");
        assertThat(NeckFile.read(file).steps()).hasSize(2);
    }

    /** Someone else writes the file while an entry is typed. */
    @Test
    void bench_noticesAFileChangedMeanwhile_showsTheDifference_andNeverOverwritesIt() {
        String other = shipped.replace("frets: 20 ", "frets: 21 ");

        Ended ended = bench(new Reader() {
            private final Reader before = new StringReader("26.79\n28.21\n6.02\n61.02\n");
            private final Reader after = new StringReader("end\n");
            private boolean isChanged;

            @Override
            public int read(char[] to, int from, int most) throws IOException {
                // One letter at a time: the session has not read ahead.
                int read = before.read(to, from, 1);
                if (read < 0 && !isChanged) {
                    isChanged = true;
                }
                if (!isChanged && read > 0 && to[from] == '1') {
                    Files.writeString(file, other);
                }
                return read < 0 ? after.read(to, from, 1) : read;
            }

            @Override
            public void close() {
                // Nothing is held.
            }
        });

        assertThat(ended.status()).isZero();
        assertThat(ended.out())
                .contains("?? Not kept: " + file + " was changed by someone else meanwhile. It stays as it is now:")
                .contains("   - frets: 20 ", "   + frets: 21 ")
                .contains("The session goes on with the file as it is now.")
                .contains("ENDED  0 entries kept");
        assertThat(file).hasContent(other);
    }

    @Test
    void bench_endsInWordsWhereItsFileCannotBeUsed() throws IOException {
        Files.writeString(file, "name: Mine\n");
        assertThat(bench("end").err()).startsWith("8 things to mend in ");
        Files.delete(file);
        assertThat(bench("end"))
                .isEqualTo(new Ended(1, "", file + ": there is no such file; looked for " + file + "\n"));
        assertThat(PlanANeck.run(
                        List.of("--bench"),
                        new PrintStream(new ByteArrayOutputStream()),
                        new PrintStream(new ByteArrayOutputStream()),
                        Progress.none()))
                .isEqualTo(2);
    }

    @Test
    void bench_helps_andShowsTheStep() {
        assertThat(bench("?", "next", "END").out())
                .contains("takes the last entry back", "The machine's own instructions, guards");
    }

    /** All that a session keeps reads back the same, in every style. */
    @ParameterizedTest
    @MethodSource("org.neckgeom.examples.neck.ShippedNecks#names")
    void with_readsBackTheWholeWork(String name) {
        String text = ShippedNecks.text(name);
        BenchSession session = BenchSession.of(NeckFile.parse(name, text));
        for (int i = 0; i < 60 && session.operation().isPresent(); i++) {
            int turn = i;
            boolean isRead = session.question()
                    .filter(question -> question.isNeeded() || turn % 3 == 0 || TRIAL.contains(question.code()))
                    .isPresent();
            String entry = isRead ? middle(session) : "done";
            BenchSession.Reply reply = session.enter(entry);
            String fresh = NeckText.with(text, session.job(), reply.session().job());
            assertThat(NeckFile.parse(name, fresh))
                    .as(entry)
                    .isEqualTo(reply.session().job());
            text = fresh;
            session = reply.session();
        }
        assertThat(session.operation()).as(session.settings().title()).isEmpty();
    }

    private static String middle(BenchSession session) {
        return session.question()
                .flatMap(question -> question.usual()
                        .map(range -> (range.unit().fromLibrary(range.libraryLower())
                                        + range.unit().fromLibrary(range.libraryUpper()))
                                / 2))
                .map(String::valueOf)
                .orElse("toward");
    }

    @Test
    void differences_areTheLinesBetweenTheSameEnds() {
        assertThat(BenchFile.differences(List.of("a", "b", "c"), List.of("a", "x", "y", "c")))
                .containsExactly("- b", "+ x", "+ y");
        assertThat(BenchFile.differences(List.of("a"), List.of("a"))).isEmpty();
    }

    /** Common practice: any value but an empty one turns colours off. */
    @Test
    void colours_areOfATerminalThatHasThem() {
        assertThat(Terminal.hasColours(Map.of("TERM", "xterm"))).isTrue();
        assertThat(Terminal.hasColours(Map.of("TERM", "xterm", "NO_COLOR", "1")))
                .isFalse();
        assertThat(Terminal.hasColours(Map.of("TERM", "xterm", "NO_COLOR", ""))).isTrue();
        assertThat(Terminal.hasColours(Map.of("TERM", "dumb"))).isFalse();
        assertThat(Terminal.hasColours(Map.of())).isFalse();
        assertThat(Terminal.inColours().verdict("name\nVERDICT  OPEN: 1\n"))
                .isEqualTo("name\nVERDICT  \u001b[1;33mOPEN\u001b[0m: 1\n");
        assertThat(Terminal.plain().verdict("VERDICT  OPEN: 1")).isEqualTo("VERDICT  OPEN: 1");
    }
}
