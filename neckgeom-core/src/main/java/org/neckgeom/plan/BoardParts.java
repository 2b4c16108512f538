package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.measure.quantity.Length;
import org.neckgeom.board.BoardSection;
import org.neckgeom.board.BoardShape;
import org.neckgeom.board.FallAway;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.StringOverhang;
import org.neckgeom.board.StringSpacing;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.units.Amount;

/** The parts of a plan that lie on top of the neck: the board's crown, and the strings across it. */
final class BoardParts {

    private BoardParts() {}

    static List<PlanPart> of(NeckPlan plan) {
        List<PlanPart> parts = new ArrayList<>();
        boolean crowned = plan.design().fingerboard().crown() != Fingerboard.Crown.FLAT;
        if (crowned || plan.design().fingerboard().fallAway().isPresent()) {
            parts.add(board(plan));
        }
        if (StringSpacing.atNut(plan.design()).isPresent()) {
            parts.add(strings(plan));
        }
        return parts;
    }

    /** The widths stand with the frets; here is what the crown leaves of the thickness. */
    private static PlanPart board(NeckPlan plan) {
        Neck design = plan.design();
        BoardShape shape = BoardShape.of(design);
        PlanSection.Draft draft = PlanSection.titled("fingerboard", "Fingerboard", plan.style());
        for (int fret : places(design)) {
            BoardSection at = shape.atFret(fret);
            boolean flat = Double.isInfinite(at.radiusMm());
            Statement edges = draft.words(
                            "edges", "{edge:text} thick at the edges, " + (flat ? "flat" : "radius {radius:brief}"))
                    .with("edge", Kind.MM, at.edgeMm());
            draft.row(
                    ShapeParts.key(fret),
                    ShapeParts.label(draft, fret),
                    flat ? edges : edges.with("radius", Kind.MM, at.radiusMm()));
        }
        FallAway.of(design).ifPresent(slope -> draft.row("extension", "extension", slope));
        return PlanPart.of(draft);
    }

    private static PlanPart strings(NeckPlan plan) {
        Neck design = plan.design();
        StringOverhang overhang = overhang(plan);
        PlanSection.Draft draft = PlanSection.titled(
                        "strings-across", "Strings across, bass to treble from the centreline", plan.style())
                .row("atTheNut", "at the nut", StringSpacing.atNut(design).orElseThrow())
                .row(
                        "atTheSaddle",
                        "at the saddle",
                        StringSpacing.atSaddle(design).orElseThrow())
                .row("overTheBoard", "over the board", overhang);
        int last = design.frets();
        Amount<Length> bass = overhang.bass(last);
        Amount<Length> treble = overhang.treble(last);
        double least = Math.min(overhang.least().libraryValue(), Math.min(bass.libraryValue(), treble.libraryValue()));
        boolean inside = least > 0;
        return PlanPart.of(
                draft,
                PlanCheck.of(
                        "outer-strings-over-the-board",
                        "outer strings over the board",
                        inside ? Outcome.GOOD : Outcome.STOP,
                        atLast(draft, Math.min(bass.libraryValue(), treble.libraryValue()), last),
                        draft.words("inside", "inside its edges from nut to last fret"),
                        inside
                                ? draft.words("cut-nut-and-saddle", "Cut the nut and the saddle to these places.")
                                : draft.words(
                                        "wider-board",
                                        "The string slips off the board: a wider board, or a narrower spread.")));
    }

    private static Statement atLast(PlanSection.Draft draft, double mm, int fret) {
        return draft.words(
                        "at-last-fret",
                        "{inside:size text} " + (mm < 0 ? "beyond the edge" : "inside") + " at fret {fret}")
                .with("inside", Kind.MM, mm)
                .with("fret", Kind.WHOLE, fret);
    }

    /** The saddle stands where the neck set puts it; at the end of the scale where none is told. */
    private static StringOverhang overhang(NeckPlan plan) {
        Neck design = plan.design();
        StringOverhang square = StringOverhang.of(
                design,
                StringSpacing.atNut(design).orElseThrow(),
                StringSpacing.atSaddle(design).orElseThrow());
        StringOverhang plain = FannedFrets.of(design).map(square::between).orElse(square);
        double back = plan.neckSet()
                .map(set -> set.reach().libraryValue()
                        + design.bodyJointMm()
                        - design.scale().lengthMm())
                .orElse(0.0);
        return back > 0 ? plain.compensation(plan.style().amount(back)) : plain;
    }

    /** The nut, the body joint and the last fret, each once. */
    private static Set<Integer> places(Neck design) {
        Set<Integer> frets = new LinkedHashSet<>();
        frets.add(0);
        frets.add(Math.min(design.bodyAtFret(), design.frets()));
        frets.add(design.frets());
        return frets;
    }
}
