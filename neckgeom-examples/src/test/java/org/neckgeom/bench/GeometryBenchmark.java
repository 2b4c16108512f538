package org.neckgeom.bench;

import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.board.FretTable;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.BackSet;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.solid.FloorThickness;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * What the types of the geometry cost beside the same sums on plain doubles. Target: wood left at 200 stations, 300 us.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xms256m", "-Xmx256m", "-XX:+AlwaysPreTouch"})
public class GeometryBenchmark {

    private static final int STATIONS = 200;

    /** Exponent of the back's curve: 2 has a square root, the others a power. */
    @Param({"2", "2.5"})
    public double power;

    private final Scale scale = Scale.of(mm(560));
    private final Quantity<Angle> pitch = deg(13);
    private final Quantity<Length> shaft = mm(20);
    private final Quantity<Length> head = mm(15);
    private final Quantity<Length> kerf = mm(1.8);
    private double pitchRad;
    private double shaftMm;
    private double headMm;
    private double kerfMm;
    private double scaleMm = 560;
    private FloorThickness wood;

    @Setup
    public void neck() {
        pitchRad = pitch.getValue().doubleValue() * Math.PI / 180;
        shaftMm = 20;
        headMm = 15;
        kerfMm = 1.8;
        wood = FloorThickness.under(Neck.named("bench")
                .scale(scale)
                .fingerboard(Fingerboard.tapered(mm(34), mm(46)))
                .back(BackProfile.between(mm(14.5), mm(16.5)).power(power))
                .bodyAtFret(14)
                .channel(Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)))
                        .startingAt(mm(3))
                        .depthClearance(mm(0.2))));
    }

    @Benchmark
    public FretTable fretTable() {
        return FretTable.of(scale, 24);
    }

    @Benchmark
    public double[] fretTablePlain() {
        double[] places = new double[25];
        for (int n = 0; n < places.length; n++) {
            places[n] = -560 * StrictMath.expm1(-n / 12.0 * 0.6931471805599453);
        }
        return places;
    }

    @Benchmark
    public double scarf() {
        ScarfJoint joint = ScarfJoint.inTheHead(Scarf.of(pitch, shaft, head).kerf(kerf));
        return joint.frontLineMm() + joint.backLineMm() + joint.glueFaceMm();
    }

    @Benchmark
    public double scarfPlain() {
        double sin = StrictMath.sin(pitchRad);
        double cos = StrictMath.cos(pitchRad);
        return (shaftMm + headMm - shaftMm * cos + headMm) / sin + 0 * kerfMm;
    }

    /** The angle of a neck at the fourteenth fret, from the readings to the answer. */
    @Benchmark
    public double neckSet() {
        return BackSet.of(
                        Scale.of(mm(560)),
                        14,
                        NeckSet.saddle(mm(15.2))
                                .atNut(mm(0.4))
                                .action(mm(2.0))
                                .fretPlane(mm(7.1))
                                .compensation(mm(2.2)))
                .angle()
                .degrees();
    }

    @Benchmark
    public double neckSetPlain() {
        double reach = scaleMm * StrictMath.pow(2, -14 / 12.0) + 2.2;
        double string = 0.4 + (2.0 - 0.4) * (scaleMm + 2.2) / (scaleMm / 2);
        double hyp = Math.sqrt(reach * reach + string * string);
        return (StrictMath.asin((15.2 - 7.1) / hyp) - StrictMath.atan2(string, reach)) * (180 / Math.PI);
    }

    @Benchmark
    public double[] woodLeft() {
        return wood.alongMm(STATIONS);
    }

    /** The same stations by Newton's method on the curve's angle, from a start that needs no search. */
    @Benchmark
    public double[] woodLeftPlain() {
        double[] left = new double[STATIONS];
        double second = 560 * (1 - Math.pow(2, -14 / 12.0));
        double first = 560 * (1 - Math.pow(2, -1 / 12.0));
        for (int i = 0; i < STATIONS; i++) {
            double x = 3 + 300.0 * i / (STATIONS - 1);
            double a = 17 + 6 * x / second;
            double b = 14.5 + 2 * (x - first) / (280 - first);
            double t = 3 / a;
            for (int step = 0; step < 6; step++) {
                double s = StrictMath.pow(t, power);
                double z = b * StrictMath.pow(1 - s, 1 / power);
                double slope = -z * s / (t * (1 - s));
                double bend = slope * (power - 1) / (t * (1 - s));
                double g = a * (a * t - 3) + (z - 9.2) * slope;
                t -= g / (a * a + slope * slope + (z - 9.2) * bend);
            }
            double z = b * StrictMath.pow(1 - StrictMath.pow(t, power), 1 / power);
            left[i] = Math.hypot(a * t - 3, z - 9.2);
        }
        return left;
    }
}
