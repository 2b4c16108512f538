package org.neckgeom.solid;

import java.util.List;
import java.util.Optional;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.shape.Mesh;

/** A dovetail as a closed mesh: a trapezoid in plan that closes in as it goes down. */
final class JointMesh {

    private JointMesh() {}

    /** Nothing where its size was not given. */
    static Optional<Mesh> of(Dovetail seat, double joint) {
        if (seat.pastShoulder().isEmpty()
                || seat.widthAtEnd().isEmpty()
                || seat.widthAtShoulder().isEmpty()
                || seat.below().isEmpty()) {
            return Optional.empty();
        }
        double end = seat.widthAtEnd().get().libraryValue() / 2;
        double shoulder = seat.widthAtShoulder().get().libraryValue() / 2;
        double in = seat.closesIn().map(a -> a.libraryValue()).orElse(0.0);
        double to = joint + seat.pastShoulder().get().libraryValue();
        double low = -seat.below().get().libraryValue();
        return Optional.of(SolidMesh.ofRings(
                "dovetail", List.of(ring(joint, to, shoulder, end, 0), ring(joint, to, shoulder - in, end - in, low))));
    }

    private static double[][] ring(double from, double to, double shoulder, double end, double z) {
        return new double[][] {{from, -shoulder, z}, {to, -end, z}, {to, end, z}, {from, shoulder, z}};
    }
}
