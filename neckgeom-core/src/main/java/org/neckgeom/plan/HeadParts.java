package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.neckgeom.board.StringSpacing;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.head.BreakAngle;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.solid.HeadClearances;
import org.neckgeom.solid.NeckSolid;
import org.neckgeom.solid.StringLine;
import org.neckgeom.strength.StringLoad;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The part of a plan that belongs to the head: outline, wings, thickness, and each string over the nut to its post. */
final class HeadParts {

    private HeadParts() {}

    static Optional<PlanPart> of(Stages plan) {
        return plan.made().design().head().map(head -> head(plan, head));
    }

    private static PlanPart head(Stages plan, Head head) {
        HeadLayout layout = HeadLayout.of(head);
        PlanSection.Draft draft =
                PlanSection.titled(SectionCode.HEAD, plan.style()).row("layout", "layout", layout);
        double wings = layout.wings(plan.blank().width()).libraryValue();
        draft.row(
                "wings",
                "wings",
                wings > 0
                        ? draft.words("wings", "{width:text} wide, one glued to each side of the blank")
                                .with("width", Kind.MM, wings)
                        : draft.words("no-wings", "none, the blank is wide enough"));
        List<PlanCheck> checks = new ArrayList<>();
        if (head.hasSlots()) {
            checks.addAll(SlottedParts.checks(plan, draft, head));
        }
        head.tuners().ifPresent(tuners -> checks.add(tuners(plan, draft, layout, tuners)));
        if (StringSpacing.atNut(plan.neck()).isPresent() && layout.hasPosts()) {
            checks.add(breaks(plan, draft));
        }
        plan.made().solid().clearances().ifPresent(free -> checks.addAll(clearances(plan, draft, free)));
        return new PlanPart(draft.done(), checks);
    }

    private static PlanCheck tuners(Stages plan, PlanSection.Draft draft, HeadLayout layout, Limits<Length> tuners) {
        draft.row("woodForTheTuners", "wood for the tuners", Kind.LIMITS, layout.woodFor(tuners));
        double thick = layout.thickness().libraryValue();
        Optional<Estimate<Length>> read = plan.measured().of(NeckFeature.HEAD_THICKNESS);
        double u = read.map(Estimate::libraryUncertainty).orElse(0.0);
        Estimate<Length> made = Estimate.ofLibrary(
                thick, u, Double.POSITIVE_INFINITY, plan.style().unit());
        Finding finding = new Finding.Measured(Verdict.of(made, tuners), Outcome.STOP);
        Statement next = switch (finding.outcome()) {
            case OK ->
                read.isPresent()
                        ? draft.words("leave-it", "Leave it at that.")
                        : draft.words("plane-the-head", "Plane the head to it.");
            case OPEN -> draft.words("try-a-tuner", "Not sure: read again, or try a tuner in a hole.");
            case STOP -> draft.words("other-tuners", "Another thickness of wood or veneer, or other tuners.");
        };
        return new PlanCheck(
                CheckCode.HEAD_FITS_THE_TUNERS,
                finding,
                draft.words("with-veneers", (read.isPresent() ? "{thickness}" : "{thickness:brief}") + " with veneers")
                        .with("thickness", Kind.ESTIMATE, made),
                plan.limit(tuners),
                next);
    }

    /** Common practice: under 5 deg a string may buzz in its slot or jump from it. */
    private static PlanCheck breaks(Stages plan, PlanSection.Draft draft) {
        NeckSolid solid = plan.made().solid();
        double least = Double.POSITIVE_INFINITY;
        for (StringLine string : solid.strings()) {
            double down = string.breakAngle().map(Amount::libraryValue).orElse(0.0);
            double aside = string.sideAngle().map(Amount::libraryValue).orElse(0.0);
            least = Math.min(least, Math.toDegrees(down));
            draft.row(
                    "string" + string.number(),
                    draft.words("string", "string {string}").with("string", Kind.WHOLE, string.number()),
                    draft.words("break", "{down:2} down" + side(aside))
                            .with("down", Kind.RAD, down)
                            .with("aside", Kind.RAD, aside));
        }
        if (plan.neck().isReadyForLoad()) {
            solid.nutForces(pulls(plan.neck())).ifPresent(forces -> draft.row("onTheNut", "on the nut", forces));
        }
        boolean enough = least >= BreakAngle.LEAST_DEGREES;
        return new PlanCheck(
                CheckCode.STRINGS_PRESS_ON_THE_NUT,
                new Finding.Computed(
                        ShopUnits.deg(least), Limits.atLeast(ShopUnits.deg(BreakAngle.LEAST_DEGREES)), Outcome.OPEN),
                draft.words("least-break", "least break {angle:2}").with("angle", Kind.RAD, Math.toRadians(least)),
                draft.words("at-least", "{least:2} or more (common practice)")
                        .with("least", Kind.RAD, Math.toRadians(BreakAngle.LEAST_DEGREES)),
                enough
                        ? draft.words(
                                "drill-for-the-posts",
                                plan.made()
                                                .design()
                                                .head()
                                                .filter(Head::hasRollers)
                                                .isPresent()
                                        ? "Drill for the rollers."
                                        : "Drill for the posts.")
                        : draft.words("more-break", "A retainer, a post nearer the nut, or a steeper head."));
    }

