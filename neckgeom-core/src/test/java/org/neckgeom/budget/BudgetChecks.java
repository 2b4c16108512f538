package org.neckgeom.budget;

import static org.neckgeom.units.ShopUnits.percent;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import javax.measure.quantity.Dimensionless;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TrapezoidalDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;
import org.apache.commons.statistics.distribution.UniformContinuousDistribution;
import org.hipparchus.analysis.differentiation.Gradient;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.validation.Check;
import org.neckgeom.validation.Checks;
import org.neckgeom.validation.Rows;
import org.neckgeom.validation.Source;
import org.neckgeom.validation.Status;

/** Errors that add up, against published examples and against many digits. */
public final class BudgetChecks {

    private BudgetChecks() {}

    @SuppressWarnings("exports") // a package of the tests
    public static void into(Checks checks) {
        rootSumSquare(checks.topic("Errors that add up: root sum of squares"));
        exact(checks.topic("Errors that add up: exact distribution"));
        allowances(checks.topic("Errors that add up: allowances"));
        trials(checks.topic("Errors that add up: trials and propagation"));
    }

    private static Amount<Dimensionless> one(double value) {
        return Amount.of(value, ShopUnit.ONE);
    }

    private static ErrorDistribution<Dimensionless> normal(double sd) {
        return ErrorDistribution.normal(one(sd));
    }

    private static ErrorDistribution<Dimensionless> rectangular(double a) {
        return ErrorDistribution.rectangular(one(a));
    }

    private static Budget<Dimensionless> budget(Map<String, ErrorDistribution<Dimensionless>> parts) {
        Budget<Dimensionless> budget = Budget.of("sum", ShopUnit.ONE);
        for (String name : parts.keySet().stream().sorted().toList()) {
            budget = budget.with(name, parts.get(name));
        }
        return budget;
    }

