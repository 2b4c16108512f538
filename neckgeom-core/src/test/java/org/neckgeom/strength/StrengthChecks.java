package org.neckgeom.strength;

import static org.neckgeom.units.ShopUnits.celsius;
import static org.neckgeom.units.ShopUnits.hertz;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.percent;

import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.dfp.Dfp;
import org.hipparchus.special.Gamma;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.StringMaterial;
import org.neckgeom.neck.StringSet;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;
import org.neckgeom.validation.Check;
import org.neckgeom.validation.Checks;
import org.neckgeom.validation.Numerics;
import org.neckgeom.validation.Numerics.Point;
import org.neckgeom.validation.PracticeFigures;
import org.neckgeom.validation.Rows;
import org.neckgeom.validation.Source;
import org.neckgeom.validation.Status;

/** Sections, strings, bending and weather against what was published or computed elsewhere. */
public final class StrengthChecks {

    private StrengthChecks() {}

    @SuppressWarnings("exports") // a package of the tests
    public static void into(Checks checks) {
        strings(checks.topic("Strings"));
        sections(checks.topic("Sections"));
        bending(checks.topic("Bending"));
        weather(checks.topic("Wood and weather"));
        bench(checks.topic("Stiffness on the bench"));
        balance(checks.topic("Balance and tangs"));
    }

    private static void strings(Checks checks) {
        checks.check("pull of a low and a high string at 427.23 m/s", Source.OPENSTAX, "16.3", Status.PUBLISHED, "N")
                .figure(1055.00, pull(5.78), 0.005)
                .figure(56.40, pull(0.309), 0.005)
                .of("StringLoad.tensions", "StringLoad.total");
        checks.check("3.50 m, 5 g/m, fifth mode 95.83 Hz", Source.OPENSTAX, "16.6", Status.PUBLISHED, "N")
                .figure(90.00, NeckModel.newton(0.005, 3500, 95.83 / 5), 0.01)
                .of("StringLoad.tensions");
        checks.check("copper wire of radius 1.20 mm", Source.OPENSTAX, "16.3", Status.PUBLISHED, "g/m")
                .figure(40, StringMaterial.COPPER.plain(mm(2.4)).valueIn(ShopUnit.GRAM_PER_METRE), 0.5)
                .of("StringMaterial.plain", "StringMaterial.density");
        Check plain = checks.check(
                "plain steel at 650 mm: E4, B3, G3", Source.MPMATH, "rho pi d^2/4 (2 L f)^2", Status.EXACT, "N");
        plain.of("StringMaterial.plain", "StringLoad.tensions");
        double[][] exact = {
            {0.2286, 329.6275569128699, 59.1623911032033362},
            {0.3302, 246.94165062806206, 69.2770002493724297},
            {0.4318, 195.99771799087463, 74.6300183626085253}
        };
        for (double[] row : exact) {
            double kgPerM = StringMaterial.STEEL.plain(mm(row[0])).valueIn(ShopUnit.GRAM_PER_METRE) / 1000;
            plain.relative(row[2], NeckModel.newton(kgPerM, 650, row[1]), 1e-11);
        }
        Check pounds = checks.check(".010 and .012 plain steel on the bench", Source.TRADE, "", Status.PRACTICE, "lbf");
        pounds.of("StringLoad.tensions");
        double[][] bench = {{0.254, 648, 329.6276, 16.3}, {0.3048, 645, 329.6276, 23.3}, {0.254, 352, 659.2551, 19.3}};
        for (double[] row : bench) {
            double pull = NeckModel.newton(
                    StringMaterial.STEEL.plain(mm(row[0])).valueIn(ShopUnit.GRAM_PER_METRE) / 1000, row[1], row[2]);
            pounds.figure(row[3], newton(pull).valueIn(ShopUnit.POUND_FORCE), 0.06);
        }
    }

