package org.neckgeom.plan;

import static org.neckgeom.order.Operation.CARVE_THE_NECK;
import static org.neckgeom.order.Operation.FIT_HEEL_TO_BODY;
import static org.neckgeom.order.Operation.GLUE_FINGERBOARD;
import static org.neckgeom.order.Operation.LAY_IN_THE_ROD;
import static org.neckgeom.order.Operation.REST_THE_STOCK;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.measure.Decision;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Neck;
import org.neckgeom.strength.Relief;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/**
 * The repairs of a back that is carved too thin: at one place, or all along. A thin place is judged at its station, where it
 * was read. All limits are common practice.
 */
final class BackRepairs {

    private static final double THINNER_MM = 0.25;
    private static final double SOFTEST = 0.7;
    private static final double LEAST_LAMINATION_MM = 2;
    private static final double MOST_BOARD_MM = 6;
    private static final double ACCURACY_MM = 1e-4;
    private static final double BAR_WIDTH_MM = 3.2;
    private static final double BAR_HEIGHT_MM = 9.5;
    private static final double BARS_OFF_MM = 10;

    private BackRepairs() {}

    static List<Repair> of(Stages plan) {
        Map<Double, Estimate<Length>> depths = plan.measured().backDepths();
        List<Map.Entry<Double, Estimate<Length>>> read = List.copyOf(depths.entrySet());
        Optional<Map.Entry<Double, Estimate<Length>>> thinnest = read.stream()
                .filter(one -> verdict(plan, one.getKey(), one.getValue()).call() == Decision.OUTSIDE)
                .max(Comparator.comparing(one -> thinMm(plan, one.getKey(), one.getValue())));
        boolean allAlong = read.size() > 1
                && read.stream()
                        .allMatch(one ->
                                verdict(plan, one.getKey(), one.getValue()).call() == Decision.OUTSIDE);
        List<Repair> all = new ArrayList<>();
        for (Map.Entry<Double, Estimate<Length>> one : allAlong ? List.of(thinnest.orElseThrow()) : read) {
            double x = one.getKey();
            Estimate<Length> depth = one.getValue();
            Statement reading = allAlong
                    ? plan.words("back-all-along", "back, thin all along")
                    : plan.words("back-at", "back at {station:brief}").with("station", Kind.MM, x);
            all.addAll(ReadingRepairs.of(plan, reading, verdict(plan, x, depth), REST_THE_STOCK, ways -> {
                Bare bare = Bare.of(plan, x, depth, allAlong);
                keep(ways, bare);
                floor(ways, bare);
                lamination(ways, bare);
                if (allAlong) {
                    thickerBoard(ways, bare);
                    bars(ways, bare);
                }
            }));
        }
        return all;
    }

    private static double thinMm(Stages plan, double x, Estimate<Length> read) {
        return plan.made().drawnDepthMm(x) - read.libraryValue();
    }

    private static Verdict<Length> verdict(Stages plan, double x, Estimate<Length> read) {
        return Verdict.of(read, Limits.atLeast(plan.style().amount(plan.made().drawnDepthMm(x) - THINNER_MM)));
    }

    /**
     * A thin place, and the neck without it.
     *
     * @param plan as it is
     * @param carved as if all of it had been carved to the drawing, so that its section is thin by nothing else
     * @param mended as if this place had been, or all of it where it is thin all along
     * @param x the station
     * @param thin how much it is too thin there
     */
    private record Bare(Stages plan, RepairedNeck carved, RepairedNeck mended, double x, double thin) {

        static Bare of(Stages plan, double x, Estimate<Length> read, boolean allAlong) {
            double thin = thinMm(plan, x, read);
            RepairedNeck asItIs = RepairedNeck.asItIs(plan);
            RepairedNeck carved = asItIs.reading(plan.measured().withoutBack());
            return new Bare(plan, carved, allAlong ? carved : asItIs.deeperAt(x, thin), x, thin);
        }

        /** The stiffness left of the drawn neck's at the section. */
        Optional<Double> stiffness() {
            return carved.stiffnessAt(x, -thin);
        }

        /** How much more relief the strings pull than of the neck as drawn, of the same woods: what was weighed down is this neck. */
        Optional<Double> moreRelief() {
            Optional<Double> now = plan.strength().relief().map(Bare::mm);
            Optional<Double> asItIs = plan.strength().byTheTables().map(Bare::mm);
            Optional<Double> asDrawn = mended.after().strength().byTheTables().map(Bare::mm);
            return now.flatMap(mm -> asItIs.flatMap(is -> asDrawn.map(drawn -> mm * (1 - drawn / is))));
        }

        private static double mm(Relief of) {
            return of.underStrings().added().libraryValue();
        }
    }

    private static void keep(ReadingRepairs ways, Bare bare) {
        Stages plan = bare.plan();
        Optional<Double> more = bare.moreRelief();
        Statement how = plan.words(
                        more.isPresent() ? "live-with-the-relief" : "live-with-it",
                        "Take no more off there: {thin:text} thin"
                                + (more.isPresent() ? ", {relief:small} more relief under the strings." : "."))
                .with("thin", Kind.MM, bare.thin())
                .with("relief", Kind.MM, more.orElse(0.0));
        ways.way(RepairCode.KEEP, how)
                .leavesEnough(RepairedNeck.asItIs(plan))
                .unless(
                        bare.stiffness().filter(r -> r < SOFTEST).isPresent(),
                        plan.words(
                                        "too-soft",
                                        "{stiffness:2} of the drawn stiffness is left there, less than {least:2}")
                                .with("stiffness", Kind.RATIO, bare.stiffness().orElse(0.0))
                                .with("least", Kind.RATIO, SOFTEST))
                .stiffness(bare.stiffness());
    }

