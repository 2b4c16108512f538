package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.neckgeom.examples.neck.ShippedNecks;

/** The shop's log beside the main command. */
class ShopLogFileTest {

    @TempDir
    Path folder;

    private Path log;
    private int status;
    private String err = "";

    @BeforeEach
    void name() {
        log = folder.resolve("shop.jsonl");
    }

    private String run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream errors = new ByteArrayOutputStream();
        status = PlanANeck.run(
                List.of(arguments),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(errors, true, StandardCharsets.UTF_8),
                Progress.none());
        err = errors.toString(StandardCharsets.UTF_8);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static String line(double read) {
        return "{\"date\": \"" + LocalDate.now(ZoneId.systemDefault())
                + "\", \"step\": \"locating\", \"read\": {\"value\": " + read + ", \"unit\": \"mm\"}}\n";
    }

    /** By hand: twenty residuals of 0.02 mm on 8 degrees about 0.05/sqrt(3): 28 degrees, sqrt((8/1200 + 20 0.0004)/28). */
    @Test
    void log_makesThePlansFiguresTheShopsOwn() throws IOException {
        Files.writeString(log, (line(0.02) + line(-0.02)).repeat(10));
        String before = run("--full", "octave-mandolin.yaml");
        String after = run("--full", "--log", log.toString(), "octave-mandolin.yaml");

        assertThat(status).as(err).isZero();
        assertThat(after).contains("by your own readings, 28 degrees of freedom");
        assertThat(before).doesNotContain("by your own readings");
    }

    @Test
    void addToLog_addsTheReadingsOfANeckOnce() throws IOException {
        String neck = ShippedNecks.text("octave-mandolin.yaml")
                + "\nmeasured:\n  offsets:\n    - feature: fingerboard\n      station: 200 mm\n      offset: 0.04 mm\n";
        Path file = folder.resolve("mine.yaml");
        Files.writeString(file, neck);
        String first = run("--add-to-log", log.toString(), file.toString());
        String again = run("--add-to-log", log.toString(), file.toString());

        assertThat(status).as(err).isZero();
        assertThat(first).startsWith("shop log " + log + ": ").contains(" added, ");
        assertThat(again).startsWith("shop log " + log + ": 0 lines added, ");
        assertThat(Files.readString(log)).contains("gluing", "fingerboard at 200 mm");
    }

    @Test
    void log_thatCannotBeUsedIsRefusedWithItsLine() throws IOException {
        Files.writeString(log, line(0.02) + "no json\n");
        assertThat(run("--log", log.toString())).isEmpty();
        assertThat(status).isEqualTo(1);
        assertThat(err).contains("shop.jsonl can't be used", "line 2");

        assertThat(run("--log", folder.resolve("none.jsonl").toString())).isEmpty();
        assertThat(err).contains("there is no shop log");
        run("--log");
        assertThat(status).isEqualTo(2);
    }
}
