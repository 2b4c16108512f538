package org.neckgeom.state;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.neckgeom.measure.ErrorDistribution.Law;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.state.ReferenceStates.Reference;
import org.neckgeom.units.ShopUnits;

/**
 * Necks made by a generator: every cause drawn from its law, its scale from what is known of it, some of twelve readings taken
 * of it. How often do intervals and chances hold?
 *
 * @param necks made
 * @param covered share of the 95 % intervals that held the deviation
 * @param claimed mean chance that was claimed for single limits
 * @param kept share of single limits that were kept
 * @param jointClaimed mean chance that was claimed for all limits together
 * @param jointKept share of necks that kept all
 */
record SimulatedNecks(int necks, double covered, double claimed, double kept, double jointClaimed, double jointKept) {

    /** Limits so many standard uncertainties out, where a chance shows most. */
    private static final double OUT = 1.5;

    private static final double READ = 0.4;

    static SimulatedNecks of(Reference neck, boolean guessed, int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        NeckErrors errors = guessed
                ? NeckErrors.of(ReferenceStates.neck("guessed", 560, 14, 78, 6))
                        .calliperZero(org.neckgeom.measure.ErrorDistribution.normal(ShopUnits.mm(0.01)))
                : neck.errors();
        Reference made = new Reference(neck.name(), errors, neck.joint());
        NeckState state = errors.state();
        List<Requirement> wanted = new ArrayList<>();
        made.quantities()
                .forEach((name, one) -> wanted.add(Requirement.of(
                        name,
                        one.of(),
                        Limits.within(ShopUnits.mm(
                                OUT * state.known(name, one.of()).estimate().libraryUncertainty())))));
        int covered = 0;
        int kept = 0;
        int allKept = 0;
        double claimed = 0;
        double jointClaimed = 0;
        for (int i = 0; i < count; i++) {
            double[] actual = draw(state.causes(), guessed, random);
            NeckState read = state;
            for (NeckReading reading : made.readings()) {
                if (random.nextDouble() < READ) {
                    double u = reading.uncertainty();
                    double value = value(reading.of(), state, actual) + u * random.nextGaussian();
                    read = read.read(new NeckReading(
                            reading.name(), reading.of(), Estimate.of(ShopUnits.mm(value), ShopUnits.mm(u))));
                }
            }
            boolean all = true;
            for (Requirement one : wanted) {
                Known known = read.known(one.name(), one.of());
                double value = value(one.of(), state, actual);
                covered += known.interval(0.95).contains(ShopUnits.mm(value)) ? 1 : 0;
                claimed += 1.0
                        - known.outside(
                                one.limits().libraryLower(), one.limits().libraryUpper());
                boolean inside = one.limits().allowLibrary(value);
                kept += inside ? 1 : 0;
                all &= inside;
            }
            allKept += all ? 1 : 0;
            jointClaimed += read.chanceOfAll(wanted).probability();
        }
        double singles = (double) count * wanted.size();
        return new SimulatedNecks(
                count,
                covered / singles,
                claimed / singles,
                kept / singles,
                jointClaimed / count,
                (double) allKept / count);
    }

    private static double[] draw(List<Cause> causes, boolean guessed, SplittableRandom random) {
        double common = guessed ? Math.exp(Cause.GUESS * random.nextGaussian()) : 1.0;
        double[] actual = new double[causes.size()];
        for (int i = 0; i < actual.length; i++) {
            Cause cause = causes.get(i);
            double scale = cause.spread().libraryScale()
                    * (cause.isGuess() ? common * Math.exp(Cause.GUESS * random.nextGaussian()) : 1.0);
            Law law = cause.spread().law();
            actual[i] = scale
                    * switch (law) {
                        case NORMAL -> random.nextGaussian();
                        case RECTANGULAR -> 2 * random.nextDouble() - 1;
                        case TRIANGULAR -> random.nextDouble() - random.nextDouble();
                        default -> throw new IllegalStateException(law.toString());
                    };
        }
        return actual;
    }

    private static double value(Deviation of, NeckState state, double[] actual) {
        double sum = of.constantMm();
        for (int i = 0; i < actual.length; i++) {
            sum += of.coefficient(state.causes().get(i).name()) * actual[i];
        }
        return sum;
    }

    public static void main(String[] args) {
        for (boolean guessed : new boolean[] {false, true}) {
            long t = System.nanoTime();
            System.out.println(guessed + " " + of(ReferenceStates.all().get(0), guessed, Integer.parseInt(args[0]), 21L)
                    + " " + (System.nanoTime() - t) / 1e9);
        }
    }
}