    private static void balance(Checks checks) {
        checks.check("six tuners 8 g heavier, at a hand", Source.SCRIPT, "practice-2-figures.csv", Status.EXACT, "N")
                .relative(
                        PracticeFigures.of("K1"),
                        Balance.of("tuners", ShopUnit.KILOGRAM_FORCE.of(0.048), mm(-120))
                                .atHand(mm(400), mm(100))
                                .libraryValue(),
                        1e-8)
                .of("Balance.atHand");
        // A half ellipse 50 wide and 21 deep under a board 50 x 6, 400 long: practice-2.md, part 6, f 0.2.
        double[] frets = IntStream.rangeClosed(0, 400).mapToDouble(x -> x).toArray();
        double each = TangBow.perInterference(TangBowTest.plain(), frets, 2.5);
        checks.check("back-bow of tangs 0.05 wider, 22 apart", Source.SCRIPT, "practice-2.md", Status.EXACT, "mm")
                .figure(0.23, 0.2 * 0.05 / 22 * each, 0.005)
                .of("TangBow.backBow");
    }

    /** A string on the centreline at 427.23 m/s, of so many g/m. */
    private static double pull(double gramPerMetre) {
        Neck neck = Necks.mandolin()
                .scale(mm(650))
                .strings(StringSet.of(hertz(427.23 / 1.3)).linearDensities(ShopUnits.gramPerMetre(gramPerMetre)));
        return StringLoad.of(neck).total().libraryValue();
    }

    private static void sections(Checks checks) {
        Check gamma = checks.check("gamma function", Source.MPMATH, "gamma.csv", Status.EXACT, "");
        for (Map<String, String> row : Rows.of("/strength/gamma.csv")) {
            gamma.relative(Rows.number(row, "gamma"), GammaFunction.gamma(Rows.number(row, "z")), 1e-12);
        }
        Check shape = checks.check(
                "area, centroid, second moment of carved backs", Source.MPMATH, "superellipse.csv", Status.EXACT, "");
        shape.of("Sections.at", "Section.neutralAxis");
        for (Map<String, String> row : Rows.of("/strength/superellipse.csv")) {
            Superellipse half = Superellipse.of(Rows.number(row, "p"));
            shape.relative(Rows.number(row, "area"), half.area(), 1e-12)
                    .relative(Rows.number(row, "centroid"), half.first() / half.area(), 1e-12)
                    .relative(Rows.number(row, "second_about_flat_side"), half.second(), 1e-12);
        }
        Check whole =
                checks.check("EA, neutral axis, EI of whole sections", Source.MPMATH, "sections.csv", Status.EXACT, "");
        whole.of("Sections.at", "Section.neutralAxis", "Section.stiffnessNm2");
        for (Map<String, String> row : Rows.of("/strength/sections.csv")) {
            SectionMoments section = new SectionMoments();
            SectionMomentsTest.beam(row).section(100, section);
            whole.relative(Rows.number(row, "EA"), section.stretchStiffness(), 1e-9)
                    .relative(Rows.number(row, "neutral_axis"), section.neutralAxis(), 1e-9)
                    .relative(Rows.number(row, "EI"), section.bendingStiffness(), 1e-9);
        }
        SectionMoments composite = new SectionMoments();
        composite.rectangle(200_000, 150, 0, 20);
        composite.rectangle(12_000, 150, 20, 170);
        checks.check("neutral axis of wood on a steel strip", Source.MECHANICS, "composite beams", Status.MEMORY, "mm")
                .figure(36.38, composite.neutralAxis(), 0.005)
                .of("Section.neutralAxis");
        checks.check("second moment of the same, in steel", Source.MECHANICS, "composite beams", Status.MEMORY, "mm4")
                .figure(9.358e6, composite.bendingStiffness() / 200_000, 500)
                .of("Section.stiffnessNm2");

        SplittableRandom random = new SplittableRandom(500);
        Numerics.worst(checks, "area of a carved back by gamma functions", "p from 1 to 50", 1e-9, 10_000)
                .points(() -> {
                    double p = random.nextDouble(1, 50);
                    double q = 1 / p;
                    double area = 2 * q * Gamma.gamma(q) * Gamma.gamma(1 + q) / Gamma.gamma(1 + 2 * q);
                    return new Point(Numerics.of(area), Superellipse.of(p).area());
                })
                .of("Sections.at");
        List<Point[]> all = Stream.generate(() -> section(random)).limit(10_000).toList();
        List<String> parts = List.of("area", "neutral axis", "stiffness");
        for (int i = 0; i < parts.size(); i++) {
            int part = i;
            Iterator<Point[]> next = all.iterator();
            Numerics.worst(
                            checks,
                            parts.get(i) + " of board, half ellipse and slot",
                            "crown 30 to 1e6 mm",
                            1e-9,
                            10_000)
                    .points(() -> next.next()[part])
                    .of("Sections.at", "Section.neutralAxis", "Section.stiffnessNm2");
        }
    }

