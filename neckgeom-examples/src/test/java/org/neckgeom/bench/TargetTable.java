package org.neckgeom.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What was promised, what was measured, and whether that is so; ratios within one run. */
final class TargetTable {

    /** Met is {@code yes}, {@code no} with the reason, or {@code -} where nothing was promised. */
    private record Row(String claim, String target, String measured, String met) {}

    private static final double MILLION = 1e6;
    private static final int STATIONS = 1000;

    /** What is added to the exponent of n log n for memory that no longer fits the caches. */
    private static final double CACHES = 0.15;

    private static final String CHECKED_AGAIN = "an amount is checked when it is made, in and out; a double never is";

    private final Measured run;
    private final Scores scores;
    private final List<Row> rows = new ArrayList<>();

    TargetTable(Measured run) {
        this.run = run;
        this.scores = run.scores();
        units();
        trials();
        exact();
        shapes();
        together();
    }

    private void units() {
        String quantities = "CentringBenchmark.quantities";
        String plain = "CentringBenchmark.plain";
        atMost("centring, quantities in and out, against bare doubles", 1.25, quantities, plain, CHECKED_AGAIN);
        atMost(
                "the same against doubles with the same checks",
                1.25,
                quantities,
                "CentringBenchmark.plainChecked",
                CHECKED_AGAIN);
        atMost(
                "quantities in, doubles out, against bare doubles",
                1.25,
                "CentringBenchmark.quantitiesToDoubles",
                plain,
                CHECKED_AGAIN);
        bytes("bytes of it, result consumed", 0, quantities);
        atMost(
                "centring, the answers kept, against a record of doubles kept",
                1.2,
                "CentringBenchmark.quantitiesKept",
                "CentringBenchmark.plainKept",
                CHECKED_AGAIN);
        bytes("bytes of an answer kept", 32, "CentringBenchmark.quantitiesKept");
        atLeast("Indriya's operations for the same", 1000, "CentringBenchmark.indriyaOperations", quantities);
        ratio(
                "Seshat's operations for the same: times as long",
                ">=",
                50,
                scores.ratio("CentringBenchmark.seshatOperations", quantities),
                "the first row's checks are in it");
        atLeast("DJUNITS' operations for the same", 1.8, "CentringBenchmark.djunitsOperations", quantities);
        atLeast(
                "Indriya's conversion of an inch quantity to mm",
                300,
                "UnitsBenchmark.indriyaInchToMm",
                "UnitsBenchmark.foreignInchToMm");
        row(
                "classes of Indriya in a fresh JVM's first result",
                "0",
                run.indriyaClassesOwn() + " (" + run.indriyaClassesForeign() + " with its quantities)",
                run.indriyaClassesOwn() == 0 && run.indriyaClassesForeign() > 0,
                "");
        within("parse `1 3/64 in`", 150, "UnitsBenchmark.parseFraction");
    }

    private void trials() {
        String draws = "TrialsBenchmark.bareDraws";
        String job = "TrialsBenchmark.fullJob";
        String one = "TrialsBenchmark.oneThread";
        atMost("trials against the bare draws", 1.4, one, draws, "");
        atMost("full job against the bare draws", 1.25, job, draws, "");
        String share = String.format(
                Locale.ROOT,
                "of the job's %s the bare draws alone take %s",
                Scores.time(MILLION * scores.nanos(job)),
                Scores.time(MILLION * scores.nanos(draws)));
        if (run.hasNumpy()) {
            ratio("numpy's full job, its best form", ">=", 3.5, run.numpyNanos("best") / scores.nanos(job), share);
            ratio("numpy's full job, plain", ">=", 4, run.numpyNanos("plain") / scores.nanos(job), share);
        }
        atLeast("rows of commons-rng, triangles by the inverse", 1.6, "TrialsBenchmark.rowsOfXoshiroByInverse", one);
        atLeast(
                "rows of the JDK's L64X128Mix, triangles by the inverse",
                2,
                "TrialsBenchmark.rowsOfTheJdkByInverse",
                one);
        known("rows of commons-rng, triangles from two draws", "TrialsBenchmark.rowsOfXoshiroAndZiggurat", one);
        known("rows of the JDK's L64X128Mix, triangles from two draws", "TrialsBenchmark.rowsOfTheJdk", one);
        atLeast("rows of Hipparchus", 8, "TrialsBenchmark.rowsOfHipparchus", one);
        atLeast("one thread against two", 1.6, one, "TrialsBenchmark.twoThreads");
        String percentiles = "TrialsBenchmark.percentiles";
        atLeast("commons-statistics' percentiles of 10^6", 3, "TrialsBenchmark.percentilesByStatistics", percentiles);
        // From JDK 22 on the JDK sorts with vectors.
        double sort = Runtime.version().feature() < 22 ? 25 : 4;
        atLeast("sorting 10^6 instead", sort, "TrialsBenchmark.percentilesBySorting", percentiles);
    }

