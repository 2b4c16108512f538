package org.neckgeom.solid;

import java.util.ArrayList;
import java.util.List;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.neck.HeelJoint;
import org.neckgeom.neck.Tenon;
import org.neckgeom.shape.Direction;
import org.neckgeom.shape.Frame;
import org.neckgeom.shape.Mesh;
import org.neckgeom.shape.Plane;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;

/**
 * What holds the heel in the body as closed meshes: a dovetail, a trapezoid in plan that closes in as it goes down; a tenon, a box on
 * the mating face, and its holes as cuts.
 */
final class JointMesh {

    private JointMesh() {}

    /** Nothing where its size was not given. */
    static List<Mesh> of(HeelJoint seat, Plane face, double joint, double tolerance) {
        if (seat instanceof Dovetail dovetail) {
            return of(dovetail, joint);
        }
        return seat instanceof Tenon tenon ? of(tenon, face, joint, tolerance) : List.of();
    }

    private static List<Mesh> of(Dovetail seat, double joint) {
        if (seat.pastShoulder().isEmpty()
                || seat.widthAtEnd().isEmpty()
                || seat.widthAtShoulder().isEmpty()
                || seat.below().isEmpty()) {
            return List.of();
        }
        double end = seat.widthAtEnd().get().libraryValue() / 2;
        double shoulder = seat.widthAtShoulder().get().libraryValue() / 2;
        double in = seat.closesIn().map(a -> a.libraryValue()).orElse(0.0);
        double to = joint + seat.pastShoulder().get().libraryValue();
        double low = -seat.below().get().libraryValue();
        return List.of(SolidMesh.ofRings(
                "dovetail", List.of(ring(joint, to, shoulder, end, 0), ring(joint, to, shoulder - in, end - in, low))));
    }

    private static double[][] ring(double from, double to, double shoulder, double end, double z) {
        return new double[][] {{from, -shoulder, z}, {to, -end, z}, {to, end, z}, {from, shoulder, z}};
    }

    /** In the mating face's frame: u into the body, v up along the face, w to the bass side. */
    private static List<Mesh> of(Tenon tenon, Plane face, double joint, double tolerance) {
        if (tenon.width().isEmpty()) {
            return List.of();
        }
        double half = tenon.width().get().libraryValue() / 2;
        double length = tenon.length().libraryValue();
        double low = -tenon.height().libraryValue();
        Direction in = face.normal();
        Direction up = in.cross(Direction.TO_TREBLE);
        Frame frame = new Frame(new Point(joint, 0, 0), in, up, in.cross(up));
        List<Mesh> all = new ArrayList<>();
        Polyline side =
                Polyline.closed(List.of(new Spot(0, low), new Spot(length, low), new Spot(length, 0), new Spot(0, 0)));
        all.add(SolidMesh.ofPrism("tenon", frame, side, -half, half, tolerance));
        double radius = tenon.holeDiameter().libraryValue() / 2;
        double back = tenon.centreFromShoulder().libraryValue();
        for (int i = 0; i < tenon.depths().size(); i++) {
            Spot centre = new Spot(back, -tenon.depths().get(i).libraryValue());
            String name = tenon.depths().size() == 1 ? "cut: tenon hole" : "cut: tenon hole " + (i + 1);
            all.add(SolidMesh.ofPrism(name, frame, Polyline.circle(centre, radius), -half, half, tolerance));
        }
        return all;
    }
}
