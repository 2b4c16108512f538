package org.neckgeom.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.channel.CentringRound;
import org.neckgeom.form.Json;
import org.neckgeom.form.Tree;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Fan;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderChanges;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.DecisionRule;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.table.Table;

/** Each move of a key by itself: the old group becomes the new one, once or twice, and the new one stays. */
class KeyMovesTest {

    static Stream<Arguments> moves() {
        return Stream.of(
                move(Job.TABLE, "readings: [1]", "trial cuts: [1]"),
                move(Job.TABLE, "as made: 1", "measured: 1"),
                move(Neck.TABLE, "scarf: 1", "head: {scarf: 1}"),
                move(Channel.TABLE, "rod: {kind: two-way, length: 1}", "truss rod: {kind: two-way, length: 1}"),
                move(Channel.TABLE, "rod: {kind: steel bar, length: 1}", "bar: {material: steel, length: 1}"),
                move(Channel.TABLE, "rod: {kind: carbon bar}", "bar: {material: carbon}"),
                move(TrussRod.TABLE, "adjusted at: 1", "adjuster: 1"),
                move(Fingerboard.TABLE, "width at nut: 1", "nut width: 1"),
                move(Fingerboard.TABLE, "second width: 1", "far width: {width: 1}"),
                move(Fingerboard.TABLE, "second at fret: 1", "far width: {fret: 1}"),
                move(Fingerboard.TABLE, "second thickness: 1", "far thickness: 1"),
                move(Fingerboard.TABLE, "second radius: 1", "far radius: 1"),
                move(
                        BackProfile.TABLE,
                        "first depth: a, second depth: b, at frets: [2, 9]",
                        "depths: [{depth: a, fret: 2}, {depth: b, fret: 9}]"),
                move(
                        BackProfile.TABLE,
                        "first depth: a, second depth: b",
                        "depths: [{depth: a, fret: 1}, {depth: b, fret: 12}]"),
                move(BackProfile.TABLE, "heel turn: 1", "heel transition: 1"),
                move(Head.TABLE, "pitch: 1", "angle: 1"),
                move(Fan.TABLE, "square at fret: 1", "perpendicular fret: 1"),
                move(Across.TABLE, "edge at nut: 1", "edge margin: 1"),
                move(StringSet.TABLE, "masses per length: 1", "linear densities: 1"),
                move(Wood.TABLE, "stiffness: 1", "modulus: 1"),
                move(Blank.TABLE, "end spare: 1", "end allowance: 1"),
                move(Blank.TABLE, "edge spare: 1", "edge allowance: 1"),
                move(Cutter.TABLE, "stand-out: 1", "stick-out: 1"),
                move(Shop.TABLE, "feeler leaves: 1", "feeler gauges: 1"),
                move(FeelerSet.TABLE, "leaves: 1", "gauges: 1"),
                move(FeelerSet.TABLE, "each within: 1", "half-width: 1"),
                move(BenchUncertainty.TABLE, "reads within: 1", "repeatability: 1"),
                move(DecisionRule.TABLE, "wanted chance: 1", "conformance probability: 1"),
                move(TrialCut.TABLE, "fence wall: 1", "near wall: 1"),
                move(TrialCut.TABLE, "reads within: 1", "repeatability: 1"),
                move(CentringRound.TABLE, "moved toward cutter: 1", "moved: {distance: 1, direction: toward cutter}"),
                move(
                        CentringRound.TABLE,
                        "moved away from cutter: 1",
                        "moved: {distance: 1, direction: away from cutter}"),
                move(CentringRound.TABLE, "setting uncertainty: 1", "moved: {setting uncertainty: 1}"),
                move(MeasuredNeck.TABLE, "reads within: 1", "repeatability: 1"),
                move(MeasuredNeck.TABLE, "angle within: 1", "angle repeatability: 1"),
                move(NeckLimits.TABLE, "wood left: 1", "floor thickness: 1"),
                move(NeckLimits.TABLE, "strings at bridge: 1", "bridge offset: 1"),
                move(OrderChanges.TABLE, "keep: [1]", "before: [1]"),
                move(OrderChanges.TABLE, "done: [glue ears, glue head]", "done: [glue wings, glue head]"),
                move(OrderChanges.TABLE, "without: [glue ears]", "without: [glue wings]"),
                move(OrderChanges.TABLE, "start: [head, ears]", "start: [head, wings]"),
                move(Workmanship.STEP, "within: 1", "half-width: 1"),
                move(Workmanship.STEP, "flat within: 1", "flat half-width: 1"),
                move(Workmanship.STEP, "deviation: 1", "standard uncertainty: 1"),
                move(Workmanship.STEP, "lies: anywhere alike", "distribution: uniform"),
                move(Workmanship.STEP, "lies: mostly near the middle", "distribution: triangular"),
                move(Workmanship.STEP, "lies: mostly near the ends", "distribution: arcsine"));
    }

