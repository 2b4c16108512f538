package org.neckgeom.validation;

import static org.neckgeom.units.ShopUnits.mm;

import java.lang.reflect.Field;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.DoubleSupplier;
import javax.measure.Quantity;
import javax.measure.UnitConverter;
import javax.measure.quantity.Length;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.neckgeom.measure.Decision;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.Scale;
import org.neckgeom.numeric.NormalLaw;
import org.neckgeom.numeric.StudentLaw;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/** What a maker has: units, readings and verdicts, woods, scales. */
final class BenchChecks {

    private BenchChecks() {}

    static void into(Checks checks) throws Exception {
        units(checks.topic("Units"));
        laws(checks.topic("Laws of chance"));
        readings(checks.topic("Readings, limits, verdicts"));
        woods(checks.topic("Woods"));
        scales(checks.topic("Frets"));
    }

    private static void units(Checks checks) throws Exception {
        Check published = checks.check(
                "inch, foot, thou, kilogram-force", Source.NIST_SP_811, "unit-conversions.csv", Status.PUBLISHED, "mm");
        published.of("ShopUnit.toLibrary", "ShopUnits.inch", "ShopUnits.thou", "ShopUnits.feet");
        Check exact = checks.check(
                "pounds, psi, degrees and their inverses", Source.MPMATH, "unit-conversions.csv", Status.EXACT, "");
        exact.of("ShopUnit.toLibrary", "ShopUnit.fromLibrary");
        for (Map<String, String> row : Rows.of("/units/unit-conversions.csv")) {
            Double ours = factor(row.get("from") + " > " + row.get("to"));
            if (ours != null) {
                double factor = Double.parseDouble(row.get("factor"));
                (row.get("status").equals("VERIFIED") ? published : exact).figure(factor, ours, Math.ulp(factor));
            }
        }
        Check fahrenheit =
                checks.check("degrees Fahrenheit", Source.NIST_SP_811, "App. B: (F - 32)/1.8", Status.PUBLISHED, "C");
        fahrenheit.of("ShopUnits.fahrenheit");
        for (double[] pair : new double[][] {{32, 0}, {212, 100}, {-40, -40}, {98.6, 37}, {68, 20}, {5, -15}}) {
            fahrenheit.figure(pair[1], ShopUnits.fahrenheit(pair[0]).libraryValue(), 1e-13);
        }
        Check ruled = checks.check(
                "ruled inches to mm, k/2 to k/128 up to 40 in", Source.DECIMAL, "25.4", Status.EXACT, "mm");
        ruled.of("ShopUnits.inch", "Amount.libraryValue");
        for (int parts = 2; parts <= 128; parts *= 2) {
            for (int k = 0; k <= 40 * parts; k++) {
                double inches = (double) k / parts;
                double exactly =
                        new BigDecimal(inches).multiply(new BigDecimal("25.4")).doubleValue();
                ruled.figure(exactly, ShopUnits.inch(inches).libraryValue(), 0);
            }
        }
        Check indriya = checks.check("every shop unit to its house unit", Source.INDRIYA, "", Status.LIBRARY, "");
        indriya.of("ShopUnit.toLibrary");
        for (ShopUnit<?> unit : shopUnits()) {
            againstIndriya(indriya, unit);
        }
        Check pitches = checks.check("open strings", Source.OPENSTAX, "section 16.3", Status.PUBLISHED, "Hz");
        Check concert = checks.check("A4", Source.ISO_16, "", Status.MEMORY, "Hz");
        Check tempered =
                checks.check("equal temperament, E1 to E5", Source.MPMATH, "equal-temperament.csv", Status.EXACT, "Hz");
        for (Check check : List.of(pitches, concert, tempered)) {
            check.of("ShopUnits.pitch");
        }
        for (Map<String, String> row : Rows.of("/units/equal-temperament.csv")) {
            double ours = ShopUnits.pitch(row.get("note")).libraryValue();
            tempered.relative(Rows.number(row, "hertz"), ours, 4e-16);
            if (!row.get("printed").isEmpty()) {
                Check printed = row.get("status").equals("VERIFIED") ? pitches : concert;
                printed.figure(Rows.number(row, "printed"), ours, 0.005);
            }
        }
    }