    private static void rootSumSquare(Checks checks) {
        Estimate<Dimensionless> block = budget(Map.of(
                        "standard", normal(25).degreesOfFreedom(18),
                        "difference", normal(9.6819419539677059562).degreesOfFreedom(25.447250777362717705),
                        "expansion", normal(2.8867873148698993362).degreesOfFreedom(50),
                        "temperature", normal(16.599027060501921183).degreesOfFreedom(2)))
                .rootSumSquare();
        checks.check("end gauge: combined uncertainty", Source.GUM, "H.1.4", Status.PUBLISHED, "nm")
                .figure(32, block.libraryUncertainty(), 0.5)
                .of("Budget.rootSumSquare");
        checks.check("the same, unrounded inputs", Source.MPMATH, "gum-examples.csv", Status.EXACT, "nm")
                .relative(31.663879111008632284, block.libraryUncertainty(), 1e-13)
                .of("Budget.rootSumSquare");
        checks.check("its effective degrees of freedom, cut to 16", Source.GUM, "H.1.6", Status.PUBLISHED, "")
                .figure(16, Math.floor(block.degreesOfFreedom()), 0)
                .of("Budget.rootSumSquare");
        checks.check("the same, not cut", Source.MPMATH, "gum-examples.csv", Status.EXACT, "")
                .relative(16.751855737627245634, block.degreesOfFreedom(), 1e-12)
                .of("Budget.rootSumSquare");
        Estimate<Dimensionless> cut = Estimate.ofLibrary(0, block.libraryUncertainty(), 16, ShopUnit.ONE);
        checks.check("its expanded uncertainty at 99 %", Source.GUM, "H.1.6", Status.PUBLISHED, "nm")
                .figure(93, cut.expanded(percent(99)).libraryValue(), 0.6)
                .of("Estimate.expanded");
        Estimate<Dimensionless> difference = budget(Map.of(
                        "comparisons", normal(5.8).degreesOfFreedom(24),
                        "random", normal(3.9).degreesOfFreedom(5),
                        "systematic", normal(6.7).degreesOfFreedom(8)))
                .rootSumSquare();
        checks.check("difference of two gauges: combined uncertainty", Source.GUM, "H.1.3.2", Status.PUBLISHED, "nm")
                .figure(9.7, difference.libraryUncertainty(), 0.05)
                .of("Budget.rootSumSquare");
        checks.check("its degrees of freedom", Source.GUM, "H.1.6", Status.PUBLISHED, "")
                .figure(25.6, difference.degreesOfFreedom(), 0.2)
                .of("Budget.rootSumSquare");
        checks.check("0.57 with 9 and 0.25 with infinite degrees of freedom", Source.WELCH, "", Status.PUBLISHED, "")
                .figure(
                        12.8,
                        budget(Map.of("a", normal(0.57).degreesOfFreedom(9), "b", normal(0.25)))
                                .rootSumSquare()
                                .degreesOfFreedom(),
                        0.05)
                .of("Budget.rootSumSquare");
        checks.check(
                        "weight of 10 kg, rounded inputs of a re-worked page",
                        Source.EA_4_02,
                        "S2",
                        Status.PUBLISHED,
                        "mg")
                .figure(29.1, weight(14.2), 0.15)
                .of("Budget.rootSumSquare");
        checks.check("the same, inputs of the document", Source.EA_4_02, "S2", Status.MEMORY, "mg")
                .figure(29.3, weight(25 / Math.sqrt(3)), 0.05)
                .of("Budget.rootSumSquare");
        correlated(checks);
        Propagation<Dimensionless> expansion = Propagation.to("coefficient", ShopUnit.ONE)
                .input("L0", one(1.4999), normal(0.0001))
                .input("L1", one(1.5021), normal(0.0002))
                .input("T0", one(288.15), normal(0.02))
                .input("T1", one(373.10), normal(0.05))
                .through(x -> (x[1] - x[0]) / (x[0] * (x[3] - x[2])));
        checks.check("coefficient of expansion from two lengths", Source.NIST_TN_1900, "E13", Status.PUBLISHED, "1/K")
                .figure(1.7266e-5, expansion.value().libraryValue(), 5e-10)
                .of("Propagation.value");
        checks.check("its uncertainty, first order", Source.NIST_TN_1900, "E13", Status.PUBLISHED, "1/K")
                .figure(1.76e-6, expansion.firstOrder().libraryUncertainty(), 5e-9)
                .of("Propagation.firstOrder");
    }

    /** Voltage, current and phase measured together five times. */
    private static void correlated(Checks checks) {
        double v = 4.9990;
        double i = 0.019661;
        double phi = 1.04446;
        double cos = StrictMath.cos(phi);
        double sin = StrictMath.sin(phi);
        Check check = checks.check(
                "resistance and reactance from correlated readings",
                Source.GUM,
                "H.2, Table H.4",
                Status.PUBLISHED,
                "ohm");
        check.of("Budget.rootSumSquare");
        double[][] rows = {
            {cos / i, -v * cos / (i * i), -v * sin / i, 0.071}, {sin / i, -v * sin / (i * i), v * cos / i, 0.295}
        };
        for (double[] row : rows) {
            Budget<Dimensionless> budget = Budget.of("impedance", ShopUnit.ONE)
                    .with("V", row[0], normal(0.0032))
                    .with("I", row[1], normal(0.0000095))
                    .with("phi", row[2], normal(0.00075))
                    .correlated(
                            new Correlation("V", "I", -0.36),
                            new Correlation("V", "phi", 0.86),
                            new Correlation("I", "phi", -0.65));
            check.figure(row[3], budget.rootSumSquare().libraryUncertainty(), 0.004);
        }
    }

    private static double weight(double difference) {
        return budget(Map.of(
                        "standard", normal(22.5),
                        "drift", rectangular(15),
                        "difference", normal(difference),
                        "eccentricity", rectangular(10),
                        "buoyancy", rectangular(10)))
                .rootSumSquare()
                .libraryUncertainty();
    }

