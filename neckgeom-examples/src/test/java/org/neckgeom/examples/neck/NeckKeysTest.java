package org.neckgeom.examples.neck;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.neckgeom.form.Json;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** Reader, JSON Schema and shipped files know the same keys. */
class NeckKeysTest {

    private static final Path SCHEMA = Path.of("src/main/necks/neck.schema.json");

    private static final Pattern DATA_ONLY = Pattern.compile(String.join(
            "|",
            // a reading as its value and uncertainty, where a maker writes what was read
            ".*\\.(value|standard uncertainty|degrees of freedom)",
            "trial cuts\\.(moved\\.setting uncertainty|wall correlation)",
            // a spread of any kind, where a maker writes within or a deviation
            ".*\\.(flat half-width|from their mean|shift)",
            // a budget without a plan has its centring here; a plan knows it
            "workmanship\\.centring(\\..*)?",
            // a wood with every figure and its source, where a maker writes density, stiffness and shrinkage
            "((fingerboard|laminated)\\.)?wood\\.(botanical name|figures(\\..*)?)",
            // an order of work that is none of the usual ones
            "order of work\\.(start|operations(\\..*)?)"));

    /**
     * The schema is JSON, and JSON is YAML 1.2, so a general YAML reader reads it: what the file says is compared, not how
     * it was written.
     */
    @Test
    void schemaFile_isTheOneTheReaderWrites() throws IOException {
        assertThat(Files.readString(SCHEMA))
                .as("mvn -q compile exec:java -Dexec.args=--schema writes it")
                .isEqualTo(NeckFile.schema());
    }

    @Test
    void shippedNecks_useEveryKeyThatCanStandInOne() {
        Set<String> used = new TreeSet<>();
        for (String name : ShippedNecks.names()) {
            used.addAll(
                    keysOfFile(new Load(LoadSettings.builder().build()).loadFromString(ShippedNecks.text(name)), ""));
        }
        // Other kinds of neck have the keys that stand in comments of the octave mandolin.
        for (String name : KindNecks.names()) {
            used.addAll(keysOfFile(new Load(LoadSettings.builder().build()).loadFromString(KindNecks.text(name)), ""));
        }
        Set<String> unused = new TreeSet<>(keysOfSchema(schema(), ""));
        unused.removeAll(used);
        unused.removeIf(key -> key.startsWith("fingerboard.wood."));
        unused.removeIf(NeckKeysTest::isOfDataOnly);
        // No shipped neck has been made yet: what was read on one stands in a comment, which AsMadeTest reads.
        unused.removeIf(key -> key.equals("measured") || key.startsWith("measured."));
        // Every kind of step is told in the same ways, each of which some step is told in.
        unused.removeIf(key -> key.matches("workmanship\\..*\\.(half-width|distribution|standard uncertainty)"));
        // A copy in inches prints in inches: the key stands in a comment, which PlanANeckTest makes live.
        unused.remove("print in");
        // A cut read again and a piece that was not measured stand in a comment, which ShippedNecksTest makes live.
        unused.remove("trial cuts.again");
        // One calliper reads all of it: another one's zero stands in a comment, which NeckFileTest makes live.
        unused.remove("shop.blank calliper zero");
        unused.remove("trial cuts.ripped with blank");
        // A turn down to the cap, posts with washers, an outline and slots stand in comments, which NeckFileTest makes
        // live.
        unused.removeIf(
                key -> key.matches(
                        "back\\.heel transition\\.(slope|cap length)|head\\.(posts\\.(washer )?diameter|outline(\\..*)?|slot.*)"));
        // The worst air until the wood is in balance: a number of days stands in a comment, which NeckFileTest makes
        // live.
        unused.remove("weather.days");
        // Limits beside the three usual ones stand in a comment; the generated neck files have them live.
        unused.removeIf(key -> key.matches("limits\\.(board offset|wood beside channel|bridge height|string length)"));
        // A strip's wood is a wood.
        unused.removeIf(key -> key.startsWith("laminated.wood."));

        assertThat(unused).isEmpty();
    }

    @Test
    void shippedNecks_explainEachKeyInALine() {
        List<String> unexplained = new ArrayList<>();
        Set<String> keys = keysOfSchema(schema(), "");
        for (String path : keys) {
            String key = path.substring(path.lastIndexOf('.') + 1);
            if (path.startsWith("measured.") || hasKeysInside(path, keys) || isOfDataOnly(path)) {
                continue;
            }
            boolean explained = ShippedNecks.names().stream()
                    .flatMap(name -> ShippedNecks.text(name).lines())
                    .anyMatch(line ->
                            line.strip().replaceFirst("^(# +)*(- )?", "").startsWith(key + ":") && line.contains(" # ")
                                    || line.matches(".*[{ ]" + key + ": .*}.* # .*"));
            if (!explained) {
                unexplained.add(key);
            }
        }

        assertThat(unexplained).isEmpty();
    }

    @Test
    void keys_areExplainedInOneLineEach() {
        assertThat(NeckFile.keys().lines())
                .hasSizeGreaterThan(90)
                .allSatisfy(line -> assertThat(line).matches(" *(\\* )? *[a-z][a-z -]*: +\\S.*"));
    }

    private static boolean hasKeysInside(String path, Set<String> keys) {
        return keys.stream().anyMatch(other -> other.startsWith(path + "."));
    }

    /**
     * Keys by which a plan that was made in code is written without loss; they are not written at a bench, so that no shipped
     * neck shows them. The fuzzer's more-keys.yaml has each, which NeckFileFuzzTest holds.
     */
    private static boolean isOfDataOnly(String path) {
        return DATA_ONLY.matcher(path).matches();
    }

    private static Object schema() {
        return Json.read(NeckFile.schema()).plain();
    }

    /** Every property anywhere in a schema, through lists, alternatives and items. */
    static Set<String> keysOfSchema(Object schema, String path) {
        Set<String> keys = new LinkedHashSet<>();
        if (schema instanceof List<?> alternatives) {
            alternatives.forEach(each -> keys.addAll(keysOfSchema(each, path)));
        } else if (schema instanceof Map<?, ?> map) {
            if (map.get("properties") instanceof Map<?, ?> properties) {
                properties.forEach((name, inner) -> {
                    String full = path.isEmpty() ? name.toString() : path + "." + name;
                    keys.add(full);
                    keys.addAll(keysOfSchema(inner, full));
                });
            }
            keys.addAll(keysOfSchema(map.get("items"), path));
            keys.addAll(keysOfSchema(map.get("oneOf"), path));
        }
        return keys;
    }

    private static Set<String> keysOfFile(Object file, String path) {
        Set<String> keys = new LinkedHashSet<>();
        if (file instanceof List<?> items) {
            items.forEach(each -> keys.addAll(keysOfFile(each, path)));
        } else if (file instanceof Map<?, ?> map) {
            map.forEach((name, inner) -> {
                String full = path.isEmpty() ? name.toString() : path + "." + name;
                keys.add(full);
                keys.addAll(keysOfFile(inner, full));
            });
        }
        return keys;
    }
}