    private static Arguments move(Table<?> table, String old, String now) {
        return Arguments.of(table, tree(old), tree(now));
    }

    /** JSON of keys and words without quotes. */
    private static Tree tree(String plain) {
        return Json.read("{" + plain.replaceAll("[a-z][a-z -]*[a-z]|\\b[a-z]\\b", "\"$0\"") + "}");
    }

    @ParameterizedTest
    @MethodSource("moves")
    void moved_onceAndTwice(Table<?> table, Tree old, Tree now) {
        Tree once = table.moves().moved(old);

        assertThat(once).isEqualTo(now);
        assertThat(table.moves().moved(once)).isEqualTo(now);
        assertThat(table.moves().moved(now)).isEqualTo(now);
    }

    /** The first old key of each move is in a case of its table. */
    @Test
    void moves_haveEachACase() {
        moves().map(each -> (Table<?>) each.get()[0]).distinct().forEach(table -> {
            String cases = moves().filter(each -> each.get()[0] == table)
                    .map(each -> each.get()[1].toString())
                    .collect(Collectors.joining());
            assertThat(table.moves().lines()).isNotEmpty();
            for (String line : table.moves().lines()) {
                assertThat(cases).contains('"' + line.split(" -> |, ", -1)[0].split("\\.", -1)[0] + '"');
            }
        });
    }

    @ParameterizedTest
    @CsvSource({
        "end play, end clearance",
        "side play, side clearance",
        "cover strip, fillet",
        "clearance, depth clearance",
        "deeper in the middle, floor arch"
    })
    void channel_ofBefore_isTheSameChannel(String old, String now) {
        assertThat(channel(old, "\"1 mm\"")).isEqualTo(channel(now, "\"1 mm\""));
    }

    @Test
    void orderOfBefore_isTheSameOrder() {
        String before = """
                {"before": [{"first": "glue ears", "then": "cut rod channel"}, {"first": "cut scarf", "then": "glue ears"}],
                 "operations": [
                   {"name": "cut rod channel", "blocked by": ["ears"],
                    "because": [{"condition": "ears", "reason": "one"}],
                    "despite": [{"condition": "ears", "remedies": [{"name": "two"}]}]},
                   {"name": "cut scarf", "needs": ["head"], "takes away": ["ears"]},
                   {"name": "glue ears", "puts": ["head", "ears"]}]}""";
        String now = before.replace("ears", "wings");

        assertThat(OrderChanges.TABLE.read(Json.read(before))).isEqualTo(OrderChanges.TABLE.read(Json.read(now)));
        assertThat(OrderChanges.TABLE
                        .read(Json.read(before))
                        .changed(OrderOfWork.forNeck())
                        .operations())
                .extracting(Operation::name)
                .contains("glue wings");
    }

    @Test
    void pocket_ofBefore_isTheSamePocket() {
        String pocket = "{\"length\": \"20 mm\", \"width\": \"8 mm\", \"depth\": \"12 mm\"}";

        assertThat(channel("pocket", pocket)).isEqualTo(channel("adjuster pocket", pocket));
    }

    private static Channel channel(String key, String value) {
        String rod = "\"kind\": \"two-way\", \"length\": \"300 mm\", \"width\": \"6 mm\", \"height\": \"9 mm\"";
        return Channel.TABLE.read(
                Json.read("{\"truss rod\": {" + rod + "}, \"channel\": {\"" + key + "\": " + value + "}}"));
    }
}
