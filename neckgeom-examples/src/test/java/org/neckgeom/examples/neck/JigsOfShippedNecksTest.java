package org.neckgeom.examples.neck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.neck.Neck;
import org.neckgeom.shape.Point;
import org.neckgeom.solid.ChannelJig;
import org.neckgeom.solid.NeckSolid;

/** Jigs of every shipped neck against half the width, the depth and the frets of its solid, less what the bush takes. */
class JigsOfShippedNecksTest {

    private static final double INSIDE = 2;

    static List<String> names() {
        return ShippedNecks.names();
    }

    private static ChannelJig jig(ChannelJig.Cut cut, Neck neck) {
        return ChannelJig.of(cut, NeckSolid.of(neck)).guided(mm(16), mm(12));
    }

    @ParameterizedTest
    @MethodSource("names")
    void taper_isHalfTheWidthLessTheBush(String name) {
        Neck neck = NeckFile.read(name).neck();
        double joint = neck.bodyJointMm();
        double nut = NeckSolid.of(neck)
                        .stations(List.of(mm(0)))
                        .rows()
                        .get(0)
                        .width()
                        .libraryValue()
                / 2;
        double body = NeckSolid.of(neck)
                        .stations(List.of(mm(joint)))
                        .rows()
                        .get(0)
                        .width()
                        .libraryValue()
                / 2;
        double square = INSIDE * Math.hypot(1, (body - nut) / joint);

        for (double share : new double[] {0, 0.3, 0.7, 1}) {
            double x = share * joint;
            List<Point> edges =
                    jig(ChannelJig.Cut.TAPER, neck).at(List.of(mm(x))).points();

            assertThat(edges.get(0).yMm()).isCloseTo(-(nut + share * (body - nut) - square), within(1e-9));
            assertThat(edges.get(1).yMm()).isCloseTo(nut + share * (body - nut) - square, within(1e-9));
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void sideProfile_liesThatFarInsideTheBack(String name) {
        Neck neck = NeckFile.read(name).neck();
        NeckSolid solid = NeckSolid.of(neck);

        for (double share : new double[] {0.05, 0.3, 0.6, 0.9}) {
            double x = share * neck.bodyJointMm();
            double edge = -jig(ChannelJig.Cut.SIDE_PROFILE, neck)
                    .at(List.of(mm(x)))
                    .points()
                    .get(0)
                    .zMm();
            double nearest = Double.POSITIVE_INFINITY;
            for (double t = -3; t <= 3; t += 1e-3) {
                nearest = Math.min(nearest, Math.hypot(t, solid.depth().valueAt(x + t) - edge));
            }

            assertThat(nearest).as("%s at %s", name, x).isCloseTo(INSIDE, within(1e-5));
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void fretting_hasTheFretsOfTheSolid(String name) {
        Neck neck = NeckFile.read(name).neck();
        ChannelJig jig = jig(ChannelJig.Cut.FRETTING, neck);
        List<Point> points = jig.points();
        double first = NeckSolid.of(neck).fret(1).bass().uMm();

        assertThat(points.get(neck.fannedFrets().isPresent() ? 2 : 1).xMm()).isCloseTo(first, within(1e-9));
        assertThat(points).hasSize((neck.frets() + 1) * (neck.fannedFrets().isPresent() ? 2 : 1));
    }

    @ParameterizedTest
    @MethodSource("names")
    void head_hasThePostsOfTheNeck(String name) {
        Neck neck = NeckFile.read(name).neck();
        List<Point> points = jig(ChannelJig.Cut.HEAD, neck).points();

        for (int i = 0; i < neck.head().orElseThrow().posts().size(); i++) {
            var post = neck.head().orElseThrow().posts().get(i);
            assertThat(Math.hypot(points.get(i).xMm(), points.get(i).yMm()))
                    .as("%s, post %d", name, i + 1)
                    .isCloseTo(Math.hypot(post.alongMm(), post.asideMm()), within(1e-9));
        }
    }
}