    private void exact() {
        within("exact chain of 12, cold: two quantiles and a chance", 2_000, "BudgetBenchmark.exactCold");
        ratio(
                "10^6 trials instead",
                ">=",
                2000,
                MILLION * scores.nanos("TrialsBenchmark.fullJob") / scores.nanos("BudgetBenchmark.exactCold"),
                "");
        within("the same through a budget and its answers", 10_000, "BudgetBenchmark.exactBudget");
        if (run.hasOpenTurns()) {
            ratio(
                    "OpenTURNS' mixture for the same: times as long",
                    ">=",
                    30,
                    run.openTurns("cold") / scores.nanos("BudgetBenchmark.exactCold"),
                    "");
        } else {
            rows.add(new Row(
                    "OpenTURNS' mixture for the same: times as long",
                    ">= 30x",
                    "not there",
                    "no: no python3 here has OpenTURNS (Debian: python3-openturns)"));
        }
        List<Double> chains = run.chains();
        row(
                "5,000 random chains: 99 % within, all within",
                "<= 40 us, <= 150 us",
                String.format(Locale.ROOT, "%.0f us, %.0f us", chains.get(1), chains.get(2)),
                chains.get(1) <= 40 && chains.get(2) <= 150,
                "");
        row(
                "their largest miss of a probability",
                "<= 1e-10",
                String.format(Locale.ROOT, "%.0e", chains.get(3)),
                chains.get(3) <= 1e-10,
                "");
        String dual = "BudgetBenchmark.gradientDual";
        atMost("gradient of 8 inputs against the function", 4, dual, "BudgetBenchmark.gradientPlainFunction", "");
        ratio(
                "Hipparchus' gradient: times as long",
                ">=",
                3,
                scores.ratio("BudgetBenchmark.gradientHipparchus", dual),
                "the inputs, 88 bytes each, take longer to be written than the function's arithmetic");
        atLeast("central differences", 1.7, "BudgetBenchmark.gradientDifferences", dual);
    }

    private void shapes() {
        String plain = "StrengthBenchmark.plainDoublesAtThousandStations";
        String typed = "StrengthBenchmark.amountsAtThousandStations";
        atMost(
                "scan of 1,000 stations, its lengths amounts throughout, against bare doubles",
                1.3,
                typed,
                plain,
                "eight amounts a station, each checked when it is made");
        double bytes = scores.bytes(typed) / STATIONS;
        row("bytes of it, a station", "<= 0 B", Scores.size(bytes), bytes < 0.5, "");
        if (run.hasNumpy()) {
            ratio(
                    "numpy's scan takes times as long as that of bare doubles",
                    ">=",
                    5,
                    run.numpyNanos("scan") / scores.nanos(plain),
                    "");
        }
        within("state of a neck: 60 causes, 20 readings, all answers", 100_000, "StateBenchmark.allAnswers");
        within("chance of 8 limits together to 1e-4", 2_000_000, "StateBenchmark.eightLimits");
        if (run.hasScipy()) {
            ratio(
                    "SciPy's to the error that ours states, normal laws alone: times as long",
                    ">=",
                    20,
                    run.scipy("joint") / scores.nanos("StateBenchmark.eightLimits"),
                    "");
        }
        within("a reading of stiffness more", 20_000, "StrengthBenchmark.calibrationUpdate");
        within("relief at 1,000 stations", 30_000, "StrengthBenchmark.scanAtThousandStations");
        within("wood left at 200 stations, square roots", 300_000, "GeometryBenchmark.woodLeft power=2");
        within("wood left at 200 stations, powers", 50_000, "GeometryBenchmark.woodLeft power=2.5");
        within("solid of a neck: frets, strings, head, volume", 300_000, "SolidBenchmark.solid");
        within("thinnest wood of a channel to 1e-7 mm, powers", 100_000, "SolidBenchmark.woodLeast");
        within("meshes of all pieces, 100,000 triangles", 40_000_000, "SolidBenchmark.meshes");
        bytes("bytes of them", 40_000_000, "SolidBenchmark.meshes");
    }

