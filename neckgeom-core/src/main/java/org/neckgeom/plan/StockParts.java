package org.neckgeom.plan;

import java.util.List;
import java.util.Optional;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.head.OnePieceHead;
import org.neckgeom.heel.HeelBlocks;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Neck;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.solid.BackShape;
import org.neckgeom.solid.BlankNeeds;
import org.neckgeom.solid.CuttingList;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** The part of a plan that belongs to the wood it starts from: the least blank, and what is cut from this one. */
final class StockParts {

    private static final double HAIR = 1e-9;
    private static final int STATIONS = 64;

    private StockParts() {}

    /** Only where something to spare is told: without that the makings of the blank are the maker's own. */
    static Optional<PlanPart> of(NeckPlan plan) {
        return plan.blank().hasSpare() ? Optional.of(stock(plan)) : Optional.empty();
    }

    private static PlanPart stock(NeckPlan plan) {
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
                .piece(plan.scarf().isPresent() ? "shaft and head" : "neck", style.amount(lengthMm(plan)));
        int blocks = blocksFromBlank(plan);
        if (blocks > 0) {
            list = list.pieces(
                    blocks,
                    "heel block",
                    plan.design().heel().flatMap(Heel::blockLength).orElseThrow());
        }
        PlanSection.Draft draft = PlanSection.titled("blank-and-cutting-list", "Blank and cutting list", style)
                .row("neck", "the neck", needs)
                .row("fromTheHeadEnd", "from the head end", list);
        Optional<Dovetail> dovetail = plan.design().heel().flatMap(Heel::dovetail);
        if (dovetail.filter(joint -> joint.pastShoulder().isEmpty()).isPresent()) {
            draft.note(
                    "dovetail-length", "the dovetail's length is not told: leave the wood for it past the body joint");
        } else if (shaftEndMm(plan) > plan.design().bodyJointMm()) {
            draft.note(draft.words(
                            "past-the-body-joint",
                            "the neck is reckoned to the end of its "
                                    + (dovetail.isEmpty() ? "tenon" : "dovetail")
                                    + ", {past:brief} past the body joint")
                    .with("past", Kind.MM, shaftEndMm(plan) - plan.design().bodyJointMm()));
        }
        return new PlanPart(draft.done(), List.of(size(plan, needs), pieces(plan, list)));
    }

    /** Where the neck begins: the body joint lies where the nut line puts it; without one, after the spare of the end. */
    private static double startMm(NeckPlan plan) {
        double nut = plan.blank().nutFromHeadEndMm();
        return nut > 0
                ? Math.max(0, nut + shaftEndMm(plan) - lengthMm(plan))
                : plan.blank().endAllowanceMm();
    }

    private static double lengthMm(NeckPlan plan) {
        Neck design = plan.design();
        Head head = design.head().orElse(null);
        if (head != null && plan.scarf().isPresent()) {
            return plan.scarf()
                    .get()
                    .board(plan.style().amount(shaftEndMm(plan)), plan.style().amount(head.lengthMm()))
                    .length()
                    .libraryValue();
        }
        double before = head == null
                ? plan.blank().nutFromHeadEndMm()
                : OnePieceHead.of(head).lengthMm();
        return before + shaftEndMm(plan);
    }

    /** Where the shaft's wood ends: at the body joint, or past it at the end of the tenon or dovetail that goes into it. */
    static double shaftEndMm(NeckPlan plan) {
        double past = plan.design()
                .heel()
                .flatMap(heel -> heel.joint().pastShoulder())
                .map(Amount::libraryValue)
                .orElse(0.0);
        return plan.design().bodyJointMm() + past;
    }

    /** Ears widen the head, so it does not count; the heel's blocks come out of the blank where they are thin enough. */
    private static double widthMm(NeckPlan plan) {
        Neck design = plan.design();
        double neck = 2 * Math.max(design.halfWidthAtMm(0), design.halfWidthAtMm(design.bodyJointMm()));
        return blocksFromBlank(plan) > 0
                ? Math.max(neck, design.heel().orElseThrow().widthMm())
                : neck;
    }

    /** The deepest of the back up to the body joint, without its turn into the heel, and of the head. */
    private static double thicknessMm(NeckPlan plan) {
        Neck design = plan.design();
        double deepest = deepestBackMm(plan);
        Head head = design.head().orElse(null);
        if (head == null) {
            return deepest;
        }
        return Math.max(
                deepest,
                plan.scarf().isPresent()
                        ? head.thicknessMm()
                        : OnePieceHead.of(head).thicknessMm());
    }

    private static double deepestBackMm(NeckPlan plan) {
        Neck design = plan.design();
        BackShape back = BackShape.of(design);
        double end = heelStartMm(plan);
        double deepest = 0;
        for (int i = 0; i <= STATIONS; i++) {
            deepest = Math.max(
                    deepest,
                    back.at(plan.style().amount(end * i / STATIONS)).depth().libraryValue());
        }
        return deepest;
    }

