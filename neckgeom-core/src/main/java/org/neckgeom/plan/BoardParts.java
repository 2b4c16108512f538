package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.measure.quantity.Length;
import org.neckgeom.board.BoardSection;
import org.neckgeom.board.BoardShape;
import org.neckgeom.board.StringOverhang;
import org.neckgeom.design.Fingerboard;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.units.Amount;

/** The parts of a plan that lie on top of the neck: the board's crown, and the strings across it. */
final class BoardParts {

    private BoardParts() {}

    static List<PlanPart> of(NeckPlan plan) {
        List<PlanPart> parts = new ArrayList<>();
        boolean crowned = plan.design().fingerboard().crown() != Fingerboard.Crown.FLAT;
        if (crowned || plan.details().fallAway().isPresent()) {
            parts.add(board(plan));
        }
        if (plan.details().hasStrings()) {
            parts.add(strings(plan));
        }
        return parts;
    }

    /** The widths stand with the frets; here is what the crown leaves of the thickness. */
    private static PlanPart board(NeckPlan plan) {
        NeckDesign design = plan.design();
        BoardShape shape = BoardShape.of(design);
        PlanSection.Draft draft = PlanSection.titled("Fingerboard");
        for (int fret : places(design)) {
            BoardSection at = shape.atFret(fret);
            draft.row(name(fret), plan.style().text(at.edgeMm()) + " thick at the edges, " + crown(plan, at));
        }
        plan.details().fallAway().ifPresent(slope -> draft.row("extension", slope.text(plan.style())));
        return PlanPart.of(draft);
    }

    private static String crown(NeckPlan plan, BoardSection at) {
        return Double.isInfinite(at.radiusMm())
                ? "flat"
                : "radius " + plan.style().brief(at.radiusMm());
    }

    private static PlanPart strings(NeckPlan plan) {
        NeckDesign design = plan.design();
        NeckDetails told = plan.details();
        StringOverhang overhang = overhang(plan);
        PlanSection.Draft draft = PlanSection.titled("Strings across, bass to treble from the centreline")
                .row("at the nut", told.stringsAtNut().orElseThrow().text(plan.style()))
                .row("at the saddle", told.stringsAtSaddle().orElseThrow().text(plan.style()))
                .row("over the board", overhang.text(plan.style()));
        int last = design.frets();
        Amount<Length> bass = overhang.bass(last);
        Amount<Length> treble = overhang.treble(last);
        double least = Math.min(overhang.least().house(), Math.min(bass.house(), treble.house()));
        boolean inside = least > 0;
        return PlanPart.of(
                draft,
                new PlanCheck(
                        "outer strings over the board",
                        inside ? Outcome.GOOD : Outcome.STOP,
                        found(plan, Math.min(bass.house(), treble.house())) + " at fret " + last,
                        "inside its edges from nut to last fret",
                        inside
                                ? "Cut the nut and the saddle to these places."
                                : "The string slips off the board: a wider board, or a narrower spread."));
    }

    private static String found(NeckPlan plan, double mm) {
        return plan.style().text(Math.abs(mm)) + (mm < 0 ? " beyond the edge" : " inside");
    }

    /** The saddle stands where the neck set puts it; at the end of the scale where none is told. */
    private static StringOverhang overhang(NeckPlan plan) {
        NeckDesign design = plan.design();
        NeckDetails told = plan.details();
        StringOverhang square = StringOverhang.of(
                design,
                told.stringsAtNut().orElseThrow(),
                told.stringsAtSaddle().orElseThrow());
        StringOverhang plain = told.fannedFrets().map(square::between).orElse(square);
        double back = plan.neckSet()
                .map(set -> set.reach().house()
                        + design.bodyJointMm()
                        - design.scale().lengthMm())
                .orElse(0.0);
        return back > 0 ? plain.compensation(plan.style().amount(back)) : plain;
    }

    /** The nut, the body joint and the last fret, each once. */
    private static Set<Integer> places(NeckDesign design) {
        Set<Integer> frets = new LinkedHashSet<>();
        frets.add(0);
        frets.add(Math.min(design.bodyAtFret(), design.frets()));
        frets.add(design.frets());
        return frets;
    }

    private static String name(int fret) {
        return fret == 0 ? "nut" : "fret " + fret;
    }
}
