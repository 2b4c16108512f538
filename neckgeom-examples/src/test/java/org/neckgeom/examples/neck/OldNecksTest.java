package org.neckgeom.examples.neck;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.examples.Uncommented;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Tree;
import org.neckgeom.page.Document;
import org.neckgeom.plan.Job;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/** Neck files and JSON as they were written before their keys had the names of today: they are read to equal plans. */
class OldNecksTest {

    private static final Path BEFORE = Path.of("src/test/resources/keys-before");
    private static final Path VERSION_1_JSON = Path.of("../neckgeom-core/src/test/resources/version-1-json");

    /** Keys that may be together, by their places: of an error, and of a wood. */
    private static final List<List<Integer>> ERRORS =
            List.of(List.of(0, 1, 6), List.of(0, 2, 6), List.of(3, 4, 6), List.of(5, 6));

    private static final List<List<Integer>> WOODS = List.of(List.of(0, 1, 2, 3, 4, 5), List.of(0, 5, 6));

    /** The necks that were shipped then. */
    static Stream<String> names() {
        return Stream.of("octave-mandolin.yaml", "short-scale-bass.yaml", "fanned-baritone.yaml");
    }

    @ParameterizedTest
    @MethodSource("names")
    void shippedNecks_ofBefore_readToEqualPlans(String name) throws IOException {
        String old = Files.readString(BEFORE.resolve(name));

        assertThat(old).contains("width at nut:", "end play:", "wood left:").isNotEqualTo(ShippedNecks.text(name));
        assertThat(NeckFile.parse(name, old)).isEqualTo(NeckFile.read(name));
        assertThat(Document.hash(NeckFile.parse(name, old))).isEqualTo(Document.hash(NeckFile.read(name)));
    }

    /** The comments of the octave mandolin's file, uncommented, have keys that no neck has live. */
    @Test
    void commentedBlocks_ofBefore_readToEqualPlans() throws IOException {
        String old = Files.readString(BEFORE.resolve(ShippedNecks.DEFAULT));
        String now = ShippedNecks.text(ShippedNecks.DEFAULT);
        for (List<String> keys : List.of(
                List.of("readings", "trial cuts"),
                List.of("workmanship", "workmanship"),
                List.of("as made", "measured"))) {
            String oldBlock = Uncommented.block(old, keys.get(0));
            String newBlock = Uncommented.block(now, keys.get(1));

            assertThat(oldBlock).isNotEqualTo(old);
            assertThat(NeckFile.parse("old.yaml", oldBlock))
                    .as(keys.get(0))
                    .isEqualTo(NeckFile.parse("new.yaml", newBlock))
                    .isNotEqualTo(NeckFile.parse("new.yaml", now));
        }
    }

    @Test
    void jsonOfVersion2_ofBefore_readsToAnEqualPlan() throws IOException {
        String old = Files.readString(BEFORE.resolve("octave-mandolin.json"));
        Job read = Document.PLAN.read(old);

        assertThat(old).contains("\"widthAtNut\"", "\"firstDepth\"", "\"endPlay\"");
        assertThat(read).isEqualTo(NeckFile.read(ShippedNecks.DEFAULT));
        assertThat(Document.PLAN.read(Document.PLAN.json(read))).isEqualTo(read);
        assertThat(Document.PLAN.json(read))
                .contains("\"nutWidth\"", "\"depths\"")
                .doesNotContain("\"widthAtNut\"");
    }

    /** Neck files and JSON that the same code of version 1 read and wrote. */
    @ParameterizedTest
    @MethodSource("names")
    void jsonOfVersion1_readsToThePlanOfItsNeckFile(String name) throws IOException {
        String file = Files.readString(Path.of("src/test/resources/version-1").resolve(name));
        String json = Files.readString(VERSION_1_JSON.resolve(name.replace(".yaml", ".json")));

        assertThat(json).contains("\"version\": 1,", "\"design\": {", "\"details\": {");
        assertThat(Document.PLAN.read(json)).isEqualTo(NeckFile.parse(name, file));
    }

    /**
     * The octave mandolin with its comments live and printed in inches, its readings on the neck with their uncertainties as
     * JSON has them; and one with a bar, a head in one piece, and every default that JSON states.
     */
    @ParameterizedTest
    @ValueSource(strings = {"octave-mandolin-worked", "octave-mandolin-bar"})
    void sampleOfVersion1_readsToThePlanOfItsNeckFile(String name) throws IOException {
        Job file = NeckFile.parse(name, Files.readString(VERSION_1_JSON.resolve(name + ".yaml")));
        Job read = Document.PLAN.read(Files.readString(VERSION_1_JSON.resolve(name + ".json")));

        assertThat(read).isEqualTo(file).isNotEqualTo(NeckFile.read(ShippedNecks.DEFAULT));
        assertThat(read.style()).isEqualTo(file.style());
    }

