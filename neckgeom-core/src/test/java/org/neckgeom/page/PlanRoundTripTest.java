package org.neckgeom.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.Correlation;
import org.neckgeom.drawing.RandomPlans;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.neck.Fan;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.HeelJoint;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.Tenon;
import org.neckgeom.plan.Job;
import org.neckgeom.template.Paper;
import org.neckgeom.template.Template;
import org.neckgeom.testing.Approved;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Plans, designs and budgets to JSON and back, with a general JSON library (Jackson) in between, against a JSON Schema judged
 * by a general validator (json-schema-validator, draft 2020-12).
 */
class PlanRoundTripTest {

    private static final JsonMapper JACKSON = JsonMapper.shared();
    private static final Job OCTAVE = Necks.octavePlan();
    private static final String JSON = Document.PLAN.json(OCTAVE);

    static LongStream seeds() {
        return LongStream.range(0, 6);
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("seeds")
    void planFrom_givesAnEqualPlan_whoseTextIsTheSame(long seed) {
        Job plan = RandomPlans.of(seed);
        String json = Document.PLAN.json(plan);

        Job read = Document.PLAN.read(json);

        assertThat(read).as("seed %d", seed).isEqualTo(plan);
        assertThat(Document.PLAN.json(read)).as("seed %d", seed).isEqualTo(json);
    }

    /** Readings in millimetres, said in fractions of an inch: no figure and no style is lost on the way. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("seeds")
    void planFrom_keepsFractionsOfAnInch(long seed) throws IOException {
        Job plan = RandomPlans.of(seed);
        Job said = plan.printIn(LengthStyle.INCH_FRACTIONS);
        String json = Document.PLAN.json(said);

        Job read = Document.PLAN.read(json);

        assertThat(json).as("seed %d", seed).contains("\"printIn\": \"fractions\"");
        assertThat(errors(json)).as("seed %d", seed).isEmpty();
        assertThat(read).as("seed %d", seed).isEqualTo(plan).isEqualTo(said);
        assertThat(read.style()).isEqualTo(LengthStyle.INCH_FRACTIONS);
        assertThat(read.measured()).hasToString(said.measured().toString());
        assertThat(read.steps()).hasToString(said.steps().toString());
        assertThat(read.workmanship().text(read.style()))
                .isEqualTo(said.workmanship().text(said.style()));
        assertThat(Document.PLAN.json(read)).as("seed %d", seed).isEqualTo(json);
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("seeds")
    void schema_acceptsWhatIsWritten(long seed) throws IOException {
        Job plan = RandomPlans.of(seed);

        assertThat(errors(Document.PLAN.json(plan))).as("seed %d", seed).isEmpty();
        assertThat(errors(Document.DESIGN.json(plan.neck())))
                .as("seed %d", seed)
                .isEmpty();
        assertThat(errors(Document.BUDGET.json(plan.plan().budgets().get(0))))
                .as("seed %d", seed)
                .isEmpty();
    }

    @Test
    void planFrom_takesWhatAnotherLibraryMadeOfIt() {
        JsonNode tree = JACKSON.readTree(JSON);

        assertThat(Document.PLAN.read(JACKSON.writeValueAsString(tree))).isEqualTo(OCTAVE);
    }

    @Test
    void planFrom_needsNoAnswers() {
        ObjectNode tree = (ObjectNode) JACKSON.readTree(JSON);
        tree.remove("answers");

        assertThat(Document.PLAN.read(tree.toString())).isEqualTo(OCTAVE);
    }

    /** Every part but those that may be left out is missed when it is gone, and the sentence names its place. */
    @Tag("long")
    @Test
    void planFrom_missesEveryPart_andKnowsNoOther() {
        Set<String> missed = new TreeSet<>();
        ObjectNode tree = (ObjectNode) JACKSON.readTree(JSON);
        tree.remove("answers");
        walk(tree, "", missed, tree);

        assertThat(missed)
                .contains(
                        "frets",
                        "trussRod",
                        "fingerboard.nutWidth",
                        "head.length",
                        "head.scarf.joint",
                        "neckSet.saddle",
                        "shop.cutter.diameter",
                        "trialCuts[1].nearWall");
        // What holds by default is not written, so that it cannot be missed.
        assertThat(missed).hasSizeGreaterThan(30);
    }

    private static void walk(JsonNode node, String place, Set<String> missed, ObjectNode whole) {
        if (node instanceof ObjectNode object) {
            for (String key : List.copyOf(object.propertyNames())) {
                String there = place.isEmpty() ? key : place + "." + key;
                JsonNode part = object.get(key);
                walk(part, there, missed, whole);
                object.remove(key);
                String without = message(whole);
                if (without != null && without.startsWith(there + " is missing; give ")) {
                    missed.add(there);
                }
                object.set(key, part);
            }
            object.put("stranger", 1);
            assertThat(message(whole))
                    .startsWith(place)
                    .contains("stranger")
                    .containsAnyOf("is not known", "is not a known key");
            object.remove("stranger");
        } else if (node instanceof ArrayNode list) {
            for (int i = 0; i < Math.min(1, list.size()); i++) {
                walk(list.get(i), place + "[" + (i + 1) + "]", missed, whole);
            }
        }
    }

    private static String message(ObjectNode tree) {
        try {
            Document.PLAN.read(tree.toString());
            return null;
        } catch (IllegalArgumentException refused) {
            return refused.getMessage();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"version\": 2 | \"version\": 3 | version must be 1 or 2, but was 3",
                "\"neckgeom plan\" | \"a plan\" | format must be \"neckgeom plan\", but was \"a plan\"",
                "\"frets\": 20 | \"frets\": null | frets has no value; give a whole number from 1 to 200",
                "\"frets\": 20 | \"frets\": 20.5 | frets must be a whole number from 1 to 200, but was 20.5",
                "\"frets\": 20 | \"frets\": 0 | frets must be a whole number from 1 to 200, but was 0",
                "\"frets\": 20 | \"frets\": 20, \"frets\": 20 | JSON must have \"frets\" once only",
                "\"frets\": 20 | \"frets\": 1e999 | JSON must have no number beyond 1.7976931348623157E308",
                "\"value\": 640, \"unit\": \"mm\" | \"value\": 640, \"unit\": \"kg\" | blank.length.unit must be a unit of a length, one of",
                "\"value\": 640, | \"value\": -640, | blank.length must be more than 0 mm, but was -640 mm",
                "\"two-way\" | \"bent\" | trussRod.kind must be one of two-way, single-action, but was \"bent\"",
                "\"nearWall\": | \"nearwall\": | trialCuts[1].nearwall is not a known key; did you mean \"near wall\"?",
            })
    void planFrom_saysWhatIsWrongAndWhere(String from, String to, String message) {
        assertThat(JSON).contains(from);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Document.PLAN.read(changed(from, to)))
                .withMessageStartingWith(message);
    }

