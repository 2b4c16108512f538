package org.neckgeom.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.channel.SlotStep;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.order.Operation;
import org.neckgeom.shop.TrialCut;

/**
 * A session at the bench. Offsets by hand: {@code e = (near - far)/2}, the fence moves by e away from the cutter where the near
 * wall is the thinner one; walls and slot add up to the piece.
 */
class BenchSessionTest {

    private static final Job OCTAVE =
            Job.of(SampleNecks.octaveMandolin(), SampleBench.octaveBlank(), SampleBench.metricShop());

    private static BenchSession after(String... entries) {
        return after(BenchSession.of(OCTAVE), entries);
    }

    private static BenchSession after(BenchSession start, String... entries) {
        BenchSession session = start;
        for (String entry : entries) {
            BenchSession.Reply reply = session.enter(entry);
            assertThat(reply.question()).as(entry).isEmpty();
            session = reply.session();
        }
        return session;
    }

    private static String asked(BenchSession session, String entry) {
        BenchSession.Reply reply = session.enter(entry);

        assertThat(reply.isTaken()).isFalse();
        assertThat(reply.session().job()).isEqualTo(session.job());
        assertThat(reply.changes()).isEmpty();
        return reply.question();
    }

    @Test
    void of_asksForATrialCutFirst_andNamesWhatComesBefore() {
        BenchSession session = BenchSession.of(OCTAVE);

        assertThat(session.settings().title()).isEqualTo("Make a trial cut in a test piece");
        assertThat(session.questions())
                .extracting(BenchQuestion::code)
                .containsExactly("near-wall", "far-wall", "slot", "piece");
        assertThat(session.questions()).extracting(BenchQuestion::isNeeded).containsExactly(true, true, false, false);
        assertThat(session.before())
                .extracting(Operation::name)
                .containsExactly("rest the stock", "flatten the face", "square the edges", "mark the lines");
        // (61 - 6)/2 = 27.5, 5 mm either way by a rule (common practice)
        assertThat(session.question().orElseThrow()).hasToString("near wall, usually 22.5 to 32.5 mm");
        assertThat(session.cautions()).isNotEmpty();
        assertThat(session.canUndo()).isFalse();
    }

    /** Three rounds: cut, move, cut; one misread that does not close, one entry taken back. */
    @Test
    void enter_leadsThroughTheChannel() {
        BenchSession read = after("26.79", "28.21", "6.02", "61.02");
        assertThat(read.settings().title()).isEqualTo("Move the fence");
        assertThat(read.job().steps()).hasSize(1);

        BenchSession moved = after(read, "0.7 away");
        // A misread by 1 mm: 28.49 + 27.51 + 6.02 = 62.02, not 61.02.
        BenchSession three = after(moved, "28.49", "27.51", "6.02");
        assertThat(asked(three, "61.02")).contains("1.000 mm too long");
        BenchSession again = three.enter("61.02").session();
        assertThat(again.questions()).extracting(BenchQuestion::code).startsWith("near-wall");

        BenchSession wrong = after(again, "27.40", "27.60", "6.02", "61.02");
        BenchSession back = after(wrong, "undo");
        assertThat(back.job()).isEqualTo(moved.job());
        BenchSession right = after(back, "27.49", "27.51", "6.02", "61.02");
        assertThat(right.job())
                .isEqualTo(OCTAVE.trialCut(TrialCut.walls(mm(26.79), mm(28.21))
                                .slot(mm(6.02))
                                .piece(mm(61.02)))
                        .fenceMoved(FenceMove.away(mm(0.7)))
                        .trialCut(TrialCut.walls(mm(27.49), mm(27.51))
                                .slot(mm(6.02))
                                .piece(mm(61.02))));
        assertThat(right.job().plan().slot().step()).isEqualTo(SlotStep.CUT);

        BenchSession cut = after(right, "9.22", "6.03", "3.1", "303.2", "27.52", "27.46");
        MeasuredNeck measured = cut.job().measured();
        assertThat(measured.of(NeckFeature.CHANNEL_DEPTH).orElseThrow().libraryValue())
                .isEqualTo(9.22);
        // (27.52 - 27.46)/2 = 0.03; 0.02/sqrt(2) = 0.0141
        assertThat(measured.of(NeckFeature.SLOT_OFFSET).orElseThrow().libraryValue())
                .isCloseTo(0.03, within(1e-9));
        assertThat(measured.of(NeckFeature.SLOT_OFFSET).orElseThrow().libraryUncertainty())
                .isCloseTo(0.0141, within(1e-9));
        assertThat(cut.operation().orElseThrow().name()).isEqualTo(Operation.SAW_OUT_THE_HEAD);
    }

