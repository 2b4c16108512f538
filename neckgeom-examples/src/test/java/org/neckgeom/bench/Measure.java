package org.neckgeom.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.neckgeom.budget.BudgetKernels;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Measures all there is to measure in one go, some thirteen minutes, and writes it into a folder: {@code table.md} with the
 * costs, the targets and the growth, {@code results.json}, {@code growth.svg}.
 *
 * <p>Every benchmark runs twice, with all the others in between, in many slices of 10 ms; the best slice counts, so that
 * what else the machine does matters little. The heap is small and touched beforehand: on a large untouched one the price
 * of an allocation is a matter of luck.
 */
final class Measure {

    private static final int ROUNDS = 2;
    private static final int SLICES = 60;
    private static final int LONG_SLICES = 25;
    private static final int FEW_SLICES = 6;
    private static final int WARMUPS = 6;

    /** A whole plan runs through so much code that a second does not compile it. */
    private static final int LONG_WARMUPS = 40;

    private Measure() {}

    /**
     * Measures and writes.
     *
     * @param args the folder
     * @throws Exception if a benchmark fails or the folder can't be written
     */
    public static void main(String[] args) throws Exception {
        Path folder = Files.createDirectories(Path.of(args[0]));
        long start = System.nanoTime();
        Scores scores = new Scores();
        for (int round = 0; round < ROUNDS; round++) {
            run(
                    scores,
                    "CentringBenchmark|UnitsBenchmark|StrengthBenchmark|BudgetBenchmark|SolidBenchmark|StateBenchmark",
                    SLICES);
            run(scores, LONG_WARMUPS, "PlanBenchmark", SLICES);
            run(scores, "LeavesBenchmark", SLICES, "leaves", "40", "most", "4");
            run(scores, "GeometryBenchmark", SLICES, "power", "2");
            run(scores, "GeometryBenchmark.woodLeft", SLICES, "power", "2.5");
            run(scores, "TrialsBenchmark", LONG_SLICES);
            run(scores, "SweepBenchmark", FEW_SLICES);
            run(scores, "SearchBenchmark", FEW_SLICES);
            said("round " + (round + 1) + " of " + ROUNDS, start);
        }
        List<Double> chains = FreshJvm.lines(heap("256m"), RandomChains.class).stream()
                .map(Double::valueOf)
                .toList();
        List<Double> kept = FreshJvm.lines(heap("1500m"), PlansKept.class).stream()
                .map(Double::valueOf)
                .toList();
        said("random chains and plans kept", start);
        GrowthTable growth = new GrowthTable(FreshJvm.lines(heap("1500m"), Growth.class));
        said("growth", start);
        Measured run = new Measured(
                scores,
                FreshJvm.times(),
                FreshJvm.indriyaClasses("own"),
                FreshJvm.indriyaClasses("foreign"),
                chains,
                kept,
                growth,
                python("numpy_trials.py"),
                python("openturns_chain.py"),
                python("scipy_joint.py", StateBenchmark.eightLimitsAsWords()),
                where());
        agreed(run);
        said("fresh JVMs and Python", start);
        write(folder, run);
        System.out.println(Files.readString(folder.resolve("table.md")));
    }

    private static void run(Scores scores, String which, int slices, String... parameters) throws RunnerException {
        run(scores, WARMUPS, which, slices, parameters);
    }

    private static void run(Scores scores, int warmups, String which, int slices, String... parameters)
            throws RunnerException {
        ChainedOptionsBuilder options = new OptionsBuilder()
                .include("org\\.neckgeom\\.bench\\.(" + which + ")")
                .warmupIterations(warmups)
                .warmupTime(TimeValue.milliseconds(200))
                .measurementIterations(slices)
                .measurementTime(TimeValue.milliseconds(10))
                .forks(1)
                .verbosity(VerboseMode.SILENT)
                .shouldFailOnError(true)
                .addProfiler(GCProfiler.class);
        for (int i = 0; i < parameters.length; i += 2) {
            options.param(parameters[i], parameters[i + 1]);
        }
        scores.add(new Runner(options.build()).run());
    }

