package org.neckgeom.bench;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.djunits.unit.AreaUnit;
import org.djunits.unit.LengthUnit;
import org.neckgeom.channel.Centring;
import org.neckgeom.channel.SlotOffset;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnits;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * Offset and uncertainty from two walls, time of one. So few inputs that all of them stay in the nearest cache: it is the
 * arithmetic that is compared, not the memory.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(CentringBenchmark.COUNT)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xms256m", "-Xmx256m", "-XX:+AlwaysPreTouch"})
public class CentringBenchmark {

    static final int COUNT = 256;

    private static final Unit<Length> MM = MetricPrefix.MILLI(Units.METRE);

    private final PlainWalls[] plain = new PlainWalls[COUNT];
    private final Walls[] walls = new Walls[COUNT];
    private final ForeignWalls[] foreign = new ForeignWalls[COUNT];
    private final SeshatWalls[] seshat = new SeshatWalls[COUNT];
    private final DjunitsWalls[] djunits = new DjunitsWalls[COUNT];
    private final TrialCut[] trials = new TrialCut[COUNT];
    private final TrialCut[] fullTrials = new TrialCut[COUNT];
    private final Object[] kept = new Object[COUNT];

    private record PlainWalls(double fence, double far, double u) {}

    private record PlainOffset(double offset, double uncertainty) {

        static PlainOffset of(PlainWalls in) {
            return new PlainOffset((in.fence - in.far) / 2, Math.sqrt(in.u * in.u + in.u * in.u) / 2);
        }

        /** With what the library looks at too: sizes in reach, walls more than 0, and what comes out is finite. */
        static PlainOffset checked(PlainWalls in) {
            double a = inReach(in.fence);
            double b = inReach(in.far);
            double u = in.u == 0 ? 0 : inReach(in.u);
            return new PlainOffset(finite((a - b) / 2), finite(u / SQRT_2));
        }

        private static double inReach(double value) {
            if (!(value >= LibraryUnits.LEAST && value <= LibraryUnits.MOST)) {
                throw new IllegalArgumentException("a reading must be more than 0 and within reach");
            }
            return value;
        }

