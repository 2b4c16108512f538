package org.neckgeom.plan;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.heel.HeelBlocks;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.HeelJoint;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.PlateScrews;
import org.neckgeom.neck.SpanishFoot;
import org.neckgeom.solid.BlankNeeds;
import org.neckgeom.solid.CuttingList;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** The part of a plan that belongs to the wood it starts from: the least blank, and what is cut from this one. */
final class StockParts {

    private static final double HAIR = 1e-9;

    private StockParts() {}

    /** Only where an allowance is given: without one the size of the blank is the maker's own choice. */
    static Optional<PlanPart> of(Stages plan) {
        return plan.blank().hasSpare() ? Optional.of(stock(plan)) : Optional.empty();
    }

    private static PlanPart stock(Stages plan) {
        Blank blank = plan.blank();
        LengthStyle style = plan.style();
        BlankNeeds needs = BlankNeeds.of(Blank.ofLength(style.amount(lengthMm(plan)))
                .section(style.amount(widthMm(plan)), style.amount(thicknessMm(plan)))
                .endAllowance(style.amount(blank.endAllowanceMm()))
                .edgeAllowance(style.amount(blank.edgeAllowanceMm()))
                .planing(style.amount(blank.planingMm())));
        CuttingList list = CuttingList.from(blank)
                .kerf(style.amount(blank.sawKerfMm()))
                .trimmed(style.amount(startMm(plan)))
                .piece(plan.shape().scarf().isPresent() ? "shaft and head" : "neck", style.amount(lengthMm(plan)));
        int blocks = blocksFromBlank(plan);
        if (blocks > 0) {
            list = list.pieces(
                    blocks,
                    "heel block",
                    plan.neck().heel().flatMap(Heel::blockLength).orElseThrow());
        }
        PlanSection.Draft draft = PlanSection.titled(SectionCode.BLANK_AND_CUTTING_LIST, style)
                .row("neck", "the neck", needs)
                .row("fromTheHeadEnd", "from the head end", list);
        Optional<Dovetail> dovetail = plan.neck().heel().flatMap(Heel::dovetail);
        if (dovetail.filter(joint -> joint.pastShoulder().isEmpty()).isPresent()) {
            draft.note("dovetail-length", "Give the dovetail length; allow wood for it past the body joint.");
        } else if (plan.shape().shaftEndMm() > plan.neck().bodyJointMm()) {
            draft.note(draft.words(
                            "past-the-body-joint",
                            "The neck length includes the " + pastTheJoint(plan)
                                    + " ({past:brief} past the body joint).")
                    .with(
                            "past",
                            Kind.MM,
                            plan.shape().shaftEndMm() - plan.neck().bodyJointMm()));
        }
        return new PlanPart(draft.done(), List.of(size(plan, needs), pieces(plan, list)));
    }

    /** What of the neck lies past the body joint. */
    static String pastTheJoint(Stages plan) {
        HeelJoint joint = plan.neck().heel().map(Heel::joint).orElseGet(HeelJoint.Flat::new);
        if (joint instanceof Dovetail) {
            return "dovetail";
        }
        if (joint instanceof SpanishFoot) {
            return "foot";
        }
        return joint instanceof PlateScrews ? "heel in its pocket" : "tenon";
    }

    /** Where the neck begins: the body joint lies where the nut line puts it; without one, after the spare of the end. */
    private static double startMm(Stages plan) {
        double nut = plan.blank().nutFromHeadEndMm();
        return nut > 0
                ? Math.max(0, nut + plan.shape().shaftEndMm() - lengthMm(plan))
                : plan.blank().endAllowanceMm();
    }

    private static double lengthMm(Stages plan) {
        Neck design = plan.neck();
        Head head = design.head().orElse(null);
        Optional<ScarfBoard> board = plan.shape().scarfBoard();
        if (board.isPresent()) {
            return board.get().length().libraryValue();
        }
        double before = head == null
                ? design.stringAnchor()
                        .map(Amount::libraryValue)
                        .orElse(plan.blank().nutFromHeadEndMm())
                : plan.shape().solid().head().orElseThrow().farthest().libraryValue();
        return before + plan.shape().shaftEndMm();
    }

    /** Wings widen the head, so it does not count; the heel's top is the shaft's own wood, blocks or not. */
    private static double widthMm(Stages plan) {
        double heel = plan.neck().heel().map(Heel::widthMm).orElse(0.0);
        return Math.max(plan.shape().shaftWidthMm(), heel);
    }

    /** The deepest of the back before the heel's blocks, and of the head; a scarfed head's own thickness. */
    private static double thicknessMm(Stages plan) {
        double least = plan.shape().leastThickness().thickness().libraryValue();
        Head head = plan.neck().head().orElse(null);
        return head != null && plan.shape().scarf().isPresent() ? Math.max(least, head.thicknessMm()) : least;
    }

