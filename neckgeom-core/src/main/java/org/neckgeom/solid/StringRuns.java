package org.neckgeom.solid;

import java.util.Optional;
import org.neckgeom.board.FallAway;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.StringPlaces;
import org.neckgeom.board.StringSpacing;
import org.neckgeom.fault.Refusal;
import org.neckgeom.kernel.NeckSetKernel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.StringHeights;
import org.neckgeom.neck.StringSet;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Spot;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.LibraryUnits;

/** Where the strings of a neck run over its board, by their undersides: places across, nut and saddle line, height. */
final class StringRuns {

    /** Height of frets, mm; common practice. */
    static final double USUAL_FRETS_MM = 1.1;

    /** Outer strings to the board's edge, mm: 3 to 3.5 on guitars, less on mandolins; common practice. */
    private static final double USUAL_EDGE_MM = 3;

    private final Neck neck;
    private final Optional<FannedFrets> fan;
    private final Optional<StringPlaces> atNut;
    private final Optional<StringPlaces> atSaddle;

    StringRuns(Neck neck, Optional<FannedFrets> fan) {
        this.neck = neck;
        this.fan = fan;
        this.atNut = StringSpacing.atNut(neck);
        this.atSaddle = StringSpacing.atSaddle(neck);
    }

    /** Heights that a string keeps, in mm: fret over the board, underside over the frets at nut and 12th fret; its compensation. */
    record Heights(double fret, double atNut, double action, double compensation) {}

    /**
     * A string's underside and its own scale, the distance in plan from nut to saddle before compensation.
     *
     * @param index 0 for the outermost on the bass side
     */
    record Run(int index, Line underside, double scale) {}

    boolean arePlaced() {
        return atNut.isPresent() && atSaddle.isPresent();
    }

    /** Strings that have their places, else courses. */
    int count() {
        return atNut.map(places -> places.centresMm().length)
                .orElseGet(() -> neck.strings().map(StringSet::courses).orElse(0));
    }

    double gaugeMm(int i) {
        double[] each = neck.strings().map(StringSet::diametersMm).orElse(new double[0]);
        return each.length == 0 ? 0 : each[i * each.length / count()];
    }

    /** One string at its place across. Its heights follow that place. */
    Run run(int i, double fretMm, Optional<StringHeights> over) {
        double across = across(i);
        Heights heights = new Heights(
                fretMm,
                over.map(high -> high.atNutMm(across)).orElse(0.0),
                over.map(high -> high.actionMm(across)).orElse(0.0),
                neck.neckSet().map(set -> set.compensation().libraryValue()).orElse(0.0));
        if (arePlaced()) {
            return run(
                    i,
                    nutSpot(atNut.orElseThrow().centresMm()[i]),
                    saddleSpot(atSaddle.orElseThrow().centresMm()[i]),
                    heights);
        }
        double end = neck.scale().lengthMm();
        double nut = usualPlace(i, 0);
        return run(i, new Spot(0, nut), new Spot(end, 2 * usualPlace(i, end / 2) - nut), heights);
    }

    /** From 0 on the bass side to 1 on the treble side. */
    private double across(int i) {
        if (count() == 1) {
            return 0.5;
        }
        return atNut.map(StringPlaces::centresMm)
                .map(y -> (y[i] - y[0]) / (y[y.length - 1] - y[0]))
                .orElse((double) i / (count() - 1));
    }

    private double usualPlace(int i, double x) {
        return (2 * across(i) - 1) * Math.max(0, neck.halfWidthAtMm(x) - USUAL_EDGE_MM);
    }

    /** Where the nut line lies so far from the centreline, in plan. */
    Spot nutSpot(double y) {
        return new Spot(
                fan.map(f -> y * StrictMath.tan(f.slant(0).libraryValue())).orElse(0.0), y);
    }

    /** Where the saddle line before compensation lies so far from the centreline, in plan. */
    Spot saddleSpot(double y) {
        double behind =
                fan.map(f -> y * StrictMath.tan(f.saddleSlant().libraryValue())).orElse(0.0);
        return new Spot(neck.scale().lengthMm() + behind, y);
    }

    /**
     * One string. Its height at the saddle is that of nut and octave carried on straight: share {@code (L + c) / (L / 2)}.
     *
     * @param from its nut point in plan
     * @param to its saddle point in plan, before compensation
     */
    Run run(int index, Spot from, Spot to, Heights heights) {
        double scale = from.distanceMm(to);
        double du = (to.uMm() - from.uMm()) / scale;
        double dv = (to.vMm() - from.vMm()) / scale;
        double zNut = unslopedMm(from.uMm(), from.vMm()) + heights.fret() + heights.atNut();
        Spot middle = from.plus(du * scale / 2, dv * scale / 2);
        double zTwelfth = unslopedMm(middle.uMm(), middle.vMm()) + heights.fret() + heights.action();
        double all = scale + heights.compensation();
        Line underside = new Line(
                new Point(from.uMm(), from.vMm(), zNut),
                new Point(from.uMm() + du * all, from.vMm() + dv * all, zNut + (zTwelfth - zNut) * all / (scale / 2)));
        return new Run(index, underside, scale);
    }

    /** Height of the fingerboard's top over the glue face, frets not counted, in mm. */
    double boardTopMm(double xMm, double yMm) {
        double top = unslopedMm(xMm, yMm);
        return neck.frets() > neck.bodyAtFret()
                ? FallAway.of(neck)
                        .map(slope -> top - slope.at(neck.style().amount(xMm)).libraryValue())
                        .orElse(top)
                : top;
    }

    /** The same without the fall-away, as heights of strings count it. */
    private double unslopedMm(double xMm, double yMm) {
        double crown = neck.crownRadiusAtMm(xMm);
        if (!(Math.abs(yMm) <= Math.min(crown, LibraryUnits.MOST))) {
            throw Refusal.of(
                    "distance from the centreline",
                    "at-most",
                    "be no more than the crown's radius of " + neck.style().brief(crown),
                    Numbers.plain(yMm) + " mm");
        }
        return neck.boardThicknessAtMm(xMm) - NeckSetKernel.drop(crown, Math.abs(yMm));
    }
}
