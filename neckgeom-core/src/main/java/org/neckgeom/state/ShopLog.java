package org.neckgeom.state;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Json;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.TenPoints;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.table.Spelling;
import org.neckgeom.units.LengthStyle;

/**
 * The log of a shop: what its steps were meant to give and what was read. It makes the shop's own figures of those of common
 * practice. Immutable.
 *
 * <p>A variance has a scaled inverse chi-square distribution with 8 degrees of freedom about the figure given before. The
 * residuals r of k settings make of it
 *
 * <pre>
 * nu1 = nu0 + k        s1^2 = (nu0 s0^2 + sum r^2) / (nu0 + k)
 * </pre>
 *
 * <p>of which the next error has Student's distribution. The variance of the readings is taken off, and with it degrees:
 * {@code k / (1 + u^2/s1^2)^2}. Readings of one day with one zero lose their mean, and a degree. Each week the log counts a
 * fiftieth less. A mean that is more than twice its uncertainty off 0 is a bias, and first to put right; the spread is then
 * that about the bias, one residual of 0 counted besides the k:
 *
 * <pre>
 * b = sum r / (k + 1)  s1^2 = (nu0 s0^2 + b^2 + sum (r - b)^2) / (nu0 + k)
 * </pre>
 *
 * <p>Source: the conjugate distributions of a variance, and of a mean with it, in any text on Bayesian statistics (from memory).
 */
public final class ShopLog extends ValueAnswer {

    /** Degrees of freedom that a figure given before is worth. */
    static final double PRIOR_DEGREES = 8.0;

    private static final double KEPT_A_WEEK = 0.98;
    private static final double UNLIKE = 0.01;
    private static final double BIAS_FROM = 2.0;
    private static final int DAYS = 7;
    private static final int PANELS = 40;

    private static final Form<ShopLog> FORM = Form.<ShopLog>of("shop-log")
            .fact("count", Kind.WHOLE, "lines", log -> log.entries.size())
            .fact("entries", Kind.table(LogEntry.TABLE.form()), "by date", log -> log.entries)
            .finds("empty", log -> log.entries.isEmpty(), "Shop log: no line yet")
            .finds("shop-log", "Shop log: {count:of line/lines}");

    private final List<LogEntry> entries;

    private ShopLog(List<LogEntry> entries) {
        super(FORM, entries.isEmpty() ? LengthStyle.MILLIMETRES : entries.get(0).style());
        this.entries = entries;
    }

    /**
     * {@return a log}
     *
     * @param entries its lines, in any order
     */
    public static ShopLog of(List<LogEntry> entries) {
        Objects.requireNonNull(entries, "entries").forEach(one -> Objects.requireNonNull(one, "entry"));
        return new ShopLog(entries.stream()
                .sorted(Comparator.comparing(LogEntry::date).thenComparing(LogEntry::toString))
                .toList());
    }

