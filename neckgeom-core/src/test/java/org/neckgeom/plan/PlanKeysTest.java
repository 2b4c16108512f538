package org.neckgeom.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.neckgeom.drawing.RandomPlans;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Json;
import org.neckgeom.form.Tree;
import org.neckgeom.page.Necks;
import org.neckgeom.stock.Blank;
import org.neckgeom.table.Spelling;
import tools.jackson.databind.json.JsonMapper;

/** A plan by its keys, with nothing on the path but the library and, for the maps, a general JSON library (Jackson). */
class PlanKeysTest {

    private static final Job OCTAVE = Necks.octavePlan();

    @ParameterizedTest
    @EnumSource(Spelling.class)
    void read_takesTheMapsOfAnyLibrary(Spelling spelling) {
        String json = Json.of(Job.TABLE.write(OCTAVE, spelling));
        Map<?, ?> maps = JsonMapper.shared().readValue(json, LinkedHashMap.class);

        assertThat(Job.TABLE.read(Tree.of(maps))).isEqualTo(OCTAVE);
    }

    @Test
    void write_readsBackEqual_forPlansOfEverySort() {
        for (long seed = 0; seed < 6; seed++) {
            Job plan = RandomPlans.of(seed);
            for (Spelling spelling : Spelling.values()) {
                Job back = Job.TABLE.read(Job.TABLE.write(plan, spelling));

                assertThat(back)
                        .as("seed %d, %s", seed, spelling)
                        .isEqualTo(plan)
                        .hasSameHashCodeAs(plan);
                assertThat(back.plan().status().toString())
                        .isEqualTo(plan.plan().status().toString());
            }
        }
    }

    @Test
    void read_takesAScarfWhereItStoodBefore() {
        Map<String, Object> neck = words();
        Map<String, Object> head = map(neck.get("head"));
        Object scarf = head.remove("scarf");
        neck.put("head", head);
        neck.put("scarf", scarf);

        assertThat(Job.TABLE.read(Tree.of(neck))).isEqualTo(OCTAVE);
        neck.put("scarf", Map.of("joint", "nowhere"));
        assertThat(faults(neck)).extracting(Fault::path).containsExactly("scarf.joint");
    }

    @Test
    void read_namesEveryFaultOfAWholeNeckAtOnce() {
        Map<String, Object> neck = words();
        neck.remove("back");
        neck.put("frets", "0");
        neck.put("blank", Map.of("length", "640 mm", "width", "61 mm", "thickness", "-20 mm"));
        neck.put("shop", Map.of());
        neck.put("relif", "0.2 mm");

        assertThat(faults(neck))
                .extracting(Fault::path)
                .containsExactly("relif", "frets", "back", "blank.thickness", "shop.cutter");
    }

    /** One rule for every way in: the neck that its blank cannot hold is refused alike, and at the same key. */
    @Test
    void rulesBetweenParts_areThoseOfTheFluentCall() {
        Map<String, Object> neck = words();
        neck.put("blank", Map.of("length", "300 mm", "width", "30 mm", "thickness", "20 mm"));

        List<Fault> byTree = faults(neck);
        assertThat(byTree).extracting(Fault::path).contains("blank.length", "blank.width");
        assertThatThrownBy(() -> Job.of(OCTAVE.neck(), Blank.ofLength(mm(300)).section(mm(30), mm(20)), OCTAVE.shop()))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.faults()).isEqualTo(byTree));
    }

    @Test
    void workmanship_inAPlan_hasNoCentringOfItsOwn() {
        Map<String, Object> neck = words();
        neck.put("workmanship", Map.of("centring", Map.of("within", "0.1 mm")));

        assertThat(faults(neck)).extracting(Fault::path).containsExactly("workmanship.centring");
    }

    private static Map<String, Object> words() {
        return map(Job.TABLE.write(OCTAVE, Spelling.WORDS).plain());
    }

    private static Map<String, Object> map(Object plain) {
        Map<String, Object> copy = new LinkedHashMap<>();
        ((Map<?, ?>) plain).forEach((key, value) -> copy.put(key.toString(), value));
        return copy;
    }

    private static List<Fault> faults(Map<String, Object> neck) {
        try {
            Job.TABLE.read(Tree.of(neck));
        } catch (Refusal refusal) {
            return refusal.faults();
        }
        return List.of();
    }
}