    private static void exact(Checks checks) {
        double root = Math.sqrt(3);
        Budget<Dimensionless> normals = budget(Map.of("a", normal(1), "b", normal(1), "c", normal(1), "d", normal(1)));
        Budget<Dimensionless> equal = budget(
                Map.of("a", rectangular(root), "b", rectangular(root), "c", rectangular(root), "d", rectangular(root)));
        Budget<Dimensionless> dominated = budget(Map.of(
                "a", rectangular(root), "b", rectangular(root), "c", rectangular(root), "d", rectangular(10 * root)));
        interval(checks, "four normal parts, 95 %", "9.2.2, Table 2", Status.PUBLISHED, 3.92, 0.005, normals);
        interval(checks, "four rectangular parts, 95 %", "9.2.3, Table 3", Status.PUBLISHED, 3.88, 0.005, equal);
        interval(checks, "one of them ten times as wide, 95 %", "9.2.4, Table 4", Status.MEMORY, 17.0, 0.05, dominated);
        checks.check("the three, exactly", Source.MPMATH, "closed forms", Status.EXACT, "")
                .figure(3.91992796908010847104918886104, half(normals), 4e-14)
                .figure(3.87940674134782075642855390575, half(equal), 4e-14)
                .figure(17.0158140998666749262389612768, half(dominated), 4e-13)
                .of("ResultDistribution.interval", "ResultDistribution.quantile");
        Check chance =
                checks.check("chances of 136 chains of mixed parts", Source.MPMATH, "chains.csv", Status.EXACT, "");
        Check quantile = checks.check(
                "quantiles of the same, off in probability", Source.MPMATH, "chains.csv", Status.EXACT, "");
        chance.of(
                "ResultDistribution.probabilityUpTo",
                "ResultDistribution.probabilityAbove",
                "ResultDistribution.chance");
        quantile.of("ResultDistribution.quantile", "ResultDistribution.densityPerLibraryUnit");
        for (ChainTable.Row row : ChainTable.rows()) {
            Parts parts = ChainTable.parts(row.parts());
            ExactLaw law = ExactLaws.of(parts);
            if (row.quantity().equals("cdf")) {
                double y = row.argument() - parts.mean;
                chance.figure(row.value(), law.lower(y), ExactLaw.ACCURACY)
                        .figure(1 - row.value(), law.upper(y), ExactLaw.ACCURACY);
            } else if (row.quantity().equals("quantile")) {
                double ours = law.quantile(row.argument());
                double off = (ours + parts.mean - row.value()) * law.density(ours);
                quantile.figure(row.argument(), row.argument() + off, ExactLaw.ACCURACY);
            }
        }
        Check hall = checks.check(
                "half-widths of 1 to 12 equal rectangles", Source.MPMATH, "irwin-hall-quantiles.csv", Status.EXACT, "");
        hall.of("ResultDistribution.interval");
        for (Map<String, String> row : Rows.of("/budget/irwin-hall-quantiles.csv")) {
            Parts.Builder builder = new Parts.Builder();
            IntStream.range(0, Integer.parseInt(row.get("n"))).forEach(i -> builder.rectangle(1));
            hall.figure(
                    Rows.number(row, "h"),
                    ExactLaws.of(builder.build()).quantile(0.5 + 0.5 * Rows.number(row, "p")),
                    4e-13);
        }
        Check sums = checks.check(
                "sums of equal and unequal rectangles", Source.MPMATH, "sum-of-rectangulars-cdf.csv", Status.EXACT, "");
        sums.of("ResultDistribution.probabilityUpTo");
        for (Map<String, String> row : Rows.of("/budget/sum-of-rectangulars-cdf.csv")) {
            Parts.Builder builder = new Parts.Builder();
            if (row.get("x").equals("h95")) {
                Arrays.stream(row.get("n_or_halfwidths")
                                .replace(" (half-widths)", "")
                                .split("\\+"))
                        .forEach(a -> builder.rectangle(Double.parseDouble(a)));
                sums.figure(
                        Rows.number(row, "value"), ExactLaws.of(builder.build()).quantile(0.975), 1e-12);
            } else {
                IntStream.range(0, Integer.parseInt(row.get("n_or_halfwidths"))).forEach(i -> builder.rectangle(1));
                sums.figure(
                        Rows.number(row, "value"), ExactLaws.of(builder.build()).lower(Rows.number(row, "x")), 1e-14);
            }
        }
        Check alone = checks.check(
                "one rectangle, triangle, trapezoid, normal alone", Source.STATISTICS, "", Status.LIBRARY, "");
        alone.of("ResultDistribution.probabilityUpTo");
        ContinuousDistribution[] peers = {
            UniformContinuousDistribution.of(-0.3, 0.3),
            TriangularDistribution.of(-0.3, 0, 0.3),
            TrapezoidalDistribution.of(-0.3, -0.1, 0.1, 0.3),
            NormalDistribution.of(0, 0.3)
        };
        List<String> texts = List.of("r:0.3", "t:0.3", "z:0.3/0.1", "n:0.3");
        for (int i = 0; i < peers.length; i++) {
            ExactLaw law = ExactLaws.of(ChainTable.parts(texts.get(i)));
            for (int k = -25; k <= 25; k++) {
                double y = 0.0137 * k;
                alone.figure(peers[i].cumulativeProbability(y), law.lower(y), 2e-15);
            }
        }
        Check capability = checks.check(
                "fraction of N(10, 0.4) and N(10.5, 0.4) outside 9 to 11", Source.CAPABILITY, "", Status.PUBLISHED, "");
        capability.of("Budget.yield", "Yield.probabilityOutside", "Yield.probability");
        double[][] outside = {{10, 0.01242}, {10.5, 0.10574}};
        for (double[] row : outside) {
            Budget<Dimensionless> process = budget(Map.of("process", normal(0.4).shifted(one(row[0]))));
            capability.figure(
                    row[1], process.yield(Limits.between(one(9), one(11))).probabilityOutside(), 5.1e-6);
        }
    }

