package org.neckgeom.plan;

import static org.neckgeom.order.Operation.CARVE_THE_NECK;
import static org.neckgeom.order.Operation.CUT_ROD_CHANNEL;
import static org.neckgeom.order.Operation.CUT_SCARF;
import static org.neckgeom.order.Operation.GLUE_FINGERBOARD;
import static org.neckgeom.order.Operation.GLUE_HEAD;
import static org.neckgeom.order.Operation.GLUE_HEAD_VENEER;
import static org.neckgeom.order.Operation.TRUE_THE_HEAD;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.form.Kind;
import org.neckgeom.head.BreakAngle;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.JointPlace;
import org.neckgeom.neck.OutlinePoint;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The repairs of a head at another angle, thinner or narrower than drawn, or slid along its joint. All limits are common practice. */
final class HeadRepairs {

    private static final double ANGLE_DEGREES = 0.2;
    private static final double THINNER_MM = 0.2;
    private static final double THINNEST_MM = 10;

    /** Kerf and planing of a joint sawn apart, square to it. */
    private static final double SAWN_MM = 2;

    private static final double STEP_MM = 0.2;
    private static final double NARROWER_MM = 0.3;
    private static final double HOLE_TO_EDGE_MM = 10;
    private static final double WING_MM = 6;
    private static final String NUT_LINE_MOVES = "the nut line moves; mark the lines again from it";

    private HeadRepairs() {}

    static List<Repair> of(Stages plan) {
        List<Repair> all = new ArrayList<>();
        plan.neck().head().ifPresent(head -> {
            plan.measured().scarfAngle().ifPresent(angle -> all.addAll(angle(plan, head, angle)));
            plan.measured()
                    .of(NeckFeature.HEAD_THICKNESS)
                    .ifPresent(thickness -> all.addAll(thickness(plan, head, thickness)));
            plan.made()
                    .scarf()
                    .ifPresent(joint -> plan.measured()
                            .of(NeckFeature.SCARF_STEP)
                            .ifPresent(step -> all.addAll(slid(plan, joint, step))));
            for (NeckFeature side : List.of(NeckFeature.HEAD_WIDTH_BASS, NeckFeature.HEAD_WIDTH_TREBLE)) {
                plan.measured().of(side).ifPresent(width -> all.addAll(narrow(plan, head, side, width)));
            }
        });
        return all;
    }

    private static List<Repair> angle(Stages plan, Head head, Estimate<Angle> angle) {
        double drawn = Math.toDegrees(head.angleRad());
        Limits<Angle> limits =
                Limits.between(ShopUnits.deg(drawn - ANGLE_DEGREES), ShopUnits.deg(drawn + ANGLE_DEGREES));
        double off = angle.libraryValue() - head.angleRad();
        return ReadingRepairs.of(plan, "scarf angle", Verdict.of(angle, limits), CUT_SCARF, ways -> {
            keep(plan, ways, angle.libraryValue());
            face(plan, ways, head, off);
            if (head.scarf().isPresent()) {
                sawApart(plan, ways);
            }
        });
    }

    /** Of the head as it was sawn. */
    private static double angleRad(Stages plan) {
        return plan.made().solid().head().orElseThrow().head().angleRad();
    }

    private static void keep(Stages plan, ReadingRepairs ways, double angle) {
        double enough = Math.toRadians(BreakAngle.LEAST_DEGREES);
        Optional<Double> known = leastBreak(plan);
        double least = known.orElse(angle);
        ways.way(
                        RepairCode.KEEP,
                        known.isPresent()
                                ? plan.words("least-break-now", "Least break over the nut {angle:1}.")
                                        .with("angle", Kind.RAD, least)
                                : plan.words(
                                                "break-of-the-head",
                                                "No string breaks by more than {angle:1} over the nut.")
                                        .with("angle", Kind.RAD, least))
                .unless(
                        least < enough,
                        plan.words("too-flat", "a string breaks by {angle:1} only over the nut")
                                .with("angle", Kind.RAD, least));
    }

    private static Optional<Double> leastBreak(Stages plan) {
        return Attempt.atAll(() -> plan.made().solid().strings().stream()
                        .flatMap(string -> string.breakAngle().stream())
                        .map(Amount::libraryValue)
                        .min(Double::compare))
                .answer();
    }

