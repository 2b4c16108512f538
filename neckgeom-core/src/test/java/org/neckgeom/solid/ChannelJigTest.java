package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.neckgeom.channel.JigPlay;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.HeelTransition;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Tenon;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.neck.TunerPost;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Spot;

/** Jigs in the channel, from the neck's own numbers. The document's figures are in SolidChecks, the shipped necks in the examples. */
class ChannelJigTest {

    /** 43 wide at the nut, 56 at the body joint, which lies at 450. */
    static Neck plain() {
        return Neck.named("plain")
                .scale(mm(900))
                .fingerboard(Fingerboard.tapered(mm(43), mm(56)))
                .back(BackProfile.between(mm(14.8), mm(18)))
                .bodyAtFret(12)
                .frets(18)
                .channel(Channel.forRod(TrussRod.twoWay(mm(380)).section(mm(6), mm(9))));
    }

    private static ChannelJig jig(JigCut cut, Neck neck) {
        return ChannelJig.of(cut, NeckSolid.of(neck));
    }

    @Test
    void inwardEdge_isThatFarFromTheCurve() {
        SplittableRandom random = new SplittableRandom(232);
        for (int i = 0; i < 100; i++) {
            double wave = random.nextDouble(0, 3);
            double length = random.nextDouble(60, 400);
            double slope = random.nextDouble(-0.5, 0.5);
            double inside = random.nextDouble(0.1, 6);
            DoubleUnaryOperator curve = x -> 20 + slope * x + wave * Math.sin(x / length * 2 * Math.PI);
            double edge = JigEdge.inward(curve, 0, inside);
            double nearest = Double.POSITIVE_INFINITY;
            for (double t = -8; t <= 8; t += 1e-3) {
                nearest = Math.min(nearest, Math.hypot(t, curve.applyAsDouble(t) - edge));
            }

            assertThat(nearest).as("%d", i).isCloseTo(inside, within(1e-5));
            assertThat(edge).isLessThan(curve.applyAsDouble(0));
        }
    }

    @Test
    void sideProfile_isTheDepthLessWhatTheBushTakes() {
        // Straight from 14.8 at fret 1 to 18 at fret 12: the edge lies g/cos of its slope inside.
        Neck neck = plain();
        ChannelJig jig = jig(JigCut.SIDE_PROFILE, neck).guided(mm(16), mm(12)).at(List.of(mm(100), mm(300)));
        double slope = (neck.backDepthAtMm(300) - neck.backDepthAtMm(100)) / 200;

        assertThat(jig.points()).hasSize(2);
        for (Point point : jig.points()) {
            assertThat(point.yMm()).isZero();
            assertThat(-point.zMm())
                    .isCloseTo(neck.backDepthAtMm(point.xMm()) - 2 * Math.sqrt(1 + slope * slope), within(1e-9));
        }
        assertThat(jig.inside().libraryValue()).isEqualTo(2);
    }

    @Test
    void heel_hasItsCheeksShoulderAndTenon() {
        Neck neck = plain().heel(Heel.of(mm(80), mm(56))
                .capWidth(mm(40))
                .joint(Tenon.of(mm(60), mm(20)).holes(mm(8), mm(6)).at(mm(20)).width(mm(24))));
        ChannelJig jig = jig(JigCut.HEEL, neck).guided(mm(16), mm(12));
        List<Point> points = jig.points();

        assertThat(jig.names())
                .containsExactly(
                        "bass cheek at the glue face",
                        "treble cheek at the glue face",
                        "bass cheek at the cap",
                        "treble cheek at the cap",
                        "shoulder at the glue face",
                        "shoulder at the cap",
                        "bass side of the tenon",
                        "treble side of the tenon");
        double square = 2 * Math.hypot(1, 8 / 80.0);
        assertThat(points.get(1).yMm()).isCloseTo(28 - square, within(1e-12));
        assertThat(points.get(0).yMm()).isCloseTo(square - 28, within(1e-12));
        assertThat(points.get(3).yMm()).isCloseTo(20 - square, within(1e-12));
        // No neck set: the shoulder is square to the glue face.
        assertThat(points.get(4).xMm()).isCloseTo(448, within(1e-9));
        assertThat(points.get(5).xMm()).isCloseTo(448, within(1e-9));
        assertThat(points.get(7).yMm()).isCloseTo(10, within(1e-12));
    }