    private static String changed(String from, String to) {
        return JSON.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to));
    }

    /** Nesting, length and garbage, none of which may end in anything but a sentence. */
    @Test
    void planFrom_refusesWhatIsMeantToHarm() {
        String name = "\"name\": \"Octave mandolin, walnut\"";
        assertRefused(JSON.replace(name, "\"name\": \"" + "x".repeat(10_000_000) + "\""), "characters");
        assertRefused(JSON.replace(name, "\"name\": \"" + "x".repeat(200_000) + "\""), "no text of more than 100000");
        assertRefused("[".repeat(1_000_000), "no more than 100 levels");
        assertRefused("{\"a\":".repeat(1_000_000), "no more than 100 levels");
        assertRefused(JSON.replace("\"frets\": 20", "\"frets\": " + "9".repeat(1_000_000)), "no number of more");
        assertRefused(JSON.replace("\"frets\": 20", "\"frets\": 0." + "9".repeat(1_000_000)), "no number of more");
        assertRefused(JSON.replace("\"frets\": 20", "\"frets\": 20, \"" + "k".repeat(90_000) + "\": 20"), "kkk");
        assertRefused("\u0000", "JSON must have a value");
        assertRefused("[]", "JSON must be an object, but was a list");
        assertRefused("null", "JSON must be an object, but was null");
    }

    private static void assertRefused(String json, String words) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Document.PLAN.read(json))
                .withMessageContaining(words)
                .satisfies(refused -> assertThat(refused.getMessage().length()).isLessThan(600));
    }

    @Test
    void planFrom_keepsFannedFrets() {
        Fan fan = Fan.between(mm(570), mm(548.3)).perpendicularAt(6);
        StringSet strings = OCTAVE.neck()
                .strings()
                .orElseThrow()
                .diameters(mm(1))
                .across(Across.of(mm(2.5), mm(45)).inPair(mm(3)));
        Neck design = Neck.named("fan")
                .fannedFrets(fan, strings)
                .fingerboard(OCTAVE.neck().fingerboard())
                .back(OCTAVE.neck().back())
                .fretsToTheOctave(19)
                .bodyAtFret(20)
                .channel(OCTAVE.neck().channel().orElseThrow());
        Job plan = Job.of(design, OCTAVE.blank(), OCTAVE.shop());
        String json = Document.PLAN.json(plan);

        assertThat(Document.PLAN.read(json).neck()).isEqualTo(plan.neck());
        assertThat(Document.PLAN.read(json).neck().fannedFrets()).contains(fan);
        assertThat(Document.PLAN.read(json)).isEqualTo(plan);
        assertThat(Document.PLAN.json(Document.PLAN.read(json))).isEqualTo(json);
    }

    @Test
    void planFrom_keepsAHeadInOnePiece() throws IOException {
        Job plan = Job.of(SampleNecks.octaveMandolin(), OCTAVE.blank(), OCTAVE.shop());
        String json = Document.PLAN.json(plan);

        assertThat(errors(json)).isEmpty();
        assertThat(Document.PLAN.read(json)).isEqualTo(plan).isNotEqualTo(OCTAVE);
        assertThat(Document.PLAN.read(json).plan().scarf().isEmpty()).isTrue();
        assertThat(OCTAVE.plan().scarf().isEmpty()).isFalse();
    }

    static Stream<HeelJoint> joints() {
        Tenon.NeedsHoles tenon = Tenon.of(inch(3), inch(0.8));
        Dovetail dovetail = Dovetail.tapered(ShopUnits.deg(3));
        return Stream.of(
                new HeelJoint.Flat(),
                dovetail,
                Dovetail.tapered(ShopUnit.RADIAN.of(0.05236)),
                dovetail.length(inch(0.75)),
                dovetail.length(mm(19)).widths(mm(40), inch(1.25)).height(mm(70)),
                tenon.holes(mm(8), mm(0)).at(mm(30)),
                tenon.holes(mm(10), mm(0.8)).at(mm(28.5), inch(2.25)));
    }

    @ParameterizedTest
    @MethodSource("joints")
    void planFrom_keepsTheHeelsJoint(HeelJoint joint) throws IOException {
        Neck design = OCTAVE.neck().heel(OCTAVE.neck().heel().orElseThrow().joint(joint));
        Job plan = Job.of(design, OCTAVE.blank(), OCTAVE.shop());
        String json = Document.PLAN.json(plan);

        Job read = Document.PLAN.read(json);

        assertThat(errors(json)).isEmpty();
        assertThat(read.neck().heel().orElseThrow().joint()).isEqualTo(joint);
        assertThat(read).isEqualTo(plan);
        assertThat(Document.PLAN.json(read)).isEqualTo(json);
    }

    /** A document with one character changed is read or refused in a sentence, never anything else. */
    @ParameterizedTest
    @MethodSource("seeds")
    void planFrom_withOneCharacterChanged_readsOrRefuses(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int end = JSON.indexOf("\"answers\"");
        for (int i = 0; i < 20; i++) {
            int at = random.nextInt(end);
            char c = "{}[]\",:0aE-. ".charAt(random.nextInt(13));
            String changed = JSON.substring(0, at) + c + JSON.substring(at + 1);
            try {
                assertThat(Document.PLAN.read(changed)).isNotNull();
            } catch (IllegalArgumentException refused) {
                assertThat(refused.getMessage()).as("seed %d, %d", seed, i).isNotBlank();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void designFrom_givesAnEqualDesign_whoseTextIsTheSame(long seed) {
        var design = RandomPlans.of(seed).neck();
        String json = Document.DESIGN.json(design);

        assertThat(Document.DESIGN.read(json)).as("seed %d", seed).isEqualTo(design);
        assertThat(Document.DESIGN.json(Document.DESIGN.read(json)))
                .as("seed %d", seed)
                .isEqualTo(json);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void budgetFrom_givesAnEqualBudget_whoseTextIsTheSame(long seed) {
        for (Budget<Length> budget : RandomPlans.of(seed).plan().budgets()) {
            String json = Document.BUDGET.json(budget);

            assertThat(Document.BUDGET.read(json).ofKind(Length.class))
                    .as("seed %d", seed)
                    .isEqualTo(budget);
            assertThat(Document.BUDGET.json(Document.BUDGET.read(json).ofKind(Length.class)))
                    .isEqualTo(json);
        }
    }

    @Test
    void budgetFrom_takesOtherKindsOfErrors_andRefusesAnotherKindOfResult() {
        Budget<Length> budget = Budget.named("string line")
                .with("skew", 500, ErrorDistribution.rectangular(ShopUnits.deg(0.1)))
                .with("glue", ErrorDistribution.normal(mm(0.1)))
                .with("stop", ErrorDistribution.normal(mm(0.2)))
                .correlated(new Correlation("glue", "stop", -0.25));
        String json = Document.BUDGET.json(budget);

        assertThat(Document.BUDGET.read(json).ofKind(Length.class)).isEqualTo(budget);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Document.BUDGET.read(json).ofKind(Angle.class))
                .withMessage("unit must be of an angle, but was mm");
    }

    /** What the schema refuses the reader refuses too, wherever a part is of another type. */
    @Test
    void schema_refusesWhatTheReaderRefuses() throws IOException {
        for (String[] change : new String[][] {
            {"\"version\": 2", "\"version\": 3"},
            {"\"frets\": 20", "\"frets\": \"20\""},
            {"\"frets\": 20", "\"frets\": 20, \"fretz\": 1"},
            {"\"two-way\"", "\"bent\""},
            {"\"nearWall\"", "\"nearwall\""},
        }) {
            String changed = changed(change[0], change[1]);
            assertThat(errors(changed)).as(change[1]).isNotEmpty();
            // The reader takes a number as a text too, as a YAML parser may hand it.
            if (!change[1].equals("\"frets\": \"20\"")) {
                assertThatIllegalArgumentException().as(change[1]).isThrownBy(() -> Document.PLAN.read(changed));
            }
        }
    }

    /** Facts of answers by their names of before: answers follow from what was given, and are worked out anew. */
    @Test
    void answersOfBefore_areReadPast_andWrittenByTheirNamesOfToday() {
        int answers = JSON.indexOf("\"answers\"");
        String before = JSON.substring(0, answers)
                + JSON.substring(answers)
                        .replace("\"angle\"", "\"pitch\"")
                        .replace("\"tensions\"", "\"pulls\"")
                        .replace("\"fillet\"", "\"coverStrip\"");
        for (String key : List.of("pitch", "pulls", "coverStrip")) {
            assertThat(before).contains('"' + key + '"');
            assertThat(JSON).doesNotContain('"' + key + '"');
        }

        Job read = Document.PLAN.read(before);

        assertThat(read).isEqualTo(OCTAVE);
        assertThat(Document.PLAN.json(read)).isEqualTo(JSON);
    }

    /** The digest is that of an independent tool (sha256sum) on the JSON without answers, its end closed by hand. */
    @Test
    void hash_isThatOfWhatThePlanWasTold_inAnyUnits() throws Exception {
        String json = Document.PLAN.json(OCTAVE);
        String told = json.substring(0, json.indexOf(",\n  \"answers\"")) + "\n}\n";

        byte[] digest = MessageDigest.getInstance("SHA-256").digest(told.getBytes(StandardCharsets.UTF_8));
        assertThat(Document.hash(OCTAVE)).isEqualTo(HexFormat.of().formatHex(digest));
        assertThat(Document.mark(OCTAVE))
                .hasSize(8)
                .isEqualTo(Document.hash(OCTAVE).substring(0, 8));
        for (LengthStyle style : LengthStyle.values()) {
            assertThat(Document.hash(OCTAVE.printIn(style))).isEqualTo(Document.hash(OCTAVE));
        }
        assertThat(Document.hash(OCTAVE.relief(mm(0.21)))).isNotEqualTo(Document.hash(OCTAVE));
        assertThat(Sheet.of(OCTAVE).toHtml()).contains("<p>Belongs to set " + Document.mark(OCTAVE) + ".</p>");
        assertThat(Template.of(OCTAVE).toDxf()).contains("Belongs to set " + Document.mark(OCTAVE) + ".");
        assertThat(Template.of(OCTAVE).pages(Paper.A4))
                .allSatisfy(page -> assertThat(page.heading()).contains(" (set " + Document.mark(OCTAVE) + "): "));
        assertThat(Template.of(OCTAVE.neck()).toDxf()).doesNotContain("Belongs");
    }

    /** By hand: 6 mm to 0.5 mm at fret 14 runs on to less than nothing at fret 20, 383.6 mm from the nut; so do the others. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "farThickness | 0.5 | the fingerboard has no section at 383.611 mm from the nut: ",
                "farWidth | 0.5 | the fingerboard has no section at 383.611 mm from the nut: ",
                "fret\": 12, | 0.01 | back.depths[2].depth must leave depth in the back ",
                "fret\": 1, | 0.01 | back.depths[1].depth must leave depth in the back "
            })
    void planFrom_refusesWhatHasNoAnswers(String key, String value, String sentence) {
        Fingerboard board = OCTAVE.neck().fingerboard().thickness(mm(6), mm(5.9));
        String json = Document.PLAN
                .json(Job.of(OCTAVE.neck().fingerboard(board), OCTAVE.blank(), OCTAVE.shop()))
                .replaceFirst("(" + key + "[^\\d]*?\"value\": )[\\d.]+", "$1" + value);

        assertThatThrownBy(() -> Document.PLAN.read(json))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith(sentence);
    }

    /** The published file is the one that the tables write. */
    @Test
    void schema_isTheOnePublished() {
        Approved.hold("../../main/resources/META-INF/neckgeom", Map.of("neckgeom.schema.json", Document.schema()));
    }

    /** By the meta-schema of JSON Schema, draft 2020-12, as the validator's library brings it. */
    @Test
    void schema_isASchema() throws IOException {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));

        assertThat(meta.validate(JACKSON.readTree(Holder.text()))).isEmpty();
        assertThat(meta.validate(JACKSON.readTree("{\"description\": [\"A\"]}")))
                .isNotEmpty();
    }

    private static List<Error> errors(String json) throws IOException {
        return Holder.SCHEMA.validate(JACKSON.readTree(json));
    }

    private static final class Holder {
        private static final Schema SCHEMA = schema();

        private static Schema schema() {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(text());
        }

        private static String text() {
            try (InputStream in =
                    Document.class.getClassLoader().getResourceAsStream("META-INF/neckgeom/neckgeom.schema.json")) {
                return new String(in.readAllBytes(), StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        }
    }

    @Test
    void planFrom_givesARichPlanBack() {
        Job plan = RandomPlans.of(3);

        assertThat(Document.PLAN.read(Document.PLAN.json(plan))).isEqualTo(plan);
    }

    @Test
    void document_namesItsFormat() {
        assertThat(Document.DESIGN).hasToString("JSON of format \"neckgeom design\", version 2");
        assertThat(Document.DESIGN.json(OCTAVE.neck())).doesNotContain("answers");
    }
}