    /** The heel's turn is carved out of its blocks; before it the back must come out of the blank alone. */
    private static double heelStartMm(NeckPlan plan) {
        double second = plan.design().scale().fretMm(plan.design().back().secondFret());
        return Math.min(second, plan.design().bodyJointMm());
    }

    static Optional<HeelBlocks> heel(NeckPlan plan) {
        return plan.design().heel().map(heel -> {
            double over = plan.overstandMm();
            LengthStyle style = plan.style();
            HeelBlocks blocks = HeelBlocks.of(
                            style.amount(heel.heightMm() - over), plan.blank().thickness())
                    .overstand(style.amount(over))
                    .blocks(style.amount(heel.blockThicknessMm(plan.blank().thicknessMm())));
            return plan.neckSet().isEmpty()
                    ? blocks
                    : blocks.at(plan.neckSet().get().angle().angle());
        });
    }

    /** How many heel blocks come out of the blank: none where they are thicker than it, or their length is not told. */
    private static int blocksFromBlank(NeckPlan plan) {
        return blocksAreThinEnough(plan)
                        && plan.design().heel().flatMap(Heel::blockLength).isPresent()
                ? heel(plan).orElseThrow().count()
                : 0;
    }

    private static boolean blocksAreThinEnough(NeckPlan plan) {
        double thick = plan.blank().thicknessMm();
        return plan.design()
                .heel()
                .filter(heel -> heel.blockThicknessMm(thick) <= thick * (1 + HAIR))
                .isPresent();
    }

    private static PlanCheck size(NeckPlan plan, BlankNeeds needs) {
        boolean fits = needs.fits(plan.blank());
        return PlanCheck.of(
                "blank-large-enough",
                "blank large enough",
                fits ? Outcome.GOOD : Outcome.STOP,
                plan.words("blank", "{blank}").with("blank", Kind.ANSWER, plan.blank()),
                plan.words("least-blank", "{length:brief} x {width:brief} x {thickness:brief} or more")
                        .with("length", Kind.AMOUNT, needs.length())
                        .with("width", Kind.AMOUNT, needs.width())
                        .with("thickness", Kind.AMOUNT, needs.thickness()),
                fits
                        ? plan.words("square-it", "Square it and mark the nut line.")
                        : plan.words("larger-blank", "A larger blank, or less to spare."));
    }

    /** Whether the blank is long enough for shaft and head. */
    static PlanCheck reaches(NeckPlan plan, double neededMm, Statement next) {
        return PlanCheck.of(
                "blank-reaches",
                "blank reaches for shaft and head",
                plan.blank().lengthMm() >= neededMm ? Outcome.GOOD : Outcome.STOP,
                plan.words("length", "{length}")
                        .with("length", Kind.AMOUNT, plan.blank().length()),
                plan.words("at-least", "{least:brief} or more").with("least", Kind.MM, neededMm),
                next);
    }

    /** Where the blank's nut line is. */
    static Statement fromHeadEnd(NeckPlan plan, double mm) {
        return plan.words("from-head-end", "{nutLine:brief} from the head end").with("nutLine", Kind.MM, mm);
    }

    private static PlanCheck pieces(NeckPlan plan, CuttingList list) {
        boolean fits = list.fits();
        boolean untold = fits && blocksNotTold(plan);
        Statement rest = fits
                ? plan.words(
                                "left-over",
                                "{rest:brief} left over" + (untold ? ", length of a heel block not told" : ""))
                        .with("rest", Kind.MM, list.leftOver().libraryValue())
                : plan.words("missing", "{missing:brief} missing")
                        .with("missing", Kind.MM, list.missing().libraryValue());
        return PlanCheck.of(
                "all-pieces-from-the-blank",
                "all pieces from the blank",
                fits && !untold ? Outcome.GOOD : Outcome.OPEN,
                rest,
                wanted(plan),
                untold
                        ? plan.words(
                                "give-block-length",
                                "Tell the length of a heel block, or cut them from another piece of the same wood.")
                        : fits
                                ? plan.words("saw", "Saw in this order.")
                                : plan.words(
                                        "blocks-from-elsewhere",
                                        "Cut the heel blocks from another piece of the same wood."));
    }

    private static Statement wanted(NeckPlan plan) {
        if (blocksFromBlank(plan) > 0 || blocksNotTold(plan)) {
            return plan.words("neck-and-blocks", "neck and heel blocks in its length");
        }
        boolean elsewhere = heel(plan).map(HeelBlocks::count).orElse(0) > 0;
        return elsewhere
                ? plan.words("neck-alone", "the neck in its length, heel blocks from a thicker piece")
                : plan.words("neck-alone", "the neck in its length");
    }

    /** Blocks could come out of the blank, if it was told how long they are. */
    private static boolean blocksNotTold(NeckPlan plan) {
        return blocksAreThinEnough(plan)
                && plan.design().heel().flatMap(Heel::blockLength).isEmpty()
                && heel(plan).orElseThrow().count() > 0;
    }
}