    /** A crowned board on a half ellipse with a slot, all sizes at random, by the closed forms. */
    private static Point[] section(SplittableRandom random) {
        double half = random.nextDouble(14, 30);
        double depth = random.nextDouble(12, 22);
        double thick = random.nextDouble(4, 8);
        double radius = half * 1.01 + Math.pow(10, random.nextDouble(0, 6));
        double back = random.nextDouble(8000, 14_000);
        double board = random.nextDouble(8000, 18_000);
        double wide = random.nextDouble(3, 8);
        double deep = random.nextDouble(5, depth - 4);
        SectionMoments ours = new SectionMoments();
        ours.superellipse(back, half, depth, Superellipse.of(2));
        ours.rectangle(-back, wide, -deep, 0);
        ours.board(board, 2 * half, thick, radius);
        Dfp c = Numerics.of(half);
        Dfp r = Numerics.of(radius);
        Dfp t = Numerics.of(thick);
        Dfp k = t.subtract(r);
        // With y = r sin(w) the top is k + r cos(w): integrals of its powers from -c to c.
        Dfp root = r.multiply(r).subtract(c.multiply(c)).sqrt();
        Dfp w = Numerics.asin(c.divide(r));
        Dfp one = c.multiply(root).add(r.multiply(r).multiply(w));
        Dfp width = c.multiply(2);
        Dfp two = r.multiply(r)
                .multiply(width)
                .subtract(c.multiply(c).multiply(c).multiply(2).divide(3));
        Dfp three = c.multiply(root)
                .multiply(root)
                .multiply(root)
                .divide(2)
                .add(r.multiply(r).multiply(one).multiply(3).divide(4));
        Dfp area = k.multiply(width).add(one);
        Dfp first = k.multiply(k)
                .multiply(width)
                .add(k.multiply(one).multiply(2))
                .add(two)
                .divide(2);
        Dfp second = k.multiply(k)
                .multiply(k)
                .multiply(width)
                .add(k.multiply(k).multiply(one).multiply(3))
                .add(k.multiply(two).multiply(3))
                .add(three)
                .divide(3);
        Dfp b = Numerics.of(depth);
        Dfp e = Numerics.of(back);
        Dfp f = Numerics.of(board);
        Dfp slot = Numerics.of(wide).multiply(Numerics.of(deep));
        Dfp d = Numerics.of(deep);
        Dfp ea = e.multiply(Numerics.PI.multiply(c).multiply(b).divide(2).subtract(slot))
                .add(f.multiply(area));
        Dfp eq = e.multiply(slot.multiply(d)
                        .divide(2)
                        .subtract(c.multiply(b).multiply(b).multiply(2).divide(3)))
                .add(f.multiply(first));
        Dfp ej = e.multiply(Numerics.PI
                        .multiply(c)
                        .multiply(b)
                        .multiply(b)
                        .multiply(b)
                        .divide(8)
                        .subtract(slot.multiply(d).multiply(d).divide(3)))
                .add(f.multiply(second));
        return new Point[] {
            new Point(ea, ours.stretchStiffness()),
            // The axis may lie in the glue face itself: measured from the back it never is nothing.
            new Point(eq.divide(ea).add(b), ours.neutralAxis() + depth),
            new Point(ej.subtract(eq.multiply(eq).divide(ea)), ours.bendingStiffness())
        };
    }

