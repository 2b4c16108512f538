package org.neckgeom.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.budget.Budget;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Json;
import org.neckgeom.form.Tree;
import org.neckgeom.neck.Neck;
import org.neckgeom.plan.Job;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Documents of version 1 as that version wrote them. The tests of the examples hold each plan to its neck file.
 */
class Version1Test {

    private static final Path FIXTURES = Path.of("src/test/resources/version-1-json");
    private static final JsonMapper JACKSON = JsonMapper.shared();

    static List<String> plans() {
        return List.of(
                "octave-mandolin",
                "short-scale-bass",
                "fanned-baritone",
                "octave-mandolin-worked",
                "octave-mandolin-bar");
    }

    private static String text(String name) throws IOException {
        return Files.readString(FIXTURES.resolve(name + ".json"));
    }

    private static Tree moved(Tree tree) {
        return Version1.JOB.moved(tree);
    }

    @ParameterizedTest
    @MethodSource("plans")
    void plan_isWrittenInTheVersionOfToday_andReadsBackEqual(String name) throws IOException {
        Job job = Document.PLAN.read(text(name));
        String today = Document.PLAN.json(job);

        assertThat(today).contains("\"version\": 2");
        assertThat(Document.PLAN.read(today)).isEqualTo(job);
    }

    @ParameterizedTest
    @MethodSource("plans")
    void moves_appliedTwice_changeNothing(String name) throws IOException {
        Tree old = Json.read(text(name));
        Tree once = moved(old);
        Tree today = Json.read(Document.PLAN.json(Document.PLAN.read(text(name))));

        assertThat(once).isNotEqualTo(old);
        assertThat(moved(once)).isEqualTo(once);
        assertThat(moved(today)).isEqualTo(today);
    }