    /**
     * {@return the log of a file of JSON lines, one entry a line; blank lines count for nothing}
     *
     * @param jsonLines as {@link #jsonLines()} writes them
     * @throws IllegalArgumentException if a line is no entry, with its number
     */
    public static ShopLog read(String jsonLines) {
        List<LogEntry> entries = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        int number = 0;
        for (String line :
                Objects.requireNonNull(jsonLines, "jsonLines").lines().toList()) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            try {
                entries.add(LogEntry.TABLE.read(Json.read(line)));
            } catch (Refusal refusal) {
                faults.addAll(refusal.at("line " + number).faults());
            }
        }
        if (!faults.isEmpty()) {
            throw Refusal.of(faults);
        }
        return of(entries);
    }

    /** {@return the log as JSON lines: one entry a line, by date} */
    public String jsonLines() {
        return entries.stream()
                .map(entry -> Json.of(LogEntry.TABLE.write(entry, Spelling.JSON))
                        .lines()
                        .map(String::strip)
                        .collect(Collectors.joining(" ", "", "\n")))
                .collect(Collectors.joining());
    }

    /**
     * {@return this log with those lines of another that it has not; a line of a neck that it has on another date is no new one}
     *
     * @param other its lines
     */
    public ShopLog with(ShopLog other) {
        List<LogEntry> more = new ArrayList<>(entries);
        more.addAll(Objects.requireNonNull(other, "other").without(this).entries);
        return of(more);
    }

    /**
     * {@return this log without those lines that another has, on another date too where they name a neck}
     *
     * @param other its lines
     */
    public ShopLog without(ShopLog other) {
        Objects.requireNonNull(other, "other");
        return of(entries.stream()
                .filter(one -> other.entries.stream().noneMatch(one::isSameReading))
                .toList());
    }

    /**
     * {@return this log with one more line}
     *
     * @param entry the line
     */
    public ShopLog with(LogEntry entry) {
        List<LogEntry> more = new ArrayList<>(entries);
        more.add(Objects.requireNonNull(entry, "entry"));
        return of(more);
    }

    /** {@return its lines, by date} */
    public List<LogEntry> entries() {
        return entries;
    }

    /** A setting's residual. */
    private record Draw(long week, double residual, double variance, double degrees) {}

    /**
     * {@return what the shop has learnt of a kind of step}
     *
     * @param step kind of step
     * @param before figures given before, or common practice
     * @param bench the bench's figures given before
     * @param day as of which the log counts
     */
    public Learnt learnt(ShopStep step, Workmanship before, BenchUncertainty bench, LocalDate day) {
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(bench, "bench");
        Objects.requireNonNull(day, "day");
        double prior = Objects.requireNonNull(step, "step").usualMm(before, bench);
        List<LogEntry> some = entries.stream()
                .filter(one -> one.step() == step && !one.date().isAfter(day))
                .toList();
        return learnt(step, some, prior, PRIOR_DEGREES, day.toEpochDay() / DAYS);
    }

    private Learnt learnt(ShopStep step, List<LogEntry> some, double prior, double priorDegrees, long now) {
        List<Draw> draws = draws(some);
        double mean = draws.stream().mapToDouble(Draw::residual).sum() / (draws.size() + 1.0);
        Pooled about0 = pooled(draws, 0.0, prior, priorDegrees, now);
        boolean isBias = Math.abs(mean) > BIAS_FROM * about0.deviation() / Math.sqrt(draws.size() + 1.0);
        Pooled pooled = isBias ? pooled(draws, mean, prior, priorDegrees, now) : about0;
        return new Learnt(
                step,
                prior,
                pooled.deviation(),
                pooled.degrees(),
                draws.size(),
                isBias ? Optional.of(mean) : Optional.empty(),
                unlike(some),
                style());
    }

    /** What is known of a spread. */
    private record Pooled(double deviation, double degrees) {}

    /** The spread about 0, or about a bias. */
    private static Pooled pooled(List<Draw> draws, double about, double prior, double priorDegrees, long now) {
        TreeMap<Long, List<Draw>> weeks =
                draws.stream().collect(Collectors.groupingBy(Draw::week, TreeMap::new, Collectors.toList()));
        double degrees = priorDegrees;
        double variance = prior * prior + about * about / priorDegrees;
        double earned = 0.0;
        long week = weeks.isEmpty() ? now : weeks.firstKey();
        for (Map.Entry<Long, List<Draw>> one : weeks.entrySet()) {
            degrees = forgotten(degrees, priorDegrees, one.getKey() - week);
            week = one.getKey();
            double k = 0.0;
            double squares = 0.0;
            double read = 0.0;
            for (Draw draw : one.getValue()) {
                k += draw.degrees();
                double off = draw.residual() - about;
                squares += draw.degrees() * (off * off - draw.variance());
                read += draw.degrees() * draw.variance();
            }
            if (k == 0.0) {
                continue;
            }
            double noise = 1.0 + read / k / variance;
            double worth = k / (noise * noise);
            earned += worth;
            // Taken at what the readings are worth, so that noisy ones do not drag the figure to 0.
            variance = (degrees * variance + worth * Math.max(0.0, squares) / k) / (degrees + worth);
            degrees += worth;
        }
        degrees = forgotten(degrees, priorDegrees, now - week);
        boolean tooLittle = earned < 1.0;
        return tooLittle ? new Pooled(prior, priorDegrees) : new Pooled(Math.sqrt(variance), degrees);
    }

    private static double forgotten(double degrees, double prior, long weeks) {
        return prior + StrictMath.pow(KEPT_A_WEEK, (double) Math.max(0, weeks)) * (degrees - prior);
    }

    /** Settings, and of readings with a shared zero their distances from the mean of their day. */
    private static List<Draw> draws(List<LogEntry> some) {
        Map<String, List<LogEntry>> settings = new LinkedHashMap<>();
        int fresh = 0;
        for (LogEntry one : some) {
            String key = one.setting()
                    .map(name -> "set " + name + one.jig().orElse(""))
                    .orElse("own " + fresh++);
            settings.computeIfAbsent(key, name -> new ArrayList<>()).add(one);
        }
        Map<String, List<double[]>> zeros = new LinkedHashMap<>();
        Map<String, Long> weekOf = new LinkedHashMap<>();
        Set<String> alone = new HashSet<>();
        int own = 0;
        for (List<LogEntry> setting : settings.values()) {
            LogEntry first = setting.get(0);
            double n = setting.size();
            double mean = setting.stream().mapToDouble(LogEntry::residualMm).sum() / n;
            double read = setting.stream()
                            .mapToDouble(one -> one.uncertaintyMm() * one.uncertaintyMm())
                            .sum()
                    / (n * n);
            String key = first.zero().map(name -> first.date() + name).orElse("none " + own++);
            if (first.zero().isEmpty()) {
                alone.add(key);
            }
            zeros.computeIfAbsent(key, name -> new ArrayList<>()).add(new double[] {mean, read});
            weekOf.putIfAbsent(key, first.date().toEpochDay() / DAYS);
        }
        List<Draw> draws = new ArrayList<>();
        zeros.forEach((key, group) -> {
            boolean shared = !alone.contains(key);
            double n = group.size();
            double mean = shared ? group.stream().mapToDouble(one -> one[0]).sum() / n : 0.0;
            for (double[] one : group) {
                double degrees = shared ? (n - 1.0) / n : 1.0;
                // About their own mean the squares of n residuals are worth n - 1.
                double residual = shared && n > 1 ? (one[0] - mean) * Math.sqrt(n / (n - 1.0)) : one[0] - mean;
                draws.add(new Draw(Objects.requireNonNull(weekOf.get(key)), residual, one[1], degrees));
            }
        });
        return draws;
    }

    /** Two jigs whose spreads are too unlike to be one figure, in words; empty where all agree. */
    private static String unlike(List<LogEntry> some) {
        Map<String, List<Draw>> jigs = new TreeMap<>();
        some.stream()
                .filter(one -> one.jig().isPresent())
                .collect(Collectors.groupingBy(one -> one.jig().orElseThrow()))
                .forEach((jig, its) -> jigs.put(jig, draws(its)));
        List<String> names = List.copyOf(jigs.keySet());
        for (int i = 0; i < names.size(); i++) {
            for (int j = i + 1; j < names.size(); j++) {
                double[] a = squares(jigs.getOrDefault(names.get(i), List.of()));
                double[] b = squares(jigs.getOrDefault(names.get(j), List.of()));
                if (a[1] >= 2.0 && b[1] >= 2.0 && a[0] > 0.0 && b[0] > 0.0) {
                    double ratio = a[0] / a[1] / (b[0] / b[1]);
                    double tail = ratio > 1.0 ? fTail(ratio, a[1], b[1]) : fTail(1.0 / ratio, b[1], a[1]);
                    if (2.0 * tail < UNLIKE) {
                        return names.get(i) + " and " + names.get(j);
                    }
                }
            }
        }
        return "";
    }

    /** Chance of a greater ratio of two variances: the tail of a beta distribution, degrees of 2 or more, to about 1e-5. */
    static double fTail(double ratio, double n, double m) {
        DoubleUnaryOperator density = t -> StrictMath.pow(t, 0.5 * n - 1.0) * StrictMath.pow(1.0 - t, 0.5 * m - 1.0);
        double x = n * ratio / (n * ratio + m);
        double above = TenPoints.integral(density, x, 1.0, PANELS);
        return above / (above + TenPoints.integral(density, 0.0, x, PANELS));
    }

    private static double[] squares(List<Draw> draws) {
        double sum = 0.0;
        double degrees = 0.0;
        for (Draw one : draws) {
            sum += one.degrees() * one.residual() * one.residual();
            degrees += one.degrees();
        }
        return new double[] {sum, degrees};
    }

    /**
     * {@return a workmanship with what the shop has learnt in the place of the figures given before}
     *
     * @param before figures given before, or common practice
     * @param day as of which the log counts
     */
    public Workmanship workmanship(Workmanship before, LocalDate day) {
        Workmanship work = Objects.requireNonNull(before, "before");
        Objects.requireNonNull(day, "day");
        for (ShopStep step : ShopStep.values()) {
            Learnt one = learnt(step, before, BenchUncertainty.withDefaults(), day);
            if (one.count() == 0) {
                continue;
            }
            ErrorDistribution<Length> spread = one.spread();
            work = switch (step) {
                case READING, CUT_SCATTER, FENCE_MOVE -> work;
                case EDGE -> work.edge(spread);
                case LOCATING -> work.locating(spread);
                case CUTTING -> work.cutting(spread);
                case GLUING -> work.gluing(spread);
                case FITTING -> work.fitting(spread);
                case STOPPING -> work.stopping(spread);
            };
        }
        return work;
    }

    /**
     * {@return a bench with what the shop has learnt in the place of the figures given before}
     *
     * @param before figures given before, or common practice
     * @param day as of which the log counts
     */
    public BenchUncertainty bench(BenchUncertainty before, LocalDate day) {
        BenchUncertainty bench = Objects.requireNonNull(before, "before");
        Objects.requireNonNull(day, "day");
        for (ShopStep step : List.of(ShopStep.READING, ShopStep.CUT_SCATTER, ShopStep.FENCE_MOVE)) {
            Learnt one = learnt(step, Workmanship.withDefaults(), before, day);
            if (one.count() == 0) {
                continue;
            }
            bench = switch (step) {
                case READING -> bench.repeatability(one.awayFrom0());
                case CUT_SCATTER ->
                    bench.cutScatter(one.awayFrom0(), (int) Math.max(2, Math.min(1000, Math.round(one.degrees() + 1))));
                default -> bench.moveScatter(one.awayFrom0());
            };
        }
        return bench;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {entries};
    }
}
