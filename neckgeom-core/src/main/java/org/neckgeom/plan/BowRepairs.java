package org.neckgeom.plan;

import static org.neckgeom.order.Operation.FRET_THE_FINGERBOARD;
import static org.neckgeom.order.Operation.GLUE_FINGERBOARD;
import static org.neckgeom.order.Operation.LAY_IN_THE_ROD;
import static org.neckgeom.order.Operation.LEVEL_THE_FRETS;
import static org.neckgeom.order.Operation.REST_THE_STOCK;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.strength.Bow;
import org.neckgeom.strength.Relief;
import org.neckgeom.strength.Sections;
import org.neckgeom.strength.TangBow;

/**
 * The repairs of a carved neck that bows back more than the strings will pull it forward, and of one that is twisted. All limits
 * are common practice.
 */
final class BowRepairs {

    private static final double STRAIGHT_MM = 0.1;
    private static final double MOST_TWIST_MM = 0.1;
    private static final double MOST_LEVELLED_MM = 0.4;
    private static final double MOST_HEATED_MM = 1;
    private static final double MOST_WIDER_MM = 0.1;

    private BowRepairs() {}

    static List<Repair> of(Stages plan) {
        List<Repair> all = new ArrayList<>();
        plan.measured()
                .of(NeckFeature.BACK_BOW)
                .flatMap(read -> plan.strength().relief().map(relief -> backBow(plan, relief, read)))
                .ifPresent(all::addAll);
        plan.measured().of(NeckFeature.TWIST).ifPresent(read -> all.addAll(twist(plan, read)));
        return all;
    }

    /**
     * The strings pull it forward by what they pull a straight neck; what is left must be the relief wanted. Where they pull a
     * straight neck too little, that is not this reading's fault.
     */
    private static List<Repair> backBow(Stages plan, Relief relief, Estimate<Length> read) {
        double wanted = plan.job().relief().libraryValue();
        double pulled = relief.underStrings().added().libraryValue();
        double most = Math.max(STRAIGHT_MM, pulled - wanted);
        double bow = read.libraryValue();
        return ReadingRepairs.of(
                plan,
                NeckFeature.BACK_BOW.toString(),
                Verdict.of(read, Limits.atMost(plan.style().amount(most))),
                REST_THE_STOCK,
                ways -> ways(plan, ways, relief, bow, bow - most));
    }

    private static void ways(Stages plan, ReadingRepairs ways, Relief relief, double bow, double tooMuch) {
        rod(plan, ways, relief, bow);
        ways.way(
                        RepairCode.PLANE_THE_GLUE_FACE,
                        plan.words(
                                        "plane-the-middle",
                                        "{bow:text} off its middle, nothing at the ends; then the channel deeper there by as"
                                                + " much.")
                                .with("bow", Kind.MM, bow))
                .before(GLUE_FINGERBOARD)
                .undoes(LAY_IN_THE_ROD)
                .leavesEnough(RepairedNeck.asItIs(plan).deeper(-bow))
                .stiffness(RepairedNeck.asItIs(plan).stiffnessAt(middle(plan), -bow));
        caul(plan, ways, bow);
        slots(plan, ways, tooMuch);
    }

    private static double middle(Stages plan) {
        return plan.neck().bodyJointMm() / 2;
    }

    private static void rod(Stages plan, ReadingRepairs ways, Relief relief, double bow) {
        boolean twoWay = plan.job()
                .channel()
                .rod()
                .filter(one -> one.kind() == TrussRod.Kind.TWO_WAY)
                .isPresent();
        if (!twoWay) {
            return;
        }
        Bow strung = relief.underStrings();
        double before = strung.relief().libraryValue() - strung.added().libraryValue();
        double most = relief.rodTravel().most().libraryValue() - before - bow;
        double wanted = plan.job().relief().libraryValue();
        ways.way(
                        RepairCode.SET_THE_ROD,
                        plan.words(
                                        "rod-forward",
                                        "Forward, with the strings at pitch: it can bring {most:small} of relief, {wanted:brief}"
                                                + " is wanted.")
                                .with("most", Kind.MM, most)
                                .with("wanted", Kind.MM, wanted))
                .unless(
                        most < wanted,
                        plan.words(
                                        "rod-too-weak",
                                        "the rod at its limit leaves {most:small}, and {wanted:brief} is wanted")
                                .with("most", Kind.MM, most)
                                .with("wanted", Kind.MM, wanted))
                .leavesEnough(RepairedNeck.asItIs(plan))
                .budget("rod-works-forward", "the rod stays in use, and has so much less left for later");
    }

