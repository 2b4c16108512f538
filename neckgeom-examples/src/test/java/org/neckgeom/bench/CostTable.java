package org.neckgeom.bench;

import java.util.Locale;

/** What things cost, each beside what it is measured against, as BENCHMARKS.md quotes it. */
final class CostTable {

    private static final double MILLION = 1e6;

    private final Measured run;
    private final Scores scores;
    private final StringBuilder out =
            new StringBuilder("| what | time, memory | beside it, in the same run |\n| --- | --- | --- |\n");

    CostTable(Measured run) {
        this.run = run;
        this.scores = run.scores();
        units();
        geometry();
        calibration();
        state();
        sweep();
        budget();
        trials();
        whole();
    }

    private void units() {
        row("our own quantity to a double in mm, checked", "UnitsBenchmark.amountToMm", "");
        row(
                "a foreign quantity in inches to a double in mm, correctly rounded",
                "UnitsBenchmark.foreignInchToMm",
                "Indriya's own conversion " + time("UnitsBenchmark.indriyaInchToMm"));
        row(
                "text `1 3/64 in` to a length",
                "UnitsBenchmark.parseFraction",
                "the JDK's `parseDouble` of a decimal " + time("UnitsBenchmark.jdkParseDouble"));
        row(
                "centring from two walls, quantities in and out",
                "CentringBenchmark.quantities",
                "bare doubles " + time("CentringBenchmark.plain") + ", with the same checks "
                        + time("CentringBenchmark.plainChecked") + "; operations of DJUNITS "
                        + time("CentringBenchmark.djunitsOperations") + ", Seshat "
                        + both("CentringBenchmark.seshatOperations") + ", Indriya "
                        + both("CentringBenchmark.indriyaOperations"));
        row(
                "from doubles made quantities on the spot",
                "CentringBenchmark.doubles",
                "from Indriya's quantities " + time("CentringBenchmark.foreignQuantities"));
        row(
                "the answer kept",
                "CentringBenchmark.quantitiesKept",
                "a record of two doubles kept " + both("CentringBenchmark.plainKept"));
        row("centring from a trial cut", "CentringBenchmark.trialCut", "");
        row("with its closure check and the move", "CentringBenchmark.trialCutCheckedMove", "");
        row(
                "best stack of up to 4 leaves out of 40",
                "LeavesBenchmark.search leaves=40 most=4",
                "every stack in turn " + time("LeavesBenchmark.everyStackOfFour leaves=40 most=4"));
    }

    private void geometry() {
        row(
                "table of 24 frets",
                "GeometryBenchmark.fretTable power=2",
                "plain doubles " + time("GeometryBenchmark.fretTablePlain power=2"));
        row(
                "scarf joint",
                "GeometryBenchmark.scarf power=2",
                "two of its lines in plain doubles " + time("GeometryBenchmark.scarfPlain power=2"));
        row(
                "neck angle from the readings",
                "GeometryBenchmark.neckSet power=2",
                "plain doubles " + time("GeometryBenchmark.neckSetPlain power=2"));
        row(
                "wood left along a channel at 200 stations",
                "GeometryBenchmark.woodLeft power=2.5",
                "Newton's method without a search " + time("GeometryBenchmark.woodLeftPlain power=2.5"));
        row(
                "solid of a neck: curves, planes, frets, strings, volume",
                "SolidBenchmark.solid",
                "its sums in plain doubles " + time("SolidBenchmark.solidPlain"));
        row(
                "thinnest wood of a channel, to 1e-7 mm",
                "SolidBenchmark.woodLeast",
                "200 stations in plain doubles " + time("SolidBenchmark.woodLeastPlain")
                        + ", under the heel's transition " + time("SolidBenchmark.woodLeastUnderTheHeel"));
        row(
                "closed meshes of all pieces, 100,000 triangles",
                "SolidBenchmark.meshes",
                "as many points and triangles in two arrays " + time("SolidBenchmark.meshesPlain"));
        row(
                "bending and relief of a neck at 1,000 stations",
                "StrengthBenchmark.scanAtThousandStations",
                "plain doubles without crown, rod and bent neck "
                        + time("StrengthBenchmark.plainDoublesAtThousandStations")
                        + ", those with amounts for lengths "
                        + time("StrengthBenchmark.amountsAtThousandStations")
                        + (run.hasNumpy() ? ", in numpy " + Scores.time(run.numpyNanos("scan")) : ""));
    }

    private void state() {
        row(
                "state of a neck, 60 causes and 20 readings: estimate, chance, shares, agreement",
                "StateBenchmark.allAnswers",
                "the update alone on a full matrix " + time("StateBenchmark.bareUpdate"));
        row(
                "chance that 8 limits hold together, to 1e-4",
                "StateBenchmark.eightLimits",
                "after two readings " + time("StateBenchmark.eightLimitsAfterReadings")
                        + (run.hasScipy()
                                ? ", SciPy's, of normal laws alone and to our error, " + Scores.time(run.scipy("joint"))
                                : ""));
        row(
                "chance that a plan's 5 limits hold together, every spread a guess",
                "StateBenchmark.fiveLimitsOfGuesses",
                "after two readings " + time("StateBenchmark.fiveLimitsOfGuessesAfterReadings"));
    }

    private void calibration() {
        row(
                "a reading of stiffness more, all three taken in anew",
                "StrengthBenchmark.calibrationUpdate",
                "three updates of 19 causes in plain arrays " + time("StrengthBenchmark.calibrationUpdatePlain"));
    }