    /**
     * Blocks of the fuzzer that no neck has live, as they were and as they are, each beside the octave mandolin's keys: equal
     * plans, or refused by the same rules. Bar and strips are new.
     */
    @Test
    void moreKeys_ofBefore_readToEqualPlans() throws IOException {
        Map<String, Object> old = map(Files.readString(BEFORE.resolve("more-keys.yaml")));
        Map<String, Object> now = map(Files.readString(Path.of("src/test/resources/fuzz/more-keys.yaml")));
        // Keys that came since.
        now.keySet().removeAll(List.of("bar", "laminated", "back", "head", "neck set", "strings", "weather"));
        List<Map.Entry<String, Object>> today = List.copyOf(now.entrySet());
        assertThat(old).hasSameSizeAs(today);
        int place = 0;
        int plans = 0;
        for (Map.Entry<String, Object> block : old.entrySet()) {
            Map.Entry<String, Object> blockNow = today.get(place++);
            List<Object> variants = variants(block.getValue());
            for (int i = 0; i < variants.size(); i++) {
                Object expected = octaveWith(
                        blockNow.getKey(), variants(blockNow.getValue()).get(i));

                assertThat(octaveWith(block.getKey(), variants.get(i)))
                        .as("%s: %s", block.getKey(), variants.get(i))
                        .isEqualTo(expected);
                plans += expected instanceof Job ? 1 : 0;
            }
        }
        assertThat(plans).as("plans that are read").isGreaterThan(30);
    }

    /** A block as often as needed for each of its keys to be in one without its rivals. */
    private static List<Object> variants(Object block) {
        if (!(block instanceof Map<?, ?> map)) {
            return List.of(block);
        }
        List<Map<Object, Object>> all = new ArrayList<>(List.of(new LinkedHashMap<>()));
        List<Object> found = new ArrayList<>();
        for (Map.Entry<?, ?> entry : map.entrySet()) {
            if (entry.getValue() instanceof Map<?, ?> inner && (inner.size() == 7)) {
                for (List<Integer> some : inner.containsKey("like") ? WOODS : ERRORS) {
                    // A job has no centring, whose keys are those of any step.
                    found.add(
                            Map.of(entry.getKey().equals("centring") ? "stopping" : entry.getKey(), some(inner, some)));
                }
            } else {
                all.get(0).put(entry.getKey(), entry.getValue());
            }
        }
        if (!all.get(0).isEmpty()) {
            found.add(all.get(0));
        }
        return found;
    }

    private static Map<Object, Object> some(Map<?, ?> map, List<Integer> places) {
        Map<Object, Object> some = new LinkedHashMap<>();
        List<Map.Entry<?, ?>> entries = List.copyOf(map.entrySet());
        places.forEach(place ->
                some.put(entries.get(place).getKey(), entries.get(place).getValue()));
        return some;
    }

    private static Object octaveWith(String key, Object block) throws IOException {
        Map<String, Object> octave = map(ShippedNecks.text(ShippedNecks.DEFAULT));
        octave.put(key, merged(octave.get(key), block));
        try {
            return Job.TABLE.read(Tree.of(octave));
        } catch (Refusal refused) {
            return refused.faults().stream().map(Fault::rule).toList();
        }
    }

    private static Object merged(Object old, Object more) {
        if (!(old instanceof Map<?, ?> map) || !(more instanceof Map<?, ?> others)) {
            return more;
        }
        Map<Object, Object> both = new LinkedHashMap<>(map);
        others.forEach((key, value) -> {
            boolean isWhole = key.equals("wood") || key.toString().startsWith("feeler ");
            both.remove(key.equals("feeler leaves") ? "feeler gauges" : key);
            both.put(key, isWhole ? value : merged(map.get(key), value));
        });
        return both;
    }

    /** All plain values as texts, as a neck file has them. */
    @SuppressWarnings("unchecked") // the keys of these files are texts
    private static Map<String, Object> map(String yaml) {
        LoadSettings texts =
                LoadSettings.builder().setSchema(new FailsafeSchema()).build();
        return (Map<String, Object>) new Load(texts).loadFromString(yaml);
    }

    /** A bar was a kind of rod. */
    @Test
    void aBar_ofBefore_isABar() throws IOException {
        String old = Files.readString(BEFORE.resolve(ShippedNecks.DEFAULT))
                .replace("kind: two-way ", "kind: carbon bar ")
                .replaceFirst("\n  adjusted at:[^\n]*\n  thread pitch:[^\n]*", "");
        String now = ShippedNecks.text(ShippedNecks.DEFAULT)
                .replace("\ntruss rod:", "\nbar:")
                .replace("kind: two-way ", "material: carbon ")
                .replaceFirst("\n  adjuster:[^\n]*\n  thread pitch:[^\n]*", "");

        assertThat(NeckFile.parse("old.yaml", old)).isEqualTo(NeckFile.parse("new.yaml", now));
        assertThat(NeckFile.parse("old.yaml", old)
                        .neck()
                        .channel()
                        .orElseThrow()
                        .rod())
                .isEmpty();
    }
}
