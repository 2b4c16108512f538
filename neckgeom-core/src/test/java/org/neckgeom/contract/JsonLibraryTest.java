package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.neckgeom.channel.PassPlan;
import org.neckgeom.channel.Passes;
import org.neckgeom.channel.RodSlot;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Json;
import org.neckgeom.form.Tree;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.TrussRod;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/** Any JSON library maps through the tree; here Jackson. The guide shows the serializer. */
class JsonLibraryTest {

    /** A service's own record, with an answer in it. */
    record Reply(String job, Answer passes) {}

    private static final JsonMapper JACKSON = JsonMapper.builder()
            .addModule(new SimpleModule().addSerializer(Answer.class, new ValueSerializer<Answer>() {
                @Override
                public void serialize(Answer answer, JsonGenerator json, SerializationContext context) {
                    json.writePOJO(Tree.of(answer).plain());
                }
            }))
            .build();

    private static final PassPlan PASSES = RodSlot.of(
                    Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9))))
            .passes(Passes.noDeeperThan(mm(3)));

    @Test
    void answer_inAServicesRecord_isWrittenByAnotherLibrary() {
        String json = JACKSON.writeValueAsString(new Reply("slot", PASSES));

        assertThat(Json.read(json)).isEqualTo(Tree.of(Map.of("job", "slot", "passes", PASSES)));
        assertThat(JACKSON.readTree(json).at("/passes/passes/1/height/value").doubleValue())
                .isEqualTo(PASSES.passes().get(1).height().libraryValue());
    }

    @Test
    void map_ofAnotherLibrary_isTheTreeThatOursReads() {
        String json = Json.of(PASSES);

        assertThat(Tree.of(JACKSON.readValue(json, Map.class))).isEqualTo(Json.read(json));
    }
}
