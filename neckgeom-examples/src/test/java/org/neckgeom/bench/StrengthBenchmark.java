package org.neckgeom.bench;

import static org.neckgeom.units.ShopUnits.celsius;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.percent;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.concurrent.TimeUnit;
import javax.measure.quantity.Length;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.stock.Wood;
import org.neckgeom.strength.BlankBent;
import org.neckgeom.strength.Bow;
import org.neckgeom.strength.Calibration;
import org.neckgeom.strength.NeckBent;
import org.neckgeom.strength.Relief;
import org.neckgeom.strength.ReliefScan;
import org.neckgeom.strength.RodForce;
import org.neckgeom.strength.SizeChange;
import org.neckgeom.strength.StiffnessReadings;
import org.neckgeom.strength.Weather;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * What relief costs. Target: scan with superellipse sections, board and slot at 1,000 stations in 60 us. The baseline does
 * the least a loop over doubles can: half ellipse and flat board in closed form, slot, trapezoids, strings alone on the
 * straight neck.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xms256m", "-Xmx256m", "-XX:+AlwaysPreTouch"})
public class StrengthBenchmark {

    private static final int STATIONS = 1000;

    /** What is not known of a neck: woods, what the beam leaves out, what readings share. */
    private static final int CAUSES = 19;

    /** Readings in the benchmark's calibration. */
    private static final int READINGS = 3;