    private static List<String> heap(String size) {
        return List.of("-Xms" + size, "-Xmx" + size, "-XX:+AlwaysPreTouch");
    }

    /** What a script finds, or nothing where no python3 has what it imports. */
    private static Map<String, String> python(String name, String... given) throws IOException, InterruptedException {
        Path script = Files.createTempFile("bench", ".py");
        try (var text = Measure.class.getResourceAsStream("/bench/" + name)) {
            Files.write(script, text.readAllBytes());
            // The first on the path, then the system's own, which may have packages the first lacks.
            for (String python : List.of("python3", "/usr/bin/python3")) {
                try {
                    Map<String, String> found = new HashMap<>();
                    List<String> command = new ArrayList<>(List.of(python, script.toString()));
                    command.addAll(List.of(given));
                    for (String line : FreshJvm.lines(command)) {
                        String[] words = line.split(" ");
                        found.put(words[0], words[1]);
                    }
                    return found;
                } catch (IOException absent) {
                    System.err.println(python + " leaves out " + name + ": " + absent.getMessage());
                }
            }
            return Map.of();
        } finally {
            Files.delete(script);
        }
    }

    /** A baseline that answers another question is none. */
    private static void agreed(Measured run) {
        if (run.hasOpenTurns()) {
            double ours = new BudgetKernels().quantile(0.975);
            if (!(Math.abs(run.openTurns("high") - ours) <= 1e-8)) {
                throw new IllegalStateException("OpenTURNS' quantile is " + run.openTurns("high") + ", ours " + ours);
            }
        }
        if (run.hasScipy()) {
            double ours = new StateBenchmark().eightLimits().chance().probability();
            // SciPy takes every law as normal; half of ours are rectangles.
            if (!(Math.abs(run.scipy("probability") - ours) <= 0.02)) {
                throw new IllegalStateException("SciPy's chance is " + run.scipy("probability") + ", ours " + ours);
            }
        }
    }

    /** Machine and JVM, as far as they matter. */
    private static String where() throws IOException {
        Path cpus = Path.of("/proc/cpuinfo");
        String processor = Files.exists(cpus)
                ? Files.readAllLines(cpus).stream()
                        .filter(line -> line.startsWith("model name"))
                        .map(line -> line.substring(line.indexOf(':') + 1).strip())
                        .findFirst()
                        .orElse("unknown")
                : System.getProperty("os.arch");
        return String.format(
                Locale.ROOT,
                "%s %s, %d processors, %s",
                System.getProperty("java.vm.name"),
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors(),
                processor);
    }

    private static void write(Path folder, Measured run) throws IOException {
        // What took minutes is there even if a table can't be made of it.
        Files.writeString(folder.resolve("scores.json"), "{\n" + run.scores().toJson() + "\n}\n");
        TargetTable targets = new TargetTable(run);
        String numpy = (run.hasNumpy() ? "; numpy " + run.numpy().get("version") : "")
                + (run.hasOpenTurns() ? "; OpenTURNS " + run.openTurns().get("openturns") : "")
                + (run.hasScipy() ? "; SciPy " + run.scipy().get("version") : "");
        Files.writeString(
                folder.resolve("table.md"),
                "Measured on " + run.where() + numpy + ".\n\n## Costs\n\n" + new CostTable(run).toMarkdown()
                        + "\n## Targets\n\n" + targets.toMarkdown() + "\n## Growth\n\n"
                        + run.growth().toMarkdown());
        Files.writeString(folder.resolve("growth.svg"), run.growth().toSvg());
        Files.writeString(
                folder.resolve("results.json"),
                "{\n  \"where\": \"" + run.where() + numpy + "\",\n  \"scores\": {\n"
                        + run.scores().toJson() + "\n  },\n  \"targets\": [\n" + targets.toJson()
                        + "\n  ],\n  \"growth\": {\n" + run.growth().toJson() + "\n  }\n}\n");
    }

    private static void said(String what, long start) {
        System.err.printf(Locale.ROOT, "%s done after %.0f s%n", what, (System.nanoTime() - start) * 1e-9);
    }
}