    private static <Q extends Quantity<Q>> void againstIndriya(Check check, ShopUnit<Q> unit) throws Exception {
        ShopUnit<?> libraryValue = shopUnits().stream()
                .filter(candidate -> candidate.kind() == (Class<?>) unit.kind() && candidate.toLibrary(7) == 7)
                .findFirst()
                .orElseThrow();
        UnitConverter converter = unit.jsr385().getConverterToAny(libraryValue.jsr385());
        for (double value : new double[] {1, 7, 25.4, 98.6, 451}) {
            double expected = converter.convert((Number) new BigDecimal(value)).doubleValue();
            double slack = unit.hasOffset() ? 2 * Math.ulp(Math.max(300, Math.abs(expected))) : Math.ulp(expected);
            check.figure(expected, unit.toLibrary(value), slack);
        }
    }

    private static List<ShopUnit<?>> shopUnits() throws IllegalAccessException {
        List<ShopUnit<?>> units = new ArrayList<>();
        for (Field field : ShopUnit.class.getFields()) {
            if (field.get(null) instanceof ShopUnit<?> unit) {
                units.add(unit);
            }
        }
        return units;
    }

    /** Factor between two units of the table, or null where the shop has no such unit. */
    private static Double factor(String pair) {
        return switch (pair) {
            case "inch > millimetre" -> ShopUnit.INCH.toLibrary(1);
            case "foot > metre" -> ShopUnit.METRE.fromLibrary(ShopUnit.FOOT.toLibrary(1));
            case "mil (thou) > millimetre" -> ShopUnit.THOU.toLibrary(1);
            case "1/64 inch > millimetre" -> ShopUnits.inch("1/64").libraryValue();
            case "pound-force > newton" -> ShopUnit.POUND_FORCE.toLibrary(1);
            case "newton > pound-force" -> ShopUnit.POUND_FORCE.fromLibrary(1);
            case "kilogram-force > newton" -> ShopUnit.KILOGRAM_FORCE.toLibrary(1);
            case "pound-force per square inch > megapascal" -> ShopUnit.PSI.toLibrary(1);
            case "megapascal > pound-force per square inch" -> ShopUnit.PSI.fromLibrary(1);
            case "10^6 psi > megapascal" -> ShopUnit.PSI.toLibrary(1e6);
            case "pound per inch (mass per length) > kilogram per metre" -> ShopUnit.POUND_PER_INCH.toLibrary(1) / 1000;
            case "degree > radian" -> ShopUnit.DEGREE.toLibrary(1);
            case "radian > degree" -> ShopUnit.DEGREE.fromLibrary(1);
            case "inch per minute > millimetre per minute" ->
                ShopUnit.MM_PER_MINUTE.fromLibrary(ShopUnit.INCH_PER_MINUTE.toLibrary(1));
            default -> null;
        };
    }

