package org.neckgeom.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.channel.Pass;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.ScarfCut;
import org.neckgeom.page.Document;
import org.neckgeom.plan.BenchCard;
import org.neckgeom.plan.Job;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.template.Mark.Stroke;
import org.neckgeom.template.Mark.Words;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.LengthStyle;

/** Cards to print: figures are held to the design's own, places to the half sheet that a card has. */
class CardsTest {

    private static final Job OCTAVE =
            Job.of(SampleNecks.octaveMandolin(), SampleBench.octaveBlank(), SampleBench.metricShop());

    /** Half a sheet of A4 within white edges of 10 mm and of 5 mm at the cut, as on the first page of a set. */
    private static final double WIDE = (297 - 20) / 2.0 - 5;

    private static final double HIGH = 210 - 20;
    private static final double HAIR = 1e-6;

    private static List<Mark> card(String operation) {
        return CardPage.of(BenchCard.of(OCTAVE, operation), "set, card 1 of 25", WIDE, HIGH)
                .at(0, HIGH);
    }

    private static List<String> words(List<Mark> marks) {
        return marks.stream()
                .filter(Words.class::isInstance)
                .map(mark -> ((Words) mark).text())
                .toList();
    }

    private static List<String> figures(List<Mark> marks) {
        return marks.stream()
                .filter(mark -> mark instanceof Words words && words.size() == 8)
                .map(mark -> ((Words) mark).text())
                .toList();
    }

    /**
     * Stops by hand: rear {@code x_b - (x_s + r)}, front {@code (x_e - r) - x_h}, in a blank from x_h to x_b, a channel from x_s to
     * x_e, a cutter of radius r.
     */
    @Test
    void channel_hasItsStopsInLargeFigures_andTheCutterBetweenThemToScale() {
        Channel channel = OCTAVE.neck().channel().orElseThrow();
        double head = -OCTAVE.blank().nutFromHeadEndMm();
        double rear = head + 640 - (channel.startMm() + 3);
        double front = channel.endMm() - 3 - head;

        List<Mark> card = card("cut rod channel");

        assertThat(figures(card)).contains(Numbers.trimmed(rear, 1) + " mm", Numbers.trimmed(front, 1) + " mm", "6 mm");
        double cutter = 5 + front / (front + rear) * (WIDE - 10);
        assertThat(card).anySatisfy(mark -> {
            assertThat(mark.layer()).isEqualTo(Layer.CENTRE);
            assertThat(mark.box()[0]).isCloseTo(cutter, within(HAIR));
            assertThat(mark.box()[2]).isCloseTo(cutter, within(HAIR));
        });
        assertThat(Cards.of(OCTAVE).pages(Paper.A4))
                .anySatisfy(page -> assertThat(words(page.marks()))
                        .contains("CUT ROD CHANNEL", "set " + Document.mark(OCTAVE) + ", card 5 of 25"));
        assertThat(words(card))
                .contains("CUT ROD CHANNEL", "feed", "head end", "heel end")
                .contains("9 mm or more", "The two walls differ by 0.2 mm or less.")
                .anyMatch(text -> text.startsWith("fence, seen from above"));
    }

    /**
     * By hand: a shaft whose scarf is sawn from 20 thick at 13 deg begins 20 / tan 13 deg = 86.630 before the nut and ends 640 - 200 = 440
     * past it, 526.630 long; its stops are 440 - 3 - 3 = 434 and 303 - 3 + 86.630 = 386.630 from the cutter.
     */
    @Test
    void channel_isCutInTheWorkThatIsLeftOfTheBlank() {
        Job whole = Job.of(
                SampleNecks.octaveMandolin()
                        .head(SampleNecks.octaveMandolin().head().orElseThrow().scarfed(ScarfCut.inTheHead())),
                SampleBench.octaveBlank().nutAt(mm(200)),
                SampleBench.metricShop());
        Job sawn = whole.order(whole.plan().work().done("cut scarf"));
        double slope = 20 / Math.tan(Math.toRadians(13));
        double apart = 434 + 300 + slope;

        assertThat(workWide(sawn)).isCloseTo((440 + slope) / apart, within(1e-9));
        assertThat(workWide(whole)).isCloseTo(640.0 / (434 + 300 + 200), within(1e-9));
    }

    /** The work's share of what is between the stops: the widest of the boxes from 5.8 to 17.8. */
    private static double workWide(Job job) {
        double width = 120;
        CardSketch sketch =
                CardSketch.of(BenchCard.of(job, "cut rod channel"), width).orElseThrow();
        return sketch.marks().at(0, 0).stream()
                        .filter(mark -> mark instanceof Stroke && mark.layer() == Layer.OUTLINE)
                        .map(CardsTest::box)
                        .filter(box -> Math.abs(box[1] + 17.8) < HAIR && Math.abs(box[3] + 5.8) < HAIR)
                        .mapToDouble(box -> box[2] - box[0])
                        .max()
                        .orElseThrow()
                / (width - 10);
    }

    /** What is cut in all passes is the channel's depth, and the card has the depth after each. */
    @Test
    void channel_hasTheDepthAfterEachPass_downToItsDepth() {
        double depth = OCTAVE.neck().channel().orElseThrow().depthMm();
        List<String> words = words(card("cut rod channel"));
        double sum = 0;
        for (Pass pass : OCTAVE.plan().passes().passes()) {
            sum += pass.step().libraryValue();
            assertThat(words).contains(Numbers.fixed(sum, 2));
        }
        assertThat(sum).isCloseTo(depth, within(1e-9));
    }