        private static double finite(double value) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("an offset must be finite");
            }
            return value + 0.0;
        }

        private static final double SQRT_2 = Math.sqrt(2);
    }

    // The fields are read directly: a caller that never names Amount itself keeps the JVM from inlining an accessor.
    private record Walls(Amount<Length> fence, Amount<Length> far, Amount<Length> u) {}

    private record ForeignWalls(Quantity<Length> fence, Quantity<Length> far, Quantity<Length> u) {}

    /** A type of its own: where both libraries shared one, Seshat took a sixth longer, which would flatter ours. */
    private record SeshatWalls(Quantity<Length> fence, Quantity<Length> far, Quantity<Length> u) {}

    private record DjunitsWalls(
            org.djunits.value.vdouble.scalar.Length fence,
            org.djunits.value.vdouble.scalar.Length far,
            org.djunits.value.vdouble.scalar.Length u) {}

    /** Fills the readings. */
    @Setup
    public void readings() {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < COUNT; i++) {
            double a = random.nextDouble(29, 31);
            double b = random.nextDouble(29, 31);
            double u = random.nextDouble(0.01, 0.03);
            plain[i] = new PlainWalls(a, b, u);
            walls[i] = new Walls(ShopUnits.mm(a), ShopUnits.mm(b), ShopUnits.mm(u));
            foreign[i] = new ForeignWalls(
                    Quantities.getQuantity(a, MM), Quantities.getQuantity(b, MM), Quantities.getQuantity(u, MM));
            seshat[i] = new SeshatWalls(seshat(a), seshat(b), seshat(u));
            djunits[i] = new DjunitsWalls(djunits(a), djunits(b), djunits(u));
            trials[i] = TrialCut.walls(walls[i].fence(), walls[i].far()).repeatability(walls[i].u());
            fullTrials[i] = trials[i].slot(ShopUnits.mm(6)).piece(ShopUnits.mm(a + b + 6));
        }
    }

    private static Quantity<Length> seshat(double mm) {
        return tech.uom.seshat.Quantities.create(mm, tech.uom.seshat.Units.MILLIMETRE);
    }

    private static org.djunits.value.vdouble.scalar.Length djunits(double mm) {
        return new org.djunits.value.vdouble.scalar.Length(mm, LengthUnit.MILLIMETER);
    }

    /** The baseline: records of doubles in and out. */
    @Benchmark
    public double plain() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            PlainWalls in = plain[i];
            PlainOffset out = PlainOffset.of(in);
            sum += out.offset() + out.uncertainty();
        }
        return sum;
    }

    /** The baseline with the same checks. */
    @Benchmark
    public double plainChecked() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            PlainWalls in = plain[i];
            PlainOffset out = PlainOffset.checked(in);
            sum += out.offset() + out.uncertainty();
        }
        return sum;
    }

    /** Quantities in, quantities out. */
    @Benchmark
    public double quantities() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            Walls in = walls[i];
            SlotOffset out = SlotOffset.fromWalls(in.fence, in.far).repeatability(in.u);
            sum += out.amount().libraryValue() + out.uncertainty().libraryValue();
        }
        return sum;
    }

    /** Quantities in, doubles out. */
    @Benchmark
    public double quantitiesToDoubles() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            Walls in = walls[i];
            SlotOffset out = SlotOffset.fromWalls(in.fence, in.far).repeatability(in.u);
            sum += out.amountMm() + out.uncertaintyMm();
        }
        return sum;
    }

    /** Doubles in, made into quantities on the spot, doubles out. */
    @Benchmark
    public double doubles() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            PlainWalls in = plain[i];
            SlotOffset out = SlotOffset.fromWalls(ShopUnits.mm(in.fence), ShopUnits.mm(in.far))
                    .repeatability(ShopUnits.mm(in.u));
            sum += out.amountMm() + out.uncertaintyMm();
        }
        return sum;
    }

    /** Indriya's quantities in, doubles out. */
    @Benchmark
    public double foreignQuantities() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            ForeignWalls in = foreign[i];
            SlotOffset out = SlotOffset.fromWalls(in.fence, in.far).repeatability(in.u);
            sum += out.amountMm() + out.uncertaintyMm();
        }
        return sum;
    }

    /** The difference and its half by Indriya's own operations; the uncertainty, which needs a root, in doubles. */
    @Benchmark
    public double indriyaOperations() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            ForeignWalls in = foreign[i];
            Quantity<Length> offset = in.fence.subtract(in.far).divide(2);
            Quantity<Area> square = in.u.multiply(in.u).asType(Area.class);
            sum += offset.getValue().doubleValue()
                    + Math.sqrt(square.add(square).getValue().doubleValue()) / 2;
        }
        return sum;
    }

    /** The same by the operations of Seshat, the JSR 385 implementation on doubles. */
    @Benchmark
    public double seshatOperations() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            SeshatWalls in = seshat[i];
            Quantity<Length> offset = in.fence.subtract(in.far).divide(2);
            Quantity<Area> square = in.u.multiply(in.u).asType(Area.class);
            sum += offset.getValue().doubleValue()
                    + Math.sqrt(square.add(square).getValue().doubleValue()) / 2;
        }
        return sum;
    }

    /** The same by the operations of DJUNITS, whose scalars hold doubles in SI units. */
    @Benchmark
    public double djunitsOperations() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            DjunitsWalls in = djunits[i];
            org.djunits.value.vdouble.scalar.Length offset =
                    in.fence.minus(in.far).divide(2.0);
            org.djunits.value.vdouble.scalar.Area square = in.u.times(in.u);
            sum += offset.getInUnit(LengthUnit.MILLIMETER)
                    + Math.sqrt(square.plus(square).getInUnit(AreaUnit.SQUARE_MILLIMETER)) / 2;
        }
        return sum;
    }

    /** The baseline of keeping: a record for each. */
    @Benchmark
    public Object[] plainKept() {
        for (int i = 0; i < COUNT; i++) {
            kept[i] = PlainOffset.of(plain[i]);
        }
        return kept;
    }

    /** Quantities in, the answers kept. */
    @Benchmark
    public Object[] quantitiesKept() {
        for (int i = 0; i < COUNT; i++) {
            Walls in = walls[i];
            kept[i] = SlotOffset.fromWalls(in.fence, in.far).repeatability(in.u);
        }
        return kept;
    }

    /** A trial cut that is there, its walls alone, the offset out. */
    @Benchmark
    public double trialCut() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            TrialCut trial = trials[i];
            SlotOffset out = Centring.of(trial).offset();
            sum += out.amountMm() + out.uncertaintyMm();
        }
        return sum;
    }

    /** The sentence a maker writes, from quantities to the move, all four widths read and checked against each other. */
    @Benchmark
    public double trialCutCheckedMove() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            TrialCut trial = fullTrials[i];
            sum += Centring.of(trial).move().amountMm();
        }
        return sum;
    }
}