    private static void laws(Checks checks) {
        Check normal = checks.check("normal law: density, tail, quantile", Source.MPMATH, "laws.csv", Status.EXACT, "");
        normal.of("NormalLaw.density", "NormalLaw.upperTail", "NormalLaw.quantile");
        Check student =
                checks.check("Student's t: density, tail, quantile", Source.MPMATH, "laws.csv", Status.EXACT, "");
        student.of("StudentLaw.density", "StudentLaw.upperTail", "StudentLaw.quantile");
        for (Map<String, String> row : Rows.of("/numeric/laws.csv")) {
            double x = Rows.number(row, "argument");
            double expected = Rows.number(row, "value");
            String nu = row.get("degrees_of_freedom");
            double degrees = nu.equals("inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(nu);
            boolean isNormal = row.get("quantity").startsWith("normal");
            double ours = switch (row.get("quantity")) {
                case "normal-density" -> NormalLaw.density(x);
                case "normal-upper" -> NormalLaw.upperTail(x);
                case "normal-quantile" -> NormalLaw.quantile(x);
                case "student-density" -> StudentLaw.density(x, degrees);
                case "student-upper" -> StudentLaw.upperTail(x, degrees);
                case "student-quantile" -> StudentLaw.quantile(x, degrees);
                default -> throw new IllegalStateException(row.toString());
            };
            // What a double cannot hold to full precision, it holds to its least place.
            double least = Double.MIN_NORMAL * 1e-10;
            double ofStudent = StudentLaw.RELATIVE_ACCURACY * Math.max(1, 1 / degrees);
            (isNormal ? normal : student)
                    .figure(
                            expected,
                            ours,
                            (isNormal ? NormalLaw.RELATIVE_ACCURACY : ofStudent) * Math.abs(expected) + least);
        }
        Check factors = checks.check("coverage factors t_p", Source.MPMATH, "student-t.csv", Status.EXACT, "");
        Check table = checks.check("coverage factors t_p, as printed", Source.GUM, "Table G.2", Status.PUBLISHED, "");
        factors.of("StudentLaw.coverageFactor", "Estimate.expanded", "Estimate.interval");
        table.of("StudentLaw.coverageFactor", "Estimate.expanded");
        for (Map<String, String> row : Rows.of("/numeric/student-t.csv")) {
            String nu = row.get("nu");
            double degrees = nu.startsWith("inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(nu);
            double ours = Estimate.of(mm(7), mm(1), degrees)
                    .expanded(ShopUnit.ONE.of(Rows.number(row, "p_fraction")))
                    .libraryValue();
            factors.relative(Rows.number(row, "t_exact_30_digits"), ours, 3e-13);
            if (row.get("status").equals("VERIFIED")) {
                table.figure(Rows.number(row, "t_rounded"), ours, 0.00501);
            }
        }
        Check tail = checks.check("normal law", Source.STATISTICS, "NormalDistribution", Status.LIBRARY, "");
        Check few = checks.check("Student's t", Source.STATISTICS, "TDistribution", Status.LIBRARY, "");
        tail.of("NormalLaw.cdf", "NormalLaw.between");
        few.of("StudentLaw.cdf");
        for (int i = -60; i <= 60; i++) {
            double x = i / 10.0;
            tail.figure(NormalDistribution.of(0, 1).cumulativeProbability(x), NormalLaw.cdf(x), 1e-15);
            for (double degrees : new double[] {1, 2.5, 4, 9, 30, 200}) {
                few.figure(TDistribution.of(degrees).cumulativeProbability(x), StudentLaw.cdf(x, degrees), 1e-13);
            }
        }
    }

    private static void readings(Checks checks) {
        Check means = checks.check("means of eight data sets", Source.NIST_STRD, "certified", Status.PUBLISHED, "");
        Check spreads = checks.check(
                "standard deviations of eight data sets", Source.NIST_STRD, "certified", Status.PUBLISHED, "");
        means.of("Estimate.value");
        spreads.of("Estimate.standardUncertainty");
        for (Map<String, String> row : Rows.of("/measure/nist-strd-univariate.csv")) {
            List<Amount<Length>> data = data(row.get("dataset"));
            Estimate<Length> estimate = Estimate.repeated(data);
            double certified = Rows.number(row, "certified_value");
            if (row.get("statistic").equals("mean")) {
                means.relative(certified, estimate.libraryValue(), 1e-14);
            } else {
                // NumAcc3 and NumAcc4 are no doubles: rounding them moves the deviation by half a last place.
                double largest = data.stream()
                        .mapToDouble(Amount::libraryValue)
                        .map(Math::abs)
                        .max()
                        .orElseThrow();
                double ours = estimate.libraryUncertainty() * Math.sqrt(data.size());
                spreads.figure(certified, ours, 1e-14 * certified + Math.ulp(largest) / 2);
            }
        }
        Check shapes = checks.check(
                "standard uncertainty of common shapes", Source.GUM, "4.3.7 to 4.3.9", Status.EXACT, "of a");
        shapes.of("ErrorDistribution.standardUncertainty", "ErrorDistribution.libraryVariance");
        List<ErrorDistribution<Length>> spread = List.of(
                ErrorDistribution.rectangular(mm(1)),
                ErrorDistribution.triangular(mm(1)),
                ErrorDistribution.arcsine(mm(1)),
                ErrorDistribution.trapezoidal(mm(1), mm(0.5)));
        int at = 0;
        for (Map<String, String> row : Rows.of("/measure/gum-examples.csv")) {
            if (row.get("section").equals("4.3")) {
                shapes.figure(
                        Rows.number(row, "value"),
                        spread.get(at++).standardUncertainty().libraryValue(),
                        2e-16);
            }
        }
        Check printed = checks.check(
                "conformance probability: diode, motor oil", Source.JCGM_106, "7.3.2, 7.4", Status.MEMORY, "");
        Check exact =
                checks.check("conformance probability", Source.MPMATH, "measure/conformity.csv", Status.EXACT, "");
        printed.of("Verdict.probability");
        exact.of("Verdict.probability");
        for (Map<String, String> row : Rows.of("/channel/conformity.csv")) {
            Verdict<Length> verdict = Verdict.of(
                    Estimate.of(mm(Rows.number(row, "y")), mm(Rows.number(row, "u"))),
                    Limits.between(mm(Rows.number(row, "lower")), mm(Rows.number(row, "upper"))));
            exact.figure(Rows.number(row, "probability"), verdict.probability(), 2e-13);
            if (row.get("what").equals("example")) {
                printed.figure(Rows.number(row, "y") < 0 ? 0.92 : 0.66, verdict.probability(), 0.005);
            }
        }
        Check zone = checks.check(
                "acceptance zone of a 6 mm hole, IT9 = 30 um, U = 8 um",
                Source.ISO_286,
                "Table 1; ISO 14253-1 (memory): T + U, T - U",
                Status.PUBLISHED,
                "mm");
        zone.of("Verdict.call", "Verdict.guardBand");
        zone.figure(6.008, edge(true), 1e-9).figure(6.022, edge(false), 1e-9);
    }

    /** Where the call on a hole of 6 mm, 0 to +0.030, changes at u = 0.004 mm, by halving. */
    private static double edge(boolean lower) {
        double inside = 6.015;
        double outside = lower ? 6 : 6.03;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (inside + outside);
            Limits<Length> hole = Limits.between(mm(6), mm(6.03));
            if (Verdict.of(Estimate.of(mm(middle), mm(0.004)), hole).call() == Decision.WITHIN) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return inside;
    }

    private static List<Amount<Length>> data(String set) {
        if (!set.startsWith("NumAcc") || set.equals("NumAcc1")) {
            return Rows.of("/measure/nist-strd-data.csv").stream()
                    .filter(row -> row.get("dataset").equals(set))
                    .map(row -> mm(Rows.number(row, "value")))
                    .toList();
        }
        int c = Map.of("NumAcc2", 1, "NumAcc3", 1_000_000, "NumAcc4", 10_000_000)
                .get(set);
        List<Amount<Length>> all = new ArrayList<>(List.of(mm(new BigDecimal(c + ".2").doubleValue())));
        for (int i = 0; i < 1000; i++) {
            all.add(mm(new BigDecimal(c + (i % 2 == 0 ? ".1" : ".3")).doubleValue()));
        }
        return all;
    }

    private static void woods(Checks checks) {
        figures(checks, "modulus of elasticity", "Tables 5-3, 5-5", "MPa", "Wood.modulus", "modulus of elasticity");
        figures(checks, "bending strength", "Tables 5-3, 5-5", "MPa", "Wood.bendingStrength", "modulus of rupture");
        for (String status : List.of("VERIFIED", "MEMORY")) {
            Check shrinkage = checks.check(
                    "shrinkage, radial and tangential",
                    Source.WOOD_HANDBOOK,
                    "Tables 4-3, 4-4",
                    Status.ofTable(status),
                    "%");
            shrinkage.of("Wood.radialShrinkage", "Wood.tangentialShrinkage");
            for (Map<String, String> row : Rows.of("/wood/wood-shrinkage.csv")) {
                if (row.get("status").equals(status)) {
                    Wood wood = wood(row);
                    shrinkage
                            .figure(Rows.number(row, "radial_percent"), 100 * wood.radialShrinkage(), 1e-12)
                            .figure(Rows.number(row, "tangential_percent"), 100 * wood.tangentialShrinkage(), 1e-12);
                }
            }
        }
        Check change = checks.check(
                "change per percent of moisture", Source.WOOD_HANDBOOK, "Table 13-5", Status.PUBLISHED, "");
        change.of("Wood.radialChangePerPercent", "Wood.tangentialChangePerPercent");
        List<String> listed = Wood.listed().stream().map(Wood::name).toList();
        for (Map<String, String> row : Rows.of("/wood/wood-dimensional-change.csv")) {
            if (row.get("status").equals("VERIFIED")
                    && row.get("follows").equals("yes")
                    && listed.stream().anyMatch(row.get("species")::equalsIgnoreCase)) {
                Wood wood = wood(row);
                change.figure(Rows.number(row, "C_R_per_percent"), wood.radialChangePerPercent(), 6e-6)
                        .figure(Rows.number(row, "C_T_per_percent"), wood.tangentialChangePerPercent(), 6e-6);
            }
        }
        Check density = checks.check(
                "density at 12 % from specific gravity",
                Source.WOOD_HANDBOOK, "chapter 4: 1120 G", Status.PUBLISHED, "kg/m3");
        density.of("Wood.density");
        for (Map<String, String> row : Rows.of("/wood/wood-mechanical.csv")) {
            if (row.get("property").equals("specific gravity")
                    && row.get("condition").equals("12 % MC")
                    && row.get("status").equals("VERIFIED")) {
                density.figure(1120 * Rows.number(row, "value"), wood(row).densityKgPerM3(), 0.5);
            }
        }
    }

    /** The metric tables round to 100 MPa of modulus and 1 MPa of strength; an inch-pound figure agrees to half of that. */
    private static void figures(Checks checks, String what, String where, String unit, String answer, String property) {
        for (String status : List.of("VERIFIED", "MEMORY")) {
            Check check = checks.check(what, Source.WOOD_HANDBOOK, where, Status.ofTable(status), unit);
            check.of(answer);
            for (Map<String, String> row : Rows.of("/wood/wood-mechanical.csv")) {
                if (row.get("property").equals(property) && row.get("status").equals(status)) {
                    double value = Rows.number(row, "value");
                    boolean modulus = property.endsWith("elasticity");
                    double megapascal = switch (row.get("unit")) {
                        case "MPa" -> value;
                        case "kPa" -> value / 1000;
                        case "10^6 lbf/in2" -> value * 6894.757293168361;
                        default -> value * 0.006894757293168361;
                    };
                    boolean metric = row.get("unit").endsWith("Pa");
                    double ours = modulus
                            ? wood(row).modulusMPa()
                            : wood(row).bendingStrength().libraryValue();
                    check.figure(megapascal, ours, metric ? 1e-9 : modulus ? 50.5 : 0.51);
                }
            }
        }
    }

    private static Wood wood(Map<String, String> row) {
        return Wood.byName(row.get("species").replace(" (khaya)", ""));
    }

    private static void scales(Checks checks) {
        Check frets = checks.check(
                "frets 0 to 24 of a 650 mm scale", Source.MPMATH, "fret-positions-650.csv", Status.EXACT, "mm");
        frets.of("Scale.fret", "FretTable.fret", "Fret.fromNut");
        for (Map<String, String> row : Rows.of("/design/fret-positions-650.csv")) {
            frets.figure(
                    Rows.number(row, "distance_from_nut_mm"),
                    Scale.of(mm(650)).fretMm(Rows.number(row, "n")),
                    4e-16 * 650);
        }
        Check octave = checks.check("octave of three common scales", Source.MPMATH, "L/2", Status.EXACT, "mm");
        octave.of("Scale.fret");
        for (double scale : new double[] {628.65, 647.7, 863.6}) {
            octave.figure(scale / 2, Scale.of(mm(scale)).fretMm(12), 0);
        }
        SplittableRandom random = new SplittableRandom(12);
        DoubleSupplier places = () -> 24 * random.nextDouble();
        Numerics.worst(checks, "fret places, whole and between", "n from 0 to 24, scale 250 to 950 mm", 1e-9, 10_000)
                .points(() -> {
                    double n = places.getAsDouble();
                    double scale = 250 + 700 * random.nextDouble();
                    return new Numerics.Point(
                            Numerics.of(scale)
                                    .multiply(Numerics.ONE.subtract(Numerics.pow(
                                            Numerics.TWO,
                                            Numerics.of(n).negate().divide(12)))),
                            Scale.of(mm(scale)).fretMm(n));
                })
                .of("Scale.fret");
    }
}