    /** Widths from the design: 34 mm at the nut. */
    @Test
    void taper_isDrawnWithItsWidths() {
        assertThat(words(card("taper the sides"))).contains("at the nut", "at the body");
        assertThat(figures(card("taper the sides"))).contains("34 mm");
        assertThat(words(card("rest the stock")))
                .doesNotContain("feed", "at the nut")
                .contains("REST THE STOCK");
    }

    @ParameterizedTest
    @EnumSource(LengthStyle.class)
    void cards_keepInsideTheirHalfOfTheSheet(LengthStyle style) {
        Job cut = OCTAVE.trialCut(
                        TrialCut.walls(mm(26.79), mm(28.21)).slot(mm(6.02)).piece(mm(61.02)))
                .fenceMoved(FenceMove.away(mm(0.7)));
        for (Job job : List.of(OCTAVE.printIn(style), cut.printIn(style))) {
            int operations = BenchCard.operations(job).size();
            for (Paper paper : Paper.values()) {
                for (Cards cards : List.of(Cards.of(job), Cards.of(job).landscape())) {
                    List<TemplatePage> pages = cards.pages(paper);
                    assertThat(pages).hasSize((operations + 1) / 2);
                    pages.forEach(CardsTest::isInside);
                }
            }
        }
    }

    private static void isInside(TemplatePage page) {
        double across = page.acrossMm() - 20;
        double down = page.downMm() - 20;
        double half = (page.isUpright() ? down : across) / 2;
        int atTheCut = 0;
        for (Mark mark : page.marks()) {
            double[] box = box(mark);
            double low = page.isUpright() ? box[1] : box[0];
            double high = page.isUpright() ? box[3] : box[2];
            if (mark.layer() == Layer.CUT && low == high && Math.abs(low - half) < HAIR) {
                atTheCut++;
                continue;
            }
            assertThat(box[0]).as("%s of %s", mark, page).isGreaterThanOrEqualTo(-HAIR);
            assertThat(box[1]).as("%s of %s", mark, page).isGreaterThanOrEqualTo(-HAIR);
            assertThat(box[2]).as("%s of %s", mark, page).isLessThanOrEqualTo(across + HAIR);
            assertThat(box[3]).as("%s of %s", mark, page).isLessThanOrEqualTo(down + HAIR);
            assertThat(high <= half - 5 + HAIR || low >= half + 5 - HAIR)
                    .as("%s of %s", mark, page)
                    .isTrue();
        }
        assertThat(atTheCut).isEqualTo(1);
    }

    private static double[] box(Mark mark) {
        if (mark instanceof Words words) {
            double left = words.at().uMm();
            double low = words.at().vMm();
            return new double[] {
                left, low - 0.3 * words.size(), left + LetterWidths.mm(words.text(), words.size()), low + words.size()
            };
        }
        return ((Stroke) mark).box();
    }

    /** A cut in a hundred passes and more: the card of the channel keeps inside its half sheet, its passes begin at the first. */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.3, 0.75})
    void channelInManyPasses_keepsInsideItsHalf(double deepest) {
        Job slow = Job.of(
                SampleNecks.octaveMandolin(),
                SampleBench.octaveBlank(),
                SampleBench.metricShop().passes(mm(deepest), mm(deepest)));

        for (Paper paper : Paper.values()) {
            for (Cards cards : List.of(Cards.of(slow), Cards.of(slow).landscape())) {
                cards.pages(paper).forEach(CardsTest::isInside);
            }
        }
        List<String> words = words(Cards.of(slow).pages(Paper.A4).stream()
                .flatMap(page -> page.marks().stream())
                .toList());
        BenchCard card = BenchCard.of(slow, "cut rod channel");
        assertThat(words)
                .contains(
                        card.figure(card.depths().get(0)),
                        card.figure(card.depths().get(11)));
        int all = card.depths().size();
        assertThat(all).isGreaterThanOrEqualTo((int) (9 / deepest));
        assertThat(words.stream().anyMatch(line -> line.endsWith("more passes in the plan.")))
                .isEqualTo(all > 72);
    }

    @Test
    void toPages_isOfThePaper_andLiesAsItIsAsked() {
        assertThat(Cards.of(OCTAVE).toPages(Paper.A4)).contains("@page{size:A4 landscape;margin:0}");
        assertThat(Cards.of(OCTAVE).landscape().toPages(Paper.LETTER))
                .contains("@page{size:letter portrait;margin:0}")
                .contains("<title>Octave mandolin");
        assertThat(Cards.of(OCTAVE))
                .isEqualTo(Cards.of(OCTAVE))
                .isNotEqualTo(Cards.of(OCTAVE).landscape());
        assertThat(Cards.of(OCTAVE)).hasToString("Octave mandolin, walnut: 25 cards, upright");
    }

    /** A word wider than the line is parted, and nothing of it is lost. */
    @Test
    void lines_holdAllLetters_withinTheWidth() {
        String text = "An unbreakable-word-that-is-wider-than-its-line and more \u7b8f";
        List<String> lines = CardMarks.lines(text, 2, 20);

        List<String> letters = new ArrayList<>();
        lines.forEach(line -> letters.add(line.replace(" ", "")));
        assertThat(String.join("", letters)).isEqualTo(text.replace(" ", ""));
        assertThat(lines)
                .allSatisfy(line -> assertThat(LetterWidths.mm(line, 2)).isLessThanOrEqualTo(20));
    }
}