    /** Posts and their washers on the wood and apart, strings past other posts and past each other. */
    private static List<PlanCheck> clearances(Stages plan, PlanSection.Draft draft, HeadClearances free) {
        List<PlanCheck> checks = new ArrayList<>();
        if (plan.made().design().head().filter(Head::hasRollers).isEmpty()) {
            draft.row("clearances", "clearances", free);
            checks.addAll(posts(plan, free));
        }
        if (free.strings().isPresent()) {
            checks.add(new PlanCheck(
                    CheckCode.STRINGS_DO_NOT_CROSS,
                    new Finding.Conflicting(free.crossings(), true),
                    plan.words("crossing", "{pairs:of pair/pairs} of strings cross over the head")
                            .with("pairs", Kind.WHOLE, free.crossings()),
                    plan.words("none", "none"),
                    free.crossings() == 0
                            ? plan.words("as-drawn", "Leave the posts as drawn.")
                            : plan.words("order-of-posts", "Change the order of the posts.")));
        }
        return checks;
    }

    /** Round posts that stand on the face; rollers lie in their slots, level under the strings. */
    private static List<PlanCheck> posts(Stages plan, HeadClearances free) {
        List<PlanCheck> checks = new ArrayList<>();
        free.edge()
                .ifPresent(edge -> checks.add(clear(
                        plan,
                        CheckCode.POSTS_ON_THE_WOOD,
                        edge,
                        Clearance.of(
                                        plan,
                                        edge,
                                        "past-a-washer",
                                        free.isSized()
                                                ? "{clear} past the washer of post {post}"
                                                : "{clear} from post {post} to the edge, its size not given",
                                        "washer-past-the-edge",
                                        free.isSized()
                                                ? "the washer of post {post} reaches {clear} past the edge"
                                                : "post {post} lies {clear} past the edge, its size not given")
                                .with("post", Kind.WHOLE, free.postNearestTheEdge()),
                        Outcome.STOP,
                        plan.words("drill", "Drill for the posts."),
                        plan.words("move-the-post", "Move the post in, or widen the head there."))));
        free.washers()
                .ifPresent(apart -> checks.add(clear(
                        plan,
                        CheckCode.POSTS_APART,
                        apart,
                        Clearance.of(
                                plan,
                                apart,
                                "between",
                                free.isSized()
                                        ? "{clear} between two washers"
                                        : "{clear} between two posts, their size not given",
                                "washers-overlap",
                                "two washers overlap by {clear}"),
                        Outcome.STOP,
                        plan.words("drill", "Drill for the posts."),
                        plan.words("posts-apart", "Move the posts apart, or take smaller washers."))));
        free.stringPastPost()
                .ifPresent(past -> checks.add(clear(
                        plan,
                        CheckCode.STRINGS_CLEAR_OF_POSTS,
                        past,
                        Clearance.of(
                                plan,
                                past,
                                "past-a-post",
                                "{clear} past another string's post" + (free.isSized() ? "" : ", its size not given"),
                                "string-meets-a-post",
                                "a string meets another string's post by {clear}"
                                        + (free.isSized() ? "" : ", its size not given")),
                        Outcome.OPEN,
                        plan.words("as-drawn", "Leave the posts as drawn."),
                        plan.words("straighter", "Move the posts so that each string passes the others."))));
        return checks;
    }

    private static PlanCheck clear(
            Stages plan,
            CheckCode code,
            Amount<Length> free,
            Statement found,
            Outcome otherwise,
            Statement next,
            Statement remedy) {
        Finding finding = new Finding.Computed(free, Limits.atLeast(plan.style().amount(0)), otherwise);
        return new PlanCheck(
                code,
                finding,
                found,
                plan.words("clear", "more than 0"),
                finding.outcome() == Outcome.OK ? next : remedy);
    }

    private static String side(double aside) {
        return aside == 0 ? "" : ", {aside:size 2} toward the " + (aside > 0 ? "treble" : "bass") + " side";
    }

    /** The pull of every single string, those of a course one after the other. */
    @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type can't be made otherwise; it is only read
    private static Quantity<Force>[] pulls(Neck design) {
        int inCourse = design.strings().orElseThrow().inCourse();
        return StringLoad.of(design).tensions().stream()
                .flatMap(one -> Collections.nCopies(inCourse, one).stream())
                .toArray(Quantity[]::new);
    }
}