    private static void bending(Checks checks) {
        Check column = checks.check(
                "top of a column under 0, 100, 150, 200 kip",
                Source.AISC_360,
                "benchmark case 2",
                Status.PUBLISHED,
                "in");
        column.of("Relief.underStrings");
        double[][] printed = {{0, 0.901}, {100, 1.33}, {150, 1.75}, {200, 2.56}};
        for (double[] row : printed) {
            column.figure(row[1], BeamScanTest.benchmarkColumn(row[0]), 0.006);
        }
        Check closed = checks.check("the same by tan(u)/u", Source.BEAMS, "", Status.EXACT, "in");
        closed.of("Relief.underStrings");
        double[][] exact = {
            {0, 0.900851524650898}, {100, 1.3306733992765}, {150, 1.75102661811157}, {200, 2.56489539774337}
        };
        for (double[] row : exact) {
            closed.relative(row[1], BeamScanTest.benchmarkColumn(row[0]), 1e-8);
        }
        Bend plank = BeamScan.of(BeamScanTest.plank(450), StringPull.NONE, BeamScanTest.couple(450), 7)
                .rod();
        checks.check("plank under end moments: middle", Source.BEAMS, "M L^2/(8 E I)", Status.EXACT, "mm")
                .relative(0.62473969179508538109, -12_000 * plank.gapAt(225, 0, 450), 1e-11)
                .of("Relief.withRodAt");
        checks.check("its slope at the ends", Source.BEAMS, "M L/(2 E I)", Status.EXACT, "rad")
                .relative(0.0055532417048452033875, 6000 * (plank.slopeAt(0) - plank.slopeAt(450)), 1e-11)
                .of("Relief.withRodAt");
        Bend tip = BeamScan.of(BeamScanTest.plank(100), new StringPull(0, 0, 50, 0), null, 40)
                .strings()
                .clampedAtEnd();
        checks.check("cantilever under an end load", Source.BEAMS, "P L^3/(3 E I)", Status.EXACT, "mm")
                .relative(0.034279269782995082639, tip.riseAt(0), 1e-9)
                .of("Relief.underStrings", "Bow.lift");
        SectionMoments section = new SectionMoments();
        BeamScanTest.plank(225).section(0, section);
        Bend leaning = BeamScan.of(
                        BeamScanTest.plank(225),
                        new StringPull(700, 12_000 + 700 * section.neutralAxis(), 0, 0),
                        null,
                        60)
                .strings()
                .clampedAtEnd();
        checks.check("pinned column bowed by end moments", Source.BEAMS, "(M/P)(sec u - 1)", Status.EXACT, "mm")
                .relative(0.64429208246930746789, leaning.riseAt(0), 1e-9)
                .of("Relief.underStrings");
        SectionMoments rectangle = new SectionMoments();
        rectangle.rectangle(12_600, 50, 0, 21);
        checks.check("stress at the face of a plank", Source.BEAMS, "M c/I", Status.EXACT, "MPa")
                .relative(3.2653061224489795918, 12_600 * rectangle.strain(0, 12_000, 0), 1e-12)
                .of("Stress.inNeck", "Stress.inFingerboard");
        SectionMoments rod = new SectionMoments();
        rod.rectangle(2e5, 30, -0.5, 0.5);
        checks.check("stretch of a rod: 2 m, 0.3 cm2, 5390 N", Source.OPENSTAX, "12.3", Status.PUBLISHED, "mm")
                .figure(1.8, 2000 * rod.strain(-550 * 9.8, 0, 0), 0.05)
                .of("Stress.inNeck");

        Check bow = checks.check(
                "relief of three necks on a grid of their own",
                Source.HIPPARCHUS,
                "linear solver",
                Status.LIBRARY,
                "mm");
        Check pulled = checks.check(
                "the same with the rod at 400 to 3000 N", Source.HIPPARCHUS, "linear solver", Status.LIBRARY, "mm");
        bow.of("Relief.underStrings", "Bow.relief", "Bow.lift");
        pulled.of("Relief.withRodAt", "RodForce.force");
        for (Neck neck : List.of(Necks.mandolin(), SampleNecks.guitar(), SampleNecks.shortScaleBass())) {
            FiniteDifferenceNeck other = new FiniteDifferenceNeck(neck);
            double from = neck.scale().fretMm(1);
            double to = neck.bodyJointMm();
            Straightedge plain = StrungNeck.usual(neck).bench().bare();
            bow.relative(other.bow(from, to, 0), plain.bow(0), 1e-3)
                    .relative(other.lift(), plain.under(0).clampedAtEnd().riseAt(0), 1e-3);
            for (double force : new double[] {400, 1500, 3000}) {
                pulled.figure(other.bow(from, to, force), plain.bow(force), 0.0005);
            }
        }
    }

