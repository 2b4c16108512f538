package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.heel.BackSet;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.HeelInserts;
import org.neckgeom.neck.PlateScrews;
import org.neckgeom.neck.SpanishFoot;
import org.neckgeom.neck.Tenon;
import org.neckgeom.units.Amount;

/** The checks of the heel's kinds of joint besides dovetail and bolted tenon. Ranges are common practice. */
final class HeelKindParts {

    private static final double THREAD_DIAMETERS = 1.5;
    private static final double LEAST_REACH_MM = 12;
    private static final double UNDER_THE_BOARD_MM = 3;
    private static final double BESIDE_THE_CHANNEL_MM = 2;
    private static final double SLOT_LEAST_MM = 0.1;
    private static final double SLOT_MOST_MM = 0.3;
    private static final double SLOT_DEPTH_LEAST_MM = 12;
    private static final double SLOT_DEPTH_MOST_MM = 15;
    private static final double GLUE_LEAST_MM = 0.05;
    private static final double GLUE_MOST_MM = 0.15;
    private static final double HAIR = 1e-9;

    /** A hole in the body that a screw turns freely in, and a pilot hole: 4.5 and 3.0 to 3.2 for 4.2 mm. */
    private static final double FREE_MM = 0.3;

    private static final double PILOT_LEAST = 0.72;
    private static final double PILOT_MOST = 0.76;

    private final Stages plan;
    private final PlanSection.Draft draft;
    private final Heel heel;
    private final List<PlanCheck> checks = new ArrayList<>();

    private HeelKindParts(Stages plan, PlanSection.Draft draft, Heel heel) {
        this.plan = plan;
        this.draft = draft;
        this.heel = heel;
    }

    static List<PlanCheck> checks(Stages plan, PlanSection.Draft draft, Heel heel) {
        HeelKindParts parts = new HeelKindParts(plan, draft, heel);
        if (heel.joint() instanceof HeelInserts inserts) {
            parts.inserts(inserts);
        } else if (heel.joint() instanceof PlateScrews screws) {
            parts.screws(screws);
        } else if (heel.joint() instanceof SpanishFoot foot) {
            parts.foot(foot);
        } else if (heel.joint() instanceof Tenon tenon && !tenon.isBolted()) {
            parts.tenon(tenon);
        }
        return parts.checks;
    }

    private void inserts(HeelInserts inserts) {
        draft.row("inserts", "inserts", inserts);
        List<Double> depths = inserts.depthsMm();
        double cheek = depths.stream()
                .mapToDouble(deep -> halfWidthMm(deep) - inserts.diameterMm() / 2)
                .min()
                .orElseThrow();
        if (depths.size() > 1) {
            draft.row(
                    "apart",
                    "apart",
                    plan.words("apart", "{apart:brief} from first to last (30 to 45 mm, common practice)")
                            .with("apart", Kind.MM, depths.get(depths.size() - 1) - depths.get(0)));
        }
        draft.note(
                "hollow-face",
                "Hollow the heel's face a little inside its rim, so that the rim closes on the body. Drill the body's holes 1 mm wider"
                        + " than the bolts: the neck is lined up before they are tight.");
        atLeast(
                CheckCode.INSERTS_CLEAR_OF_THE_CHEEKS,
                cheek,
                inserts.diameterMm(),
                "{found:brief} from an insert to the cheek",
                "{least:brief} or more, the insert's diameter",
                "Drill for the inserts while the heel is square.",
                "Smaller inserts, higher up, or a wider heel.");
        atLeast(
                CheckCode.THREAD_HOLDS,
                inserts.threadMm(),
                THREAD_DIAMETERS * inserts.boltMm(),
                "{found:brief} of thread in an insert",
                "{least:brief} or more, one and a half bolt diameters",
                "Take bolts of that length.",
                "Longer inserts and bolts.");
    }

    private double halfWidthMm(double deep) {
        return (heel.widthMm() + (heel.capWidthMm() - heel.widthMm()) * deep / heel.heightMm()) / 2;
    }

