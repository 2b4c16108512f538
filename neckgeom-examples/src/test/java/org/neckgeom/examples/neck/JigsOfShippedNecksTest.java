package org.neckgeom.examples.neck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.neck.JointPlace;
import org.neckgeom.neck.Neck;
import org.neckgeom.plan.Job;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Point;
import org.neckgeom.solid.ChannelJig;
import org.neckgeom.solid.JigCut;
import org.neckgeom.solid.NeckSolid;
import org.neckgeom.template.Template;

/** Jigs of every shipped neck against half the width, the depth and the frets of its solid, less what the bush takes. */
class JigsOfShippedNecksTest {

    private static final double INSIDE = 2;

    static List<String> names() {
        return ShippedNecks.names();
    }

    static List<String> kinds() {
        return KindNecks.names();
    }

    private static ChannelJig jig(JigCut cut, Neck neck) {
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
            List<Point> edges = jig(JigCut.TAPER, neck).at(List.of(mm(x))).points();

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
            double edge = -jig(JigCut.SIDE_PROFILE, neck)
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
        ChannelJig jig = ChannelJig.of(JigCut.FRETTING, NeckSolid.of(neck));
        List<Point> points = jig.points();
        double first = NeckSolid.of(neck).fret(1).bass().uMm();

        assertThat(points.get(neck.fannedFrets().isPresent() ? 2 : 1).xMm()).isCloseTo(first, within(1e-9));
        assertThat(points).hasSize((neck.frets() + 1) * (neck.fannedFrets().isPresent() ? 2 : 1));
    }

    @ParameterizedTest
    @MethodSource("names")
    void head_hasThePostsOfTheNeck(String name) {
        Neck neck = NeckFile.read(name).neck();
        List<Point> points = jig(JigCut.HEAD, neck).points();

        for (int i = 0; i < neck.head().orElseThrow().posts().size(); i++) {
            var post = neck.head().orElseThrow().posts().get(i);
            assertThat(Math.hypot(points.get(i).xMm(), points.get(i).yMm()))
                    .as("%s, post %d", name, i + 1)
                    .isCloseTo(Math.hypot(post.alongMm(), post.asideMm()), within(1e-9));
        }
    }

    /**
     * The sled against the joint's glued face in the solid and the slope's fall: by the head's angle a, with c to plane off, {@code c / sin
     * a} before the glued face in the shaft, or before the nut line in the head.
     */
    @ParameterizedTest
    @MethodSource({"names", "kinds"})
    void sled_liesOnTheSolidsSlope(String name) {
        Job job = names().contains(name) ? NeckFile.read(name) : NeckFile.read(KindNecks.file(name));
        Optional<ChannelJig> sled = job.plan().jig(JigCut.SCARF);
        Optional<ScarfJoint> joint = job.plan().scarf();
        assertThat(sled.isPresent())
                .isEqualTo(joint.isPresent() && job.neck().channel().isPresent());
        if (sled.isEmpty() || joint.orElseThrow().scarf().nutSlant().libraryValue() != 0) {
            return;
        }
        double a = joint.orElseThrow().scarf().angle().libraryValue();
        double c = joint.orElseThrow().scarf().cleaningMm();
        Line glued = job.plan().solid().glueLine(joint.orElseThrow());
        boolean inShaft = joint.orElseThrow().place() == JointPlace.IN_THE_SHAFT;
        double front = inShaft ? glued.from().xMm() - c / Math.sin(a) : -c / Math.sin(a);
        List<Point> at = sled.orElseThrow().points();

        assertThat(at.get(0).xMm()).isCloseTo(front, within(1e-9));
        assertThat(at.get(1).xMm()).isCloseTo(front, within(1e-9));
        assertThat((at.get(0).zMm() - at.get(2).zMm())
                        / (at.get(0).xMm() - at.get(2).xMm()))
                .isCloseTo(Math.tan(a), within(1e-12));
        assertThat(at.get(3).yMm()).isCloseTo(job.blank().width().libraryValue() / 2, within(1e-9));
    }

    /** Each jig of every neck is drawn; what a neck has no part for it has no jig for. */
    @ParameterizedTest
    @MethodSource({"names", "kinds"})
    void everyJig_hasItsTemplate(String name) {
        Job job = names().contains(name) ? NeckFile.read(name) : NeckFile.read(KindNecks.file(name));
        for (JigCut cut : JigCut.values()) {
            Optional<ChannelJig> jig = job.plan().jig(cut);
            boolean hasPart = switch (cut) {
                case HEEL -> job.neck().heel().isPresent();
                case HEAD -> job.neck().head().isPresent();
                case SCARF -> job.plan().scarf().isPresent();
                default -> true;
            };
            assertThat(jig.isPresent())
                    .as("%s", cut)
                    .isEqualTo(hasPart && job.neck().channel().isPresent());
            jig.ifPresent(there -> assertThat(Template.of(there).toSvg())
                    .contains(": templates at full size", ">" + cut)
                    .doesNotContain("NaN"));
        }
    }
}
