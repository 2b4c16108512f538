package org.neckgeom.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.Map;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Json;
import org.neckgeom.form.Tree;
import org.neckgeom.units.LengthStyle;

class TableTest {

    private static final Map<String, Object> TEA = Map.of("name", "Tea", "sides", "4");

    @Test
    void read_takesBothSpellingsTextsAndNumbers() {
        Box words = read(Map.of("name", "Tea", "sides", "4", "wall thickness", "6 mm", "with lid", "yes"));
        Box json = read(
                Map.of("name", "Tea", "sides", 4, "wallThickness", Map.of("value", 6, "unit", "mm"), "withLid", true));

        assertThat(words).isEqualTo(json).isNotEqualTo(read(TEA));
        assertThat(words.wall()).isEqualTo(mm(6));
    }

    @Test
    void read_namesEveryFaultAtOnceWithItsPath() {
        assertThat(faults(Map.of(
                        "sides",
                        "2",
                        "with lid",
                        "maybe",
                        "ratios",
                        List.of("0.5", "1.5"),
                        "lock",
                        Map.of("pin", "3"))))
                .extracting(Fault::path)
                .containsExactly("name", "sides", "with lid", "ratios[2]", "lock.pin", "lock.pins");
    }

    @Test
    void read_statesWhatMustBeAndWhatWasGiven() {
        assertThat(faults(Map.of("name", "Tea", "sides", "2", "wall thickness", "0 mm", "lid", "no")))
                .extracting(Fault::toString)
                .containsExactly(
                        "lid is not a known key; known here: name, sides, wall thickness, with lid, ratios, read, lock, hinge, strap",
                        "sides must be a whole number from 3 to 12, but was \"2\"",
                        "wall thickness must be more than 0 mm, but was 0 mm");
        assertThat(faults(Map.of("sides", "4")))
                .extracting(Fault::toString)
                .containsExactly(
                        "name is missing; give a text of at most 200 characters on one line (what the box is called)");
        assertThat(faults(Map.of("name", "", "sides", "4")))
                .extracting(Fault::rule)
                .containsExactly("empty");
        assertThat(faults(Map.of("name", "Tea", "sides", "4", "wall thickness", "6", "lock", "3")))
                .extracting(Fault::toString)
                .satisfiesExactly(
                        wall -> assertThat(wall).startsWith("wall thickness: ").contains("\"6\""),
                        lock -> assertThat(lock).isEqualTo("lock must be a group with the keys pins, but was \"3\""));
    }

    @Test
    void read_putsARuleOfTheNounAtItsKey() {
        assertThat(faults(Map.of("name", "Tea", "sides", "7")))
                .containsExactly(new Fault("sides", "seven", "not be 7", "7"));
        assertThatThrownBy(() -> Box.of("Tea", 7)).hasMessage("sides must not be 7, but was 7");
    }

    @Test
    void read_refusesAKeyInBothSpellings() {
        assertThat(faults(Map.of("name", "Tea", "sides", "4", "with lid", "yes", "withLid", "no")))
                .extracting(Fault::rule)
                .containsExactly("twice");
    }

    @Test
    void read_refusesWhatIsNoGroup() {
        assertThatThrownBy(() -> Box.TABLE.read(Tree.of(List.of("x"))))
                .hasMessageStartingWith("the whole must be a group");
    }