    /** Where the wood under the channel wants it. */
    private static void floor(ReadingRepairs ways, Bare bare) {
        Stages plan = bare.plan();
        double wood = plan.floor().wood().least().woodMm();
        double missing = plan.job().floorLimit().libraryValue() - wood;
        if (!(wood > 0 && missing > 0)) {
            return;
        }
        double deep = plan.made().channel().depthMm() - missing;
        ways.way(
                        RepairCode.STRIP_ON_THE_FLOOR,
                        plan.words(
                                        "strip-and-low-rod",
                                        "{thick:text} thick, with epoxy; rod and fillet lower by as much.")
                                .with("thick", Kind.MM, missing))
                .before(GLUE_FINGERBOARD)
                .undoes(LAY_IN_THE_ROD)
                .leaves(RepairedNeck.asItIs(plan).reading(NeckFeature.CHANNEL_DEPTH, deep))
                .stiffness(
                        bare.carved().reading(NeckFeature.CHANNEL_DEPTH, deep).stiffnessAt(bare.x(), -bare.thin()));
    }

    private static void lamination(ReadingRepairs ways, Bare bare) {
        ways.way(
                        RepairCode.BACK_LAMINATION,
                        bare.plan()
                                .words(
                                        "plane-and-laminate",
                                        "Plane the back flat there, glue on {thick:text} or more, carve again.")
                                .with("thick", Kind.MM, bare.thin() + LEAST_LAMINATION_MM))
                .before(FIT_HEEL_TO_BODY)
                .undoes(CARVE_THE_NECK)
                .leaves(bare.mended())
                .stiffness(bare.carved().stiffnessAt(bare.x(), 0))
                .looks("joint-line", "a joint line along both sides");
    }

    /** As much thicker as makes the section as stiff as drawn. */
    private static void thickerBoard(ReadingRepairs ways, Bare bare) {
        Stages plan = bare.plan();
        double few = 0;
        double many = MOST_BOARD_MM;
        while (many - few > ACCURACY_MM) {
            double middle = (few + many) / 2;
            if (withBoard(bare, middle).filter(r -> r < 1).isPresent()) {
                few = middle;
            } else {
                many = middle;
            }
        }
        double thicker = many;
        ways.way(
                        RepairCode.THICKER_BOARD,
                        plan.words(
                                        "board-thicker-by",
                                        "{thick:text} thicker than drawn; the strings rise by it: neck angle and saddle follow.")
                                .with("thick", Kind.MM, thicker))
                .before(GLUE_FINGERBOARD)
                .leavesEnough(RepairedNeck.asItIs(plan))
                .stiffness(withBoard(bare, thicker))
                .looks("thicker-neck", "the board's edges are higher by it")
                .budget("fret-plane-rises", "the fret plane rises by it");
    }

    private static Optional<Double> withBoard(Bare bare, double thicker) {
        return bare.carved().neck(neck -> thicker(bare.plan(), neck, thicker)).stiffnessAt(bare.x(), -bare.thin());
    }

    private static Neck thicker(Stages plan, Neck neck, double by) {
        return neck.fingerboard(neck.fingerboard()
                .thickness(
                        plan.style().amount(neck.fingerboard().nutThicknessMm() + by),
                        plan.style().amount(neck.fingerboard().farThicknessMm() + by)));
    }

    private static void bars(ReadingRepairs ways, Bare bare) {
        Stages plan = bare.plan();
        Amount<Length> off = ShopUnits.mm(BARS_OFF_MM);
        Bar bar = Bar.carbon(plan.style().amount(plan.neck().bodyJointMm()))
                .section(ShopUnits.mm(BAR_WIDTH_MM), ShopUnits.mm(BAR_HEIGHT_MM));
        Attempt<Double> stiffer = Attempt.atAll(() ->
                Optional.of(Relief.of(plan.made().design()).addingBars(bar, off).stifferRatio()));
        Statement how = plan.words(
                        "pair-of-carbon-bars",
                        "Two of carbon, {width} x {height}, {off} each side of the middle, tops at the glue face.")
                .with("width", Kind.AMOUNT, ShopUnits.mm(BAR_WIDTH_MM))
                .with("height", Kind.AMOUNT, ShopUnits.mm(BAR_HEIGHT_MM))
                .with("off", Kind.AMOUNT, off);
        ways.way(RepairCode.BARS_BESIDE_THE_ROD, how)
                .before(GLUE_FINGERBOARD)
                .unless(
                        stiffer.answer().isEmpty(),
                        plan.words(
                                "no-room-for-bars",
                                "no room for bars that deep, or the neck's woods and strings are not known"))
                .leavesEnough(RepairedNeck.asItIs(plan))
                .stiffness(stiffer.answer().flatMap(by -> bare.stiffness().map(r -> r * by)));
    }
}