    @Test
    void fretting_hasEverySlotFromTheNutPin() {
        Neck neck = plain();
        ChannelJig jig = jig(JigCut.FRETTING, neck);

        assertThat(jig.names()).hasSize(19).startsWith("nut line", "fret 1").endsWith("fret 18");
        for (int n = 0; n <= 18; n++) {
            assertThat(jig.points().get(n).xMm()).isCloseTo(900 * (1 - Math.pow(2, -n / 12.0)), within(1e-9));
        }
    }

    @Test
    void head_hasItsPostsAlongTheFaceAndItsPlay() {
        Neck neck = plain().head(SampleNecks.octaveMandolin()
                .head()
                .orElseThrow()
                .posts(TunerPost.at(mm(40)).aside(mm(-20)), TunerPost.at(mm(90)).aside(mm(22))));
        ChannelJig jig = jig(JigCut.HEAD, neck)
                .located(JigPlay.at(mm(10), mm(380)).play(mm(0.05)))
                .guided(mm(16), mm(12));

        assertThat(jig.names())
                .containsExactly("post 1", "post 2", "bass edge", "treble edge", "tip", "first pin", "second pin");
        assertThat(jig.points().get(0).distanceMm(new Point(-40, -20, 0))).isLessThan(1e-9);
        assertThat(jig.points().get(1).distanceMm(new Point(-90, 22, 0))).isLessThan(1e-9);
        assertThat(jig.points().get(4).distanceMm(new Point(-183, 0, 0))).isLessThan(1e-9);
        assertThat(jig.points().get(3).yMm()).isCloseTo(-jig.points().get(2).yMm(), within(1e-9));
        assertThat(jig.toString()).contains("play");
    }

    /**
     * By hand, pitch 13 deg, shaft 21 thick, head 14: in the head the slope begins at the nut line, in the shaft 14 / sin 13 behind
     * it; it ends 21 / tan 13 nearer the tip; 0.5 to be planed off is 0.5 / sin 13 along the glue face.
     */
    @Test
    void scarfSled_hasTheSawsLineOnBothFaces() {
        Neck neck = SampleNecks.octaveMandolin();
        NeckSolid solid = NeckSolid.of(neck).stock(mm(61));
        Scarf scarf = Scarf.of(deg(13), mm(21), mm(14)).cleaning(mm(0.5));
        double sin = Math.sin(Math.toRadians(13));
        double run = 21 / Math.tan(Math.toRadians(13));

        List<Point> inHead =
                ChannelJig.scarfSled(solid, ScarfJoint.inTheHead(scarf)).points();
        List<Point> inShaft =
                ChannelJig.scarfSled(solid, ScarfJoint.inTheShaft(scarf)).points();

        assertThat(inHead.get(0).distanceMm(new Point(-0.5 / sin, -30.5, 0))).isLessThan(1e-9);
        assertThat(inHead.get(1).distanceMm(new Point(-0.5 / sin, 30.5, 0))).isLessThan(1e-9);
        assertThat(inHead.get(2).distanceMm(new Point(-0.5 / sin - run, -30.5, -21)))
                .isLessThan(1e-9);
        assertThat(inShaft.get(0).distanceMm(new Point(13.5 / sin, -30.5, 0))).isLessThan(1e-9);
        assertThat(inShaft.get(3).distanceMm(new Point(13.5 / sin - run, 30.5, -21)))
                .isLessThan(1e-9);
    }

    /** Behind a nut that slants by 10 deg, treble end nearer the body, each line slants as much: 61 tan 10 between its ends. */
    @Test
    void scarfSled_followsASlantedNut() {
        Scarf scarf = Scarf.of(deg(13), mm(21), mm(14)).nutSlant(deg(10));
        List<Point> at = ChannelJig.scarfSled(
                        NeckSolid.of(SampleNecks.octaveMandolin()).stock(mm(61)), ScarfJoint.inTheHead(scarf))
                .points();

        assertThat(at.get(1).xMm() - at.get(0).xMm()).isCloseTo(61 * Math.tan(Math.toRadians(10)), within(1e-9));
        assertThat(at.get(3).xMm() - at.get(2).xMm()).isCloseTo(61 * Math.tan(Math.toRadians(10)), within(1e-9));
    }