    private final Channel channel =
            Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9))).depthClearance(mm(0.2));
    private final ReliefScan scan = new ReliefScan(channel, 2.4);
    private final Neck neck = Neck.named("bench")
            .scale(mm(560))
            .fingerboard(Fingerboard.tapered(mm(34), mm(46))
                    .thickness(mm(6))
                    .radius(mm(400))
                    .wood(Wood.INDIAN_ROSEWOOD))
            .back(BackProfile.between(mm(14.5), mm(16.5)).power(2.4))
            .bodyAtFret(14)
            .wood(Wood.BLACK_WALNUT)
            .channel(channel)
            .strings(StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"), pitch("E4"))
                    .doubled()
                    .tensions(newton(95)));
    private final Relief relief = Relief.of(neck);
    private final Weather weather = Weather.from(percent(45), celsius(21)).to(percent(25), celsius(21));
    private final Amount<Length> widthAtNut = mm(17);
    private final Amount<Length> depthAtNut = mm(14.25);
    private final Amount<Length> armAtNut = mm(7.5);
    private final double[] line = new double[STATIONS + 1];
    private final StiffnessReadings read = StiffnessReadings.none()
            .neckBlank(BlankBent.over(mm(600)).section(mm(70), mm(22)).fall(newton(49), mm(0.31)))
            .neck(NeckBent.supported(newton(78.5), mm(0.15)));
    private final StiffnessReadings readMore = read.neck(NeckBent.clamped(newton(29.4), mm(0.13)));
    private final Calibration calibration = new Calibration(neck, readMore);
    private final double[] row = new double[CAUSES];
    private final double[] mean = new double[CAUSES];
    private final double[][] covariance = new double[CAUSES][CAUSES];
    private double eBack = 11_600;
    private double eBoard = 12_300;
    private double pull = 760;

    /** Sections, strings, rod and the bent neck at 1,000 stations, then the straightedge. */
    @Benchmark
    public double scanAtThousandStations() {
        return scan.relief(STATIONS);
    }

    /**
     * The same number of stations by the plainest loop. Stations are counted in a double: turning an int into one waits, on
     * some processors and by luck of the registers, for what the register held before.
     */
    @Benchmark
    public double plainDoublesAtThousandStations() {
        double h = 311.0 / STATIONS;
        double slope = 0;
        double rise = 0;
        double before = 0;
        double station = 0;
        for (int i = 0; i <= STATIONS; i++) {
            double x = station++ * h;
            double half = 17 + x * (6 / 311.0);
            double depth = 14.25 + x * 0.008;
            double bend = bend(half, depth, 7.5 + x * (2.4 / 560), x < 300);
            if (i > 0) {
                rise += h * slope + h * h * (2 * before + bend) / 6;
                slope += h * (before + bend) / 2;
            }
            line[i] = rise;
            before = bend;
        }
        return gap();
    }

    /** The plainest loop again, its lengths and what it writes down at each station amounts, read and checked as any are. */
    @Benchmark
    public double amountsAtThousandStations() {
        Amount<Length> step = mm(311).dividedBy(STATIONS);
        double h = LibraryUnits.mm(step, "step");
        double slope = 0;
        double rise = 0;
        double before = 0;
        double station = 0;
        for (int i = 0; i <= STATIONS; i++) {
            Amount<Length> x = step.times(station++);
            Amount<Length> half = x.times(6 / 311.0).plus(widthAtNut);
            Amount<Length> depth = x.times(0.008).plus(depthAtNut);
            Amount<Length> arm = x.times(2.4 / 560).plus(armAtNut);
            double bend = bend(
                    LibraryUnits.mmPositive(half, "half width"),
                    LibraryUnits.mmPositive(depth, "depth"),
                    LibraryUnits.mm(arm, "arm"),
                    x.libraryValue() < 300);
            if (i > 0) {
                rise += h * slope + h * h * (2 * before + bend) / 6;
                slope += h * (before + bend) / 2;
            }
            line[i] = LibraryUnits.mm(mm(rise), "rise");
            before = bend;
        }
        return gap();
    }

    /** Half ellipse and flat board in closed form, the slot where there is one, strings at a distance from the glue face. */
    private double bend(double half, double depth, double arm, boolean slotted) {
        double back = eBack * Math.PI / 2 * half * depth;
        double board = eBoard * 2 * half * 6;
        double slot = slotted ? eBack * 6 * 9.2 : 0;
        double ea = back + board - slot;
        double eq = -back * 4 * depth / (3 * Math.PI) + board * 3 + slot * 4.6;
        double ej = back * depth * depth / 4 + board * 12 - slot * 9.2 * 9.2 / 3;
        double axis = eq / ea;
        return pull * (arm - axis) / (ej - axis * eq);
    }

    private double gap() {
        double gap = 0;
        int from = STATIONS / 10;
        double station = 0;
        for (int i = from; i <= STATIONS; i++) {
            double chord = line[from] + (line[STATIONS] - line[from]) * station++ / (STATIONS - from);
            double here = chord - line[i];
            gap = here > gap ? here : gap;
        }
        return gap;
    }

    /** The public answer with its interval: seven scans of 240 stations. */
    @Benchmark
    public Bow reliefUnderStrings() {
        return relief.underStrings();
    }

    /** The public answer that solves for the force, interval, and what the rod can do. */
    @Benchmark
    public RodForce rodForce() {
        return relief.rodForceFor(mm(0.2));
    }

    /** One more reading on the bench, with those before it, to what relief is then known to. */
    @Benchmark
    public double calibrationUpdate() {
        return calibration.uncertainty(readMore);
    }

    /** As many updates of means and covariances by the plainest loops over arrays, from their start. */
    @Benchmark
    public double calibrationUpdatePlain() {
        for (int i = 0; i < CAUSES; i++) {
            mean[i] = 0;
            row[i] = 0.01 * (i + 1);
            for (int j = 0; j < CAUSES; j++) {
                covariance[i][j] = i == j ? 1 : 0;
            }
        }
        for (int reading = 0; reading < READINGS; reading++) {
            double variance = 0.0004;
            double expected = 0;
            double[] with = new double[CAUSES];
            for (int i = 0; i < CAUSES; i++) {
                for (int j = 0; j < CAUSES; j++) {
                    with[i] += covariance[i][j] * row[j];
                }
                variance += with[i] * row[i];
                expected += mean[i] * row[i];
            }
            for (int i = 0; i < CAUSES; i++) {
                mean[i] += with[i] / variance * (0.1 - expected);
                for (int j = 0; j < CAUSES; j++) {
                    covariance[i][j] -= with[i] * with[j] / variance;
                }
            }
        }
        return covariance[0][1] + mean[0];
    }

    /** A change of weather across a board. */
    @Benchmark
    public double weather() {
        SizeChange change = weather.across(mm(46), Wood.INDIAN_ROSEWOOD);
        return change.changeMm();
    }
}