    private static void bench(Checks checks) {
        checks.check("least strength of music wire of 7.25 mm", Source.A228, "", Status.PUBLISHED, "MPa")
                .figure(1492, StringTensions.wireStrengthMPa(7.25), 1)
                .of("StringLoad.shareOfStrength");
        Check tap = checks.check(
                "modulus from the tap tone of four bars",
                Source.SCIPY,
                "exact beam, strength-cases.csv",
                Status.EXACT,
                "MPa");
        tap.of("BlankTapped.modulus");
        double[][] bars = {
            {700, 25, 700, 12_600, 219.5469},
            {600, 22, 680, 12_100, 261.2745},
            {550, 7, 1100, 14_000, 84.71307},
            {900, 30, 560, 10_300, 161.3786}
        };
        for (double[] bar : bars) {
            double weight = bar[2] * bar[0] * bar[1] * 60 / 1e9 * 9.80665;
            tap.relative(
                    bar[3],
                    BlankTapped.of(mm(bar[0]))
                            .section(mm(60), mm(bar[1]))
                            .rings(newton(weight), hertz(bar[4]))
                            .vibratingMPa(),
                    3e-4);
        }
        Check fall = checks.check(
                "fall of three necks under 1 kg, gap and midway", Source.SCIPY, "bench.py", Status.EXACT, "mm");
        fall.of("StiffnessKnowledge.bow");
        double[][] falls = {{0.04654, 0.01588 + 0.00126}, {0.1256, 0.04343 + 0.00176}, {0.01271, 0.004336 + 0.00106}};
        for (ReferenceNecks one : ReferenceNecks.values()) {
            MadeNeck made = StrungNeck.usual(one.neck()).made();
            fall.relative(falls[one.ordinal()][0], 9.80665 * BenchRows.fall(made, false), 2e-3)
                    .relative(falls[one.ordinal()][1], 9.80665 * BenchRows.fall(made, true), 2e-3);
        }
        Check slots = checks.check(
                "stiffness of a neck with open slots", Source.SCIPY, "finite elements, slots_fe.py", Status.EXACT, "");
        slots.of("Bow.uncertaintyOfModel");
        for (double[] row : new double[][] {{2, 0.85809}, {3, 0.74449}, {4, 0.63385}}) {
            slots.figure(row[1], MadeNeck.slotted(row[0], 25), 0.004);
        }
        SimulatedNeck.Coverage coverage = SimulatedNeck.coverage(22, 120);
        checks.check(
                        "ten calibrations of 120 simulated necks: interval holds the truth",
                        Source.SESSIONS,
                        "a beam of its own stiffness at each station",
                        Status.SIMULATED,
                        "")
                .figure(0.95, coverage.all(), 0.03)
                .of("StiffnessKnowledge.bow", "Bow.interval");
        String[] calibrations = {
            "neck blank bent",
            "board blank bent",
            "both blanks bent",
            "neck blank tapped",
            "neck weighed down, 4 kg",
            "neck weighed down, 4 and 8 kg",
            "neck clamped, 3 kg",
            "relief slack and at pitch",
            "tapped, weighed, clamped",
            "blanks, weighed, relief"
        };
        for (int k = 0; k < calibrations.length; k++) {
            checks.check(
                            String.format(
                                    Locale.ROOT,
                                    "%s: interval holds the truth, %.2f as wide as without",
                                    calibrations[k],
                                    coverage.left()[k]),
                            Source.SESSIONS,
                            "a beam of its own stiffness at each station",
                            Status.SIMULATED,
                            "")
                    .figure(0.95, coverage.covered()[k], 0.08)
                    .of("StiffnessKnowledge.bow", "Bow.interval");
        }
        Check read = checks.check(
                "uncertainty of relief with slack to pitch read: guitar, bass",
                Source.SCIPY,
                "interval.py",
                Status.EXACT,
                "");
        read.of("Bow.relativeUncertainty");
        for (ReferenceNecks one : List.of(ReferenceNecks.GUITAR, ReferenceNecks.BASS)) {
            boolean isGuitar = one == ReferenceNecks.GUITAR;
            read.figure(
                    isGuitar ? 0.0375 : 0.0092,
                    Relief.of(ReferenceNecks.ofTableWoods(one.neck()))
                            .knowing(StiffnessReadings.none().relief(mm(0), mm(isGuitar ? 0.187 : 0.76)))
                            .underStrings()
                            .relativeUncertainty(),
                    0.002);
        }
        Check added = checks.check(
                "relief for a board shorter by 1e-5 on three necks", Source.SCIPY, "bench.py", Status.EXACT, "mm");
        added.of("NeckWeather.relief");
        double[] shorter = {0.007917, 0.01607, 0.002231};
        for (ReferenceNecks one : ReferenceNecks.values()) {
            Bend bend = MoistureBow.bend(StrungNeck.usual(one.neck()).beam(), StringPull.NONE, -1e-5, 0);
            double from = one.neck().scale().fretMm(1);
            double to = one.neck().bodyJointMm();
            added.relative(shorter[one.ordinal()], new Straightedge(bend, null, from, to).bow(0), 5e-4);
        }
        SectionMoments strip = new SectionMoments();
        strip.rectangle(14_000, 1, 0, 6);
        SectionMoments both = new SectionMoments();
        both.rectangle(14_000, 1, 0, 6);
        both.rectangle(12_600, 1, -16, 0);
        checks.check(
                        "curvature of two layers, free strain 1e-4",
                        Source.TIMOSHENKO,
                        "bimetal formula",
                        Status.MEMORY,
                        "1/m")
                .relative(
                        5.561641527e-3,
                        1000 * MoistureBow.moment(strip, both, -1e-4, 0, both.neutralAxis()) / both.bendingStiffness(),
                        1e-9)
                .of("NeckWeather.relief");
        checks.check("torque of M5 at 500 N, friction 0.15", Source.SCIPY, "cases.py", Status.EXACT, "N.m")
                .figure(0.5201517, RodTurns.torque(500, 0.8, 4.48, 3.5, 0.15) / 1000, 1e-7)
                .of("RodTurns.torqueStop", "RodTurns.mostTorque");
        checks.check(
                        "creep over elastic bow after ten years",
                        Source.WOOD_HANDBOOK,
                        "ch. 5: about 1, EN 1995: 0.6",
                        Status.MEMORY,
                        "")
                .figure(0.8, Creep.after(3652.5).share(), 0.2)
                .of("Creep.share");
        checks.check(
                        "half of a change of moisture is done at D t/l^2 0.1963",
                        Source.SCIPY,
                        "cases.py",
                        Status.EXACT,
                        "")
                .figure(0.4994585575, AirInWood.share(0.1963), 1e-9)
                .of("AirInWood.shareDone");
    }

