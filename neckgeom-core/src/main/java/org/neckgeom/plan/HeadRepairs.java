package org.neckgeom.plan;

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
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.Head;
import org.neckgeom.solid.NeckSolid;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The repairs of a head at another angle or thinner than drawn. All limits are common practice. */
final class HeadRepairs {

    private static final double ANGLE_DEGREES = 0.2;
    private static final double THINNER_MM = 0.2;
    private static final double THINNEST_MM = 10;

    /** Kerf and planing of a joint sawn apart, square to it. */
    private static final double SAWN_MM = 2;

    private HeadRepairs() {}

    static List<Repair> of(Stages plan) {
        List<Repair> all = new ArrayList<>();
        plan.neck().head().ifPresent(head -> {
            plan.measured().scarfAngle().ifPresent(angle -> all.addAll(angle(plan, head, angle)));
            plan.measured()
                    .of(NeckFeature.HEAD_THICKNESS)
                    .ifPresent(thickness -> all.addAll(thickness(plan, head, thickness)));
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
                sawApart(plan, ways, head);
            }
        });
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
        return Attempt.atAll(() -> NeckSolid.of(plan.made().design()).strings().stream()
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

    private static void sawApart(Stages plan, ReadingRepairs ways, Head head) {
        double lost = SAWN_MM / StrictMath.sin(head.angleRad());
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
                .budget("nut-line-moves", "the nut line moves toward the body; mark the lines again from it");
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
                                                .with("line", Kind.MM, thin / StrictMath.sin(head.angleRad())))
                                .before(GLUE_HEAD_VENEER)
                                .budget("break-line-moves", "the break line moves; mark the nut line again from it");
                    }
                });
    }
}
