package org.neckgeom.examples.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.neckgeom.units.ShopUnits.mm;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.neckgeom.channel.CentringRound;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.form.Json;
import org.neckgeom.plan.Job;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.table.Spelling;

/** A process that keeps cuts is killed at any moment: the file opens, and what was answered for is there, whole and once. */
class KillTest {

    private static final int KILLS = Integer.getInteger("neckgeom.kills", 10);
    private static final long SEED = 26;
    private static final int LONGEST_MS = 60;
    private static final int A_NECK = 40;
    private static final Duration LONG = Duration.ofMinutes(1);

    @TempDir
    Path folder;

    @Test
    void afterEachOfFiftyKills_whatWasAnsweredForIsThere() throws Exception {
        Path file = folder.resolve("necks.db");
        Path neck = Files.writeString(
                folder.resolve("octave.json"),
                Json.of(Job.TABLE.write(NeckFile.read(ShippedNecks.DEFAULT), Spelling.JSON)));
        SplittableRandom random = new SplittableRandom(SEED);
        TreeSet<String> answered = new TreeSet<>();
        for (int kill = 0; kill < KILLS; kill++) {
            String name = "n" + kill;
            List<String> now = killed(file, neck, name, random.nextInt(LONGEST_MS));
            now.forEach(id -> answered.add(name + " " + id));
            assertThat(now).as("seed %d, kill %d", SEED, kill).isNotEmpty();
            try (NeckStore store = NeckStore.open(file)) {
                assertThat(integrity(file)).isEqualTo("ok");
                assertThat(store.cuts(name).keySet())
                        .as("seed %d, kill %d", SEED, kill)
                        .containsAll(now)
                        // The one that was being written may be there too, without an answer.
                        .hasSizeBetween(now.size(), now.size() + 1);
                assertThat(store.job(name).steps())
                        .hasSameSizeAs(store.cuts(name).keySet());
            }
        }
        try (NeckStore store = NeckStore.open(file)) {
            TreeSet<String> kept = new TreeSet<>();
            for (String name : store.names()) {
                store.cuts(name).keySet().forEach(id -> kept.add(name + " " + id));
            }
            assertThat(kept).containsAll(answered);
        }
    }

    /** The ids that a process answered for before it was killed; half a line is no answer. */
    private List<String> killed(Path file, Path neck, String name, int afterMs) throws Exception {
        Path printed = folder.resolve(name + ".txt");
        Process writer = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        // Where its native library is unpacked: a killed process can't take it away.
                        "-Dorg.sqlite.tmpdir=" + folder,
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        KillTest.class.getName(),
                        file.toString(),
                        neck.toString(),
                        name)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .redirectOutput(printed.toFile())
                .start();
        long end = System.nanoTime() + LONG.toNanos();
        while (Files.size(printed) == 0 && writer.isAlive() && System.nanoTime() < end) {
            Thread.sleep(1);
        }
        Thread.sleep(afterMs);
        assertThat(writer.isAlive()).as(Files.readString(printed)).isTrue();
        writer.destroyForcibly().waitFor();
        String text = Files.readString(printed);
        return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
    }

    private static String integrity(Path file) throws Exception {
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                var statement = connection.createStatement();
                var row = statement.executeQuery("pragma integrity_check")) {
            return row.getString(1);
        }
    }

    public static void main(String[] arguments) throws Exception {
        Job job = Job.TABLE.read(Json.read(Files.readString(Path.of(arguments[1]))));
        try (NeckStore store = NeckStore.open(Path.of(arguments[0]))) {
            store.keep(arguments[2], job, Optional.empty());
            for (int i = 0; i < A_NECK; i++) {
                TrialCut cut = TrialCut.walls(mm(27 + i * 0.001), mm(28));
                store.keep(
                        arguments[2],
                        "c" + i,
                        CentringRound.of(List.of(CentringStep.read(cut))).get(0));
                System.out.println("c" + i);
            }
            Thread.sleep(60_000);
        }
    }
}
