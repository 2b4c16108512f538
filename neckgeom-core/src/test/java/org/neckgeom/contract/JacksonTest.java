package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.neckgeom.channel.Centring;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Json;
import org.neckgeom.form.Tree;
import org.neckgeom.jackson.NeckgeomModule;
import org.neckgeom.neck.Neck;
import org.neckgeom.plan.Job;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.Amount;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.json.JsonMapper;

/** Every value through Jackson comes back as the library's own codec gives it. */
class JacksonTest {

    private static final JsonMapper JACKSON =
            JsonMapper.builder().addModule(new NeckgeomModule()).build();

    @Test
    void everyValue_isWrittenAndReadAsByTheLibrary() {
        List<String> faults = new ArrayList<>();
        Set<String> read = new TreeSet<>();
        EveryAnswerTest.Made.INCHES
                .walk()
                .forEach((type, values) -> values.forEach(value -> {
                    String json = JACKSON.writeValueAsString(value);
                    Object own = NeckgeomModule.plain(value);
                    Object back = JACKSON.readValue(json, Object.class);
                    if (!Json.of(Tree.of(Map.of("value", back))).equals(Json.of(Map.of("value", own)))) {
                        faults.add(type.getSimpleName() + " is written " + json + ", but by the library " + own);
                    }
                    if (NeckgeomModule.table(type).isPresent()) {
                        read.add(type.getSimpleName());
                        if (!JACKSON.readValue(json, type).equals(value)) {
                            faults.add(type.getSimpleName() + " is read back to another: " + json);
                        }
                    }
                }));

        assertThat(faults).isEmpty();
        assertThat(read).contains("Job", "Neck", "Head", "TrialCut", "Budget", "Wood", "CentringRound", "NeckLimits");
    }

    @Test
    void valuesInListsAndMaps_areReadBack() {
        List<Amount<Length>> lengths = List.of(mm(2), inch(0.5));
        Map<String, TrialCut> cuts =
                Map.of("first", TrialCut.walls(mm(29.84), mm(31.26)).repeatability(mm(0.02)));
        Amount<Angle> angle = deg(13);

        assertThat(JACKSON.readValue(JACKSON.writeValueAsString(lengths), new TypeReference<List<Amount<Length>>>() {}))
                .isEqualTo(lengths);
        assertThat(JACKSON.readValue(JACKSON.writeValueAsString(cuts), new TypeReference<Map<String, TrialCut>>() {}))
                .isEqualTo(cuts);
        assertThat(JACKSON.readValue(JACKSON.writeValueAsString(angle), new TypeReference<Amount<Angle>>() {}))
                .isEqualTo(angle);
    }

    @Test
    void fault_isTheLibrarysOwn() {
        assertThatThrownBy(() -> JACKSON.readValue("{\"nearWall\": \"-3 mm\"}", TrialCut.class))
                .isInstanceOf(DatabindException.class)
                .cause()
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refusal -> assertThat(refusal.faults())
                                .extracting(fault -> fault.path() + " " + fault.rule())
                                .containsExactly("nearWall more-than", "farWall missing"));
        assertThatThrownBy(() ->
                        JACKSON.readValue("{\"value\": 3, \"unit\": \"N\"}", new TypeReference<Amount<Length>>() {}))
                .isInstanceOf(DatabindException.class)
                .hasMessageContaining("value.unit must be a unit of a length");
        assertThatThrownBy(() -> JACKSON.readValue("{}", Neck.class)).isInstanceOf(DatabindException.class);
        assertThatThrownBy(() -> JACKSON.readValue("3", Job.class)).isInstanceOf(DatabindException.class);
    }

    @Test
    void answer_isWrittenOnly() {
        String json = JACKSON.writeValueAsString(Centring.of(TrialCut.walls(mm(29.84), mm(31.26))));

        assertThat(json).startsWith("{\"answer\":\"centring\"");
        assertThatThrownBy(() -> JACKSON.readValue(json, Centring.class))
                .isInstanceOf(DatabindException.class)
                .hasMessageStartingWith("Centring is written only: it follows from what was given");
    }
}