    private void sweep() {
        row(
                "a design of a sweep of a million, its glue face asked",
                "SweepBenchmark.sweep",
                "two loops over the same designs " + both("SweepBenchmark.loops") + ", the sweep in parallel "
                        + time("SweepBenchmark.sweepInParallel"));
        row(
                "a design of a search, a formula for its plan",
                "SearchBenchmark.search",
                "the same designs made and asked in a loop " + both("SearchBenchmark.loop"));
    }

    private void budget() {
        row(
                "budget of 12 components, exactly: two quantiles and yield",
                "BudgetBenchmark.exactBudget",
                "from bare parts " + time("BudgetBenchmark.exactCold")
                        + (run.hasOpenTurns() ? ", OpenTURNS " + Scores.time(run.openTurns("cold")) : "")
                        + String.format(
                                Locale.ROOT,
                                ", 10^6 trials %,.0f times as long",
                                MILLION
                                        * scores.nanos("TrialsBenchmark.fullJob")
                                        / scores.nanos("BudgetBenchmark.exactBudget")));
        row("its distribution once it is there", "BudgetBenchmark.exactCdf", "");
        row("a quantile of it", "BudgetBenchmark.exactQuantile", "");
        row(
                "gradient of the neck angle by its eight inputs",
                "BudgetBenchmark.gradientDual",
                "the angle alone " + time("BudgetBenchmark.gradientPlainFunction") + ", Hipparchus "
                        + both("BudgetBenchmark.gradientHipparchus") + ", differences "
                        + time("BudgetBenchmark.gradientDifferences"));
    }

    private void trials() {
        million(
                "10^6 trials of 12 components, one thread",
                "TrialsBenchmark.oneThread",
                "the same draws without a model " + ms("TrialsBenchmark.bareDraws") + ", row by row with commons-rng "
                        + ms("TrialsBenchmark.rowsOfXoshiroByInverse") + " as one writes it first, "
                        + ms("TrialsBenchmark.rowsOfXoshiroAndZiggurat") + " at its best, Hipparchus "
                        + ms("TrialsBenchmark.rowsOfHipparchus"));
        million(
                "on two threads, with the same bits",
                "TrialsBenchmark.twoThreads",
                String.format(
                        Locale.ROOT,
                        "%.1f times as fast as on one",
                        scores.ratio("TrialsBenchmark.oneThread", "TrialsBenchmark.twoThreads")));
        million(
                "mean, deviation, yield and exact percentiles too, one thread",
                "TrialsBenchmark.fullJob",
                run.hasNumpy()
                        ? "numpy " + Scores.time(MILLION * run.numpyNanos("best")) + " at its best, "
                                + Scores.time(MILLION * run.numpyNanos("plain")) + " as one writes it first"
                        : "");
        million(
                "10^6 trials of a function of eight inputs, one thread",
                "TrialsBenchmark.nonlinear",
                "row by row with commons-rng " + ms("TrialsBenchmark.nonlinearRows")
                        + (run.hasNumpy() ? ", numpy " + Scores.time(MILLION * run.numpyNanos("nonlinear")) : ""));
        million(
                "two percentiles of 10^6 values",
                "TrialsBenchmark.percentiles",
                "commons-statistics " + ms("TrialsBenchmark.percentilesByStatistics") + ", sorting "
                        + ms("TrialsBenchmark.percentilesBySorting"));
    }

    private void whole() {
        row(
                "whole plan of a neck, warm: every check and section",
                "PlanBenchmark.plan",
                "plan and text together " + time("PlanBenchmark.planAndText") + ", its file read and checked "
                        + time("PlanBenchmark.file"));
        line(
                "its text, its data, its page, each first",
                String.join(", ", time("PlanBenchmark.text"), time("PlanBenchmark.json"), time("PlanBenchmark.page")),
                "a check, a section and an estimate more " + time("PlanBenchmark.question"));
        line(
                "a plan kept: its file, its neck, every answer",
                String.format(Locale.ROOT, "%.0f kB", run.kept().get(0)),
                String.format(Locale.ROOT, "with its text %.0f kB", run.kept().get(1)));
        FreshJvm.Times fresh = run.fresh();
        out.append(String.format(
                Locale.ROOT,
                "| first centring in a fresh JVM | %.0f ms | a JVM that does nothing %.0f ms, from Indriya's quantities"
                        + " %.0f ms |%n",
                fresh.own(),
                fresh.nothing(),
                fresh.foreign()));
    }

    private void row(String what, String benchmark, String beside) {
        line(what, both(benchmark), beside);
    }

    private void million(String what, String benchmark, String beside) {
        line(what, ms(benchmark) + ", " + Scores.size(MILLION * scores.bytes(benchmark)), beside);
    }

    private void line(String what, String cost, String beside) {
        out.append("| ").append(String.join(" | ", what, cost, beside)).append(beside.isEmpty() ? "|\n" : " |\n");
    }

    private String both(String benchmark) {
        return time(benchmark) + ", " + Scores.size(scores.bytes(benchmark));
    }

    private String time(String benchmark) {
        return Scores.time(scores.nanos(benchmark));
    }

    private String ms(String benchmark) {
        return Scores.time(MILLION * scores.nanos(benchmark));
    }

    String toMarkdown() {
        return out.toString();
    }
}