    private void together() {
        within("whole plan, warm: every check and section", 1_500_000, "PlanBenchmark.plan");
        within("one question more of it", 2_000, "PlanBenchmark.question");
        within("its text", 2_000_000, "PlanBenchmark.text");
        within("its data, each answer with its words", 1_000_000, "PlanBenchmark.json");
        within("its page with all drawings", 3_000_000, "PlanBenchmark.page");
        double file = scores.nanos("PlanBenchmark.file") + scores.nanos("PlanBenchmark.plan");
        row("its file read and checked, and the plan", "<= 3.0 ms", Scores.time(file), file <= 3e6, "");
        double kept = run.kept().get(0);
        row("a plan kept", "<= 200 kB", String.format(Locale.ROOT, "%.0f kB", kept), kept <= 200, "");
        FreshJvm.Times fresh = run.fresh();
        ratio(
                "first centring in a fresh JVM against a JVM that does nothing",
                "<=",
                1.4,
                fresh.own() / fresh.nothing(),
                "");
        GrowthTable.Steepest steepest = run.growth().steepest();
        row(
                "time grows no faster than n log n",
                "<= n log n",
                String.format(
                        Locale.ROOT,
                        "%s n^%.2f, where n log n is n^%.2f",
                        steepest.subject(),
                        steepest.exponent(),
                        steepest.ofLogLinear()),
                steepest.exponent() <= steepest.ofLogLinear() + CACHES,
                "");
    }

    private void atMost(String claim, double most, String ours, String baseline, String why) {
        ratio(claim, "<=", most, scores.ratio(ours, baseline), why);
    }

    private void atLeast(String claim, double least, String peer, String ours) {
        ratio(claim + ": times as long", ">=", least, scores.ratio(peer, ours), "");
    }

    private void known(String claim, String peer, String ours) {
        rows.add(new Row(claim + ": times as long", "none", times(scores.ratio(peer, ours)), "-"));
    }

    private void ratio(String claim, String sign, double bound, double found, String why) {
        boolean met = sign.equals("<=") ? found <= bound : found >= bound;
        String target = String.format(Locale.ROOT, "%s %,.4g", sign, bound)
                .replaceAll("(\\.\\d*?)0+$", "$1")
                .replaceAll("\\.$", "");
        row(claim, target + "x", times(found), met, why);
    }

    private static String times(double found) {
        return String.format(Locale.ROOT, found < 99.5 ? "%.2fx" : "%,.0fx", found);
    }

    private void within(String claim, double mostNanos, String ours) {
        double found = scores.nanos(ours);
        row(claim, "<= " + Scores.time(mostNanos), Scores.time(found), found <= mostNanos, "");
    }

    private void bytes(String claim, double most, String ours) {
        double found = scores.bytes(ours);
        row(claim, "<= " + Scores.size(most), Scores.size(found), found < most + 0.5, "");
    }

    private void row(String claim, String target, String measured, boolean met, String why) {
        rows.add(new Row(claim, target, measured, met ? "yes" : why.isEmpty() ? "no: see below" : "no: " + why));
    }

    String toMarkdown() {
        StringBuilder out = new StringBuilder("| claim | target | measured | met |\n| --- | --- | --- | --- |\n");
        for (Row row : rows) {
            out.append("| ")
                    .append(String.join(" | ", row.claim, row.target, row.measured, row.met))
                    .append(" |\n");
        }
        return out.toString();
    }

    /** As the inside of a JSON array. */
    String toJson() {
        StringBuilder out = new StringBuilder();
        for (Row row : rows) {
            out.append(out.length() == 0 ? "" : ",\n")
                    .append(String.format(
                            Locale.ROOT,
                            "    {\"claim\": \"%s\", \"target\": \"%s\", \"measured\": \"%s\", \"met\": \"%s\"}",
                            row.claim,
                            row.target,
                            row.measured,
                            row.met));
        }
        return out.toString();
    }
}
