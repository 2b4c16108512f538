package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.mmPerMinute;
import static org.neckgeom.units.ShopUnits.rpm;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.shop.Caution;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.testing.Approved;

/** What every answer of this package owes its reader: it prints itself, in any locale, and compares by value. */
class SetupValuesTest {

    private static Blank tapered(double by) {
        return Blank.ofLength(mm(400)).section(mm(66 - by / 2), mm(20)).outOfParallel(mm(-by));
    }

    private static TrialCut trial(double a) {
        return TrialCut.walls(mm(a), mm(31.26)).slot(mm(6)).piece(mm(a + 37.26)).repeatability(mm(0.02));
    }

    private static TrialCut wrong(double a) {
        return TrialCut.walls(mm(a), mm(31.26)).slot(mm(6)).piece(mm(76.1)).repeatability(mm(0.02));
    }

    private static RodSlot slot(double depth) {
        return RodSlot.of(Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(depth)))
                .startingAt(mm(3))
                .adjusterPocket(mm(20))
                .section(mm(12), mm(15)));
    }

    private static final Blank BLANK =
            Blank.ofLength(mm(640)).section(mm(61), mm(20)).outOfParallel(mm(0.06));
    private static final Cutter CUTTER = Cutter.straight(mm(6));
    private static final Fence FENCE = Fence.onePiece(mm(600));

    private static HeadInterference head(double width) {
        return HeadInterference.of(Head.angled(deg(13)).width(mm(width)).veneer(mm(2), mm(1)), BLANK, FENCE);
    }

    private static CentringRounds rounds(double a) {
        return CentringRounds.of(trial(a)).fenceMoved(FenceMove.away(mm(0.7)));
    }

    private static BlankOnFence onFence(double step) {
        return BlankOnFence.of(
                BLANK.nutAt(mm(200)),
                Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9))).startingAt(mm(3)),
                Fence.split(mm(600), mm(step)));
    }

    /** Each answer made twice from equal parts, and once from others. */
    private record Made(Supplier<Object> same, Object other) {
        @Override
        public String toString() {
            return other.getClass().getSimpleName();
        }
    }

    static Stream<Made> answers() {
        return Stream.of(
                new Made(() -> Centring.of(trial(29.84)), Centring.of(trial(29.85))),
                new Made(() -> Centring.of(wrong(29.84)), Centring.of(wrong(29.85))),
                new Made(
                        () -> Centring.of(trial(29.84)).closure(),
                        Centring.of(trial(29.85)).closure()),
                new Made(
                        () -> Centring.of(wrong(29.84)).closure(),
                        Centring.of(wrong(29.85)).closure()),
                new Made(
                        () -> Centring.of(trial(29.84)).offset(),
                        Centring.of(trial(29.85)).offset()),
                new Made(
                        () -> Centring.of(trial(29.84)).move(),
                        Centring.of(trial(29.85)).move()),
                new Made(
                        () -> Centring.of(wrong(29.84)).move(),
                        Centring.of(wrong(29.85)).move()),
                new Made(
                        () -> Centring.of(trial(29.84))
                                .move()
                                .at(Fence.pivoting(mm(600)).fromPivot(mm(300), mm(500))),
                        Centring.of(trial(29.84)).move().at(FENCE)),
                new Made(
                        () -> Centring.of(trial(25)).move().leaves(FeelerSet.metric13()),
                        Centring.of(trial(29.84)).move().leaves(FeelerSet.inch26())),
                new Made(
                        () -> Centring.of(trial(29.84)).along(tapered(6)),
                        Centring.of(trial(29.84)).along(tapered(5))),
                new Made(() -> rounds(29.84), rounds(29.85)),
                new Made(() -> rounds(29.84).place(), rounds(29.85).place()),
                new Made(() -> onFence(0.1), onFence(0.2)),
                new Made(() -> onFence(0.1).centred(), onFence(0.2).centred()),
                new Made(() -> rounds(29.84).next(mm(0.1)), rounds(29.84).next(mm(0.5))),
                new Made(
                        () -> FlippedPass.widened(inch(0.25), inch(0.26)).offset(),
                        FlippedPass.widened(inch(0.25), inch(0.27)).offset()),
                new Made(() -> slot(9), slot(10)),
                new Made(() -> slot(9).depth(), slot(10).depth()),
                new Made(() -> slot(9).floor(), slot(10).floor()),
                new Made(() -> slot(9).stops(CUTTER, BLANK), slot(9).pocketStops(CUTTER, BLANK)),
                new Made(
                        () -> slot(9).stops(CUTTER, BLANK).rear(),
                        slot(9).stops(CUTTER, BLANK).front()),
                new Made(() -> slot(9).cautions(CUTTER, BLANK), slot(9).cautions(Cutter.straight(mm(7)))),
                new Made(
                        () -> slot(9).passes(Passes.noDeeperThan(mm(0.5))), slot(9).passes(Passes.noDeeperThan(mm(2)))),
                new Made(
                        () -> slot(9).passes(Passes.noDeeperThan(mm(3)))
                                .passes()
                                .get(0),
                        slot(9).passes(Passes.noDeeperThan(mm(3))).passes().get(1)),
                new Made(() -> Passes.noDeeperThan(mm(3)).lastPass(mm(1)), Passes.noDeeperThan(mm(3))),
                new Made(
                        () -> CutterLoad.of(CUTTER, Wood.BLACK_WALNUT, mmPerMinute(9000), rpm(30000), mm(5)),
                        CutterLoad.of(CUTTER, Wood.BLACK_WALNUT, mmPerMinute(1800), rpm(16000), mm(5))),
                new Made(() -> head(76), head(77)),
                new Made(() -> head(76).spacer(mm(1)), head(77).spacer(mm(1))),
                new Made(() -> head(76).skew(), head(77).skew()),
                new Made(
                        () -> head(76).rocking(),
                        HeadInterference.of(Head.angled(deg(13)).width(mm(76)).veneer(mm(3), mm(1)), BLANK, FENCE)
                                .rocking()),
                new Made(
                        () -> FenceStep.of(Fence.split(mm(600), mm(-0.2)).gap(mm(50)), mm(640)),
                        FenceStep.of(Fence.split(mm(600), mm(0.2)).gap(mm(50)), mm(640))));
    }

    @ParameterizedTest
    @MethodSource("answers")
    void equals_isByValue(Made made) {
        Object first = made.same().get();

        assertThat(first)
                .isEqualTo(made.same().get())
                .hasSameHashCodeAs(made.same().get());
        assertThat(first).isNotEqualTo(made.other()).isNotEqualTo(null).isNotEqualTo("text");
        // Allowed to be the same, but then hash tables would be lists.
        assertThat(first).doesNotHaveSameHashCodeAs(made.other());
    }

    @ParameterizedTest
    @MethodSource("answers")
    void toString_isShortEnoughAndFreeOfTheLocale(Made made) {
        String text = made.same().get().toString();

        assertThat(text)
                .hasSizeLessThan(1000)
                .doesNotContain("@")
                .doesNotContain("NaN")
                .doesNotContain("null");
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertThat(made.same().get()).hasToString(text);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void toString_ofWhatIsNoValueIsWordsToo() {
        assertThat(List.of(
                        rounds(29.84),
                        FlippedPass.widened(mm(6), mm(6.1)),
                        slot(9).passes(Passes.noDeeperThan(mm(3))).creepCheck(mm(0.03)),
                        Caution.known("DUST")))
                .allSatisfy(value -> assertThat(value.toString())
                        .isNotBlank()
                        .hasSizeLessThan(1000)
                        .doesNotContain("@"));
    }

    @Test
    void cautions_haveEachACodeOfItsOwn() {
        assertThat(slot(9).cautions(CUTTER).list()).extracting(Caution::code).doesNotHaveDuplicates();
    }

    @Test
    void texts_areTheApprovedOnes() {
        Stream<Object> questions = Stream.of(
                rounds(29.84),
                FlippedPass.widened(mm(6), mm(6.1)),
                slot(9).passes(Passes.noDeeperThan(mm(3))).creepCheck(mm(0.03)));
        Stream<Object> answers = answers().flatMap(made -> Stream.of(made.same().get(), made.other()));

        Approved.hold("channel", Map.of("texts.txt", Approved.texts(Stream.concat(answers, questions))));
    }
}