    /** A board of one radius: by Pythagoras its edge lies R - sqrt(R^2 - a^2) below its middle. */
    @Test
    void caul_isHollowedToTheBoardsCrown() {
        Neck neck = plain().fingerboard(
                        Fingerboard.tapered(mm(43), mm(56)).thickness(mm(6)).radius(mm(305)));
        List<Point> at = jig(JigCut.CAUL, neck).points();
        double drop = 305 - Math.sqrt(305 * 305 - 28 * 28.0);

        assertThat(at).hasSize(9);
        assertThat(at.get(1).distanceMm(new Point(0, 0, 6))).isLessThan(1e-9);
        assertThat(at.get(3).distanceMm(new Point(450, -28, 6 - drop))).isLessThan(1e-9);
        assertThat(at.get(5).distanceMm(new Point(450, 28, 6 - drop))).isLessThan(1e-9);
        assertThat(at.get(7).xMm()).isCloseTo(900 * (1 - Math.pow(2, -19 / 12.0)), within(1e-9));
    }

    /** Where places and lines are both stated, the lines go through the places. */
    @Test
    void edges_goThroughThePlaces() {
        NeckSolid solid = NeckSolid.of(SampleNecks.octaveMandolin()).stock(mm(61));
        Scarf scarf = Scarf.of(deg(13), mm(21), mm(14));
        List<ChannelJig> jigs = List.of(
                ChannelJig.of(JigCut.TAPER, solid).guided(mm(16), mm(12)),
                ChannelJig.of(JigCut.SIDE_PROFILE, solid).guided(mm(16), mm(12)),
                ChannelJig.of(JigCut.HEAD, solid).guided(mm(16), mm(12)),
                ChannelJig.of(JigCut.CAUL, solid),
                ChannelJig.of(JigCut.FRETTING, solid),
                ChannelJig.scarfSled(solid, ScarfJoint.inTheHead(scarf)));
        for (ChannelJig jig : jigs) {
            boolean fromTheSide = jig.cut() == JigCut.SIDE_PROFILE;
            for (int i = 0; i < jig.points().size(); i++) {
                Point at = jig.points().get(i);
                if (jig.names().get(i).matches(".*(edge|line|fret|tip).*")) {
                    Spot spot = new Spot(at.xMm(), fromTheSide ? at.zMm() : at.yMm());
                    assertThat(jig.edges().stream()
                                    .mapToDouble(edge -> edge.distanceMm(spot))
                                    .min()
                                    .orElseThrow())
                            .as("%s, %s", jig.cut(), jig.names().get(i))
                            .isLessThan(0.01);
                }
            }
        }
    }

    @Test
    void hollowTighterThanTheCutter_isNoted() {
        Neck neck = SampleNecks.octaveMandolin();
        NeckSolid solid = NeckSolid.of(neck.back(
                neck.back().heelTransition(HeelTransition.from(mm(240), mm(20)).slope(deg(60)))));

        assertThat(ChannelJig.of(JigCut.SIDE_PROFILE, solid)
                        .guided(mm(50), mm(44))
                        .toString())
                .contains("too wide for the heel's curve");
        assertThat(ChannelJig.of(JigCut.SIDE_PROFILE, solid)
                        .guided(mm(16), mm(12))
                        .toString())
                .doesNotContain("too wide");
    }

