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
import org.junit.jupiter.api.Test;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Shape;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** Reader, JSON Schema and shipped files know the same keys. */
class NeckKeysTest {

    private static final Path SCHEMA = Path.of("src/main/necks/neck.schema.json");

    /**
     * The schema is JSON, and JSON is YAML 1.2, so a general YAML reader reads it: what the file says is compared, not how
     * it was written.
     */
    @Test
    void schemaFile_hasEveryKeyOfTheReaderAndNoOther() throws IOException {
        Object schema = new Load(LoadSettings.builder().build()).loadFromString(Files.readString(SCHEMA));

        assertThat(keysOfSchema(schema, "")).containsExactlyInAnyOrderElementsOf(keysOfReader(NeckKeys.SHAPE, ""));
    }

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
        Set<String> unused = new TreeSet<>(keysOfReader(NeckKeys.SHAPE, ""));
        unused.removeAll(used);
        unused.removeIf(key -> key.startsWith("fingerboard.wood."));
        // No shipped neck has been made yet: what was read on one stands in a comment, which AsMadeTest reads.
        unused.removeIf(key -> key.equals("as made") || key.startsWith("as made."));
        // Every kind of step is told in the same ways, each of which some step is told in.
        unused.removeIf(key -> key.matches("workmanship\\..*\\.(within|lies|deviation)"));
        // A copy in inches prints in inches: the key stands in a comment, which PlanANeckTest makes live.
        unused.remove("print in");
        // A cut read again and a piece that was not measured stand in a comment, which ShippedNecksTest makes live.
        unused.remove("readings.again");
        // One calliper reads all of it: another one's zero stands in a comment, which NeckFileTest makes live.
        unused.remove("shop.blank calliper zero");
        unused.remove("readings.ripped with blank");

        assertThat(unused).isEmpty();
    }

    @Test
    void shippedNecks_explainEachKeyInALine() {
        List<String> unexplained = new ArrayList<>();
        Set<String> asMade = new TreeSet<>(namesOfLeaves(AsMadePart.SHAPE));
        for (String key : namesOfLeaves(NeckKeys.SHAPE)) {
            if (asMade.contains(key)) {
                continue;
            }
            boolean explained = ShippedNecks.names().stream()
                    .flatMap(name -> ShippedNecks.text(name).lines())
                    .anyMatch(line ->
                            line.strip().replaceFirst("^(# +)*(- )?", "").startsWith(key + ":")
                                    && line.contains(" # "));
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

    static Set<String> keysOfReader(Shape shape, String path) {
        Set<String> keys = new LinkedHashSet<>();
        for (Key<?> key : shape.keys()) {
            String full = path.isEmpty() ? key.name() : path + "." + key.name();
            keys.add(full);
            keys.addAll(key.kind()
                    .inside()
                    .map(inner -> keysOfReader(inner, full))
                    .orElseGet(() -> keysOfSchema(key.kind().schema(), full)));
        }
        return keys;
    }

    private static Set<String> namesOfLeaves(Shape shape) {
        Set<String> keys = keysOfReader(shape, "");
        Set<String> names = new LinkedHashSet<>();
        keys.stream()
                .filter(key -> !key.contains(".figures") && !key.endsWith("botanical name")) // how JSON has a wood
                .filter(key -> keys.stream().noneMatch(other -> other.startsWith(key + ".")))
                .forEach(key -> names.add(key.substring(key.lastIndexOf('.') + 1)));
        return names;
    }

    /** Every property anywhere in a schema, through lists, alternatives and items. */
    private static Set<String> keysOfSchema(Object schema, String path) {
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
