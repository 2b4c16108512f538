package org.neckgeom.page;

import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.Optional;
import org.neckgeom.channel.Passes;
import org.neckgeom.channel.RodSlot;
import org.neckgeom.drawing.Settled;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.BackSet;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.End;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.ScarfCut;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.plan.CheckCode;
import org.neckgeom.plan.Finding;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Outcome;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.plan.PlanSection.Row;
import org.neckgeom.shop.Caution;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.state.Cause;
import org.neckgeom.state.Deviation;
import org.neckgeom.state.Known;
import org.neckgeom.state.NeckState;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.LengthStyle;

/** Two invented necks and what a plan might say about them. */
public final class Necks {

    private Necks() {}

    /** A neck in inches with a flat head, an arched channel, a pocket and unlike sides; no heel, no strings. */
    public static Neck bass() {
        return Neck.named("Bass <four> & \"flat\" head")
                .scale(inch(34))
                .fingerboard(Fingerboard.tapered(inch(1.5), inch(2.3)).thickness(inch(0.25)))
                .back(BackProfile.between(inch(0.65), inch(0.72)).asymmetric(2, 2.5))
                .frets(24)
                .bodyAtFret(17)
                .wood(Wood.SUGAR_MAPLE)
                .channel(Channel.forRod(
                                TrussRod.singleAction(inch(24), inch(0.25)).adjuster(End.HEEL))
                        .fillet(inch(0.125))
                        .arch(inch(0.04))
                        .adjusterPocket(inch(1))
                        .section(inch(0.5), inch(0.45)))
                .head(Head.flat().length(inch(8)).width(inch(4)).thickness(inch(0.6)));
    }

    public static Job octavePlan() {
        return Job.of(
                        octave(),
                        SampleBench.octaveBlank(),
                        Shop.with(Cutter.straight(mm(6))
                                .flutes(2, mm(22))
                                .shank(mm(12.7))
                                .stickOut(mm(30))
                                .carbide()))
                .trialCut(TrialCut.walls(mm(27.3), mm(27.7)).repeatability(mm(0.02)));
    }

    /** The sample octave mandolin, its head scarfed on, its neck set to the body. */
    public static Neck octave() {
        return scarfed(SampleNecks.octaveMandolin()).neckSet(octaveSet());
    }

    /** A neck of which the head is scarfed on in the head. */
    public static Neck scarfed(Neck neck) {
        return neck.head(neck.head().orElseThrow().scarfed(ScarfCut.inTheHead().kerf(mm(1.8))));
    }

    public static NeckSet octaveSet() {
        return NeckSet.saddle(mm(15.2))
                .atNut(mm(0.4))
                .action(mm(2.0))
                .compensation(mm(2.2))
                .fretPlane(mm(7.1));
    }

    static Contents octaveContents() {
        Neck neck = octave();
        return new Contents(
                neck,
                Settled.nothing(),
                LengthStyle.MILLIMETRES,
                Optional.of(ScarfJoint.of(neck.head().orElseThrow(), SampleBench.octaveBlank(), deg(0))),
                Optional.of(BackSet.of(neck)),
                List.of(
                        check(
                                CheckCode.WOOD_LEFT,
                                Outcome.OK,
                                "4.97 mm at 3 mm from the nut",
                                "3 mm or more",
                                "Go on."),
                        check(
                                CheckCode.CHANNEL_CENTRED,
                                Outcome.STOP,
                                "0.710 mm toward the fence, u 0.014 mm",
                                "within 0.100 mm",
                                "Move the fence 0.710 mm away from the cutter, run a test piece again and read both walls."),
                        check(
                                CheckCode.READINGS_AGREE,
                                Outcome.OPEN,
                                "head 8.5 mm wider than the shaft on each side",
                                "no contact",
                                "Make a parallel spacer of 9.5 mm, or slot before the wings go on.")),
                List.of(Caution.known("STOPPED_CUT"), Caution.known("DUST")),
                sections(),
                Optional.empty(),
                List.of(),
                () -> "0f1e2d3c",
                Optional.empty());
    }

    /** The octave with an order of work that conflicts, and a budget. */
    static Contents workContents() {
        Contents octave = octaveContents();
        return new Contents(
                octave.design(),
                octave.settled(),
                octave.style(),
                octave.scarf(),
                octave.neckSet(),
                octave.checks(),
                octave.cautions(),
                octave.sections(),
                Optional.of(OrderOfWork.forNeck()
                        .keep("glue wings")
                        .before("cut rod channel")
                        .plan()),
                List.of(new BudgetPart("String line at the bridge", invented(), Limits.within(mm(0.8)))),
                () -> "0f1e2d3c",
                Optional.empty());
    }

    private static Known invented() {
        List<Cause> causes = List.of(
                Cause.of("rod channel on the blank", ErrorDistribution.normal(mm(0.05))),
                Cause.of("heel on the channel", ErrorDistribution.rectangular(mm(0.2))),
                Cause.of(
                        "body joint on the heel, with a name too long for a phone",
                        ErrorDistribution.triangular(mm(0.6))),
                Cause.of("<fingerboard> & pins", ErrorDistribution.rectangular(mm(0.35))));
        Deviation sum =
                causes.stream().map(cause -> Deviation.of(cause.name())).reduce(Deviation.none(), Deviation::plus);
        return NeckState.of(causes).known("String line at the bridge", sum);
    }

    private static List<PlanSection> sections() {
        return List.of(
                section(
                        "Centre the cutter",
                        List.of(
                                row("a", "fence", "one piece, 600 mm"),
                                row("b", "move", "0.710 mm away from the cutter"),
                                row("c", "leaves", "0.70 mm\n0.010 mm short")),
                        List.of(words("Read both walls with the same instrument: a zero error then cancels."))),
                section(
                        "Cut the channel",
                        List.of(
                                row("d", "depth", "9.200 mm"),
                                new Row("e", words("passes"), passes()),
                                row(
                                        "f",
                                        "stop, leading end head",
                                        "300.000 mm from the cutter's centre, 297.000 mm from its near edge")),
                        List.of()),
                section(
                        "Lay out the scarf",
                        List.of(
                                row("g", "pitch", "13 deg"),
                                row("h", "glue face", "66.681 mm"),
                                row("i", "<b>&\"", "a name that is not markup")),
                        List.of()));
    }

    private static PlanSection section(String title, List<Row> rows, List<Statement> notes) {
        return PlanSection.of("test", title, rows, notes, LengthStyle.MILLIMETRES);
    }

    /** 9.2 mm in steps of 2.9 mm, the last one light. */
    private static Answer passes() {
        return RodSlot.of(SampleNecks.octaveMandolin().channel().orElseThrow())
                .passes(Passes.noDeeperThan(mm(2.9)).lastPass(mm(0.5)));
    }

    private static Row row(String key, String label, String value) {
        return new Row(key, words(label), words(value));
    }

    private static PlanCheck check(CheckCode code, Outcome outcome, String found, String allowed, String todo) {
        return new PlanCheck(
                code,
                new Finding.Conflicting(outcome == Outcome.OK ? 0 : 1, outcome == Outcome.OPEN),
                words(found),
                words(allowed),
                words(todo));
    }

    private static Statement words(String text) {
        return Statement.of("test", "{words}", LengthStyle.MILLIMETRES).with("words", Kind.NAME, text);
    }

    static Contents bassContents() {
        return new Contents(
                bass(),
                Settled.nothing(),
                LengthStyle.DECIMAL_INCHES,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                () -> "0f1e2d3c",
                Optional.empty());
    }
}
