package org.neckgeom.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.annotations.Benchmark;

/** A row of a table whose benchmark is not run would cost the whole run: found before it. */
class MeasureTest {

    private static final Path SOURCES = Path.of("src", "test", "java", "org", "neckgeom", "bench");
    private static final Pattern ROW = Pattern.compile("\"(\\w+Benchmark)\\.(\\w+)");
    private static final Pattern RUN = Pattern.compile("\\w+Benchmark\\b");

    @Test
    void everyRowsBenchmarkIsRun() throws Exception {
        Set<String> run = RUN.matcher(source("Measure"))
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
        int rows = 0;
        for (String table : List.of("CostTable", "TargetTable")) {
            for (MatchResult row : ROW.matcher(source(table)).results().toList()) {
                rows++;
                assertThat(run).contains(row.group(1));
                assertThat(Arrays.stream(Class.forName("org.neckgeom.bench." + row.group(1))
                                        .getDeclaredMethods())
                                .filter(method -> method.isAnnotationPresent(Benchmark.class)))
                        .extracting(method -> method.getName())
                        .contains(row.group(2));
            }
        }
        assertThat(rows).isGreaterThan(40);
    }

    private static String source(String name) throws IOException {
        return Files.readString(SOURCES.resolve(name + ".java"));
    }
}
