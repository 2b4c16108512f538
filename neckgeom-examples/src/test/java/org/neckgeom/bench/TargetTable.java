package org.neckgeom.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What was promised, what was measured, and whether that is so; ratios within one run. */
final class TargetTable {

    private record Row(String claim, String target, String measured, boolean met) {}

    private static final double MILLION = 1e6;

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
        atMost("centring, quantities in and out, against bare doubles", 1.25, quantities, "CentringBenchmark.plain");
        atMost("the same against doubles with the same checks", 1.25, quantities, "CentringBenchmark.plainChecked");
        atMost(
                "the same, doubles out, against bare doubles",
                1.25,
                "CentringBenchmark.quantitiesToDoubles",
                "CentringBenchmark.plain");
        bytes("bytes of it, result consumed", 0, quantities);
        atMost(
                "centring, the answers kept, against a record of doubles kept",
                1.2,
                "CentringBenchmark.quantitiesKept",
                "CentringBenchmark.plainKept");
        bytes("bytes of an answer kept", 32, "CentringBenchmark.quantitiesKept");
        atLeast("Indriya's operations for the same", 1000, "CentringBenchmark.indriyaOperations", quantities);
        atLeast(
                "Indriya's conversion of an inch quantity to mm",
                300,
                "UnitsBenchmark.indriyaInchToMm",
                "UnitsBenchmark.foreignInchToMm");
        row(
                "classes of Indriya in a fresh JVM's first result",
                "0",
                run.indriyaClassesOwn() + " (" + run.indriyaClassesForeign() + " with its quantities)",
                run.indriyaClassesOwn() == 0 && run.indriyaClassesForeign() > 0);
        within("parse `1 3/64 in`", 150, "UnitsBenchmark.parseFraction");
    }

    private void trials() {
        atMost("trials against the bare draws", 1.4, "TrialsBenchmark.oneThread", "TrialsBenchmark.bareDraws");
        atMost("full job against the bare draws", 1.6, "TrialsBenchmark.fullJob", "TrialsBenchmark.bareDraws");
        if (run.hasNumpy()) {
            double job = scores.nanos("TrialsBenchmark.fullJob");
            ratio("numpy's full job, its best form", ">=", 3.5, run.numpyNanos("best") / job);
            ratio("numpy's full job, plain", ">=", 4, run.numpyNanos("plain") / job);
        }
        String one = "TrialsBenchmark.oneThread";
        atLeast("rows of commons-rng", 1.6, "TrialsBenchmark.rowsOfXoshiroAndZiggurat", one);
        atLeast("rows of the JDK's L64X128Mix", 2, "TrialsBenchmark.rowsOfTheJdk", one);
        atLeast("rows of Hipparchus", 8, "TrialsBenchmark.rowsOfHipparchus", one);
        atLeast("one thread against two", 1.6, one, "TrialsBenchmark.twoThreads");
        String percentiles = "TrialsBenchmark.percentiles";
        atLeast("commons-statistics' percentiles of 10^6", 3, "TrialsBenchmark.percentilesByStatistics", percentiles);
        // From JDK 22 on the JDK sorts with vectors.
        double sort = Runtime.version().feature() < 22 ? 25 : 4;
        atLeast("sorting 10^6 instead", sort, "TrialsBenchmark.percentilesBySorting", percentiles);
    }

    private void exact() {
        within("exact chain of 12, cold: two quantiles and a chance", 10_000, "BudgetBenchmark.exactCold");
        ratio(
                "10^6 trials instead",
                ">=",
                2000,
                MILLION * scores.nanos("TrialsBenchmark.fullJob") / scores.nanos("BudgetBenchmark.exactCold"));
        List<Double> chains = run.chains();
        row(
                "5,000 random chains: 99 % within, all within",
                "<= 40 us, <= 150 us",
                String.format(Locale.ROOT, "%.0f us, %.0f us", chains.get(1), chains.get(2)),
                chains.get(1) <= 40 && chains.get(2) <= 150);
        row(
                "their largest miss of a probability",
                "<= 1e-10",
                String.format(Locale.ROOT, "%.0e", chains.get(3)),
                chains.get(3) <= 1e-10);
        String dual = "BudgetBenchmark.gradientDual";
        atMost("gradient of 8 inputs against the function", 12, dual, "BudgetBenchmark.gradientPlainFunction");
        atLeast("Hipparchus' gradient", 3, "BudgetBenchmark.gradientHipparchus", dual);
        atLeast("central differences", 1.7, "BudgetBenchmark.gradientDifferences", dual);
    }

    private void shapes() {
        within("relief at 1,000 stations", 60_000, "StrengthBenchmark.scanAtThousandStations");
        within("wood left at 200 stations, square roots", 300_000, "GeometryBenchmark.woodLeft power=2");
        within("wood left at 200 stations, powers", 300_000, "GeometryBenchmark.woodLeft power=2.5");
    }

    private void together() {
        within("whole plan, warm: every check and section", 5_000_000, "PlanBenchmark.plan");
    }

    private void atMost(String claim, double most, String ours, String baseline) {
        ratio(claim, "<=", most, scores.ratio(ours, baseline));
    }

    private void atLeast(String claim, double least, String peer, String ours) {
        ratio(claim + " takes times as long", ">=", least, scores.ratio(peer, ours));
    }

    private void ratio(String claim, String sign, double bound, double found) {
        boolean met = sign.equals("<=") ? found <= bound : found >= bound;
        String target = String.format(Locale.ROOT, "%s %,.4g", sign, bound)
                .replaceAll("(\\.\\d*?)0+$", "$1")
                .replaceAll("\\.$", "");
        row(claim, target + "x", String.format(Locale.ROOT, found < 99.5 ? "%.2fx" : "%,.0fx", found), met);
    }

    private void within(String claim, double mostNanos, String ours) {
        double found = scores.nanos(ours);
        row(claim, "<= " + Scores.time(mostNanos), Scores.time(found), found <= mostNanos);
    }

    private void bytes(String claim, double most, String ours) {
        double found = scores.bytes(ours);
        row(claim, "<= " + Scores.size(most), Scores.size(found), found < most + 0.5);
    }

    private void row(String claim, String target, String measured, boolean met) {
        rows.add(new Row(claim, target, measured, met));
    }

    String toMarkdown() {
        StringBuilder out = new StringBuilder("| claim | target | measured | met |\n| --- | --- | --- | --- |\n");
        for (Row row : rows) {
            out.append("| ")
                    .append(String.join(" | ", row.claim, row.target, row.measured, row.met ? "yes" : "no"))
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
                            "    {\"claim\": \"%s\", \"target\": \"%s\", \"measured\": \"%s\", \"met\": %s}",
                            row.claim,
                            row.target,
                            row.measured,
                            row.met));
        }
        return out.toString();
    }
}
