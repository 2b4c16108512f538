package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Json;
import org.neckgeom.form.Statement;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.units.LengthStyle;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** JSON of every answer is what its own schema states, by an independent validator (networknt, JSON Schema 2020-12). */
class AnswerDataTest {

    /** They make their form as they go: many have one name. */
    private static final Set<Class<?>> AS_THEY_GO = Set.of(Statement.class, PlanSection.class, PlanCheck.class);

    private static final JsonMapper JACKSON = new JsonMapper();
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private static List<Answer> answers(EveryAnswerTest.Made made) {
        return made.walk().values().stream()
                .flatMap(List::stream)
                .filter(Answer.class::isInstance)
                .map(Answer.class::cast)
                .toList();
    }

    @SuppressWarnings("unchecked") // an answer gives the form of its own type
    private static Map<String, Object> data(Answer answer, LengthStyle style) {
        return ((Form<Answer>) answer.form()).data(answer, style);
    }

    @ParameterizedTest
    @EnumSource(EveryAnswerTest.Made.class)
    void data_isAsItsSchemaStates(EveryAnswerTest.Made made) {
        Map<Form<?>, Schema> schemas = new HashMap<>();
        List<String> faults = new ArrayList<>();
        int validated = 0;
        for (Answer answer : answers(made)) {
            Schema schema = schemas.computeIfAbsent(answer.form(), form -> REGISTRY.getSchema(Json.of(form.schema())));
            for (LengthStyle style : LengthStyle.values()) {
                JsonNode json = JACKSON.readTree(Json.of(data(answer, style)));
                validated++;
                schema.validate(json).forEach(error -> faults.add(answer.form().name() + ": " + error));
                assertThat(json.get("text").stringValue()).isEqualTo(answer.text(style));
            }
        }

        assertThat(faults).isEmpty();
        assertThat(schemas).as("validated %d", validated).hasSizeGreaterThanOrEqualTo(10);
    }

    @Test
    void schemas_areSchemas() {
        Schema meta = REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));

        assertThat(answers(EveryAnswerTest.Made.MILLIMETRES).stream()
                        .map(Answer::form)
                        .distinct())
                .allSatisfy(form -> assertThat(meta.validate(JACKSON.readTree(Json.of(form.schema()))))
                        .as(form.name())
                        .isEmpty());
    }

    /** What a form states wrongly is found: a test of the test. */
    @Test
    void validator_findsWhatIsWrong() {
        Answer answer = answers(EveryAnswerTest.Made.MILLIMETRES).get(0);
        Map<String, Object> data = data(answer, LengthStyle.MILLIMETRES);
        data.put("unknown", 1);

        assertThat(REGISTRY.getSchema(Json.of(answer.form().schema())).validate(JACKSON.readTree(Json.of(data))))
                .isNotEmpty();
    }

    @Test
    void forms_haveNamesOfTheirOwn() {
        assertThat(answers(EveryAnswerTest.Made.MILLIMETRES).stream()
                        .filter(answer -> !AS_THEY_GO.contains(answer.getClass()))
                        .map(Answer::form)
                        .distinct()
                        .map(Form::name))
                .doesNotHaveDuplicates();
    }
}