    /** Flatter: the face is planed at the tip. Steeper: a wedge brings the tip up. */
    private static void face(Stages plan, ReadingRepairs ways, Head head, double off) {
        double tip = head.lengthMm() * StrictMath.tan(Math.abs(off));
        if (off > 0) {
            ways.way(
                            RepairCode.WEDGE_ON_THE_FACE,
                            plan.words(
                                            "wedge-to-the-tip",
                                            "0 at the nut, {tip:text} at the tip, under the head veneer; plane as much off"
                                                    + " the back.")
                                    .with("tip", Kind.MM, tip))
                    .before(GLUE_HEAD_VENEER)
                    .looks("wedge-shows", "a wedge at the head's edges");
            return;
        }
        double made = plan.measured()
                .of(NeckFeature.HEAD_THICKNESS)
                .map(Estimate::libraryValue)
                .orElse(head.thicknessMm());
        double least = head.tuners()
                .map(tuners -> tuners.libraryLower() - head.veneerMm() - head.backVeneerMm())
                .orElse(THINNEST_MM);
        boolean thin = made - tip < least;
        ways.way(
                        RepairCode.PLANE_THE_FACE,
                        plan.words(
                                        thin ? "plane-and-back-up" : "plane-to-the-tip",
                                        "0 at the nut, {tip:text} off at the tip."
                                                + (thin ? " A wedge-shaped back veneer brings the tip back." : ""))
                                .with("tip", Kind.MM, tip))
                .before(GLUE_HEAD_VENEER)
                .undoes(TRUE_THE_HEAD);
    }

    private static void sawApart(Stages plan, ReadingRepairs ways) {
        double lost = SAWN_MM / StrictMath.sin(angleRad(plan));
        double spare = plan.blank().lengthMm()
                - plan.shape().scarfBoard().orElseThrow().length().libraryValue();
        ways.way(
                        RepairCode.SAW_APART,
                        plan.words(
                                        "saw-and-glue",
                                        "{sawn:brief} square to the joint, by saw and plane, cost {lost:text} of the shaft.")
                                .with("sawn", Kind.MM, SAWN_MM)
                                .with("lost", Kind.MM, lost))
                .before(GLUE_FINGERBOARD)
                .unless(
                        spare < lost,
                        plan.words("short-shaft", "{spare:brief} of length are to spare, and {lost:text} are lost")
                                .with("spare", Kind.MM, Math.max(0, spare))
                                .with("lost", Kind.MM, lost))
                .undoes(CUT_SCARF, GLUE_HEAD, TRUE_THE_HEAD)
                .budget("nut-line-moves", NUT_LINE_MOVES);
    }

    /** The glue let the joint slide: a step of s sin(angle) for a slip of s along the slope. */
    private static List<Repair> slid(Stages plan, ScarfJoint joint, Estimate<Length> read) {
        Limits<Length> limits = Limits.within(plan.style().amount(STEP_MM));
        return ReadingRepairs.of(plan, NeckFeature.SCARF_STEP.toString(), Verdict.of(read, limits), CUT_SCARF, ways -> {
            level(plan, ways, joint, read.libraryValue());
            sawApart(plan, ways);
        });
    }

    private static void level(Stages plan, ReadingRepairs ways, ScarfJoint joint, double proud) {
        double step = Math.abs(proud);
        double angle = joint.scarf().angle().libraryValue();
        if (joint.place() == JointPlace.IN_THE_HEAD) {
            ways.way(
                            RepairCode.LEVEL_THE_STEP,
                            plan.words(
                                            "level-the-face",
                                            "{step:text} off the head's face; the nut line moves {line:text} toward the body.")
                                    .with("step", Kind.MM, step)
                                    .with("line", Kind.MM, step / StrictMath.sin(angle)))
                    .before(GLUE_HEAD_VENEER, GLUE_FINGERBOARD)
                    .undoes(TRUE_THE_HEAD)
                    .budget("nut-line-moves", NUT_LINE_MOVES);
        } else if (proud < 0) {
            ways.way(
                            RepairCode.LEVEL_THE_STEP,
                            plan.words("level-the-head", "{step:text} off the head; the nut line stays.")
                                    .with("step", Kind.MM, step))
                    .before(GLUE_FINGERBOARD)
                    .undoes(TRUE_THE_HEAD);
        } else {
            double deep = plan.made().channel().depthMm() - step;
            RepairedNeck asItIs = RepairedNeck.asItIs(plan);
            RepairedNeck carved = plan.isDone(CARVE_THE_NECK) ? asItIs.deeper(-step) : asItIs;
            RepairedNeck after =
                    plan.isDone(CUT_ROD_CHANNEL) ? carved.reading(NeckFeature.CHANNEL_DEPTH, deep) : carved;
            ways.way(
                            RepairCode.LEVEL_THE_STEP,
                            plan.words(
                                            "level-the-shaft",
                                            "{step:text} off the shaft's face; the nut line moves {line:text} toward the tip;"
                                                    + " what is cut already is shallower by the step.")
                                    .with("step", Kind.MM, step)
                                    .with("line", Kind.MM, step / StrictMath.tan(angle)))
                    .before(GLUE_FINGERBOARD)
                    .leavesEnough(after)
                    .budget("nut-line-moves", NUT_LINE_MOVES);
        }
    }

