package org.neckgeom.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Tenon;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;

/**
 * The places and the lines of a jig in the channel. Library units.
 *
 * @param cut that the jig is for
 * @param solid of the neck
 * @param inside how far an edge lies inside the wanted line
 * @param stations at which its edges are stated
 * @param scarf of the neck's head, for its sled
 */
record JigShape(
        JigCut cut,
        NeckSolid solid,
        double inside,
        List<Double> stations,
        @Nullable ScarfJoint scarf) {

    private static final double CHORD = 1;

    /** A place with its name. */
    record Named(String name, Point at) {}

    /** Along from the nut line, across from the centreline, over the glue face; of a head template over the head's face. */
    List<Named> places() {
        List<Named> all = new ArrayList<>();
        switch (cut) {
            case TAPER -> stations.forEach(x -> sides(all, "edge", x, taper(x), 0));
            case SIDE_PROFILE -> stations.forEach(x -> add(all, "edge", x, 0, profile(x)));
            case HEEL -> heel(all, solid.neck().heel().orElseThrow());
            case SCARF -> scarf(all, scarf);
            case CAUL -> caul(all);
            case FRETTING -> fretting(all);
            case HEAD -> head(all, solid.head().orElseThrow());
        }
        return all;
    }

    /** The lines that it is cut to, in the plane of the jig. */
    List<Polyline> edges() {
        return switch (cut) {
            case TAPER -> List.of(side(-1), side(1));
            case SIDE_PROFILE -> List.of(Polyline.open(curve(0, solid.bodyJointMm(), this::profile)));
            case HEEL -> heelEdges();
            case SCARF -> lines(places());
            case CAUL -> caulEdge();
            case FRETTING ->
                solid.frets().stream()
                        .map(line -> Polyline.open(List.of(line.bass(), line.treble())))
                        .toList();
            case HEAD -> List.of(headEdge(solid.head().orElseThrow()));
        };
    }

    private static void add(List<Named> all, String name, double along, double across, double height) {
        all.add(new Named(name, new Point(along + 0.0, across + 0.0, height + 0.0)));
    }

    private static void sides(List<Named> all, String name, double along, double half, double height) {
        add(all, "bass " + name, along, -half, height);
        add(all, "treble " + name, along, half, height);
    }

    private double taper(double x) {
        return JigEdge.taper(solid.neck(), x, inside);
    }

    private double profile(double x) {
        return -JigEdge.inward(solid.depth()::valueAt, x, inside);
    }

    private Polyline side(int side) {
        double joint = solid.bodyJointMm();
        return Polyline.open(List.of(new Spot(0, side * taper(0)), new Spot(joint, side * taper(joint))));
    }

    private static List<Spot> curve(double from, double to, DoubleUnaryOperator of) {
        int pieces = (int) Math.ceil((to - from) / CHORD);
        List<Spot> spots = new ArrayList<>(pieces + 1);
        for (int i = 0; i <= pieces; i++) {
            double u = from + (to - from) * i / pieces;
            spots.add(new Spot(u, of.applyAsDouble(u)));
        }
        return spots;
    }

    private void heel(List<Named> all, Heel heel) {
        double joint = solid.bodyJointMm();
        double foot = joint - solid.lean() * heel.heightMm();
        double square = inside * Math.sqrt(1 + solid.lean() * solid.lean());
        double fall = (heel.widthMm() - heel.capWidthMm()) / 2 / heel.heightMm();
        double cheek = inside * Math.sqrt(1 + fall * fall);
        sides(all, "cheek at the glue face", joint, heel.widthMm() / 2 - cheek, 0);
        sides(all, "cheek at the cap", foot, heel.capWidthMm() / 2 - cheek, -heel.heightMm());
        add(all, "shoulder at the glue face", joint - square, 0, 0);
        add(all, "shoulder at the cap", foot - square, 0, -heel.heightMm());
        heel.tenon()
                .flatMap(Tenon::width)
                .ifPresent(width -> sides(all, "side of the tenon", joint, width.libraryValue() / 2 - inside, 0));
    }

    /** Cheeks, then the sides of a tenon down to the cap, seen along the neck; then the shoulder, seen from the side. */
    private List<Polyline> heelEdges() {
        List<Named> at = places();
        double low = at.get(2).at.zMm();
        List<Polyline> all = new ArrayList<>();
        for (int i : new int[] {0, 1}) {
            Point top = at.get(i).at;
            Point cap = at.get(i + 2).at;
            all.add(Polyline.open(List.of(new Spot(top.yMm(), 0), new Spot(cap.yMm(), low))));
        }
        for (Named side : at.subList(6, at.size())) {
            all.add(Polyline.open(List.of(new Spot(side.at.yMm(), 0), new Spot(side.at.yMm(), low))));
        }
        return all;
    }

    /** The saw's side toward the shaft: its slope, with what is planed off later. */
    private void scarf(List<Named> all, @Nullable ScarfJoint joint) {
        if (joint == null) {
            throw new IllegalStateException("a sled without its joint");
        }
        double front = joint.sawnFromMm();
        double thick = joint.shaftThickness().libraryValue();
        double back = front - thick / StrictMath.tan(joint.scarf().angle().libraryValue());
        double slant = StrictMath.tan(joint.scarf().nutSlant().libraryValue());
        double half = Math.max(solid.neck().halfWidthAtMm(solid.bodyJointMm()), solid.halfStockMm());
        line(all, "saw line on the glue face", front, half, slant, 0);
        line(all, "saw line on the back", back, half, slant, -thick);
    }

    private static void line(List<Named> all, String name, double x, double half, double slant, double height) {
        add(all, name + ", bass end", x - half * slant, -half, height);
        add(all, name + ", treble end", x + half * slant, half, height);
    }

    /** Each two places in turn are the ends of a line. */
    private static List<Polyline> lines(List<Named> ends) {
        List<Polyline> all = new ArrayList<>();
        for (int i = 0; i + 1 < ends.size(); i += 2) {
            Point from = ends.get(i).at;
            Point to = ends.get(i + 1).at;
            all.add(Polyline.open(List.of(new Spot(from.xMm(), from.yMm()), new Spot(to.xMm(), to.yMm()))));
        }
        return all;
    }

    /** The hollow that lies on the board: its edges and its middle at the nut line, the body joint and the board's end. */
    private void caul(List<Named> all) {
        FretLine nut = solid.fret(0);
        FretLine end = solid.fret(solid.neck().frets() + 1);
        double joint = solid.bodyJointMm();
        double half = solid.neck().halfWidthAtMm(joint);
        hollow(all, "at the nut line", nut.bass(), nut.crossing().libraryValue(), nut.treble());
        hollow(all, "at the body joint", new Spot(joint, -half), joint, new Spot(joint, half));
        hollow(all, "at the board's end", end.bass(), end.crossing().libraryValue(), end.treble());
    }

    private void hollow(List<Named> all, String where, Spot bass, double middle, Spot treble) {
        add(all, "bass edge " + where, bass.uMm(), bass.vMm(), solid.boardTopMm(bass.uMm(), bass.vMm()));
        add(all, "middle " + where, middle, 0, solid.boardTopMm(middle, 0));
        add(all, "treble edge " + where, treble.uMm(), treble.vMm(), solid.boardTopMm(treble.uMm(), treble.vMm()));
    }

    private List<Polyline> caulEdge() {
        FretLine nut = solid.fret(0);
        FretLine end = solid.fret(solid.neck().frets() + 1);
        return List.of(Polyline.closed(List.of(nut.bass(), end.bass(), end.treble(), nut.treble())));
    }

    private void fretting(List<Named> all) {
        for (FretLine line : solid.frets()) {
            String name = line.fret() == 0 ? "nut line" : "fret " + line.fret();
            Spot bass = line.bass();
            Spot treble = line.treble();
            if (solid.neck().fannedFrets().isEmpty()) {
                add(all, name, bass.uMm(), 0, 0);
            } else {
                add(all, name + ", bass end", bass.uMm(), bass.vMm(), 0);
                add(all, name + ", treble end", treble.uMm(), treble.vMm(), 0);
            }
        }
    }

    private void head(List<Named> all, HeadSolid there) {
        List<Spot> posts = there.posts();
        for (int i = 0; i < posts.size(); i++) {
            flat(all, "post " + (i + 1), onNeckAxis(there, posts.get(i)));
        }
        for (double u : stations) {
            flat(all, "bass edge", onNeckAxis(there, new Spot(u, headReach(there, u, -1))));
            flat(all, "treble edge", onNeckAxis(there, new Spot(u, headReach(there, u, 1))));
        }
        flat(all, "tip", onNeckAxis(there, new Spot(inside - there.head().lengthMm(), 0)));
    }

    private static void flat(List<Named> all, String name, Spot spot) {
        add(all, name, spot.uMm(), spot.vMm(), 0);
    }

    private double headReach(HeadSolid there, double u, int side) {
        double tip = -there.head().lengthMm();
        return side
                * JigEdge.inward(x -> JigEdge.reach(there.outline(), Math.max(tip, Math.min(0, x)), side), u, inside);
    }

    private Polyline headEdge(HeadSolid there) {
        double tip = inside - there.head().lengthMm();
        List<Spot> round = new ArrayList<>(curve(tip, 0, u -> headReach(there, u, -1)));
        List<Spot> treble = curve(tip, 0, u -> headReach(there, u, 1));
        for (int i = treble.size() - 1; i >= 0; i--) {
            round.add(treble.get(i));
        }
        return Polyline.closed(
                round.stream().map(spot -> onNeckAxis(there, spot)).toList());
    }

    /** In the head's face along the neck's own axis, which a swung head leaves. */
    private static Spot onNeckAxis(HeadSolid there, Spot spot) {
        Spot axis = there.neckAxis();
        return new Spot(
                spot.uMm() * axis.uMm() - spot.vMm() * axis.vMm(), spot.vMm() * axis.uMm() + spot.uMm() * axis.vMm());
    }
}
