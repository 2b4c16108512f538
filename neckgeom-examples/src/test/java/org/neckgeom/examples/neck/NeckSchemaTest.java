package org.neckgeom.examples.neck;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.examples.file.FileRefused;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The shipped JSON Schema judged by a general validator of JSON Schema (json-schema-validator, draft 2020-12): an editor
 * must think of a neck file what the reader thinks of it, wherever a schema can tell.
 */
class NeckSchemaTest {

    private Schema schema;

    @BeforeEach
    void readSchema() throws IOException {
        String text = Files.readString(Path.of("src/main/necks/neck.schema.json"));
        schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text);
    }

    static List<String> shipped() {
        return ShippedNecks.names();
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void schema_acceptsTheShippedNecks(String name) {
        assertThat(schema.validate(tree(ShippedNecks.text(name)))).isEmpty();
    }

    /** By the meta-schema of JSON Schema, draft 2020-12, as the validator's library brings it. */
    @Test
    void schema_isASchema() throws IOException {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));

        assertThat(meta.validate(tree(Files.readString(Path.of("src/main/necks/neck.schema.json")))))
                .isEmpty();
        assertThat(meta.validate(tree("{type: 3}"))).isNotEmpty();
    }

    @Test
    void schema_refusesAnEmptyGroup() {
        assertThat(schema.validate(tree("{}"))).hasSizeGreaterThan(5);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "scale: 560 mm | scale: 560",
                "scale: 560 mm | scale: 560 deg",
                "kerf: 1.8 mm | kerf: 1,8 mm",
                "kerf: 1.8 mm | kerv: 1.8 mm",
                "name: Octave | nmae: Octave",
                "frets: 20 | frets: 0",
                "frets: 20 | frets: many",
                "shape: rounded | shape: round",
                ", {fret: 12, depth: 16.5 mm} | ''",
                "{fret: 12, depth: 16.5 mm} | 12",
                "pitches: [G2, D3, | pitches: [G2, H3,",
                "doubled: yes | doubled: true",
                "humidity: 45 % | humidity: 45",
                "tensions: 95 N | tensions: [95 N, 90 mm]",
                "joint: in the head | joint: {}"
            })
    void schema_refusesWhatTheReaderRefuses(String good, String bad) {
        String text = ShippedNecks.text(ShippedNecks.DEFAULT);
        assertThat(text).contains(good);
        String spoiled = text.replace(good, bad);

        assertThat(schema.validate(tree(spoiled))).isNotEmpty();
        assertThat(isReadable(spoiled)).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "scale: 560 mm | scale: 22 3/64 in",
                "tensions: 95 N | tensions: [95 N, 21 lbf, 90 N, 88.5 N]",
                "kerf: 1.8 mm | kerf: 70 thou",
                "angle: 13 deg | angle: 0.22689 rad",
                "wood: black walnut | wood: {name: pear, density: 690 kg/m3, modulus: 8 GPa, like: cherry}",
                "frets: 20 | frets: 24",
                "pitches: [G2, D3, | pitches: [F#2, Db3,"
            })
    void schema_acceptsWhatTheReaderAccepts(String good, String other) {
        String text = ShippedNecks.text(ShippedNecks.DEFAULT);
        assertThat(text).contains(good);
        String changed = text.replace(good, other);

        assertThat(schema.validate(tree(changed))).isEmpty();
        assertThat(isReadable(changed)).isTrue();
    }

    private static JsonNode tree(String yaml) {
        Object plain = new Load(LoadSettings.builder().build()).loadFromString(yaml);
        return JsonMapper.builder().build().valueToTree(plain);
    }

    private static boolean isReadable(String text) {
        try {
            return NeckFile.parse("n.yaml", text).neck() != null;
        } catch (FileRefused refused) {
            return false;
        }
    }
}