    @Test
    void jig_refusesWhatCannotBe() {
        Neck bare = Neck.named("bare")
                .scale(mm(648))
                .fingerboard(Fingerboard.tapered(mm(43), mm(56)))
                .back(BackProfile.between(mm(21), mm(21)));

        assertThatThrownBy(() -> jig(JigCut.TAPER, bare))
                .hasMessageContaining("has no channel for a jig in the channel");
        assertThatThrownBy(() -> jig(JigCut.HEEL, plain())).hasMessageContaining("has no heel for a heel jig");
        assertThatThrownBy(() -> jig(JigCut.HEAD, plain())).hasMessageContaining("has no head for a head template");
        assertThatThrownBy(() -> jig(JigCut.TAPER, plain()).guided(mm(10), mm(12)))
                .hasMessageContaining("bush's diameter must be the cutter's 12 mm or more, but was 10 mm");
        assertThatThrownBy(() -> jig(JigCut.TAPER, plain()).at(List.of(mm(-5))))
                .hasMessageContaining("station must be from 0 mm to 450 mm, but was -5 mm");
        assertThatThrownBy(() -> jig(JigCut.TAPER, plain()).at(List.of())).hasMessageContaining("one or more");
        assertThatThrownBy(() -> jig(JigCut.FRETTING, plain()).at(List.of(mm(5))))
                .hasMessageContaining("its stations cannot be given");
        assertThatThrownBy(() -> jig(JigCut.CAUL, plain()).guided(mm(16), mm(12)))
                .hasMessageContaining("no guide bush runs on a gluing and fretting caul");
        assertThatThrownBy(() -> jig(JigCut.SCARF, plain()))
                .hasMessageContaining("a scarf sled needs its joint: scarfSled(solid, joint)");
        assertThatThrownBy(() -> ChannelJig.scarfSled(
                        NeckSolid.of(plain()), ScarfJoint.inTheHead(Scarf.of(deg(13), mm(21), mm(14)))))
                .hasMessageContaining("has no head for a scarf sled");
    }

    @Test
    void play_ofAKeyIsThatOfPinsAtItsEnds() {
        Channel channel = plain().channel().orElseThrow();
        double width = channel.widthMm();
        JigPlay key = JigPlay.key(channel, mm(width - 0.05));

        assertThat(key.worstAt(mm(channel.startMm())).libraryValue()).isCloseTo(0.025, within(1e-12));
        assertThat(key.worstAngle().libraryValue()).isCloseTo(Math.atan(0.05 / channel.lengthMm()), within(1e-12));
        assertThat(key.pressed().uncertaintyAt(mm(100)).libraryValue()).isZero();
        assertThat(key.pressed().worstAt(mm(-180)).libraryValue()).isCloseTo(0.025, within(1e-12));
        assertThat(JigPlay.at(mm(20), mm(370))
                        .pinsIn(channel, mm(width - 0.05))
                        .firstPlay()
                        .libraryValue())
                .isCloseTo(0.05, within(1e-12));
    }

    @Test
    void play_uncertaintyIsThatOfDraws() {
        SplittableRandom random = new SplittableRandom(233);
        JigPlay play = JigPlay.at(mm(10), mm(110)).play(mm(0.05), mm(0.08));
        double sum = 0;
        double most = 0;
        int draws = 200_000;
        for (int i = 0; i < draws; i++) {
            double first = random.nextDouble(-0.025, 0.025);
            double second = random.nextDouble(-0.04, 0.04);
            double off = first + (second - first) * (-180 - 10) / 100.0;
            sum += off * off;
            most = Math.max(most, Math.abs(off));
        }

        assertThat(Math.sqrt(sum / draws))
                .isCloseTo(play.uncertaintyAt(mm(-180)).libraryValue(), within(0.0005));
        assertThat(most).isCloseTo(play.worstAt(mm(-180)).libraryValue(), within(0.002));
    }

    @Test
    void play_refusesWhatCannotBe() {
        Channel channel = plain().channel().orElseThrow();

        assertThatThrownBy(() -> JigPlay.key(channel, mm(7)))
                .hasMessageContaining("key's width must be no more than the channel's width");
        assertThatThrownBy(() -> JigPlay.at(mm(-20), mm(300)).pinsIn(channel, mm(5.9)))
                .hasMessageContaining("first pin must be all in the channel");
        assertThatThrownBy(() -> JigPlay.at(mm(20), mm(20)).play(mm(0.05)))
                .hasMessageContaining("second pin must be past the first at 20 mm, but was 20 mm");
        assertThatThrownBy(() -> JigPlay.at(mm(20), mm(80)).play(mm(-0.05), mm(0.05)))
                .hasMessageContaining("play of the first pin must be 0 mm or more");
    }
}
