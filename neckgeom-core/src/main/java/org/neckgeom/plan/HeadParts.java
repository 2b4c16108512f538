package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.neckgeom.board.FannedFrets;
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
        HeadLayout drawn = HeadLayout.of(head);
        HeadLayout layout = FannedFrets.of(plan.neck())
                .map(fan -> drawn.nutSlanted(fan.slant(0)))
                .orElse(drawn);
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
        head.tuners().ifPresent(tuners -> checks.add(tuners(plan, draft, layout, tuners)));
        if (StringSpacing.atNut(plan.neck()).isPresent() && layout.hasPosts()) {
            checks.add(breaks(plan, draft, layout));
        }
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
    private static PlanCheck breaks(Stages plan, PlanSection.Draft draft, HeadLayout layout) {
        Amount<Length> slot = plan.shape().slotHeight();
        List<BreakAngle> breaks = layout.breaks(StringSpacing.atNut(plan.neck()).orElseThrow(), slot);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < breaks.size(); i++) {
            double down = Math.toDegrees(breaks.get(i).angle().libraryValue());
            double aside = Math.toDegrees(breaks.get(i).side().libraryValue());
            least = Math.min(least, down);
            draft.row(
                    "string" + (i + 1),
                    draft.words("string", "string {string}").with("string", Kind.WHOLE, i + 1),
                    draft.words("break", "{down:2} down" + side(aside))
                            .with("down", Kind.RAD, breaks.get(i).angle().libraryValue())
                            .with("aside", Kind.RAD, breaks.get(i).side().libraryValue()));
        }
        if (plan.neck().isReadyForLoad()) {
            draft.row(
                    "onTheNut",
                    "on the nut",
                    layout.nutForces(StringSpacing.atNut(plan.neck()).orElseThrow(), slot, pulls(plan.neck())));
        }
        boolean enough = least >= BreakAngle.FEW_DEGREES;
        return new PlanCheck(
                CheckCode.STRINGS_PRESS_ON_THE_NUT,
                new Finding.Computed(
                        ShopUnits.deg(least), Limits.atLeast(ShopUnits.deg(BreakAngle.FEW_DEGREES)), Outcome.OPEN),
                draft.words("least-break", "least break {angle:2}").with("angle", Kind.RAD, Math.toRadians(least)),
                draft.words("at-least", "{least:2} or more (common practice)")
                        .with("least", Kind.RAD, Math.toRadians(BreakAngle.FEW_DEGREES)),
                enough
                        ? draft.words("drill-for-the-posts", "Drill for the posts.")
                        : draft.words("more-break", "A retainer, a post nearer the nut, or a steeper head."));
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