    private static List<Repair> narrow(Stages plan, Head head, NeckFeature side, Estimate<Length> read) {
        double drawn = widestMm(head, side);
        double missing = drawn - read.libraryValue();
        Limits<Length> limits = Limits.atLeast(plan.style().amount(drawn - NARROWER_MM));
        return ReadingRepairs.of(plan, side.toString(), Verdict.of(read, limits), CUT_SCARF, ways -> {
            Optional<Double> hole = holeToEdgeMm(plan, head).map(free -> free - missing);
            ways.way(
                            RepairCode.NARROWER_OUTLINE,
                            plan.words("narrower-by", "Both sides {missing:text} narrower.")
                                    .with("missing", Kind.MM, missing))
                    .unless(
                            hole.filter(free -> free < HOLE_TO_EDGE_MM).isPresent(),
                            plan.words("holes-near-the-edge", "{hole:text} from a hole to the edge would be left")
                                    .with("hole", Kind.MM, hole.orElse(0.0)))
                    .looks("narrower-head", "a narrower head");
            ways.way(
                    RepairCode.MOVE_THE_OUTLINE,
                    plan.words(
                                    "outline-aside",
                                    "Its middle {aside:text} toward the wide side, where posts and strings allow it.")
                            .with("aside", Kind.MM, missing / 2));
            ways.way(
                            RepairCode.WING,
                            plan.words("wing-of", "{wing:text} wide, planed back to the outline.")
                                    .with("wing", Kind.MM, Math.max(WING_MM, missing)))
                    .before(GLUE_HEAD_VENEER)
                    .looks("wing-shows", "a glue line beside the edge");
        });
    }

    /** From the head's axis to the edge of its outline on a side, at its widest. */
    static double widestMm(Head head, NeckFeature side) {
        return head.outline().stream()
                .mapToDouble(side == NeckFeature.HEAD_WIDTH_BASS ? OutlinePoint::bassMm : OutlinePoint::trebleMm)
                .max()
                .orElseThrow();
    }

    /** From a post's hole to the head's edge, where posts are known. */
    private static Optional<Double> holeToEdgeMm(Stages plan, Head head) {
        double washer = head.washerDiameterMm() - head.postDiameterMm();
        return plan.shape()
                .solid()
                .clearances()
                .flatMap(free -> free.edge().map(edge -> edge.libraryValue() + (free.isSized() ? washer / 2 : 0)));
    }

    private static List<Repair> thickness(Stages plan, Head head, Estimate<Length> read) {
        double thin = head.thicknessMm() - read.libraryValue();
        Limits<Length> limits = Limits.atLeast(plan.style().amount(head.thicknessMm() - THINNER_MM));
        return ReadingRepairs.of(
                plan, NeckFeature.HEAD_THICKNESS.toString(), Verdict.of(read, limits), CUT_SCARF, ways -> {
                    double whole = read.libraryValue() + head.veneerMm() + head.backVeneerMm();
                    ways.way(RepairCode.KEEP, plan.words("tuners-hold", "The tuners hold on it."))
                            .unless(
                                    head.tuners()
                                            .filter(tuners -> !tuners.allowLibrary(whole))
                                            .isPresent(),
                                    plan.words(
                                                    "tuners-do-not-hold",
                                                    "{whole:text} with veneers is no thickness for the tuners")
                                            .with("whole", Kind.MM, whole));
                    ways.way(
                            RepairCode.LONGER_BUSHINGS,
                            plan.words("bushings-longer-by", "Reaching {thin:text} farther; try one in a hole.")
                                    .with("thin", Kind.MM, thin));
                    ways.way(
                                    RepairCode.BACK_VENEER,
                                    plan.words("back-veneer-of", "{thin:text} thick; the nut line stays.")
                                            .with("thin", Kind.MM, thin))
                            .leaves(RepairedNeck.asItIs(plan).reading(NeckFeature.HEAD_THICKNESS, head.thicknessMm()))
                            .looks("edge-line", "a line along the head's edges");
                    if (head.angleRad() > 0) {
                        ways.way(
                                        RepairCode.HEAD_VENEER,
                                        plan.words(
                                                        "face-veneer-of",
                                                        "{thin:text} thicker on the face; the break line moves {line:text}"
                                                                + " toward the tip.")
                                                .with("thin", Kind.MM, thin)
                                                .with("line", Kind.MM, thin / StrictMath.sin(angleRad(plan))))
                                .before(GLUE_HEAD_VENEER)
                                .budget("break-line-moves", "the break line moves; mark the nut line again from it");
                    }
                });
    }
}