    /** How wide a normal part may be: the limit over the normal law's factor. */
    private static void allowances(Checks checks) {
        Check allowed = checks.check(
                "how wide a normal part may be, 90 to 99.9 %",
                Source.STATISTICS, "NormalDistribution", Status.LIBRARY, "");
        Check common = checks.check(
                "common scale of three normal parts", Source.STATISTICS, "NormalDistribution", Status.LIBRARY, "");
        allowed.of("Budget.allowance", "Allowance.factor");
        common.of("Allocation.commonFactor");
        Budget<Dimensionless> single = budget(Map.of("a", normal(0.2)));
        Budget<Dimensionless> three = budget(Map.of("a", normal(0.2), "b", normal(0.3), "c", normal(0.6)));
        for (double p : new double[] {0.9, 0.95, 0.99, 0.999}) {
            double z = NormalDistribution.of(0, 1).inverseCumulativeProbability(0.5 + 0.5 * p);
            Limits<Dimensionless> limits = Limits.within(one(1.3));
            allowed.relative(
                    1.3 / z / 0.2,
                    single.allowance("a", limits, ShopUnit.ONE.of(p)).factor(),
                    1e-6);
            common.relative(
                    1.3 / z / 0.7,
                    Allocation.of(three, limits, ShopUnit.ONE.of(p)).commonFactor(),
                    1e-6);
        }
    }

    private static void interval(
            Checks checks,
            String what,
            String where,
            Status status,
            double printed,
            double most,
            Budget<Dimensionless> budget) {
        checks.check(what, Source.GUM_S1, where, status, "")
                .figure(printed, half(budget), most)
                .of("ResultDistribution.interval");
    }

    private static double half(Budget<Dimensionless> budget) {
        return budget.distribution().interval(percent(95)).libraryHigh();
    }

