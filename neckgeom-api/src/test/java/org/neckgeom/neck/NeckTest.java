package org.neckgeom.neck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.neckgeom.form.Form;
import org.neckgeom.form.Json;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.LengthStyle;

class NeckTest {

    private static void refused(ThrowingCallable call, String message) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessage(message);
    }

    private static Neck neck() {
        return Neck.named("bench neck")
                .scale(mm(560))
                .fingerboard(Fingerboard.tapered(mm(34), mm(46)))
                .back(BackProfile.between(mm(14.5), mm(16.5)));
    }

    @Test
    void partsThatWereNotGiven_areNothing() {
        assertThat(neck().wood()).isEmpty();
        assertThat(neck().strings()).isEmpty();
        assertThat(neck().channel()).isEmpty();
        assertThat(neck().head()).isEmpty();
        assertThat(neck().heel()).isEmpty();
        assertThat(neck().neckSet()).isEmpty();
        assertThat(neck().fannedFrets()).isEmpty();
    }

    @Test
    void named_isNoNeckUntilScaleBoardAndBackAreGiven() {
        Neck.Named named = Neck.named("bench neck");

        assertThat(named).hasToString("neck \"bench neck\", not all of it given yet");
        assertThat(named.scale(Scale.of(mm(560))))
                .isEqualTo(named.scale(mm(560)))
                .isNotEqualTo(named.scale(mm(561)));
        assertThat(named.scale(mm(560))
                        .fingerboard(Fingerboard.tapered(mm(34), mm(46)))
                        .back(BackProfile.between(mm(14.5), mm(16.5))))
                .isEqualTo(neck());
    }

    @Test
    void badParts_areRefused() {
        refused(() -> Neck.named(" "), "a neck's name must be 1 to 100 characters on one line, but was \" \"");
        refused(
                () -> Neck.named("n".repeat(101)),
                "a neck's name must be 1 to 100 characters on one line, but was \"" + "n".repeat(100) + "...\"");
        refused(() -> neck().frets(0), "frets must be a whole number from 1 to 200, but was 0");
        refused(() -> neck().frets(201), "frets must be a whole number from 1 to 200, but was 201");
        refused(() -> neck().bodyAtFret(0), "body at fret must be a whole number from 1 to 200, but was 0");
        refused(() -> Neck.named("x").scale(inch(-25)), "scale must be more than 0 in, but was -25 in");
    }

    @Test
    void everyPart_makesANewDesignAndLeavesTheOldOne() {
        TrussRod rod = TrussRod.twoWay(mm(300)).section(mm(6), mm(9));
        List<UnaryOperator<Neck>> changes = List.of(
                neck -> neck.scale(mm(600)),
                neck -> neck.scale(Scale.of(mm(560)).divisions(19)),
                neck -> neck.frets(22),
                neck -> neck.bodyAtFret(14),
                neck -> neck.fingerboard(Fingerboard.tapered(mm(40), mm(52))),
                neck -> neck.back(BackProfile.between(mm(13), mm(15))),
                neck -> neck.wood(Wood.SAPELE),
                neck -> neck.trussRod(rod),
                neck -> neck.channel(Channel.forRod(rod).startingAt(mm(5))),
                neck -> neck.strings(StringSet.of(pitch("G2"))),
                neck -> neck.head(Head.flat()),
                neck -> neck.heel(Heel.of(mm(78), mm(54))));
        Neck old = neck();
        String text = old.toString();
        for (int i = 0; i < changes.size(); i++) {
            Neck changed = changes.get(i).apply(old);

            assertThat(changed).as("change %d", i).isNotEqualTo(old);
            assertThat(old).isEqualTo(neck()).hasToString(text);
            assertThat(changes.get(i).apply(changed)).isEqualTo(changed);
        }
    }

    @Test
    void lines_runStraightThroughWhatWasTold() {
        Neck neck = neck().fingerboard(Fingerboard.tapered(mm(34), mm(46))
                .thickness(mm(6), mm(5))
                .radius(mm(300), mm(400)));

        assertThat(neck.bodyJointMm()).isCloseTo(280, within(1e-13)); // twelfth fret: half the scale
        assertThat(neck.halfWidthAtMm(0)).isEqualTo(17);
        assertThat(neck.halfWidthAtMm(280)).isCloseTo(23, within(1e-13));
        assertThat(neck.halfWidthAtMm(140)).isCloseTo(20, within(1e-13));
        assertThat(neck.boardThicknessAtMm(140)).isCloseTo(5.5, within(1e-13));
        assertThat(neck.crownRadiusAtMm(140)).isCloseTo(350, within(1e-11));
        assertThat(neck().crownRadiusAtMm(140)).isInfinite();
        double first = Scale.of(mm(560)).fretMm(1);
        assertThat(neck.backDepthAtMm(first)).isCloseTo(14.5, within(1e-13));
        assertThat(neck.backDepthAtMm(280)).isCloseTo(16.5, within(1e-13));
        assertThat(neck.backDepthAtMm((first + 280) / 2)).isCloseTo(15.5, within(1e-13));
    }

    @Test
    void secondPlace_mayBeAnotherFret() {
        Neck neck = neck().bodyAtFret(14)
                .fingerboard(Fingerboard.tapered(mm(34), mm(46)).farWidthAtFret(12))
                .back(BackProfile.between(mm(14.5), mm(16.5)).atFrets(0, 12));

        assertThat(neck.halfWidthAtMm(280)).isCloseTo(23, within(1e-13));
        assertThat(neck.bodyJointMm()).isGreaterThan(280);
        assertThat(neck.backDepthAtMm(0)).isEqualTo(14.5);
        assertThat(neck.bodyAtFret(12).halfWidthAtMm(280)).isCloseTo(23, within(1e-13));
    }

    @Test
    void style_isThatOfTheScale() {
        assertThat(neck().style()).isEqualTo(LengthStyle.MILLIMETRES);
        assertThat(neck().scale(inch(25.5)).style()).isEqualTo(LengthStyle.DECIMAL_INCHES);
        assertThat(neck().heel(Heel.of(inch(3), inch(2))).style()).isEqualTo(LengthStyle.MILLIMETRES);
    }

    /** By hand: 300 mm are 11.8110 in, and 6 mm 0.2362 in. */
    @Test
    void data_hasEveryPartWithItsFigures() {
        Map<String, Object> data = Form.dataOf(
                neck().trussRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9))).head(Head.angled(deg(13))));

        assertThat(Json.of(data))
                .contains("\"answer\": \"neck-design\"", "\"frets\": 20", "\"bodyAtFret\": 12")
                .contains("\"nutWidth\": { \"value\": 34, \"unit\": \"mm\", \"ucum\": \"mm\" }")
                .contains("\"angle\": { \"value\": 13, \"unit\": \"deg\", \"ucum\": \"deg\" }")
                .contains("\"kind\": \"two-way\"", "\"adjuster\": \"head\"", "\"crown\": \"flat\"")
                .doesNotContain("\"heel\":", "\"strings\":", "\"pocketLength\":", "\"radius\":");
        assertThat(neck().trussRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)))
                        .text(LengthStyle.DECIMAL_INCHES))
                .contains("two-way rod, 11.811 in x 0.2362 in x ");
    }

    @Test
    void toString_hasARowForEachPartTold() {
        assertThat(neck().trussRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)))
                        .head(Head.angled(deg(13))))
                .hasToString(String.join(
                        "\n",
                        "bench neck",
                        "  scale        560 mm, 20 frets, body at fret 12",
                        "  fingerboard  34 mm at the nut, 46 mm at the body joint, 6 mm thick, flat",
                        "  back         14.5 mm deep at fret 1, 16.5 mm at fret 12, rounded",
                        "  truss rod    two-way rod, 300 mm x 6 mm x 9 mm, adjusted at the head",
                        "  channel      0 mm to 300 mm from the nut, 6 mm wide, 9 mm deep",
                        "  head         angled 13 deg, 180 mm long, 75 mm wide, 15 mm thick"));
    }

    @Test
    void parts_areHandedBackAsTold() {
        Head head = Head.angled(deg(13));
        StringSet strings = StringSet.of(pitch("G2"), pitch("D3")).tensions(newton(95));
        Function<Neck, Neck> complete = neck -> neck.head(head).strings(strings).wood(Wood.SAPELE);

        Neck neck = complete.apply(neck());

        assertThat(neck.head()).contains(head);
        assertThat(neck.strings()).containsSame(strings);
        assertThat(neck.wood()).containsSame(Wood.SAPELE);
        assertThat(neck.name()).isEqualTo("bench neck");
        assertThat(neck.frets()).isEqualTo(20);
        assertThat(neck.bodyAtFret()).isEqualTo(12);
    }

    @Test
    void toString_keepsTheStyleOfTheScaleThroughout() {
        Neck neck = neck().scale(inch(25.5))
                .trussRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)))
                .head(Head.angled(deg(13)));

        assertThat(neck.toString()).contains("0.2362 in").doesNotContain(" mm").doesNotContainPattern("\\.\\d{5}");
    }

    @Test
    void counts_mayBeTheirLimits() {
        assertThat(Neck.named("n".repeat(100))
                        .scale(mm(560))
                        .fingerboard(Fingerboard.tapered(mm(34), mm(46)))
                        .back(BackProfile.between(mm(14.5), mm(16.5)))
                        .name())
                .hasSize(100);
        assertThat(neck().frets(1).frets()).isEqualTo(1);
        assertThat(neck().frets(200).frets()).isEqualTo(200);
        assertThat(neck().bodyAtFret(1).bodyAtFret()).isEqualTo(1);
        assertThat(neck().bodyAtFret(200).bodyAtFret()).isEqualTo(200);
        refused(() -> neck().bodyAtFret(201), "body at fret must be a whole number from 1 to 200, but was 201");
    }

    @Test
    void channelAndHeel_areHandedBackAsTold() {
        Channel channel =
                Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9))).startingAt(mm(5));
        Heel heel = Heel.of(mm(78), mm(54));

        assertThat(neck().channel(channel).channel()).contains(channel);
        assertThat(neck().heel(heel).heel()).contains(heel);
    }

    @Test
    void isReadyForLoad_whenStringsAndBothWoodsAreTold() {
        Fingerboard bare = Fingerboard.tapered(mm(34), mm(46));
        StringSet strings = StringSet.of(pitch("G2")).tensions(newton(95));
        Neck ready = neck().fingerboard(bare.wood(Wood.INDIAN_ROSEWOOD))
                .wood(Wood.SAPELE)
                .strings(strings);

        assertThat(ready.isReadyForLoad()).isTrue();
        assertThat(ready.fingerboard(bare).isReadyForLoad())
                .as("no wood of the board")
                .isFalse();
        assertThat(neck().fingerboard(bare.wood(Wood.INDIAN_ROSEWOOD))
                        .strings(strings)
                        .isReadyForLoad())
                .as("no wood of the neck")
                .isFalse();
        assertThat(neck().fingerboard(bare.wood(Wood.INDIAN_ROSEWOOD))
                        .wood(Wood.SAPELE)
                        .isReadyForLoad())
                .as("no strings")
                .isFalse();
    }

    @Test
    void toString_saysHeelWoodAndStringsToo() {
        assertThat(neck().wood(Wood.SAPELE)
                        .heel(Heel.of(mm(78), mm(54)))
                        .strings(StringSet.of(pitch("G2"), pitch("D3")))
                        .toString())
                .contains("\n  wood         sapele")
                .contains("\n  heel         78 mm high")
                .contains("\n  strings      ");
    }
}
