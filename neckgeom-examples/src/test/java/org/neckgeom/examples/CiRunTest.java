package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that runs all tests counts what ran, and fails when it should; tried on a made-up project. */
class CiRunTest {

    private static final Path CI_RUN = Path.of("..", ".ci", "run");

    /** A report as Surefire writes it, its tag over two lines, with a text inside that looks like another tag. */
    private static final String REPORT = """
            <?xml version="1.0" encoding="UTF-8"?>
            <testsuite xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" version="3.0.2"
              name="%s" time="0.1" tests="%d" errors="%d" skipped="%d" failures="%d" flakes="0">
              <system-out><![CDATA[<testsuite tests="900" errors="0" skipped="0" failures="0">]]></system-out>
            </testsuite>
            """;

    @TempDir
    Path project;

    private final StringBuilder maven = new StringBuilder("#!/bin/sh\nprintf '%s\\n' \"$*\"\n");

    @BeforeEach
    void layOut() throws IOException {
        boolean bash = Files.isExecutable(Path.of("/bin/bash")) || Files.isExecutable(Path.of("/usr/bin/bash"));
        if (!bash) {
            System.err.println(".ci/run was NOT tried: no bash here");
        }
        Assumptions.assumeTrue(bash, ".ci/run was NOT tried: no bash here");
        Files.createDirectories(project.resolve(".ci"));
        Files.copy(CI_RUN, project.resolve(".ci/run"));
        Files.createDirectories(project.resolve("bin"));
        Files.createDirectories(reports("a"));
        Files.createDirectories(reports("b"));
    }

    @Test
    void run_sumsTheReportsOfAllModules() throws Exception {
        reported("a", "One", 10, 0, 0, 0);
        reported("a", "Two", 5, 0, 2, 0);
        reported("b", "Three", 7, 0, 0, 0);

        Ended ended = run("-o");

        assertThat(ended.lines().get(0)).isEqualTo("-B -ntp verify -o");
        assertThat(ended.last()).isEqualTo("20 passed, 0 failed, 2 skipped");
        assertThat(ended.status()).isZero();
    }

    @Test
    void run_failsWithMaven() throws Exception {
        reported("a", "One", 10, 1, 1, 2);
        maven.append("exit 1\n");

        Ended ended = run();

        assertThat(ended.last()).isEqualTo("6 passed, 3 failed, 1 skipped");
        assertThat(ended.status()).isEqualTo(1);
    }

    @Test
    void run_failsWhenATestFailedThoughMavenDidNot() throws Exception {
        reported("a", "One", 3, 0, 0, 1);

        Ended ended = run();

        assertThat(ended.last()).isEqualTo("2 passed, 1 failed");
        assertThat(ended.status()).isEqualTo(1);
    }

    @Test
    void run_failsWhenNothingRan() throws Exception {
        Ended ended = run();

        assertThat(ended.last()).isEqualTo("0 passed, 0 failed");
        assertThat(ended.lines()).contains("no test ran");
        assertThat(ended.status()).isEqualTo(1);
    }

    @Test
    void run_failsWhenTheBuildFailedAfterGoodTests() throws Exception {
        reported("a", "One", 3, 0, 0, 0);
        maven.append("exit 7\n");

        Ended ended = run();

        assertThat(ended.last()).isEqualTo("3 passed, 0 failed");
        assertThat(ended.lines()).contains("the build failed outside the tests: Maven ended with status 7");
        assertThat(ended.status()).isEqualTo(7);
    }

    @Test
    void run_doesNotCountReportsOfAnEarlierRun() throws Exception {
        Files.writeString(reports("b").resolve("TEST-Old.xml"), String.format(Locale.ROOT, REPORT, "Old", 50, 0, 0, 0));
        reported("a", "One", 3, 0, 0, 0);

        assertThat(run().last()).isEqualTo("3 passed, 0 failed");
    }

    @Test
    void run_putsTheClosingLineOnItsOwn() throws Exception {
        reported("a", "One", 3, 0, 0, 0);
        maven.append("printf 'no line end after this'\n");

        assertThat(run().last()).isEqualTo("3 passed, 0 failed");
    }

    private Path reports(String module) {
        return project.resolve(module).resolve("target").resolve("surefire-reports");
    }

    /** Has the made-up Maven write a report when it runs. */
    private void reported(String module, String test, int tests, int errors, int skipped, int failures)
            throws IOException {
        Path source = project.resolve(test + ".xml");
        Files.writeString(source, String.format(Locale.ROOT, REPORT, test, tests, errors, skipped, failures));
        Path folder = reports(module);
        maven.append("mkdir -p '%s' && cp '%s' '%s'/TEST-%s.xml\n".formatted(folder, source, folder, test));
    }

    /** How the command ended and what it printed. */
    private record Ended(int status, List<String> lines) {
        String last() {
            return lines.get(lines.size() - 1);
        }
    }

    private Ended run(String... arguments) throws Exception {
        Path fake = Files.writeString(project.resolve("bin/mvn"), maven.toString());
        assertThat(fake.toFile().setExecutable(true)).isTrue();
        List<String> command =
                new ArrayList<>(List.of("bash", project.resolve(".ci/run").toString()));
        command.addAll(List.of(arguments));
        Path printed = project.resolve("printed.txt");
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(printed.toFile());
        builder.environment().put("PATH", project.resolve("bin") + ":" + System.getenv("PATH"));
        Process process = builder.start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Ended(process.exitValue(), Files.readAllLines(printed));
    }
}