    private static void trials(Checks checks) {
        Propagation<Dimensionless> mass = PropagationTest.MASS;
        Simulated<Dimensionless> many = mass.simulate(3).trials(1_000_000);
        checks.check("mass calibration: first order", Source.GUM_S1, "9.3, Table 6", Status.MEMORY, "mg")
                .figure(0.0539, mass.firstOrder().libraryUncertainty(), 5e-5)
                .of("Propagation.firstOrder");
        checks.check("mass calibration: trials", Source.GUM_S1, "9.3, Table 6", Status.MEMORY, "mg")
                .figure(0.0754, many.standardDeviation().libraryValue(), 3e-4)
                .of("Simulation.trials", "Simulated.standardDeviation");
        Interval<Dimensionless> interval = many.interval(percent(95));
        checks.check("the same by integration: deviation and half-width", Source.MPMATH, "", Status.EXACT, "mg")
                .figure(0.07547973995542332063, many.standardDeviation().libraryValue(), 3e-4)
                .figure(0.149566740254, 0.5 * (interval.libraryHigh() - interval.libraryLow()), 1e-3)
                .of("Simulated.interval");
        Propagation<Dimensionless> log = Propagation.to("ln x", ShopUnit.ONE)
                .input("x", one(0.6), rectangular(0.5))
                .through(x -> StrictMath.log(x[0]));
        Simulated<Dimensionless> logs = log.simulate(2).trials(1_000_000);
        checks.check("logarithm of a rectangle: mean, deviation", Source.DEM_ES_011, "9.2", Status.PUBLISHED, "")
                .figure(-0.665, logs.mean().libraryValue(), 0.003)
                .figure(0.606, logs.standardDeviation().libraryValue(), 0.003)
                .of("Simulated.mean", "Simulated.standardDeviation");
        Interval<Dimensionless> shortest = logs.shortestInterval(percent(95));
        checks.check("its shortest 95 % interval", Source.DEM_ES_011, "9.2", Status.PUBLISHED, "")
                .figure(-1.895, shortest.libraryLow(), 0.02)
                .figure(0.095, shortest.libraryHigh(), 0.001)
                .of("Simulated.shortestInterval");
        Simulated<Dimensionless> block = PropagationTest.BLOCK.simulate(12).trials(2_000_000);
        checks.check(
                        "gauge block with Student's laws: deviation",
                        Source.GUM_S1,
                        "9.5, Table 11",
                        Status.PUBLISHED,
                        "nm")
                .figure(36, block.standardDeviation().libraryValue(), 0.5)
                .of("Simulation.trials");
        Interval<Dimensionless> ninetyNine = block.interval(percent(99));
        checks.check("its half-width at 99 %", Source.MPMATH, "characteristic function", Status.EXACT, "nm")
                .figure(93.7319, 0.5 * (ninetyNine.libraryHigh() - ninetyNine.libraryLow()), 0.5)
                .of("Simulated.interval");
        Check gradient = checks.check(
                "derivatives of 200 functions of three inputs", Source.HIPPARCHUS, "Gradient", Status.LIBRARY, "");
        gradient.of("Dual.derivative", "Propagation.derivatives");
        SplittableRandom random = new SplittableRandom(41);
        for (int i = 0; i < 200; i++) {
            double x = random.nextDouble(0.1, 0.9);
            double y = random.nextDouble(0.1, 0.9);
            double z = random.nextDouble(0.1, 0.9);
            Dual ours = function(Dual.input(x, 0), Dual.input(y, 1), Dual.input(z, 2));
            Gradient theirs =
                    function(Gradient.variable(3, 0, x), Gradient.variable(3, 1, y), Gradient.variable(3, 2, z));
            for (int n = 0; n < 3; n++) {
                gradient.figure(
                        theirs.getPartialDerivative(n),
                        ours.derivative(n),
                        1e-13 * (1 + Math.abs(theirs.getPartialDerivative(n))));
            }
        }
    }

    private static Dual function(Dual x, Dual y, Dual z) {
        return x.sin()
                .times(y.exp())
                .plus(z.atan2(x))
                .dividedBy(y.sqrt())
                .plus(x.asin().times(z.log()));
    }

    private static Gradient function(Gradient x, Gradient y, Gradient z) {
        return x.sin()
                .multiply(y.exp())
                .add(z.atan2(x))
                .divide(y.sqrt())
                .add(x.asin().multiply(z.log()));
    }
}
