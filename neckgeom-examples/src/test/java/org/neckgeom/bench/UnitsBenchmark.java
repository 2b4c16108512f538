package org.neckgeom.bench;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
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
 * What units cost at the border and inside, a thousand at a time: foreign inches to mm beside Indriya's own conversion,
 * amounts beside records of doubles, text to a length beside the JDK's parser.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(UnitsBenchmark.COUNT)
@Fork(jvmArgsAppend = {"-Xms256m", "-Xmx256m", "-XX:+AlwaysPreTouch"})
public class UnitsBenchmark {

    static final int COUNT = 1000;

    private static final Unit<Length> INCH = Units.METRE.multiply(254).divide(10_000);
    private static final Unit<Length> MM = MetricPrefix.MILLI(Units.METRE);

    private final double[] numbers = new double[COUNT];
    private final String[] decimals = new String[COUNT];
    private final String[] fractions = new String[COUNT];
    private final Amount<Length>[] amounts = newAmounts();
    private final Quantity<Length>[] inches = newQuantities();
    private final Quantity<Length>[] inchesMadeAnew = newQuantities();

    private record PlainMm(double mm) {
        private PlainMm {
            if (!Double.isFinite(mm)) {
                throw new IllegalArgumentException("not finite");
            }
        }
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type cannot be made otherwise
    private static Amount<Length>[] newAmounts() {
        return new Amount[COUNT];
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // the same
    private static Quantity<Length>[] newQuantities() {
        return new Quantity[COUNT];
    }

    /** Fills the inputs. */
    @Setup
    public void inputs() {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < COUNT; i++) {
            double value = random.nextInt(1, 2560) / 64.0;
            numbers[i] = value;
            decimals[i] = Double.toString(value);
            fractions[i] = random.nextInt(1, 40) + " " + (2 * random.nextInt(0, 32) + 1) + "/64 in";
            amounts[i] = ShopUnits.mm(value);
            inches[i] = Quantities.getQuantity(value, INCH);
            inchesMadeAnew[i] =
                    Quantities.getQuantity(value, Units.METRE.multiply(254).divide(10_000));
        }
    }

    /** The baseline of the border: a product by the factor, on an array. */
    @Benchmark
    public double plainInchToMm() {
        double sum = 0;
        for (double number : numbers) {
            sum += number * 25.4;
        }
        return sum;
    }

    /** A foreign quantity in one unit object, as a program keeps it in a constant. */
    @Benchmark
    public double foreignInchToMm() {
        double sum = 0;
        for (Quantity<Length> length : inches) {
            sum += LibraryUnits.mm(length, "length");
        }
        return sum;
    }

    /** A foreign quantity whose unit was made anew for each. */
    @Benchmark
    public double foreignInchMadeAnewToMm() {
        double sum = 0;
        for (Quantity<Length> length : inchesMadeAnew) {
            sum += LibraryUnits.mm(length, "length");
        }
        return sum;
    }

    /** Indriya's own way to the same doubles. */
    @Benchmark
    public double indriyaInchToMm() {
        double sum = 0;
        for (Quantity<Length> length : inches) {
            sum += length.to(MM).getValue().doubleValue();
        }
        return sum;
    }

    /** An amount at the border. */
    @Benchmark
    public double amountToMm() {
        double sum = 0;
        for (Amount<Length> amount : amounts) {
            sum += LibraryUnits.mm(amount, "length");
        }
        return sum;
    }

    /** The baseline of arithmetic: checked records of doubles, made and halved. */
    @Benchmark
    public double plainRecords() {
        double sum = 0;
        for (int i = 1; i < COUNT; i++) {
            PlainMm a = new PlainMm(numbers[i]);
            PlainMm b = new PlainMm(numbers[i - 1]);
            sum += new PlainMm(new PlainMm(a.mm() - b.mm()).mm() * 0.5).mm();
        }
        return sum;
    }

    /** The same with amounts. */
    @Benchmark
    public double amountsMadeAndHalved() {
        double sum = 0;
        for (int i = 1; i < COUNT; i++) {
            Amount<Length> a = ShopUnits.mm(numbers[i]);
            Amount<Length> b = ShopUnits.mm(numbers[i - 1]);
            sum += a.minus(b).times(0.5).libraryValue();
        }
        return sum;
    }

    /** Making alone, beside {@link #amountsMade}. */
    @Benchmark
    public double plainRecordsMade() {
        double sum = 0;
        for (double number : numbers) {
            sum += new PlainMm(number).mm();
        }
        return sum;
    }

    /** Making alone. */
    @Benchmark
    public double amountsMade() {
        double sum = 0;
        for (double number : numbers) {
            sum += ShopUnits.mm(number).libraryValue();
        }
        return sum;
    }

    /** Texts such as {@code 1 3/64 in}. */
    @Benchmark
    public double parseFraction() {
        double sum = 0;
        for (String text : fractions) {
            sum += ShopUnits.length(text).libraryValue();
        }
        return sum;
    }

    /** The JDK's parser on plain decimals, for scale. */
    @Benchmark
    public double jdkParseDouble() {
        double sum = 0;
        for (String text : decimals) {
            sum += Double.parseDouble(text);
        }
        return sum;
    }
}