    private void screws(PlateScrews screws) {
        double d = screws.diameterMm();
        draft.row("screws", "screws", screws);
        draft.row(
                "reach",
                "reach",
                plan.words("reach", "{reach:brief} into the heel, through {under:brief} of body and plate")
                        .with("reach", Kind.MM, screws.reachMm())
                        .with("under", Kind.MM, screws.underHeelMm()));
        draft.row(
                "holes",
                "holes",
                plan.words("holes", "{free:brief} in the body, {least:1|2} to {most:1|2} in the neck (common practice)")
                        .with("free", Kind.MM, d + FREE_MM)
                        .with("least", Kind.MM, PILOT_LEAST * d)
                        .with("most", Kind.MM, PILOT_MOST * d));
        draft.row(
                "rows",
                "rows",
                plan.words(
                                "rows",
                                "{near:brief} and {far:brief} past the body joint, {aside:brief} either side of the middle")
                        .with("near", Kind.MM, screws.rowsMm().get(0))
                        .with("far", Kind.MM, screws.rowsMm().get(1))
                        .with("aside", Kind.MM, screws.acrossMm() / 2));
        between(
                CheckCode.SCREWS_REACH,
                screws.reachMm(),
                LEAST_REACH_MM,
                heel.heightMm() - UNDER_THE_BOARD_MM,
                "{found:brief} into the heel",
                "{least:brief} to {most:brief}: enough thread, and some wood under the board",
                "Drill the pilot holes through the body's.",
                "Screws of another length.");
        double beside = widestBesideMm(screws);
        if (beside > 0) {
            double wall = screws.acrossMm() / 2 - d / 2 - beside / 2;
            atLeast(
                    CheckCode.SCREWS_CLEAR_OF_THE_CHANNEL,
                    wall,
                    BESIDE_THE_CHANNEL_MM,
                    "{found:brief} from a screw to the channel",
                    "{least:brief} or more",
                    "Drill where drawn.",
                    "Screws farther apart, or a channel that ends sooner.");
        }
    }

    /** Width of the channel or its pocket, whichever is wider beside a screw; 0 where it ends before them. */
    private double widestBesideMm(PlateScrews screws) {
        Channel cut = plan.made().channel();
        double joint = plan.neck().bodyJointMm();
        double r = screws.diameterMm() / 2;
        double pocket = cut.adjusterPocketStartMm();
        return screws.rowsMm().stream()
                .flatMapToDouble(row -> DoubleStream.of(joint + row - r, joint + row + r, pocket)
                        .filter(x -> x >= joint + row - r && x <= joint + row + r))
                .map(cut::widthAtMm)
                .max()
                .orElse(0);
    }

    private void foot(SpanishFoot foot) {
        draft.row("foot", "foot", foot);
        draft.row(
                "between",
                "between slots",
                plan.words("between", "{between:brief} of wood at the top, {cap:brief} at the cap")
                        .with("between", Kind.MM, heel.widthMm() - 2 * foot.slotDepthMm())
                        .with("cap", Kind.MM, heel.capWidthMm() - 2 * foot.slotDepthMm()));
        plan.shape().neckSet().ifPresent(this::tilt);
        draft.note(
                "side-slots",
                "Saw both side slots at the body joint while the heel is square, both as far from the centreline within 0.3 mm, the foot"
                        + " square to the heel. Fit the ribs before the heel is carved.");
        draft.note(
                "built-about",
                "The body is built about the neck: the neck does not come off, and nothing is taken off its heel later.");
        double play = foot.slotWidthMm() - foot.sideMm();
        if (foot.isWedged()) {
            atLeast(
                    CheckCode.SIDES_FIT_THEIR_SLOTS,
                    play,
                    SLOT_MOST_MM,
                    "{found:small} wider than the side, wedged",
                    "{least:small} or more: room for a wedge",
                    "Drive the wedges with glue, one side as the other.",
                    "Wider slots, or sides glued without wedges.");
        } else {
            between(
                    CheckCode.SIDES_FIT_THEIR_SLOTS,
                    play,
                    SLOT_LEAST_MM,
                    SLOT_MOST_MM,
                    "{found:small} wider than the side",
                    "{least:small} to {most:small} (common practice), or wedged",
                    "Try an offcut of the side in each slot.",
                    "Another saw, or wedge the sides.");
        }
        between(
                CheckCode.SIDE_SLOTS_DEEP_ENOUGH,
                foot.slotDepthMm(),
                SLOT_DEPTH_LEAST_MM,
                SLOT_DEPTH_MOST_MM,
                "{found:brief} into the heel",
                "{least:brief} to {most:brief} (common practice)",
                "Saw to a line on all faces.",
                "Deeper or shallower slots.");
    }

