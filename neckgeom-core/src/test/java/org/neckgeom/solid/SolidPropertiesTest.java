package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Test;
import org.neckgeom.kernel.HeadPlanes;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Heel;
import org.neckgeom.shape.Frame;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Mesh;
import org.neckgeom.shape.Plane;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;
import org.neckgeom.units.Amount;

/**
 * What must hold for any neck, on invented necks by lot: against quadrature and the gamma function of a general library, and
 * against the same neck in a mirror, in another size, or with its slant, swing or head angle gone to nothing.
 */
class SolidPropertiesTest {

    private static final double CLOSED = 1e-12;

    private static Stream<RandomNecks> necks(int count) {
        return LongStream.range(0, count).mapToObj(RandomNecks::of);
    }

    @Test
    void frames_leadThereAndBack_andKeepDistances() {
        SplittableRandom random = new SplittableRandom(1);
        necks(200).forEach(one -> {
            Frame frame = one.solid().head().orElseThrow().frame();
            Point p = new Point(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-1, 1));
            Point q = new Point(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-1, 1));

            assertThat(frame.inverse().toNeck(frame.toNeck(p)).distanceMm(p)).isLessThan(CLOSED);
            assertThat(frame.toHere(frame.toNeck(p)).distanceMm(p)).isLessThan(CLOSED);
            assertThat(frame.toNeck(p).distanceMm(frame.toNeck(q))).isCloseTo(p.distanceMm(q), within(CLOSED));
            assertThat(frame.u().cross(frame.v()).dot(frame.w())).isCloseTo(1, within(CLOSED));
        });
    }

    /** g(p) = Gamma(1 + 1/p)^2 / Gamma(1 + 2/p), by Hipparchus. */
    private static double unitArea(double p) {
        double one = Gamma.gamma(1 + 1 / p);
        return one * one / Gamma.gamma(1 + 2 / p);
    }

    /** Area of a section in the words of the document: a superellipse, in the heel blended with a trapezoid. */
    private static double area(NeckSolid solid, double x) {
        double a = solid.neck().halfWidthAtMm(x);
        double b = solid.depth().valueAt(x);
        double round = a
                * b
                * (unitArea(solid.neck().back().bassPower())
                        + unitArea(solid.neck().back().treblePower()));
        double start = solid.back().heelStartMm().orElse(Double.POSITIVE_INFINITY);
        if (!(x > start)) {
            return round;
        }
        Heel heel = solid.neck().heel().orElseThrow();
        double u = (x - start) / (solid.bodyJointMm() - start);
        double q = u * u * (3 - 2 * u);
        return (1 - q) * round + q * (2 * a * b + (heel.capWidthMm() / 2 - a) * b * b / heel.heightMm());
    }

    @Test
    void volumes_areThoseOfQuadrature() {
        IterativeLegendreGaussIntegrator gauss = new IterativeLegendreGaussIntegrator(20, 1e-12, 1e-9, 1, 64);
        necks(100).forEach(one -> {
            NeckSolid solid = one.solid();
            double[] ends = DoubleStream.concat(
                            DoubleStream.of(0, solid.bodyJointMm()),
                            DoubleStream.of(solid.depth().knotsIn(0, solid.bodyJointMm())))
                    .sorted()
                    .toArray();
            double sum = 0;
            for (int i = 0; i + 1 < ends.length; i++) {
                sum += gauss.integrate(1_000_000, x -> area(solid, x), ends[i], ends[i + 1]);
            }
            assertThat(solid.woodMm3()).as("%s", one).isCloseTo(sum, within(1e-9 * sum));
        });
    }

    /** A surface that leaves the true one by no more than the tolerance misses its volume by no more than area times tolerance. */
    @Test
    void meshes_missTheVolumeByNoMoreThanTheirToleranceAllows() {
        necks(40).forEach(one -> {
            NeckSolid solid = one.solid();
            double wood = SolidMeshTest.woodToTheFace(solid);
            for (double tolerance : new double[] {0.4, 0.1}) {
                Mesh shaft = solid.meshes(mm(tolerance)).get(0);
                assertThat(Math.abs(shaft.volumeMm3() - wood))
                        .as("%s at %s", one, tolerance)
                        .isLessThan(surface(shaft) * tolerance);
            }
        });
    }

    private static double surface(Mesh mesh) {
        double[] p = mesh.xyzMm();
        int[] c = mesh.corners();
        double sum = 0;
        for (int t = 0; t < c.length; t += 3) {
            double[] u = new double[3];
            double[] v = new double[3];
            for (int k = 0; k < 3; k++) {
                u[k] = p[3 * c[t + 1] + k] - p[3 * c[t] + k];
                v[k] = p[3 * c[t + 2] + k] - p[3 * c[t] + k];
            }
            double nx = u[1] * v[2] - u[2] * v[1];
            double ny = u[2] * v[0] - u[0] * v[2];
            double nz = u[0] * v[1] - u[1] * v[0];
            sum += Math.sqrt(nx * nx + ny * ny + nz * nz) / 2;
        }
        return sum;
    }

    @Test
    void meshes_areClosedAndOutward() {
        necks(200).forEach(one -> one.solid().meshes(mm(0.5)).forEach(SolidMeshTest::isClosed));
    }

    private static Point mirror(Point p) {
        return new Point(p.xMm(), -p.yMm(), p.zMm());
    }

    /** Closed forms to 1e-12 of a neck's length; what is sought (wood left, distances of lines) to 1e-9. */
    @Test
    void mirroredNeck_isTheMirrorImage() {
        necks(200).forEach(one -> {
            NeckSolid here = one.solid();
            NeckSolid there = one.mirrored().solid();
            double length = here.neck().scale().lengthMm();
            for (int i = 0; i <= 20; i++) {
                BackSection a = here.back().sectionMm(here.bodyJointMm() * i / 20);
                BackSection b = there.back().sectionMm(there.bodyJointMm() * i / 20);
                for (int k = 0; k < 5; k++) {
                    double z = a.depth() * k / 5;
                    assertThat(a.halfWidthAt(z, true)).isCloseTo(b.halfWidthAt(z, false), within(CLOSED * length));
                }
            }
            for (int fret = 0; fret <= here.neck().frets(); fret++) {
                FretLine a = here.fret(fret);
                FretLine b = there.fret(fret);
                assertThat(a.bass().uMm()).isCloseTo(b.treble().uMm(), within(CLOSED * length));
                assertThat(a.bass().vMm()).isCloseTo(-b.treble().vMm(), within(CLOSED * length));
                assertThat(a.slant().libraryValue()).isCloseTo(-b.slant().libraryValue(), within(CLOSED));
            }
            HeadSolid head = here.head().orElseThrow();
            HeadSolid other = there.head().orElseThrow();
            head.corners()
                    .forEach(p -> assertThat(other.corners()
                                    .mapToDouble(q -> q.distanceMm(mirror(p)))
                                    .min()
                                    .orElseThrow())
                            .isLessThan(CLOSED * length));
            List<StringLine> strings = here.strings();
            List<StringLine> exchanged = there.strings();
            int n = strings.size();
            for (int i = 0; i < n; i++) {
                StringLine a = strings.get(i);
                StringLine b = exchanged.get(n - 1 - i);
                assertThat(b.underside().from().distanceMm(mirror(a.underside().from())))
                        .isLessThan(CLOSED * length);
                assertThat(b.underside().to().distanceMm(mirror(a.underside().to())))
                        .isLessThan(CLOSED * length);
                assertThat(b.overHead()
                                .orElseThrow()
                                .to()
                                .distanceMm(mirror(a.overHead().orElseThrow().to())))
                        .isLessThan(CLOSED * length);
                assertThat(b.sideAngle().orElseThrow().libraryValue())
                        .isCloseTo(-a.sideAngle().orElseThrow().libraryValue(), within(CLOSED));
                assertThat(b.turn().orElseThrow().libraryValue())
                        .isCloseTo(a.turn().orElseThrow().libraryValue(), within(CLOSED));
            }
            HeadClearances free = here.clearances().orElseThrow();
            HeadClearances same = there.clearances().orElseThrow();
            for (Function<HeadClearances, Optional<Amount<Length>>> f : clearances()) {
                assertThat(f.apply(same).orElseThrow().libraryValue())
                        .isCloseTo(f.apply(free).orElseThrow().libraryValue(), within(1e-9));
            }
            assertThat(same.crossings()).isEqualTo(free.crossings());
            assertThat(there.woodMm3()).isCloseTo(here.woodMm3(), within(CLOSED * here.woodMm3()));
            assertThat(least(there).woodMm()).isCloseTo(least(here).woodMm(), within(1e-9));
        });
    }

    private static List<Function<HeadClearances, Optional<Amount<Length>>>> clearances() {
        return List.of(
                HeadClearances::edge, HeadClearances::washers, HeadClearances::stringPastPost, HeadClearances::strings);
    }

    private static WoodAt least(NeckSolid solid) {
        return solid.floorThickness().orElseThrow().least();
    }

    /** Behind a square nut the face is (-sin a, 0, cos a) and tan psi = cos a tan g; without swing the axis is (-cos a, 0, -sin a). */
    @Test
    void headPlanes_goOverIntoTheSquareUnswungAndFlatOnes() {
        SplittableRandom random = new SplittableRandom(4);
        for (int i = 0; i < 2000; i++) {
            double a = Math.toRadians(random.nextDouble(1, 30));
            double s = Math.toRadians(random.nextDouble(-25, 25));
            double g = Math.toRadians(random.nextDouble(-10, 10));
            double step = 1e-7;
            HeadPlanes square = HeadPlanes.of(a, 0, g, 15);
            assertThat(square.face().normal().x()).isCloseTo(-Math.sin(a), within(CLOSED));
            assertThat(square.face().normal().y()).isCloseTo(0, within(CLOSED));
            assertThat(Math.tan(square.swingInFace())).isCloseTo(Math.cos(a) * Math.tan(g), within(CLOSED));
            assertThat(apart(square, HeadPlanes.of(a, step, g, 15))).isLessThan(2 * step);

            HeadPlanes unswung = HeadPlanes.of(a, s, 0, 15);
            assertThat(unswung.frame().u().x()).isCloseTo(Math.cos(a), within(CLOSED));
            assertThat(unswung.frame().u().z()).isCloseTo(Math.sin(a), within(CLOSED));
            assertThat(unswung.swingInFace()).isCloseTo(0, within(CLOSED));
            assertThat(apart(unswung, HeadPlanes.of(a, s, step, 15))).isLessThan(2 * step);

            HeadPlanes flat = HeadPlanes.of(0, s, g, 15);
            assertThat(flat.face().normal().z()).isCloseTo(1, within(CLOSED));
            assertThat(flat.swingInFace()).isCloseTo(g, within(CLOSED));
            assertThat(flat.backDepth().valueAt(-100)).isCloseTo(15, within(CLOSED));
            assertThat(apart(flat, HeadPlanes.of(step, s, g, 15))).isLessThan(2 * step);
        }
    }

    private static double apart(HeadPlanes one, HeadPlanes other) {
        return DoubleStream.of(
                        Math.abs(one.swingInFace() - other.swingInFace()),
                        Math.abs(one.nutLine() - other.nutLine()),
                        unit(one.at(1, 0, 0), other.at(1, 0, 0)),
                        unit(one.at(0, 1, 0), other.at(0, 1, 0)),
                        unit(one.at(0, 0, 1), other.at(0, 0, 1)))
                .max()
                .orElseThrow();
    }

    private static double unit(Point one, Point other) {
        return one.distanceMm(other);
    }

    /** A whole neck whose fan, swing or angle goes to nothing has heads and strings that go to those without. */
    @Test
    void necks_goOverIntoThoseWithoutSwingAndAngle() {
        double step = 1e-6;
        necks(100).forEach(one -> {
            double gap = 1e-3 * step * 700;
            assertThat(heads(one.swung(step).solid(), one.swung(0).solid())).isLessThan(1000 * gap);
            assertThat(heads(one.pitched(step).solid(), one.pitched(0).solid())).isLessThan(1000 * gap);
            assertThat(heads(one.fanned(2 * step).solid(), one.fanned(step).solid()))
                    .isLessThan(1000 * gap);
            assertThat(one.pitched(0).solid().head().orElseThrow().deepest().libraryValue())
                    .isCloseTo(one.headThickness(), within(1e-9));
        });
    }

    private static double heads(NeckSolid one, NeckSolid other) {
        List<Point> a = one.head().orElseThrow().corners().toList();
        List<Point> b = other.head().orElseThrow().corners().toList();
        assertThat(a).hasSameSizeAs(b);
        double most = 0;
        for (int i = 0; i < a.size(); i++) {
            most = Math.max(most, a.get(i).distanceMm(b.get(i)));
        }
        return most;
    }

    @Test
    void leastBlank_holdsEveryCorner_andNotAHundredthLess() {
        necks(200).forEach(one -> {
            NeckSolid solid = one.solid();
            double blocks = Math.max(1, solid.bodyJointMm() - 60);
            LeastThickness least = solid.leastThickness(mm(blocks));
            HeadSolid head = solid.head().orElseThrow();
            double deepest = 0;
            double before = 0;
            double aside = 0;
            // Points along every edge of the head's face and back, and of the shaft's ridge.
            List<Spot> spots = head.outline().spots();
            for (int i = 0; i < spots.size(); i++) {
                Spot a = spots.get(i);
                Spot b = spots.get((i + 1) % spots.size());
                for (int k = 0; k <= 10; k++) {
                    Spot on = a.plus((b.uMm() - a.uMm()) * k / 10, (b.vMm() - a.vMm()) * k / 10);
                    for (double w : new double[] {0, -one.headThickness()}) {
                        Point p = head.at(on, w);
                        deepest = Math.max(deepest, -p.zMm());
                        before = Math.max(before, -p.xMm());
                        aside = Math.max(aside, p.yMm());
                    }
                }
            }
            for (int i = 0; i <= 5000; i++) {
                deepest = Math.max(deepest, solid.depth().valueAt(blocks * i / 5000));
            }
            assertThat(deepest)
                    .as("%s", one)
                    .isLessThanOrEqualTo(least.mm() + 1e-9)
                    .isGreaterThan(least.mm() - 0.01);
            assertThat(before)
                    .isLessThanOrEqualTo(head.farthest().libraryValue() + 1e-9)
                    .isGreaterThan(head.farthest().libraryValue() - 0.01);
            assertThat(aside)
                    .isLessThanOrEqualTo(head.sideCorner(true).yMm() + 1e-9)
                    .isGreaterThan(head.sideCorner(true).yMm() - 0.01);
        });
    }

    @Test
    void everyLengthDoubled_doublesEveryDistance() {
        necks(100).forEach(one -> {
            List<Double> small = figures(one.solid());
            List<Double> large = figures(one.doubled().solid());
            assertThat(large).hasSameSizeAs(small);
            for (int i = 0; i < small.size(); i++) {
                assertThat(large.get(i)).as("%d of %s", i, one).isCloseTo(2 * small.get(i), within(4e-7));
            }
            assertThat(one.doubled().solid().woodMm3())
                    .isCloseTo(
                            8 * one.solid().woodMm3(),
                            within(8e-11 * one.solid().woodMm3()));
        });
    }

    /** Every string, post and face moved by one frame: their distances stay. */
    @Test
    void everythingMoved_keepsEveryDistance() {
        SplittableRandom random = new SplittableRandom(77);
        necks(100).forEach(one -> {
            NeckSolid solid = one.solid();
            Frame frame = one.solid().head().orElseThrow().frame();
            Frame moved = new Frame(
                    new Point(random.nextDouble(-500, 500), random.nextDouble(-500, 500), random.nextDouble(-500, 500)),
                    frame.v(),
                    frame.w(),
                    frame.u());
            List<Line> lines = new ArrayList<>(solid.head().orElseThrow().postAxes());
            solid.strings().forEach(string -> lines.add(string.overHead().orElseThrow()));
            for (Line a : lines) {
                for (Line b : lines) {
                    assertThat(moved(moved, a).distanceMm(moved(moved, b))).isCloseTo(a.distanceMm(b), within(1e-9));
                }
            }
            Plane face = solid.matingFace();
            Point joint = new Point(solid.bodyJointMm(), 0, 0);
            Line normal = moved(moved, new Line(joint, joint.plus(face.normal(), 1)));
            Plane there = Plane.through(normal.from(), normal.direction());
            for (Line a : lines) {
                assertThat(there.heightOfMm(moved.toNeck(a.from()))).isCloseTo(face.heightOfMm(a.from()), within(1e-9));
            }
        });
    }

    private static Line moved(Frame frame, Line line) {
        return new Line(frame.toNeck(line.from()), frame.toNeck(line.to()));
    }

    private static List<Double> figures(NeckSolid solid) {
        List<Double> all = new ArrayList<>();
        HeadSolid head = solid.head().orElseThrow();
        HeadClearances free = solid.clearances().orElseThrow();
        clearances().forEach(f -> all.add(f.apply(free).orElseThrow().libraryValue()));
        all.add(head.deepest().libraryValue());
        all.add(head.farthest().libraryValue());
        all.add(head.sideCorner(true).yMm());
        all.add(solid.leastThickness(mm(solid.bodyJointMm() / 2)).mm());
        all.add(solid.deepestStation());
        all.add(least(solid).woodMm());
        solid.frets().forEach(fret -> all.add(fret.length().libraryValue()));
        solid.strings()
                .forEach(string -> all.addAll(List.of(
                        string.scale().libraryValue(),
                        string.speakingLength().libraryValue(),
                        string.overHead().orElseThrow().to().yMm())));
        Arrays.stream(solid.matingFace().normal().toArray()).forEach(n -> all.add(n * solid.bodyJointMm()));
        return all;
    }

    @Test
    void wood_inSpaceIsNoMoreThanInTheSection() {
        necks(100).forEach(one -> {
            NeckSolid solid = one.solid();
            FloorThickness wood = solid.floorThickness().orElseThrow();
            Channel channel = wood.channel();
            double least = wood.least().woodMm();
            for (int i = 0; i <= 60; i++) {
                double x = i == 60 ? channel.endMm() : channel.startMm() + channel.lengthMm() * i / 60;
                double inSpace = wood.atMm(x).woodMm();
                assertThat(inSpace).as("%s at %s", one, x).isLessThanOrEqualTo(wood.inSection(x, 0, 0));
                assertThat(least).isLessThanOrEqualTo(inSpace + 1e-7);
            }
        });
    }

    /**
     * The distance in space is the least over the stations beside it, beside the knots of the depth too: sought by samples and then
     * by thirds, which know no slope of the back.
     */
    @Test
    void wood_inSpaceIsTheLeastOverAllSections() {
        necks(60).forEach(one -> {
            FloorThickness wood = one.solid().floorThickness().orElseThrow();
            Channel channel = wood.channel();
            double[] evenly = IntStream.range(1, 40)
                    .mapToDouble(i -> channel.startMm() + channel.lengthMm() * i / 40)
                    .toArray();
            double[] besideKnots = DoubleStream.of(wood.back().depth().knots())
                    .flatMap(knot -> DoubleStream.of(-0.3, -0.05, -0.01, 0, 0.004, 0.1, 0.5)
                            .map(off -> knot + off))
                    .filter(x -> x > channel.startMm() && x < channel.endMm())
                    .toArray();
            for (double x : DoubleStream.concat(DoubleStream.of(evenly), DoubleStream.of(besideKnots))
                    .toArray()) {
                double reach = wood.inSection(x, 0, 0);
                if (!(reach > 0)) {
                    continue;
                }
                DoubleUnaryOperator away = there -> {
                    double s = wood.sectionAway(there, x, 0, 0);
                    return (there - x) * (there - x) + s * s;
                };
                int n = 64;
                double best = x;
                for (int k = -n; k <= n; k++) {
                    double there = x + reach * k / n;
                    best = away.applyAsDouble(there) < away.applyAsDouble(best) ? there : best;
                }
                double lo = best - reach / n;
                double hi = best + reach / n;
                for (int k = 0; k < 80; k++) {
                    double one3 = (2 * lo + hi) / 3;
                    double two3 = (lo + 2 * hi) / 3;
                    if (away.applyAsDouble(one3) < away.applyAsDouble(two3)) {
                        hi = two3;
                    } else {
                        lo = one3;
                    }
                }
                double least = Math.min(away.applyAsDouble((lo + hi) / 2), away.applyAsDouble(best));
                double miss = Math.abs(wood.woodMm(x) - Math.sqrt(least));
                assertThat(miss).as("%s at %s", one, x).isLessThan(1e-9);
            }
        });
    }

    /** No point of the back, laid out by the superellipse's own equation, is nearer the channel's floor than the wood left. */
    @Test
    void wood_isLeftToEveryPointOfTheBack() {
        necks(25).forEach(one -> {
            NeckSolid solid = one.solid();
            FloorThickness wood = solid.floorThickness().orElseThrow();
            double start = solid.back().heelStartMm().orElse(solid.bodyJointMm());
            Channel channel = wood.channel();
            for (int i = 1; i < 8; i++) {
                double x = channel.startMm() + channel.lengthMm() * i / 8;
                double floor = channel.floorDepthAtMm(x);
                double half = channel.widthMm() / 2;
                double nearest = Double.POSITIVE_INFINITY;
                for (double there = Math.max(0, x - 4); there <= Math.min(start, x + 4); there += 0.05) {
                    double a = solid.neck().halfWidthAtMm(there);
                    double b = solid.depth().valueAt(there);
                    for (int side = 0; side < 2; side++) {
                        double p = one.power()[side];
                        for (double t = 0; t <= 1; t += 0.005) {
                            double y = a * t;
                            double z = b * Math.pow(1 - Math.pow(t, p), 1 / p);
                            double across = Math.max(0, y - half);
                            double down = z - floor;
                            nearest = Math.min(nearest, across * across + down * down + (there - x) * (there - x));
                        }
                    }
                }
                double left = wood.atMm(x).woodMm();
                assertThat(Math.sqrt(nearest)).as("%s at %s", one, x).isGreaterThan(left - 1e-7);
                if (x + 4 < start && x - 4 > 0) {
                    assertThat(Math.sqrt(nearest)).isLessThan(left + 0.01);
                }
            }
        });
    }

    @Test
    void drawnSections_keepTheirToleranceToTheTable() {
        SplittableRandom random = new SplittableRandom(9);
        necks(60).forEach(one -> {
            NeckSolid solid = one.solid();
            double tolerance = random.nextDouble(0.005, 0.2);
            for (int i = 0; i <= 8; i++) {
                double x = solid.bodyJointMm() * i / 8;
                BackCurve curve = solid.back().at(mm(x));
                Polyline drawn = curve.outline(mm(tolerance));
                BackSection section = solid.back().sectionMm(x);
                for (int k = 1; k < 40; k++) {
                    double z = section.depth() * k / 40;
                    for (boolean onTreble : new boolean[] {true, false}) {
                        double y = section.halfWidthAt(z, onTreble);
                        assertThat(drawn.distanceMm(new Spot(onTreble ? y : -y, -z)))
                                .as("%s at %s, %s deep", one, x, z)
                                .isLessThanOrEqualTo(tolerance * (1 + 1e-9));
                    }
                }
            }
        });
    }

    /** That the lot makes every kind of neck. */
    @Test
    void necks_areOfEveryKind() {
        List<ToDoubleFunction<RandomNecks>> parts = List.of(
                RandomNecks::fan,
                RandomNecks::volute,
                RandomNecks::heelRadius,
                RandomNecks::swing,
                RandomNecks::veneer);
        for (ToDoubleFunction<RandomNecks> part : parts) {
            assertThat(necks(200).filter(one -> part.applyAsDouble(one) == 0).count())
                    .isBetween(30L, 170L);
        }
    }
}
