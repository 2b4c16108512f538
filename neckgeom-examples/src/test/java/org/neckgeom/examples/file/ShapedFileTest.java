package org.neckgeom.examples.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ShapedFileTest {

    private static final Key<String> NAME = Key.needed("name", Kinds.text(), "what the box is called");
    private static final Key<Integer> SIDES = Key.needed("sides", Kinds.wholeNumber(3, 12), "how many sides");
    private static final Key<Boolean> LID = Key.optional("with lid", Kinds.yesOrNo(), "whether it has a lid; no");
    private static final Key<List<Double>> RATIOS =
            Key.optional("ratios", Kinds.listOf(Kinds.number(0, 1), 2, 3), "side ratios");
    private static final Shape LOCK = Shape.of("a lock", Key.needed("pins", Kinds.wholeNumber(1, 9), "its pins"));
    private static final Key<Section> LOCK_KEY = Key.optional("lock", LOCK, "the lock, if any");
    private static final Shape BOX = Shape.of("a box", NAME, SIDES, LID, RATIOS, LOCK_KEY);

    private static Found<String> box(Section top) {
        return top.make(() -> {
            if (top.at(SIDES).value() == 7) {
                throw new IllegalArgumentException("sides must not be 7, but was 7");
            }
            return top.at(NAME).value() + " " + top.at(SIDES).value() + " "
                    + top.at(LID).orElse(false);
        });
    }

    @Test
    void read_makesTheThing() {
        assertThat(ShapedFile.read("b.yaml", "name: Tea\nsides: 4\nwith lid: yes\n", BOX, ShapedFileTest::box))
                .isEqualTo("Tea 4 true");
        assertThat(ShapedFile.read("b.yaml", "{name: 3, sides: '6'}", BOX, ShapedFileTest::box))
                .isEqualTo("3 6 false");
    }

    @Test
    void read_reportsEverythingAtOnceInTheOrderOfTheLines() {
        String text = "nmae: Tea\nsides: 2\nwith lid: maybe\nratios: [0.5, 1.5, x]\nlock:\n  pins: [1]\n  Pin: 3\n";

        assertThat(problems(text))
                .containsExactly(
                        "b.yaml, line 1: nmae is not a known key; did you mean \"name\"? Known here: name, sides, "
                                + "with lid, ratios, lock",
                        "b.yaml, line 1: name is missing; give a text of at most 200 characters on one line (what the box"
                                + " is called)",
                        "b.yaml, line 2: sides is \"2\", but must be a whole number from 3 to 12",
                        "b.yaml, line 3: with lid is \"maybe\", but must be one of yes, no",
                        "b.yaml, line 4: ratios[2] is \"1.5\", but must be a number from 0 to 1 without a unit",
                        "b.yaml, line 4: ratios[3] is \"x\", but must be a number from 0 to 1 without a unit",
                        "b.yaml, line 6: lock.pins is a list of 1 item, but must be a whole number from 1 to 9",
                        "b.yaml, line 7: lock.Pin is not a known key; did you mean \"pins\"? Known here: pins");
    }

    @Test
    void read_reportsDuplicatesBesideOtherProblems() {
        assertThat(problems("name: a\nname: b\nsides: 99\n"))
                .containsExactly(
                        "b.yaml, line 2: name is given twice, on line 1 and on line 2; keep one of them",
                        "b.yaml, line 3: sides is \"99\", but must be a whole number from 3 to 12");
    }

    @Test
    void read_namesAnEmptyValueAWrongLengthAndAWrongForm() {
        assertThat(problems("name:\nsides: 4\nratios: [1]\nlock: 3\n"))
                .containsExactly(
                        "b.yaml, line 1: name has no value; give a text of at most 200 characters on one line",
                        "b.yaml, line 3: ratios is a list of 1 item, but must be a list of 2 to 3 items, each a number"
                                + " from 0 to 1 without a unit",
                        "b.yaml, line 4: lock is \"3\", but must be a group with the keys pins");
        assertThat(problems("- name: x\n"))
                .containsExactly("b.yaml, line 1: the file is a list of 1 item, but must be a group with the keys name,"
                        + " sides, with lid, ratios, lock");
    }

    @Test
    void read_turnsARefusalOfTheMakingIntoAProblemOfItsSection() {
        assertThat(problems("name: x\nsides: 7\n")).containsExactly("b.yaml, line 1: sides must not be 7, but was 7");
    }

    @Test
    void read_refusesMoreThanOneLineOfText() {
        assertThat(problems("name: \"a\\nb\"\nsides: 4\n"))
                .containsExactly(
                        "b.yaml, line 1: name is \"a b\", but must be a text of at most 200 characters on one line");
    }

    @Test
    void message_countsTheProblemsAndListsEachOnItsLine() {
        assertThatThrownBy(() -> ShapedFile.read("b.yaml", "sides: 1\n", BOX, ShapedFileTest::box))
                .hasMessage("""
                        2 things to mend in b.yaml
                        b.yaml, line 1: name is missing; give a text of at most 200 characters on one line (what the box is called)
                        b.yaml, line 1: sides is "1", but must be a whole number from 3 to 12""");
    }

    @Test
    void message_listsFortyAndCountsTheRest() {
        StringBuilder text = new StringBuilder("name: x\nsides: 4\n");
        for (int i = 0; i < 45; i++) {
            text.append("strange").append(i).append(": 1\n");
        }

        assertThatThrownBy(() -> ShapedFile.read("b.yaml", text.toString(), BOX, ShapedFileTest::box))
                .hasMessageStartingWith("45 things to mend in b.yaml\n")
                .hasMessageEndingWith("\nand 5 more");
    }

    @Test
    void schema_listsKeysInTheirOrder() {
        Map<String, Object> schema = BOX.schema();

        assertThat(((Map<?, ?>) schema.get("properties")).keySet().stream().map(Object::toString))
                .containsExactly("name", "sides", "with lid", "ratios", "lock");
        assertThat(schema.get("required")).isEqualTo(List.of("name", "sides"));
        assertThat(schema.get("additionalProperties")).isEqualTo(false);
        assertThat(JsonText.of(LOCK.schema())).isEqualTo("""
                        {
                          "type": "object",
                          "description": "a lock",
                          "properties": {
                            "pins": {
                              "description": "its pins",
                              "type": "integer",
                              "minimum": 1,
                              "maximum": 9
                            }
                          },
                          "required": [
                            "pins"
                          ],
                          "additionalProperties": false
                        }
                        """);
    }

    @Test
    void at_refusesAKeyOfAnotherShape() {
        ShapedFile.read("b.yaml", "name: x\nsides: 4\n", BOX, top -> {
            assertThatThrownBy(() -> top.at(LOCK.keys().get(0))).hasMessageContaining("but was pins");
            return Found.of("done");
        });
    }

    private static List<String> problems(String text) {
        try {
            ShapedFile.read("b.yaml", text, BOX, ShapedFileTest::box);
            return List.of();
        } catch (FileRefused refused) {
            return refused.problems().stream().map(Problem::toString).toList();
        }
    }
}