    private void tilt(BackSet set) {
        double back = set.angle().angle().libraryValue();
        double run = set.reach().libraryValue();
        draft.row(
                "tilt",
                "tilt",
                plan.words(
                                "tilt",
                                "{angle:size 2} " + (back < 0 ? "forward" : "back")
                                        + ": the glue face, carried on, is {high:size 1|2} "
                                        + (back < 0 ? "lower" : "higher") + " at the bridge than level")
                        .with("angle", Kind.RAD, back)
                        .with("high", Kind.MM, run * StrictMath.tan(back)));
    }

    private void tenon(Tenon tenon) {
        draft.row(
                "set",
                "set",
                plan.words(
                                "tenon",
                                "{long:brief} into the body and {wide:brief} wide, glued (60 to 90 mm and 35 to 45 mm, common practice)")
                        .with("long", Kind.MM, tenon.length().libraryValue())
                        .with(
                                "wide",
                                Kind.MM,
                                tenon.width().map(Amount::libraryValue).orElse(0.0)));
        draft.note("pocket-floor", "The neck's angle is cut into the pocket's floor, not into the tenon.");
        tenon.pocketWidth()
                .ifPresent(wide -> gap(
                        CheckCode.TENON_FITS_ITS_POCKET,
                        (wide.libraryValue()
                                        - tenon.width()
                                                .map(Amount::libraryValue)
                                                .orElse(0.0))
                                / 2,
                        "{found:small} for glue at each side"));
        tenon.pocketDepth()
                .ifPresent(deep -> gap(
                        CheckCode.TENON_SHORT_OF_THE_FLOOR,
                        deep.libraryValue() - tenon.height().libraryValue(),
                        "{found:small} between tenon and the pocket's floor"));
    }

    private void gap(CheckCode code, double found, String words) {
        between(
                code,
                found,
                GLUE_LEAST_MM,
                GLUE_MOST_MM,
                words,
                "{least:small} to {most:small} (common practice)",
                "Fit it dry, then glue.",
                "Another size of tenon or pocket.");
    }

    private void atLeast(
            CheckCode code, double found, double least, String words, String limit, String ok, String otherwise) {
        add(code, found, Limits.atLeast(plan.style().amount(least)), least, least, words, limit, ok, otherwise);
    }

    private void between(
            CheckCode code,
            double found,
            double least,
            double most,
            String words,
            String limit,
            String ok,
            String otherwise) {
        add(
                code,
                found,
                Limits.between(
                        plan.style().amount(Math.min(least, most)), plan.style().amount(most)),
                least,
                most,
                words,
                limit,
                ok,
                otherwise);
    }

    private void add(
            CheckCode code,
            double found,
            Limits<?> limits,
            double least,
            double most,
            String words,
            String limit,
            String ok,
            String otherwise) {
        // A sum of decimals that meets its limit is not outside it by the last bit.
        double value = Math.abs(found - least) < HAIR ? least : Math.abs(found - most) < HAIR ? most : found;
        Finding finding = new Finding.Computed(plan.style().amount(value), limits, Outcome.OPEN);
        Statement allowed =
                plan.words("limit", limit).with("least", Kind.MM, least).with("most", Kind.MM, most);
        checks.add(new PlanCheck(
                code,
                finding,
                plan.words("found", words).with("found", Kind.MM, value),
                allowed,
                finding.outcome() == Outcome.OK ? plan.words("go-on", ok) : plan.words("change", otherwise)));
    }
}
