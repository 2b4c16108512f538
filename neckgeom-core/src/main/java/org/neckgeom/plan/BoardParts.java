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
import org.neckgeom.units.Amount;

/** The parts of a plan that lie on top of the neck: the board's crown, and the strings across it. */
final class BoardParts {

    private BoardParts() {}

    static List<PlanPart> of(Stages plan) {
        List<PlanPart> parts = new ArrayList<>();
        boolean crowned = plan.neck().fingerboard().crown() != Fingerboard.Crown.FLAT;
        if (crowned || plan.neck().fingerboard().fallAway().isPresent()) {
            parts.add(board(plan));
        }
        if (StringSpacing.atNut(plan.neck()).isPresent()) {
            parts.add(strings(plan));
        }
        return parts;
    }

    /** What the crown leaves of the thickness; the widths are listed with the frets. */
    private static PlanPart board(Stages plan) {
        Neck design = plan.neck();
        BoardShape shape = BoardShape.of(design);
        PlanSection.Draft draft = PlanSection.titled(SectionCode.FINGERBOARD, plan.style());
        for (int fret : places(design)) {
            BoardSection at = shape.atFret(fret);
            boolean flat = Double.isInfinite(at.radiusMm());
            Statement edges = draft.words(
                            "edges", "{edge:text} thick at the edges, " + (flat ? "flat" : "radius {radius:brief}"))
                    .with("edge", Kind.MM, at.edgeMm());
            draft.row(key(fret), label(draft, fret), flat ? edges : edges.with("radius", Kind.MM, at.radiusMm()));
        }
        FallAway.of(design).ifPresent(slope -> draft.row("extension", "extension", slope));
        return PlanPart.of(draft);
    }

    private static PlanPart strings(Stages plan) {
        Neck design = plan.neck();
        StringOverhang overhang = overhang(plan);
        PlanSection.Draft draft = PlanSection.titled(SectionCode.STRINGS_ACROSS, plan.style())
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
                new PlanCheck(
                        CheckCode.OUTER_STRINGS_OVER_THE_BOARD,
                        new Finding.Remaining(plan.style().amount(least)),
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

    private static StringOverhang overhang(Stages plan) {
        Neck design = plan.neck();
        StringOverhang square = StringOverhang.of(
                design,
                StringSpacing.atNut(design).orElseThrow(),
                StringSpacing.atSaddle(design).orElseThrow());
        return FannedFrets.of(design).map(square::between).orElse(square);
    }

    /** Of the row of a fret; the nut is fret 0. */
    static String key(int fret) {
        return fret == 0 ? "nut" : "fret" + fret;
    }

    static Statement label(PlanSection.Draft draft, int fret) {
        return fret == 0
                ? draft.words("nut", "nut")
                : draft.words("fret", "fret {fret}").with("fret", Kind.WHOLE, fret);
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
