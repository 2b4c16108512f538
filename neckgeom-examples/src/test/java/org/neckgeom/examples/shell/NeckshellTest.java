package org.neckgeom.examples.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands themselves, as a maker or an embedder runs them. */
class NeckshellTest {

    private static final Path NECKSHELL = Path.of("neckshell").toAbsolutePath();
    private static final Path JDK = Path.of(System.getProperty("java.home"));

    @TempDir
    Path folder;

    /** How a command ended and what it printed. */
    private record Ended(int status, String out, String err) {}

    @BeforeAll
    static void needsAShellAndJShell() {
        boolean shell = File.pathSeparatorChar == ':' && Files.isExecutable(Path.of("/bin/sh"));
        boolean jshell = Files.isExecutable(JDK.resolve("bin/jshell"));
        String lacking = "neckshell was NOT tried: " + (shell ? "" : "no /bin/sh here; ")
                + (jshell ? "" : "no jshell in " + JDK);
        if (!shell || !jshell) {
            System.err.println(lacking);
        }
        Assumptions.assumeTrue(shell && jshell, lacking);
    }

    @Test
    void script_runsWithTheLibraryAndEndsWithZero() throws Exception {
        Ended ended = run(script("println(inch(\"1 3/4\").in(ShopUnit.MILLIMETRE));\n"));

        assertThat(ended).isEqualTo(new Ended(0, "44.45 mm\n", ""));
    }

    @Test
    void printIn_makesEveryPrintlnFollow() throws Exception {
        Ended ended = run(script("""
                println(mm(44.45));
                printIn(INCH_FRACTIONS);
                println(mm(44.45));
                println(java.util.List.of(mm(25.4), mm(12.7)));
                println(deg(13));
                println("44.45 mm");
                printIn();
                println(mm(44.45));
                """));

        assertThat(ended)
                .isEqualTo(new Ended(0, "44.45 mm\n1 3/4 in\n[1 in, 1/2 in]\n13 deg\n44.45 mm\n44.45 mm\n", ""));
    }

    @Test
    void failingScripts_endWithOneAndSayWhy() throws Exception {
        Ended thrown = run(script("println(1);\nmm(-1.0 / 0);\n"));
        Ended uncompiled = run(script("println(2);\nint a = \"b\";\n"));

        assertThat(thrown.status()).isEqualTo(1);
        assertThat(thrown.out()).isEqualTo("1\n");
        assertThat(thrown.err()).contains("own.jsh:2: Refusal: ").contains("mm(-1.0 / 0);");
        assertThat(uncompiled.status()).isEqualTo(1);
        assertThat(uncompiled.out()).isEqualTo("2\n");
        assertThat(uncompiled.err()).contains("own.jsh:2: does not compile");
    }

    @Test
    void missingScript_endsWithTwo() throws Exception {
        Ended ended = run(folder.resolve("none.jsh").toString());

        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.err()).contains("none.jsh: there is no such script");
    }

    /** As {@code neckshell endless.jsh | head -1}: the reader ends, and then so must the script. */
    @Test
    void endlessScript_endsWhenNothingReadsItAnyMore() throws Exception {
        ProcessBuilder builder = new ProcessBuilder(NECKSHELL.toString(), script("while (true) println(\"again\");\n"))
                .redirectError(folder.resolve("err.txt").toFile());
        builder.environment().put("JAVA_HOME", JDK.toString());
        Process process = builder.start();
        try (BufferedReader head = process.inputReader()) {
            assertThat(head.readLine()).isEqualTo("again");
        }

        boolean hasEnded = process.waitFor(60, TimeUnit.SECONDS);
        process.destroyForcibly();
        assertThat(hasEnded).isTrue();
        assertThat(process.exitValue()).isEqualTo(141);
        assertThat(folder.resolve("err.txt")).isEmptyFile();
    }

    @Test
    void help_namesTheThreeWays() throws Exception {
        Ended ended = run("--help");

        assertThat(ended.status()).isZero();
        assertThat(ended.out())
                .contains("neckshell SCRIPT.jsh")
                .contains("help()")
                .doesNotContain("#");
    }

    @Test
    void prompt_hasTheLibraryAtHand() throws Exception {
        Ended ended = runWithInput("println(mm(3).plus(inch(1)))\n/exit\n");

        assertThat(ended.status()).isZero();
        assertThat(ended.out()).contains("28.4 mm");
    }

    /** The second start finds the archive of the first; both serve. */
    @Test
    void service_startsByOneCommand() throws Exception {
        for (int start = 0; start < 2; start++) {
            Path err = folder.resolve("service-err.txt");
            ProcessBuilder builder = new ProcessBuilder(
                            NECKSHELL.resolveSibling("neckservice").toString(), "necks.db", "0")
                    .directory(folder.toFile())
                    .redirectError(err.toFile());
            builder.environment().put("JAVA_HOME", JDK.toString());
            Process process = builder.start();
            try (BufferedReader lines = process.inputReader()) {
                assertThat(lines.readLine()).as(Files.readString(err)).isEqualTo("NECKS  necks.db");
                String address = lines.readLine().replaceFirst("OPEN *", "");

                try (InputStream in = URI.create(address).toURL().openStream()) {
                    assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8))
                            .isEqualTo("{ \"necks\": [] }\n");
                }
            } finally {
                process.destroy();
                process.waitFor(30, TimeUnit.SECONDS);
            }
            assertThat(err).isEmptyFile();
        }

        assertThat(Path.of("target", "shared").toFile().list())
                .anyMatch(name -> name.matches("neckservice-[0-9]+\\.jsa"));
    }

    @Test
    void service_refusesWithOneSentence() throws Exception {
        Ended ended = run(List.of(NECKSHELL.resolveSibling("neckservice").toString(), "necks.db", "70000"), "");

        assertThat(ended).isEqualTo(new Ended(2, "", "The port must be from 0 to 65535, but was 70000.\n"));
    }

    private String script(String text) throws IOException {
        return Files.writeString(folder.resolve("own.jsh"), text).toString();
    }

    private Ended run(String argument) throws Exception {
        return run(List.of(NECKSHELL.toString(), argument), "");
    }

    private Ended runWithInput(String input) throws Exception {
        return run(List.of(NECKSHELL.toString()), input);
    }

    private Ended run(List<String> command, String input) throws Exception {
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        Path in = Files.writeString(folder.resolve("in.txt"), input);
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectInput(in.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().put("JAVA_HOME", JDK.toString());
        Process process = builder.start();
        if (!process.waitFor(180, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError(command + " did not end within three minutes");
        }
        return new Ended(process.exitValue(), Files.readString(out), Files.readString(err));
    }
}