    private static void caul(Stages plan, ReadingRepairs ways, double bow) {
        Attempt.atAll(() -> Optional.of(Sections.of(plan.made().design())
                        .at(plan.style().amount(middle(plan)))
                        .forwardInTheCaul(plan.style().amount(bow))))
                .answer()
                .ifPresent(forward -> ways.way(
                                RepairCode.BENT_CAUL,
                                plan.words(
                                                "held-forward",
                                                "A flat board, the caul {forward:small} forward of straight in the middle.")
                                        .with("forward", Kind.MM, forward.libraryValue()))
                        .before(GLUE_FINGERBOARD)
                        .leavesEnough(RepairedNeck.asItIs(plan)));
    }

    /** The tangs push in proportion to how much wider they are than their slots. */
    private static void slots(Stages plan, ReadingRepairs ways, double tooMuch) {
        Attempt<Interval<Length>> less = Attempt.atAll(
                () -> Optional.of(TangBow.of(plan.made().design(), plan.style().amount(MOST_WIDER_MM))
                        .backBow()));
        less.answer().ifPresent(most -> {
            double usual = (most.libraryLow() + most.libraryHigh()) / 2;
            double wider = MOST_WIDER_MM * tooMuch / usual;
            ways.way(
                            RepairCode.WIDER_FRET_SLOTS,
                            plan.words(
                                            "slots-wider-by",
                                            "About {wider:small} wider than usual: an estimate, so press in five frets, read, and"
                                                    + " go on.")
                                    .with("wider", Kind.MM, wider))
                    .before(FRET_THE_FINGERBOARD)
                    .unless(
                            wider > MOST_WIDER_MM,
                            plan.words("frets-too-loose", "frets in slots {wider:small} wider would be loose")
                                    .with("wider", Kind.MM, wider))
                    .leavesEnough(RepairedNeck.asItIs(plan));
        });
    }

    private static List<Repair> twist(Stages plan, Estimate<Length> read) {
        double high = Math.abs(read.libraryValue());
        return ReadingRepairs.of(
                plan,
                NeckFeature.TWIST.toString(),
                Verdict.of(read, Limits.within(plan.style().amount(MOST_TWIST_MM))),
                REST_THE_STOCK,
                ways -> {
                    ways.way(
                                    RepairCode.PLANE_THE_GLUE_FACE,
                                    plan.words("two-corners", "{half:text} off the two corners that stand high.")
                                            .with("half", Kind.MM, high / 2))
                            .before(GLUE_FINGERBOARD);
                    ways.way(
                                    RepairCode.LEVEL_IT_OUT,
                                    plan.words(
                                                    "half-of-the-frets",
                                                    "{half:text} off the frets at two corners, board and frets on.")
                                            .with("half", Kind.MM, high / 2))
                            .unless(
                                    !plan.isDone(GLUE_FINGERBOARD),
                                    plan.words("board-is-off", "the board is not on yet: plane it out"))
                            .unless(
                                    high > MOST_LEVELLED_MM,
                                    plan.words(
                                                    "frets-too-low",
                                                    "more than {most:brief} of twist takes too much off the frets")
                                            .with("most", Kind.MM, MOST_LEVELLED_MM))
                            .undoes(LEVEL_THE_FRETS)
                            .looks("lower-frets", "frets lower at two corners");
                    ways.way(
                                    RepairCode.HEAT_AND_CLAMP,
                                    plan.words(
                                            "past-straight",
                                            "Past straight, left to cool in the clamps; read it again after a week."))
                            .unless(
                                    high > MOST_HEATED_MM,
                                    plan.words("too-twisted", "more than {most:brief} comes back")
                                            .with("most", Kind.MM, MOST_HEATED_MM))
                            .budget("may-come-back", "what comes back within the week is there for good");
                });
    }
}
