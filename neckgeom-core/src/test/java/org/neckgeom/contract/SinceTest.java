package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.module.ModuleDescriptor.Version;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.plan.Job;
import org.neckgeom.units.Amount;

/**
 * Every exported package says since when it is there, in its package-info and for all that was in it from the start;
 * what came later says so itself.
 */
class SinceTest {

    private static final Pattern SINCE = Pattern.compile("@since (\\S+)");
    private static final Pattern REVISION = Pattern.compile("<revision>([^<]+?)(-SNAPSHOT)?</revision>");

    static Stream<Path> packages() {
        return Stream.concat(
                in("neckgeom-api", ApiList.ofModuleOf(Amount.class)),
                in("neckgeom-core", ApiList.ofModuleOf(Job.class)));
    }

    private static Stream<Path> in(String folder, ApiList module) {
        return module.packages().stream()
                .map(name -> sources(folder).resolve(name.replace('.', '/')).resolve("package-info.java"));
    }

    private static Path sources(String folder) {
        return Path.of("..", folder, "src", "main", "java");
    }

    @ParameterizedTest
    @MethodSource("packages")
    void package_saysSinceWhen(Path info) throws IOException {
        assertThat(versions(Files.readString(info))).as("@since in %s", info).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"neckgeom-api", "neckgeom-core"})
    void sources_nameNoVersionThatIsNotYetThere(String folder) throws IOException {
        Matcher revision = REVISION.matcher(Files.readString(Path.of("..", "pom.xml")));
        assertThat(revision.find()).isTrue();
        Version current = Version.parse(revision.group(1));

        try (Stream<Path> files = Files.walk(sources(folder))) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".java")).toList()) {
                for (String version : versions(Files.readString(file))) {
                    assertThat(version).as("@since in %s", file).matches("\\d+\\.\\d+\\.\\d+");
                    assertThat(Version.parse(version)).as("@since in %s", file).isLessThanOrEqualTo(current);
                }
            }
        }
    }

    private static List<String> versions(String source) {
        return SINCE.matcher(source)
                .results()
                .map((MatchResult found) -> found.group(1))
                .toList();
    }
}
