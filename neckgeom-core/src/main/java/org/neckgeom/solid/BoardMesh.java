package org.neckgeom.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.neckgeom.neck.Neck;
import org.neckgeom.shape.Mesh;
import org.neckgeom.shape.Spot;

/** The fingerboard as a closed mesh: rings from the nut line to the end of the board, each parallel to neither where fanned. */
final class BoardMesh {

    private static final int ALONG = 64;
    private static final int LEAST_ACROSS = 2;

    private BoardMesh() {}

    /**
     * The board between two lines across it.
     *
     * @param top its height over the glue face by x and y
     */
    static Mesh of(Neck neck, FretLine nut, FretLine end, DoubleBinaryOperator top, double tolerance) {
        int across = across(neck, end, tolerance);
        List<double[][]> rings = new ArrayList<>();
        for (int i = 0; i <= ALONG; i++) {
            double share = (double) i / ALONG;
            Spot bass = between(nut.bass(), end.bass(), share);
            Spot treble = between(nut.treble(), end.treble(), share);
            double[][] ring = new double[across + 3][];
            for (int j = 0; j <= across; j++) {
                Spot on = between(bass, treble, (double) j / across);
                ring[j] = new double[] {on.uMm(), on.vMm(), top.applyAsDouble(on.uMm(), on.vMm())};
            }
            ring[across + 1] = new double[] {treble.uMm(), treble.vMm(), 0};
            ring[across + 2] = new double[] {bass.uMm(), bass.vMm(), 0};
            rings.add(ring);
        }
        return SolidMesh.ofRings("fingerboard", rings);
    }

    /** Chords under an arc of radius R over a width w leave it by {@code w^2 / (8 R n^2)}. */
    private static int across(Neck neck, FretLine end, double tolerance) {
        double radius = Math.min(
                neck.crownRadiusAtMm(0), neck.crownRadiusAtMm(end.crossing().libraryValue()));
        double width = end.length().libraryValue();
        return (int) Math.max(LEAST_ACROSS, Math.ceil(width / Math.sqrt(8 * radius * tolerance)));
    }

    private static Spot between(Spot a, Spot b, double share) {
        return a.plus(share * (b.uMm() - a.uMm()), share * (b.vMm() - a.vMm()));
    }
}
