package org.neckgeom.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.BenchCard;
import org.neckgeom.plan.Job;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.LengthStyle;

/**
 * First screen, step and cards as text. Figures by hand: the blank is 61 wide, the cutter 6: (61 - 6)/2 = 27.5; 9 + 0.2 deep;
 * 150 tan 13 deg = 34.63. The parts of a card are those of the samples in the project's practice document, section 5.
 */
class CardTest {

    private static final Job OCTAVE =
            Job.of(SampleNecks.octaveMandolin(), SampleBench.octaveBlank(), SampleBench.metricShop());

    private static String card(String operation) {
        return Sheet.of(OCTAVE).toCard(operation);
    }

    @Test
    void card_ofTheChannel_hasSettingsTicksBoxesLimitsCautionsAndTheWayBack() {
        assertThat(card("cut rod channel"))
                .isEqualTo(card("cut-rod-channel"))
                .startsWith("CARD 5  CUT ROD CHANNEL\n")
                .contains("set " + Document.mark(OCTAVE), "date ____")
                .contains("TRIAL  test piece  61 mm wide", "27.5 mm from the cutter's near edge")
                .contains("read   near wall ______ usually 22.5 to 32.5 mm")
                .contains("CUT    channel", "9.2 mm deep")
                .contains("PASS   1.31     2.63", "       [ ]      [ ]", "read   ______   ______")
                .contains("AFTER  channel depth ______ 9 mm or more")
                .contains("channel width ______ 6 mm or more", "LIMIT  The two walls differ by 0.2 mm or less.")
                .contains("BACK   Off centre: draw the neck from the channel")
                .contains("CARE   Clamp a stop behind and a stop in front")
                .contains("The machine's own instructions, guards");
    }

    @Test
    void cards_areThereForEveryOperation_andFit() {
        for (LengthStyle style : LengthStyle.values()) {
            Job job = OCTAVE.printIn(style);
            for (Operation operation : BenchCard.operations(job)) {
                String card = Sheet.of(job).toCard(operation.name());
                assertThat(card.lines())
                        .as(operation.name())
                        .hasSizeBetween(5, 44)
                        .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(80));
                assertThat(card).contains("CARE   ").contains(operation.name().toUpperCase(Locale.ROOT));
                assertThat(BenchCard.of(job, operation.name()).cautions()).hasSizeBetween(1, 5);
            }
        }
        assertThat(card("set up")).contains("Tighten it with the");
    }

    /** A card is the same before the operation, and after it, when its readings are in the job. */
    @Test
    void card_isOfADoneOperationToo() {
        Job cut = OCTAVE.trialCut(
                        TrialCut.walls(mm(26.79), mm(28.21)).slot(mm(6.02)).piece(mm(61.02)))
                .fenceMoved(FenceMove.away(mm(0.7)));

        assertThat(BenchCard.of(cut, "cut rod channel").readings())
                .isEqualTo(BenchCard.of(OCTAVE, "cut rod channel").readings());
        assertThatThrownBy(() -> card("bake the neck")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void firstScreen_andStep_areOfTheStepAtHand() {
        Sheet sheet = Sheet.of(OCTAVE);

        assertThat(sheet.toFirstScreen().lines()).hasSizeLessThanOrEqualTo(22);
        assertThat(sheet.toFirstScreen()).contains("NOW  Make a trial cut in a test piece", "before it");
        assertThat(sheet.toStep())
                .startsWith("Make a trial cut in a test piece\n====")
                .contains("\nMind\n----\n");
        assertThat(sheet.toSettings()).contains("test piece  61 mm wide").doesNotContain("Mind");
        assertThatThrownBy(() -> sheet.toSection("nothing")).hasMessageStartingWith("section must be one of checks");
        assertThat(sheet.toText())
                .contains(sheet.toSection("checks"))
                .contains(sheet.toSection("Head and tuner posts"));
    }
}
