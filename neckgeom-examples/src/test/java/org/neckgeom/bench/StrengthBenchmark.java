package org.neckgeom.bench;

import static org.neckgeom.units.ShopUnits.celsius;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.percent;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.concurrent.TimeUnit;
import org.neckgeom.design.BackProfile;
import org.neckgeom.design.Channel;
import org.neckgeom.design.Fingerboard;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.Rod;
import org.neckgeom.design.StringSet;
import org.neckgeom.stock.Wood;
import org.neckgeom.strength.Bow;
import org.neckgeom.strength.Relief;
import org.neckgeom.strength.ReliefScan;
import org.neckgeom.strength.RodForce;
import org.neckgeom.strength.SizeChange;
import org.neckgeom.strength.Weather;
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

    private final Channel channel =
            Channel.forRod(Rod.twoWay(mm(300), mm(6), mm(9))).clearance(mm(0.2));
    private final ReliefScan scan = new ReliefScan(channel, 2.4);
    private final NeckDesign neck = NeckDesign.named("bench")
            .scale(mm(560))
            .bodyAtFret(14)
            .fingerboard(Fingerboard.tapered(mm(34), mm(46))
                    .thickness(mm(6))
                    .radius(mm(400))
                    .wood(Wood.INDIAN_ROSEWOOD))
            .back(BackProfile.between(mm(14.5), mm(16.5)).power(2.4))
            .wood(Wood.BLACK_WALNUT)
            .channel(channel)
            .strings(StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"), pitch("E4"))
                    .doubled()
                    .tensions(newton(95)));
    private final Relief relief = Relief.of(neck);
    private final Weather weather = Weather.from(percent(45), celsius(21)).to(percent(25), celsius(21));
    private double eBack = 11_600;
    private double eBoard = 12_300;
    private double pull = 760;

    /** Sections, strings, rod and the bent neck at 1,000 stations, then the straightedge. */
    @Benchmark
    public double scanAtThousandStations() {
        return scan.relief(STATIONS);
    }

    /** The same number of stations by the plainest loop. */
    @Benchmark
    public double plainDoublesAtThousandStations() {
        double h = 311.0 / STATIONS;
        double slope = 0;
        double rise = 0;
        double before = 0;
        double[] line = new double[STATIONS + 1];
        for (int i = 0; i <= STATIONS; i++) {
            double x = i * h;
            double half = 17 + x * (6 / 311.0);
            double depth = 14.25 + x * 0.008;
            double back = eBack * Math.PI / 2 * half * depth;
            double board = eBoard * 2 * half * 6;
            double slot = x < 300 ? eBack * 6 * 9.2 : 0;
            double ea = back + board - slot;
            double eq = -back * 4 * depth / (3 * Math.PI) + board * 3 + slot * 4.6;
            double ej = back * depth * depth / 4 + board * 12 - slot * 9.2 * 9.2 / 3;
            double axis = eq / ea;
            double bend = pull * (7.5 + x * (2.4 / 560) - axis) / (ej - axis * eq);
            if (i > 0) {
                rise += h * slope + h * h * (2 * before + bend) / 6;
                slope += h * (before + bend) / 2;
            }
            line[i] = rise;
            before = bend;
        }
        double gap = 0;
        int from = STATIONS / 10;
        for (int i = from; i <= STATIONS; i++) {
            double chord = line[from] + (line[STATIONS] - line[from]) * (i - from) / (STATIONS - from);
            gap = Math.max(gap, chord - line[i]);
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

    /** A change of weather across a board. */
    @Benchmark
    public double weather() {
        SizeChange change = weather.across(mm(46), Wood.INDIAN_ROSEWOOD);
        return change.changeMm();
    }
}
