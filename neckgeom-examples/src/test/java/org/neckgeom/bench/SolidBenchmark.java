package org.neckgeom.bench;

import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.hertz;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.HeelTransition;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.neck.TunerPost;
import org.neckgeom.neck.Volute;
import org.neckgeom.shape.Mesh;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.solid.NeckSolid;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * What the one solid of a neck costs, each beside a plain loop. Targets: a whole solid 300 us, the thinnest wood of a channel
 * that ends before the heel 100 us, a mesh of 100,000 triangles 60 ms and 40 MB.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xms256m", "-Xmx256m", "-XX:+AlwaysPreTouch"})
public class SolidBenchmark {

    private static final int STRINGS = 6;
    private static final int RINGS = 400;
    private static final int ROUND = 125;
    private static final double FINE_MM = 0.003;

    private final Neck neck = neck(310);
    private final Neck beforeTheHeel = neck(280);
    private final NeckSolid solid = NeckSolid.of(neck);

    /** Straight, with volute, heel transition and posts; a channel of a length. */
    private static Neck neck(double channel) {
        TunerPost[] posts = new TunerPost[STRINGS];
        for (int i = 0; i < STRINGS; i++) {
            int row = i < STRINGS / 2 ? i : STRINGS - 1 - i;
            posts[i] = TunerPost.at(mm(55 + 38 * row)).aside(mm(i < STRINGS / 2 ? -25 : 25));
        }
        return Neck.named("bench")
                .scale(Scale.of(mm(640)))
                .fingerboard(Fingerboard.tapered(mm(44), mm(55))
                        .farWidthAtFret(12)
                        .thickness(mm(6))
                        .radius(mm(400))
                        .fretHeight(mm(1)))
                .back(BackProfile.between(mm(15), mm(17))
                        .power(2.5)
                        .volute(Volute.of(mm(2), mm(35)))
                        .heelTransition(
                                HeelTransition.ofRadius(mm(22)).slope(deg(70)).capLength(mm(12))))
                .frets(20)
                .bodyAtFret(14)
                .head(Head.angled(deg(13))
                        .length(mm(190))
                        .width(mm(82))
                        .thickness(mm(14))
                        .posts(posts))
                .heel(Heel.of(mm(88), mm(56)).capWidth(mm(24)))
                .neckSet(NeckSet.saddle(mm(15))
                        .atNut(mm(0.5))
                        .action(mm(2))
                        .compensation(mm(2))
                        .fretPlane(mm(9)))
                .strings(StringSet.of(Collections.nCopies(STRINGS, hertz(100)))
                        .diameters(mm(1.2), mm(1), mm(0.8), mm(0.6), mm(0.4), mm(0.3))
                        .across(Across.of(mm(3.5), mm(56))))
                .channel(Channel.forRod(TrussRod.twoWay(mm(channel - 10)).section(mm(6), mm(8)))
                        .startingAt(mm(10)));
    }

    /** Planes, curves, every fret, every string in space, volume. */
    @Benchmark
    public double solid() {
        NeckSolid made = NeckSolid.of(neck);
        return made.frets().size()
                + made.strings().size()
                + made.woodMm3()
                + made.head().orElseThrow().deepest().libraryValue();
    }

