package org.neckgeom.examples.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.neckgeom.table.Key;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;

class NounFileTest {

    private record Box(String name, int sides, boolean hasLid) {}

    private record Lock(int pins) {}

    private static final Table<Lock> LOCK =
            Table.of("", "a lock", given -> new Lock(given.at(NounFileTest.PINS)), lock -> NounFileTest.LOCK.values());
    private static final Key<Lock, Integer> PINS = LOCK.needed("pins", Types.whole(1, 9), "its pins");

    private static final Table<Box> BOX = Table.of("", "a box", NounFileTest::box, box -> NounFileTest.BOX.values());
    private static final Key<Box, String> NAME = BOX.needed("name", Types.TEXT, "what the box is called");
    private static final Key<Box, Integer> SIDES = BOX.needed("sides", Types.whole(3, 12), "how many sides");
    private static final Key<Box, Boolean> LID =
            BOX.usual("with lid", Types.YES_OR_NO, false, "whether it has a lid; no");
    private static final Key<Box, List<Double>> RATIOS =
            BOX.optional("ratios", Types.list(Types.number(0, 1), 2, 3), "side ratios");
    private static final Key<Box, Lock> IN = BOX.optional("lock", Types.group(LOCK), "the lock, if any");

    private static Box box(Values<Box> given) {
        if (given.at(SIDES) == 7) {
            throw given.refused(SIDES, "seven", "not be 7", 7);
        }
        return new Box(given.at(NAME), given.at(SIDES), given.at(LID));
    }

    @Test
    void read_makesTheThing() {
        assertThat(NounFile.read("b.yaml", "name: Tea\nsides: 4\nwith lid: yes\n", BOX))
                .isEqualTo(new Box("Tea", 4, true));
        assertThat(NounFile.read("b.yaml", "{name: 3, sides: '6'}", BOX)).isEqualTo(new Box("3", 6, false));
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
                        "b.yaml, line 2: sides must be a whole number from 3 to 12, but was \"2\"",
                        "b.yaml, line 3: with lid must be one of yes, no, but was \"maybe\"",
                        "b.yaml, line 4: ratios[2] must be a number from 0 to 1 without a unit, but was \"1.5\"",
                        "b.yaml, line 4: ratios[3] must be a number from 0 to 1 without a unit, but was \"x\"",
                        "b.yaml, line 6: lock.pins must be a whole number from 1 to 9, but was a list of 1 item",
                        "b.yaml, line 7: lock.Pin is not a known key; did you mean \"pins\"? Known here: pins");
    }

    @Test
    void read_reportsDuplicatesBesideOtherProblems() {
        assertThat(problems("name: a\nname: b\nsides: 99\n"))
                .containsExactly(
                        "b.yaml, line 2: name is given twice, on line 1 and on line 2; keep one of them",
                        "b.yaml, line 3: sides must be a whole number from 3 to 12, but was \"99\"");
    }

    @Test
    void read_namesAnEmptyValueAWrongLengthAndAWrongForm() {
        assertThat(problems("name:\nsides: 4\nratios: [1]\nlock: 3\n"))
                .containsExactly(
                        "b.yaml, line 1: name has no value; give a text of at most 200 characters on one line",
                        "b.yaml, line 3: ratios must be a list of 2 to 3 items, each a number from 0 to 1"
                                + " without a unit, but was a list of 1 item",
                        "b.yaml, line 4: lock must be a group with the keys pins, but was \"3\"");
        assertThat(problems("- name: x\n"))
                .containsExactly("b.yaml, line 1: the whole must be a group with the keys name,"
                        + " sides, with lid, ratios, lock, but was a list of 1 item");
    }

    @Test
    void read_turnsARefusalOfTheMakingIntoAProblemOfItsSection() {
        assertThat(problems("name: x\nsides: 7\n")).containsExactly("b.yaml, line 2: sides must not be 7, but was 7");
    }

    @Test
    void read_refusesMoreThanOneLineOfText() {
        assertThat(problems("name: \"a\\nb\"\nsides: 4\n"))
                .containsExactly(
                        "b.yaml, line 1: name must be a text of at most 200 characters on one line, but was \"a b\"");
    }

    @Test
    void message_countsTheProblemsAndListsEachOnItsLine() {
        assertThatThrownBy(() -> NounFile.read("b.yaml", "sides: 1\n", BOX)).hasMessage("""
                        2 things to mend in b.yaml
                        b.yaml, line 1: name is missing; give a text of at most 200 characters on one line (what the box is called)
                        b.yaml, line 1: sides must be a whole number from 3 to 12, but was "1\"""");
    }

    @Test
    void message_listsFortyAndCountsTheRest() {
        StringBuilder text = new StringBuilder("name: x\nsides: 4\n");
        for (int i = 0; i < 45; i++) {
            text.append("strange").append(i).append(": 1\n");
        }

        assertThatThrownBy(() -> NounFile.read("b.yaml", text.toString(), BOX))
                .hasMessageStartingWith("45 things to mend in b.yaml\n")
                .hasMessageEndingWith("\nand 5 more");
    }

    private static List<String> problems(String text) {
        try {
            NounFile.read("b.yaml", text, BOX);
            return List.of();
        } catch (FileRefused refused) {
            return refused.problems().stream().map(Problem::toString).toList();
        }
    }
}
