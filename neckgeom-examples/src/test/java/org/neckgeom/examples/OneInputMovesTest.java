package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.PlanSection;

/** One input of the mandolin's file changed at a time: the parts of the plan that depend on it move, and no others. */
class OneInputMovesTest {

    private static final String TEXT = ShippedNecks.text("octave-mandolin.yaml");

    private static final String CENTRING = "Centre the cutter";
    private static final String CHANNEL = "Truss rod channel";
    private static final String LOAD = "Cutting forces (estimate)";
    private static final String FENCE = "Spacer if the head is glued first";
    private static final String STOCK = "Neck blank and cutting list";
    private static final String SCARF = "Scarf joint";
    private static final String HEAD = "Head and tuner posts";
    private static final String FRETS = "Fret positions";
    private static final String BOARD = "Fingerboard";
    private static final String ACROSS = "String spacing";
    private static final String BACK = "Back profile and facets";
    private static final String WOOD = "Wood under the channel";
    private static final String ANGLE = "Neck angle";
    private static final String HEEL = "Heel and body joint";
    private static final String WHAT_IF = "What if";
    private static final String RELIEF = "String tension and relief (estimate)";
    private static final String WEATHER = "Humidity and fret ends (estimate)";
    private static final String ERRORS = "Tolerance stack-up";
    private static final String ORDER = "Order of operations";

    /** What is changed, to what, and the parts of the plan that must move; all others must stay as they are. */
    static Stream<Arguments> inputs() {
        return Stream.of(
                // the joint's lines, the tuners; a joint in the head costs the same length of board
                input("  thickness: 15 mm  ", "  thickness: 13.5 mm", Set.of(SCARF, HEAD)),
                // the board's length too, and the strings' break
                input("angle: 13 deg", "angle: 11 deg", Set.of(STOCK, SCARF, HEAD)),
                // everything measured along the neck; widths and depths are told at frets, so crown, flats and the
                // wood's movement across stay; the bow by moisture grows with the length
                input(
                        "scale: 560 mm",
                        "scale: 620 mm",
                        Set.of(STOCK, SCARF, HEAD, FRETS, WOOD, ANGLE, HEEL, WHAT_IF, RELIEF, WEATHER, ERRORS)),
                // everything that has a place across it, and the breaks sideways
                input(
                        "nut width: 34 mm",
                        "nut width: 36 mm",
                        Set.of(HEAD, FRETS, BOARD, ACROSS, BACK, WOOD, RELIEF, WEATHER)),
                // the nut's slots rise and with them the breaks; the fret plane rises and tips the neck, and a gap
                // at the heel's face reaches the string's length by its height; a thicker board follows the air later
                input(
                        "  thickness: 6 mm  ",
                        "  thickness: 7 mm  ",
                        Set.of(HEAD, BOARD, ANGLE, HEEL, WHAT_IF, RELIEF, WEATHER, ERRORS)),
                // the joint, the board's length, and what is stacked under the shaft
                input("  thickness: 20 mm  ", "  thickness: 21 mm  ", Set.of(STOCK, SCARF, HEEL)),
                // the channel's depth and that of its even passes, and what is left to bend under strings and by
                // moisture
                input("  height: 9 mm", "  height: 10 mm", Set.of(CHANNEL, LOAD, WOOD, RELIEF, WEATHER)),
                // the neck tips
                input("saddle: 15.2 mm", "saddle: 16.2 mm", Set.of(ANGLE, HEEL)),
                // the least blank, the flats, the wood left, and how stiff the neck is
                input("depth: 16.5 mm}", "depth: 17.5 mm}", Set.of(STOCK, BACK, WOOD, RELIEF)),
                // the nut's slots and the fret plane, as with the board; the strings' lever
                input("fret height: 1.1 mm", "fret height: 1.4 mm", Set.of(HEAD, ANGLE, HEEL, WHAT_IF, RELIEF)));
    }

    private static Arguments input(String was, String is, Set<String> moves) {
        return Arguments.of(was, is, moves);
    }

    @ParameterizedTest(name = "{0} to {1}")
    @MethodSource("inputs")
    void plan_movesWhatDependsOnTheInputAndNothingElse(String was, String is, Set<String> moves) {
        assertThat(TEXT.split(was, -1)).as("places of " + was).hasSize(2);

        assertThat(moved(TEXT.replace(was, is))).isEqualTo(new TreeSet<>(moves));
    }

    @Test
    void plan_hasEveryPartThisTestKnows() {
        assertThat(sections(TEXT).keySet())
                .containsExactlyInAnyOrder(
                        CENTRING, CHANNEL, LOAD, FENCE, STOCK, SCARF, HEAD, FRETS, BOARD, ACROSS, BACK, WOOD, ANGLE,
                        WHAT_IF, HEEL, RELIEF, WEATHER, ERRORS, ORDER);
    }

    @Test
    void plan_feedMovesTheCuttersLoadAlone() {
        assertThat(moved(TEXT.replace("feed: 1800 mm/min", "feed: 2400 mm/min")))
                .isEqualTo(Set.of(LOAD));
        assertThat(sections(TEXT.replaceAll("\n  (feed|turning): [^\n]*", "")).keySet())
                .doesNotContain(LOAD)
                .hasSize(sections(TEXT).size() - 1);
    }

    /** What a trial cut has read is where the channel lies. */
    @Test
    void plan_trialCutMovesTheWoodLeft() {
        String read = Uncommented.block(TEXT, "trial cuts");

        // (26.78 - 28.20)/2 = -0.71, and half of 0.06 mm x 117/640 = 0.0055 the other way
        assertThat(sections(read).get(WOOD)).contains("0.705 mm at its head end");
        assertThat(moved(read)).contains(CENTRING, WOOD, ERRORS).doesNotContain(SCARF, BACK);
    }

    private static Set<String> moved(String text) {
        Map<String, String> before = sections(TEXT);
        Map<String, String> after = sections(text);
        assertThat(after.keySet()).isEqualTo(before.keySet());
        Set<String> moved = new TreeSet<>(before.keySet());
        moved.removeIf(title -> before.get(title).equals(after.get(title)));
        return moved;
    }

    private static Map<String, String> sections(String text) {
        Job plan = NeckFile.parse("neck.yaml", text);
        List<PlanSection> sections = plan.plan().sections();
        Map<String, String> texts = new LinkedHashMap<>();
        sections.forEach(section -> texts.put(section.title(), section.rows() + " " + section.notes()));
        assertThat(texts).hasSameSizeAs(sections);
        return texts;
    }
}