    @Test
    void reply_showsWhatChangesInTheWholePlan() {
        BenchSession.Reply reply = after("26.79", "28.21", "6.02").enter("61.02");

        assertThat(reply.changes())
                .extracting(PlanChange::code)
                .contains(CheckCode.CHANNEL_CENTRED, CheckCode.WOOD_LEFT);
        assertThat(reply.changes().get(0).was()).isEqualTo("open, not measured");
        assertThat(reply.changes().get(0).is()).startsWith("open, slot 0.69").contains("nearer the fence");
        assertThat(after("26.79").enter("28.21").changes())
                .as("half of a cut changes nothing")
                .isEmpty();
    }

    /** 12.4 deep for 9.2 leaves 1.6 of 3: a strip of 3.2 on the floor is the least harm, as in the plan's repairs. */
    @Test
    void reply_hasTheWaysBackFromAReadingOutOfItsLimit() {
        BenchSession cut =
                after(after("26.79", "28.21", "6.02", "61.02"), "0.7 away", "27.49", "27.51", "6.02", "61.02");
        BenchSession.Reply first = cut.enter("12.4");
        BenchSession.Reply reply = first.isTaken() ? first : first.session().enter("12.4");

        assertThat(reply.repairs()).isNotEmpty();
        assertThat(reply.repairs().get(0).code()).isEqualTo(RepairCode.STRIP_ON_THE_FLOOR);
        assertThat(reply.repairs()).isEqualTo(reply.session().job().plan().repairs());
        assertThat(cut.enter("9.2").repairs()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-3 | The near wall cannot be -3 mm. Read it again.",
                "500 | The near wall cannot be 500 mm. Read it again.",
                "2.679 | Near wall 2.679 mm is out of the usual 22.5 to 32.5 mm. Read it again, and enter it once more if it is right.",
                "'' | The near wall is needed. Enter a reading, done, undo, or end.",
                "undo | There is no entry to take back.",
                "done | The channel is not to be cut yet: make a trial cut in a test piece, and read both walls, the piece and the slot.",
            })
    void enter_asksAboutWhatCannotBe_inOneSentence(String entry, String question) {
        assertThat(asked(BenchSession.of(OCTAVE), entry)).isEqualTo(question);
    }

    @Test
    void enter_ofWhatIsNoLengthNamesOneThatIs() {
        assertThat(asked(BenchSession.of(OCTAVE), "27,5")).contains("27,5").contains("mm");
        assertThat(asked(BenchSession.of(OCTAVE), "wall")).contains("wall");
        assertThat(asked(BenchSession.of(OCTAVE), "3 deg")).contains("3 deg");
        assertThat(asked(after("26.79"), "x")).isNotEmpty();
        assertThat(after("26.79").enter("x").session().questions())
                .as("what was read before stays")
                .extracting(BenchQuestion::code)
                .startsWith("far-wall");
    }

    @Test
    void enter_takesAnUnusualReadingWhenItIsEnteredAgain() {
        BenchSession doubted = BenchSession.of(OCTAVE).enter("21.5").session();

        assertThat(doubted.enter("21.6").isTaken()).isFalse();
        assertThat(doubted.enter("21.5").isTaken()).isTrue();
    }