    /** A move without a fixture would be a guess. */
    @Test
    void moves_haveEachAFixture() throws IOException {
        StringBuilder all = new StringBuilder();
        for (String name : plans()) {
            all.append(text(name));
        }
        for (String line : Version1.JOB.lines()) {
            String from = line.split(" -> ", -1)[0];
            if (from.matches("[a-zA-Z.]+")) {
                assertThat(all).contains('"' + from.substring(from.lastIndexOf('.') + 1) + '"');
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"octave-mandolin", "short-scale-bass", "fanned-baritone"})
    void design_isTheNeckOfThePlan_withoutWhatDetailsHad(String name) throws IOException {
        ObjectNode plan = (ObjectNode) JACKSON.readTree(text(name));
        Neck neck = Document.DESIGN.read(text(name + "-design"));
        for (String key : List.of("blank", "shop", "limits", "weather", "order", "workmanship", "readings", "steps")) {
            plan.remove(key);
        }
        Stream.of("details", "scarf", "neckSet").forEach(plan::remove);

        assertThat(neck)
                .isEqualTo(Document.DESIGN.read(
                        plan.put("format", "neckgeom design").toString()));
        assertThat(Document.DESIGN.read(Document.DESIGN.json(neck))).isEqualTo(neck);
        assertThat(neck.name()).isEqualTo(Document.PLAN.read(text(name)).neck().name());
    }

    @ParameterizedTest
    @ValueSource(strings = {"short-scale-bass", "octave-mandolin-worked"})
    void budgets_areReadWithEveryComponentAndWrittenAnew(String name) throws IOException {
        for (int i = 1; i <= 4; i++) {
            String text = text(name + "-budget-" + i);
            Budget<?> read = Document.BUDGET.read(text);

            assertThat(read.components()).hasSize(text.split("\"sensitivity\"", -1).length - 1);
            assertThat(text).contains("\"title\": \"" + read.title() + "\"");
            assertThat(Document.BUDGET.read(Document.BUDGET.json(read))).isEqualTo(read);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "normal, standardDeviation, standardUncertainty",
        "rectangular, halfWidth, halfWidth",
        "triangular, halfWidth, halfWidth",
        "arcsine, halfWidth, halfWidth",
        "bias, shift, shift"
    })
    void spread_ofEachLaw(String law, String size, String now) {
        String shift = size.equals("shift") ? "" : ", \"shift\": {\"value\": 0.5, \"unit\": \"mm\"}";
        String json =
                "{\"format\": \"neckgeom budget\", \"version\": 1, \"title\": \"t\", \"unit\": \"mm\", \"components\":"
                        + " [{\"name\": \"a\", \"step\": \"s\", \"sensitivity\": 2, \"spread\": {\"law\": \"" + law
                        + "\", \"" + size
                        + "\": {\"value\": 0.25, \"unit\": \"mm\"}" + shift + "}}]}";

        String today = Document.BUDGET.json(Document.BUDGET.read(json));

        assertThat(today).contains('"' + now + "\": { \"value\": 0.25").doesNotContain("\"law\"");
        assertThat(today.contains("\"distribution\": \"" + law + '"'))
                .isEqualTo(List.of("triangular", "arcsine").contains(law));
        assertThatThrownBy(() -> Document.BUDGET.read(json.replace('"' + size + '"', "\"size\"")))
                .hasMessageContaining("components[1].spread");
    }

    /** What has no key today is held to what it follows from. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "octave-mandolin | scarf.pitch | {'value': 14, 'unit': 'deg'}",
                "octave-mandolin | scarf.shaft | {'value': 21, 'unit': 'mm'}",
                "octave-mandolin | scarf.head | {'value': 16, 'unit': 'mm'}",
                "octave-mandolin | scarf.nutLedge | {'value': 4, 'unit': 'mm'}",
                "octave-mandolin | scarf.offHeadFace | {'value': 0.5, 'unit': 'mm'}",
                "octave-mandolin | scarf.offShaftFace | {'value': 0.5, 'unit': 'mm'}",
                "octave-mandolin | scarf.offHeadBack | {'value': 0.5, 'unit': 'mm'}",
                "short-scale-bass | scarf.veneer | {'value': 0.1, 'unit': 'in'}",
                "short-scale-bass | scarf.backVeneer | {'value': 0.1, 'unit': 'in'}",
                "octave-mandolin | neckSet.scale | {'value': 561, 'unit': 'mm'}",
                "octave-mandolin | neckSet.bodyAtFret | 15",
                "octave-mandolin | neckSet.divisions | 19",
                "octave-mandolin | details.overstand | {'value': 2, 'unit': 'mm'}",
                "octave-mandolin | details.nutSlotHeight | {'value': 7.6, 'unit': 'mm'}",
                "short-scale-bass | details.fallAway.start | {'value': 18, 'unit': 'in'}",
                "short-scale-bass | details.fallAway.end | {'value': 21, 'unit': 'in'}",
                "fanned-baritone | details.fannedFrets.divisions | 19",
                "fanned-baritone | details.fannedFrets.spreadAtNut | {'value': 39, 'unit': 'mm'}",
                "fanned-baritone | details.fannedFrets.spreadAtSaddle | {'value': 57, 'unit': 'mm'}",
                "fanned-baritone | details.stringsAtNut.centres[3] | {'value': -3.5, 'unit': 'mm'}",
                "fanned-baritone | details.stringsAtSaddle.centres[5] | {'value': 17.3, 'unit': 'mm'}",
                "fanned-baritone | details.stringsAtNut.diameters[2] | {'value': 1.3, 'unit': 'mm'}",
                "octave-mandolin | blank.wood.name | \"another\"",
            })
    void contradiction_isRefusedAtItsPlace(String name, String path, String value) throws IOException {
        ObjectNode document = (ObjectNode) JACKSON.readTree(text(name));
        JsonNode at = document;
        String[] keys = path.replace("[", ".[").split("\\.", -1);
        for (int i = 0; i < keys.length - 1; i++) {
            at = child(at, keys[i]);
        }
        String last = keys[keys.length - 1];
        JsonNode other = JACKSON.readTree(value.replace('\'', '"'));
        assertThat(child(at, last)).isNotNull().isNotEqualTo(other);
        if (at instanceof ObjectNode object) {
            object.set(last, other);
        } else {
            ((ArrayNode) at).set(number(last), other);
        }

        Refusal refused = catchThrowableOfType(Refusal.class, () -> Document.PLAN.read(document.toString()));

        assertThat(refused).isNotNull();
        String place = path.startsWith("blank.wood") ? "blank.wood" : path;
        assertThat(refused.faults().stream().map(Fault::path)).contains(place);
        assertThat(refused).hasMessageContaining(place + " must be ").hasMessageContaining(", but was ");
    }

    private static int number(String item) {
        return Integer.parseInt(item.substring(1, item.length() - 1)) - 1;
    }

    private static JsonNode child(JsonNode at, String key) {
        return key.startsWith("[") ? at.get(number(key)) : at.get(key);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"widthAtNut\": { \"value\": 34 | \"widthAtNut\": { \"value\": -34 | design.fingerboard.widthAtNut",
                "\"wantedChance\": 0.95 | \"wantedChance\": 2 | shop.decision.wantedChance",
                "\"kind\": \"two-way\" | \"kind\": \"three-way\" | design.channel.rod.kind",
                "\"inCourse\": 2 | \"inCourse\": 3 | design.strings.inCourse",
                "\"law\": \"triangular\" | \"law\": \"odd\" | workmanship.fitting.law",
                "\"place\": \"in-the-head\" | \"place\": \"nowhere\" | scarf.place",
                "\"headLayout\" | \"headless\" | details",
                "\"bodyAtFret\": 14, | \"bodyAtFret\": 14, \"stranger\": 1, | design",
                "\"neckSet\": { | \"headInOnePiece\": true, \"neckSet\": { | headInOnePiece"
            })
    void badInput_isRefusedWhereItWasWritten(String old, String bad, String path) throws IOException {
        String json = text("octave-mandolin");
        String changed = json.replaceFirst(Pattern.quote(old), Matcher.quoteReplacement(bad));
        assertThat(changed).isNotEqualTo(json);

        Refusal refused = catchThrowableOfType(Refusal.class, () -> Document.PLAN.read(changed));

        assertThat(refused).isNotNull();
        assertThat(refused.faults().stream().map(Fault::path).collect(Collectors.toSet()))
                .contains(path);
    }

    @Test
    void step_thatIsNone_isRefusedAtItsNumber() throws IOException {
        String json = text("fanned-baritone");
        int second = json.indexOf("fenceTowardCutter");
        String bad = json.substring(0, second) + "fencePushed" + json.substring(second + "fenceTowardCutter".length());

        assertThatThrownBy(() -> Document.PLAN.read(bad)).hasMessageStartingWith("steps[2] must be ");
    }

    /** An operation of the maker's own keeps the order whole; words of the usual ones are the library's. */
    @Test
    void order_ofItsOwn_isKept() throws IOException {
        String json = text("octave-mandolin");
        String own = json.replace("glue heel block", "glue two heel blocks");

        Job job = Document.PLAN.read(own);

        assertThat(job).isNotEqualTo(Document.PLAN.read(json));
        assertThat(Document.PLAN.json(job)).contains("\"operations\"", "glue two heel blocks");
        assertThat(Document.PLAN.json(Document.PLAN.read(json)).split("\"answers\"", 2)[0])
                .doesNotContain("\"orderOfWork\"");
    }

    @Test
    void laterVersion_isRefused() throws IOException {
        String later = text("octave-mandolin").replace("\"version\": 1", "\"version\": 3");

        assertThatThrownBy(() -> Document.PLAN.read(later)).hasMessage("version must be 1 or 2, but was 3");
    }
}