    @Test
    void fluentCall_refusesByTheSameRuleUnderItsOwnName() {
        assertThatThrownBy(() -> Box.of("Tea", 4).wall(mm(0)))
                .hasMessage("box wall thickness must be more than 0 mm, but was 0 mm");
        assertThatThrownBy(Box::unfinished)
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refusal -> assertThat(refusal.faults())
                                .extracting(Fault::path)
                                .containsExactly("name", "sides"));
    }

    @Test
    void rivals_areRefusedByTreeAndByCall() {
        assertThat(faults(Map.of("name", "Tea", "sides", "4", "hinge", "30 mm", "strap", "80 mm")))
                .extracting(Fault::toString)
                .containsExactly("strap is given, and hinge too; keep one of them");
        assertThatThrownBy(() -> Box.of("Tea", 4).hinge(mm(30)).strap(mm(80)))
                .hasMessage("strap is given, and hinge too; keep one of them");
    }

    @ParameterizedTest
    @EnumSource(Spelling.class)
    void write_holdsOnlyWhatWasGiven_andReadsBackEqual(Spelling spelling) {
        Box box = read(Map.of(
                "name", "Tea", "sides", "4", "read", List.of("60.1 mm", "60.2 mm"), "lock", Map.of("pins", "5")));
        Tree tree = Box.TABLE.write(box, spelling);

        assertThat(((Map<?, ?>) tree.plain()).keySet()).hasToString("[name, sides, read, lock]");
        assertThat(Box.TABLE.read(tree)).isEqualTo(box).hasSameHashCodeAs(box);
        assertThat(Box.TABLE.read(Json.read(Json.of(tree)))).isEqualTo(box);
    }

    @ParameterizedTest
    @EnumSource(Spelling.class)
    void write_losesNoDigitAndNoUnit(Spelling spelling) {
        for (double third : new double[] {1 / 3.0, 0.1 + 0.2, 2.0 / 64, 78 / 25.4}) {
            Box box = Box.of("Tea", 4).wall(inch(third));
            Box back = Box.TABLE.read(Box.TABLE.write(box, spelling));

            assertThat(back).isEqualTo(box);
            assertThat(back.style()).isEqualTo(LengthStyle.DECIMAL_INCHES);
        }
    }

    @Test
    void equals_knowsNoDifferenceBetweenADefaultAndTheSameGiven() {
        assertThat(Box.of("Tea", 4))
                .isEqualTo(Box.of("Tea", 4).wall(mm(8)))
                .hasSameHashCodeAs(Box.of("Tea", 4).wall(mm(8)));
        assertThat(Box.TABLE.write(Box.of("Tea", 4), Spelling.WORDS))
                .isNotEqualTo(Box.TABLE.write(Box.of("Tea", 4).wall(mm(8)), Spelling.WORDS));
    }

    @Test
    void write_inAStyle_changesUnitsAndNoValue() {
        Box box = Box.of("Tea", 4).wall(mm(25.4));
        Tree inches = Box.TABLE.write(box, Spelling.WORDS, LengthStyle.DECIMAL_INCHES);

        assertThat(inches.toString()).contains("\"1 in\"");
        assertThat(Box.TABLE.read(inches)).isEqualTo(box);
    }

    @Test
    void moves_readAnOldKeyAndNameItInAFault() {
        assertThat(read(Map.of("name", "Tea", "side count", "4", "pins", "5")))
                .isEqualTo(read(Map.of("name", "Tea", "sides", "4", "lock", Map.of("pins", "5"))));
        assertThat(faults(Map.of("name", "Tea", "sides", "4", "pins", "10")))
                .extracting(Fault::toString)
                .containsExactly("pins must be a whole number from 1 to 9, but was \"10\"");
        assertThat(faults(Map.of("name", "Tea", "side count", "4", "sides", "5")))
                .extracting(Fault::toString)
                .containsExactly("side count is given, and sides too; keep one of them");
    }

    @Test
    void moves_doNothingToANewTree() {
        Tree tree = Box.TABLE.write(read(TEA), Spelling.WORDS);
        Moves moves = Moves.none().and("pins", "lock.pins").and("side count", "sides");

        assertThat(moves.moved(tree)).isEqualTo(tree);
        assertThat(moves.moved(moves.moved(Tree.of(Map.of("pins", "5")))))
                .isEqualTo(Tree.of(Map.of("lock", Map.of("pins", "5"))));
    }

    @Test
    void help_hasEveryKeyOnALine() {
        assertThat(Box.TABLE.help().lines())
                .hasSize(10)
                .contains(
                        "* name:                        what the box is called",
                        "  * pins:                      its pins");
    }

    @Test
    void schema_statesWhatIsNeeded() {
        Object schema = Json.read(Box.TABLE.schema("Box", Spelling.WORDS)).plain();

        assertThat(schema)
                .asInstanceOf(InstanceOfAssertFactories.MAP)
                .containsEntry("title", "Box")
                .containsEntry("required", List.of("name", "sides"))
                .containsEntry("additionalProperties", false);
    }

    private static Box read(Map<String, Object> data) {
        return Box.TABLE.read(Tree.of(data));
    }

    private static List<Fault> faults(Map<String, Object> data) {
        try {
            read(data);
        } catch (Refusal refusal) {
            return refusal.faults();
        }
        return List.of();
    }
}