    /** 1.0547 in are 26.78938 mm. */
    @Test
    void enter_takesEveryUnit_andQuantities() {
        BenchSession typed = after("1.0547 in", "28.21 mm", "", "");
        BenchSession given = BenchSession.of(OCTAVE)
                .enter(inch(1.0547))
                .session()
                .enter(mm(28.21))
                .session()
                .enter("done")
                .session();

        assertThat(typed.job()).isEqualTo(given.job());
        assertThat(typed.job().steps().get(0).cut().orElseThrow().nearReadingsMm()[0])
                .isCloseTo(26.78938, within(1e-9));
        assertThat(BenchSession.of(OCTAVE).enter(deg(3)).isTaken()).isFalse();
    }

    @Test
    void done_movesAsAdvised_byTheGaugesAtHand() {
        BenchSession moved = after("26.79", "28.21", "6.02", "61.02", "done");

        assertThat(moved.job().steps()).hasSize(2);
        // The gauges make 0.70 mm.
        assertThat(moved.job().steps().get(1).move().orElseThrow().towardMm()).isCloseTo(-0.7, within(1e-9));
    }

    @Test
    void done_finishesTheOperationAndThoseBeforeIt() {
        BenchSession cut = after("26.79", "28.21", "6.02", "61.02", "0.7 away", "27.49", "27.51", "6.02", "61.02");
        BenchSession done = after(cut, "done");

        assertThat(done.job().plan().work().finished())
                .extracting(Operation::name)
                .containsExactly(
                        "rest the stock", "flatten the face", "square the edges", "mark the lines", "cut rod channel");
        assertThat(done.enter("undo").session().job()).isEqualTo(cut.job());
    }

    /** A session that is ended goes on from what was kept. */
    @Test
    void of_goesOnWhereTheRecordStops() {
        BenchSession cut =
                after("26.79", "28.21", "6.02", "61.02", "0.7 away", "27.49", "27.51", "6.02", "61.02", "9.22", "6.03");
        BenchSession again = BenchSession.of(cut.job());

        assertThat(again.operation()).isEqualTo(cut.operation());
        assertThat(again.questions()).isEqualTo(cut.questions());
        assertThat(BenchSession.of(after("26.79", "28.21", "", "").job())
                        .enter("undo")
                        .session()
                        .job())
                .as("the last cut can be taken back although the session is another")
                .isEqualTo(OCTAVE);
    }

    /** To the end of the work: each operation is done when it is at hand, in the order of the plan. */
    @Test
    void done_leadsToTheEnd() {
        BenchSession session = after("26.79", "28.21", "6.02", "61.02", "0.7 away", "27.49", "27.51", "6.02", "61.02");
        List<String> seen = new ArrayList<>();
        while (session.operation().isPresent()) {
            seen.add(session.operation().get().name());
            assertThat(session.settings().rows().size()).isBetween(0, 6);
            session = after(session, "done");
        }

        assertThat(seen)
                .startsWith("cut rod channel", "saw out the head", "true the head")
                .endsWith("set up");
        assertThat(session).hasToString("Bench session: all operations are done");
        assertThat(session.job().plan().order().steps()).isEmpty();
        assertThat(asked(session, "done")).isEqualTo("All operations are done.");
    }

    /** No entry makes a session throw, and undo leads back to where it began. Seeded. */
    @Test
    void undo_takesBackEveryEntry() {
        String[] entries = {
            "26.79", "28.21", "27.5", "6.02", "61.02", "", "done", "0.3 toward", "0.3", "9.2", "x", "-1", "13"
        };
        for (long seed = 1; seed <= 20; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            BenchSession session = BenchSession.of(OCTAVE);
            for (int i = 0; i < 25; i++) {
                session = session.enter(entries[random.nextInt(entries.length)]).session();
            }
            for (int i = 0; i < 60 && session.canUndo(); i++) {
                session = session.enter("undo").session();
            }
            assertThat(session.job()).as("seed " + seed).isEqualTo(OCTAVE);
        }
    }
}