    private static void weather(Checks checks) {
        Check equation = checks.check(
                "equilibrium moisture", Source.WOOD_HANDBOOK, "Eq. 4-5 by mpmath, wood-emc.csv", Status.EXACT, "%");
        Check table =
                checks.check("equilibrium moisture, as printed", Source.WOOD_HANDBOOK, "Table 4-2", Status.MEMORY, "%");
        equation.of("Climate.moisture", "Weather.moistureChange");
        table.of("Climate.moisture");
        for (Map<String, String> row : Rows.of("/strength/wood-emc.csv")) {
            double ours = Climate.of(
                            percent(Rows.number(row, "humidity_percent")), celsius(Rows.number(row, "celsius")))
                    .moisturePercent();
            if (row.get("kind").equals("computed")) {
                equation.relative(Rows.number(row, "moisture_percent"), ours, 1e-12);
            } else {
                // One decimal is printed, at temperatures rounded from Fahrenheit.
                table.figure(Rows.number(row, "moisture_percent"), ours, 0.065);
            }
        }
        Check rule = checks.check("moisture at 30, 50, 65, 80 %", Source.TRADE, "", Status.PRACTICE, "%");
        rule.of("Climate.moisture");
        for (double[] row : new double[][] {{30, 6}, {50, 9}, {65, 12}, {80, 16}}) {
            rule.figure(row[1], Climate.of(percent(row[0]), celsius(21)).moisturePercent(), 0.5);
        }
        checks.check(
                        "70 mm of flatsawn maple, 8 to 11 %",
                        Source.WOOD_HANDBOOK, "Eq. 13-3 by mpmath", Status.EXACT, "mm")
                .relative(0.747250377399181, 70 * SizeChange.changeOf(0.099, 8, 11), 1e-12)
                .of("SizeChange.change");
        checks.check(
                        "57 mm of mahogany, radial and tangential",
                        Source.WOOD_HANDBOOK,
                        "Eq. 13-3 by mpmath",
                        Status.EXACT,
                        "mm")
                .relative(0.174846625766871, 57 * SizeChange.changeOf(0.030, 8, 11), 1e-12)
                .relative(0.240944394803767, 57 * SizeChange.changeOf(0.041, 8, 11), 1e-12)
                .of("SizeChange.change");
        Weather damp = Weather.from(percent(40), celsius(21)).to(percent(60), celsius(21));
        double rise = damp.moistureChange().libraryValue() * 100;
        SizeChange maple = damp.across(mm(70), Wood.SUGAR_MAPLE);
        checks.check(
                        "70 mm of maple by coefficient",
                        Source.WOOD_HANDBOOK,
                        "Eq. 13-2, Table 13-5",
                        Status.PUBLISHED,
                        "mm")
                .relative(70 * 0.00353 * rise, maple.flatsawn().changeMm(), 0.015)
                .relative(70 * 0.00165 * rise, maple.quartersawn().changeMm(), 0.015)
                .of("Weather.across", "SizeChange.change");

        SplittableRandom random = new SplittableRandom(600);
        Numerics.worst(checks, "change of size with moisture", "S 1 to 12 %, changes 1e-9 to 10 %", 1e-9, 10_000)
                .points(() -> {
                    double s = random.nextDouble(0.01, 0.12);
                    double from = random.nextDouble(3, 18);
                    double to = from + Math.pow(10, random.nextDouble(-9, 1));
                    Dfp thirty = Numerics.of(30);
                    Dfp before = Numerics.ONE.subtract(Numerics.of(s)
                            .multiply(thirty.subtract(Numerics.of(from)))
                            .divide(thirty));
                    Dfp after = Numerics.ONE.subtract(Numerics.of(s)
                            .multiply(thirty.subtract(Numerics.of(to)))
                            .divide(thirty));
                    return new Point(after.divide(before).subtract(Numerics.ONE), SizeChange.changeOf(s, from, to));
                })
                .of("SizeChange.change");
    }
}