    /** How many heel blocks come from the blank: none where they are thicker than it, or their length is not given. */
    private static int blocksFromBlank(Stages plan) {
        return blocksAreThinEnough(plan)
                        && plan.neck().heel().flatMap(Heel::blockLength).isPresent()
                ? plan.shape().heelBlocks().orElseThrow().count()
                : 0;
    }

    private static boolean blocksAreThinEnough(Stages plan) {
        double thick = plan.blank().planedThicknessMm();
        return plan.neck()
                .heel()
                .filter(heel -> heel.blockThicknessMm(thick) <= thick * (1 + HAIR))
                .isPresent();
    }

    private static PlanCheck size(Stages plan, BlankNeeds needs) {
        boolean fits = needs.fits(plan.blank());
        return new PlanCheck(
                CheckCode.BLANK_LARGE_ENOUGH,
                new Finding.Together(List.of(
                        holds(plan.blank().length(), needs.length()),
                        holds(plan.blank().width(), needs.width()),
                        holds(plan.blank().thickness(), needs.thickness()))),
                plan.words("blank", "{blank}").with("blank", Kind.ANSWER, plan.blank()),
                plan.words("least-blank", "{length:brief} x {width:brief} x {thickness:brief} or more")
                        .with("length", Kind.AMOUNT, needs.length())
                        .with("width", Kind.AMOUNT, needs.width())
                        .with("thickness", Kind.AMOUNT, needs.thickness()),
                fits
                        ? plan.words("square-it", "Square it and mark the nut line.")
                        : plan.words("larger-blank", "A larger blank, or less to spare."));
    }

    private static Finding.Computed holds(Amount<Length> blank, Amount<Length> least) {
        return new Finding.Computed(blank, Limits.atLeast(least), Outcome.STOP);
    }

    /** Whether the blank is long enough for shaft and head. */
    static PlanCheck reaches(Stages plan, double neededMm, Statement next) {
        return new PlanCheck(
                CheckCode.BLANK_REACHES,
                holds(plan.blank().length(), plan.style().amount(neededMm)),
                plan.words("length", "{length}")
                        .with("length", Kind.AMOUNT, plan.blank().length()),
                plan.words("at-least", "{least:brief} or more").with("least", Kind.MM, neededMm),
                next);
    }

    /** Where the blank's nut line is. */
    static Statement fromHeadEnd(Stages plan, double mm) {
        return plan.words("from-head-end", "{nutLine:brief} from the head end").with("nutLine", Kind.MM, mm);
    }

    private static PlanCheck pieces(Stages plan, CuttingList list) {
        boolean fits = list.fits();
        boolean isOpen = fits && blocksNotTold(plan);
        Statement rest = fits
                ? plan.words(
                                "left-over",
                                "{rest:brief} left over" + (isOpen ? ", length of a heel block not given" : ""))
                        .with("rest", Kind.MM, list.leftOver().libraryValue())
                : plan.words("missing", "{missing:brief} missing")
                        .with("missing", Kind.MM, list.missing().libraryValue());
        Limits<Length> some = Limits.atLeast(plan.style().amount(0));
        return new PlanCheck(
                CheckCode.ALL_PIECES_FROM_THE_BLANK,
                isOpen
                        ? new Finding.Pending(Finding.Missing.HEEL_BLOCK_LENGTH, Optional.of(some))
                        : new Finding.Computed(
                                fits ? list.leftOver() : list.missing().negate(), some, Outcome.OPEN),
                rest,
                wanted(plan),
                isOpen
                        ? plan.words(
                                "give-block-length",
                                "Give the length of a heel block, or cut the blocks from another piece of the same wood.")
                        : fits
                                ? plan.words("saw", "Saw in this order.")
                                : plan.words(
                                        "blocks-from-elsewhere",
                                        "Cut the heel blocks from another piece of the same wood."));
    }

    private static Statement wanted(Stages plan) {
        if (blocksFromBlank(plan) > 0 || blocksNotTold(plan)) {
            return plan.words("neck-and-blocks", "neck and heel blocks in its length");
        }
        boolean elsewhere = plan.shape().heelBlocks().map(HeelBlocks::count).orElse(0) > 0;
        return elsewhere
                ? plan.words("neck-alone", "the neck in its length, heel blocks from a thicker piece")
                : plan.words("neck-alone", "the neck in its length");
    }

    /** Blocks could come from the blank, if their length was given. */
    private static boolean blocksNotTold(Stages plan) {
        return blocksAreThinEnough(plan)
                && plan.neck().heel().flatMap(Heel::blockLength).isEmpty()
                && plan.shape().heelBlocks().orElseThrow().count() > 0;
    }
}