    /** The same figures on doubles: the heel's start by halving, fret ends, the ends of the strings, the volume by sections. */
    @Benchmark
    public double solidPlain() {
        double depthSlope = 2 / 280.0;
        double joint = 640 * (1 - StrictMath.pow(2, -14 / 12.0));
        double lo = 0;
        double hi = joint - 12;
        double first = StrictMath.atan(depthSlope);
        double steep = Math.toRadians(70);
        for (int i = 0; i < 60; i++) {
            double x = (lo + hi) / 2;
            double end = x + 22 * (StrictMath.sin(steep) - StrictMath.sin(first));
            double deep = 15 + depthSlope * x + 22 * (StrictMath.cos(first) - StrictMath.cos(steep));
            boolean reaches = deep + (joint - 12 - end) * StrictMath.tan(steep) >= 88;
            lo = reaches ? x : lo;
            hi = reaches ? hi : x;
        }
        double sum = lo;
        for (int n = 0; n <= 20; n++) {
            double x = 640 * (1 - StrictMath.pow(2, -n / 12.0));
            sum += 44 + 11 * x / 320;
        }
        for (int i = 0; i < STRINGS; i++) {
            double nut = 36.0 * i / (STRINGS - 1) - 18;
            double saddle = 54.0 * i / (STRINGS - 1) - 27;
            double scale = Math.sqrt(640 * 640.0 + (saddle - nut) * (saddle - nut));
            sum += (7.5 + 1.5 * (scale + 2) / (scale / 2)) - (400 - Math.sqrt(400 * 400.0 - nut * nut));
        }
        for (int i = 0; i < 480; i++) {
            double x = joint * (i + 0.5) / 480;
            sum += (22 + 5.5 * x / 320) * (15 + depthSlope * x) * 1.7 * joint / 480;
        }
        return sum + 190 * StrictMath.sin(Math.toRadians(13)) + 14 * StrictMath.cos(Math.toRadians(13));
    }

    /** The thinnest place to 1e-7 mm, channel before the heel. */
    @Benchmark
    public double woodLeast() {
        return FloorThickness.under(beforeTheHeel).least().woodMm();
    }

    /** The same with a channel that runs under the heel's transition. */
    @Benchmark
    public double woodLeastUnderTheHeel() {
        return FloorThickness.under(neck).least().woodMm();
    }

    /** In sections alone, at 200 stations, by Newton's method from a start that needs no search. */
    @Benchmark
    public double woodLeastPlain() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 200; i++) {
            double x = 10 + 270.0 * i / 199;
            double a = 22 + 5.5 * x / 320;
            double b = 15 + 2 * x / 280;
            double t = 3 / a;
            for (int step = 0; step < 6; step++) {
                double s = StrictMath.pow(t, 2.5);
                double z = b * StrictMath.pow(1 - s, 0.4);
                double slope = -z * s / (t * (1 - s));
                double bend = slope * 1.5 / (t * (1 - s));
                double g = a * (a * t - 3) + (z - 8) * slope;
                t -= g / (a * a + slope * slope + (z - 8) * bend);
            }
            double z = b * StrictMath.pow(1 - StrictMath.pow(t, 2.5), 0.4);
            least = Math.min(least, Math.hypot(a * t - 3, z - 8));
        }
        return least;
    }

    /** All pieces, some 100,000 triangles. */
    @Benchmark
    public List<Mesh> meshes() {
        return solid.meshes(mm(FINE_MM));
    }

    /** As many points of a superellipse, and triangles between them, in two arrays. */
    @Benchmark
    public int[] meshesPlain() {
        double[] xyz = new double[3 * RINGS * ROUND];
        int[] corners = new int[6 * (RINGS - 1) * ROUND];
        int at = 0;
        for (int i = 0; i < RINGS; i++) {
            double x = 355.0 * i / (RINGS - 1);
            for (int j = 0; j < ROUND; j++) {
                double t = (double) j / ROUND;
                xyz[at++] = x;
                xyz[at++] = (22 + 5.5 * x / 320) * t;
                xyz[at++] = -(15 + 2 * x / 280) * StrictMath.pow(1 - StrictMath.pow(t, 2.5), 0.4);
            }
        }
        int c = 0;
        for (int i = 0; i + 1 < RINGS; i++) {
            for (int j = 0; j < ROUND; j++) {
                int here = i * ROUND + j;
                int next = i * ROUND + (j + 1) % ROUND;
                for (int corner : new int[] {here, next, here + ROUND, next, next + ROUND, here + ROUND}) {
                    corners[c++] = corner;
                }
            }
        }
        return xyz[at - 1] < 1 ? corners : new int[0];
    }
}
