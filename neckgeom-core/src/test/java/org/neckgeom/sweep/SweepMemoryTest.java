package org.neckgeom.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.neckgeom.units.ShopUnits.mm;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A million designs of a kilobyte each, a gigabyte in all, go through a heap of 12 MB. */
@Tag("long")
class SweepMemoryTest {

    /** A design that weighs a kilobyte. */
    record Heavy(byte[] ballast, double value) {

        Heavy(double value) {
            this(new byte[1024], value);
        }
    }

    @Test
    void results_needNoMoreMemoryForAMillion() throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx12m",
                        "-XX:+UseSerialGC",
                        "-cp",
                        classPath(),
                        SweepMemoryTest.class.getName())
                .redirectErrorStream(true)
                .start();

        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();

        assertThat(process.waitFor()).as(printed).isZero();
        // Of 0 to 999 a thousand times: 1000 times 999 times 1000 by two.
        assertThat(printed).isEqualTo("1000000 designs, sum 4.995E8, best 0 1 2, sum in parallel 4.995E8");
    }

    public static void main(String[] arguments) {
        Sweep<Heavy> sweep = Sweep.of(new Heavy(0))
                .over("a", Axis.steps(mm(0), mm(999), mm(1)), (heavy, a) -> new Heavy(a.value()))
                .over("b", Axis.steps(mm(0), mm(999), mm(1)), (heavy, b) -> new Heavy(b.value()));
        double sum = sweep.results(Heavy::value)
                .mapToDouble(result -> result.answer().orElseThrow())
                .sum();
        String best = sweep.results(heavy -> heavy).collect(Best.smallest(3, heavy -> heavy.value() + 1)).stream()
                .map(result -> String.valueOf(result.index() / 1000))
                .collect(Collectors.joining(" "));
        double parallel = sweep.results(Heavy::value)
                .parallel()
                .mapToDouble(result -> result.answer().orElseThrow())
                .sum();
        System.out.println(sweep.size() + " designs, sum " + sum + ", best " + best + ", sum in parallel " + parallel);
    }

    private static String classPath() {
        return Stream.of("java.class.path", "jdk.module.path", "surefire.test.class.path")
                .map(key -> System.getProperty(key, ""))
                .flatMap(paths -> Stream.of(paths.split(File.pathSeparator)))
                .filter(path -> !path.isEmpty())
                .distinct()
                .collect(Collectors.joining(File.pathSeparator))
                .concat(File.pathSeparator
                        + List.of(home(SweepMemoryTest.class), home(Sweep.class)).stream()
                                .distinct()
                                .collect(Collectors.joining(File.pathSeparator)));
    }

    private static String home(Class<?> type) {
        return Path.of(java.net.URI.create(
                        type.getProtectionDomain().getCodeSource().getLocation().toString()))
                .toString();
    }
}
