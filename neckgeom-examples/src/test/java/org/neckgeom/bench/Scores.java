package org.neckgeom.bench;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.results.RunResult;

/** The best slice of every benchmark of a run, in nanoseconds, with the bytes it allocates. */
final class Scores {

    /** A time and a number of bytes. */
    record Score(double nanos, double bytes) {

        Score better(Score other) {
            return new Score(Math.min(nanos, other.nanos), Math.min(bytes, other.bytes));
        }
    }

    private final Map<String, Score> all = new TreeMap<>();

    /** Takes in the results of a run; of a benchmark that ran before, the better ones. */
    void add(Collection<RunResult> results) {
        for (RunResult result : results) {
            String name = result.getParams().getBenchmark().replace("org.neckgeom.bench.", "");
            for (String key : result.getParams().getParamsKeys()) {
                name += " " + key + "=" + result.getParams().getParam(key);
            }
            TimeUnit unit = result.getParams().getTimeUnit();
            double nanos = result.getPrimaryResult().getStatistics().getMin() * unit.toNanos(1);
            Score score = new Score(nanos, bytes(result));
            all.merge(name, score, Score::better);
        }
    }

    private static double bytes(RunResult result) {
        for (String second : result.getSecondaryResults().keySet()) {
            if (second.endsWith("gc.alloc.rate.norm")) {
                // The least of the slices: later ones are free of what the compiler still does in the first.
                return result.getSecondaryResults().get(second).getStatistics().getMin();
            }
        }
        return Double.NaN;
    }

    double nanos(String name) {
        return score(name).nanos;
    }

    double bytes(String name) {
        return score(name).bytes;
    }

    /** How many times as long the one takes as the other. */
    double ratio(String slow, String fast) {
        return nanos(slow) / nanos(fast);
    }

    private Score score(String name) {
        Score score = all.get(name);
        if (score == null) {
            throw new IllegalArgumentException("no benchmark " + name + " among " + all.keySet());
        }
        return score;
    }

    /** As the inside of a JSON object. */
    String toJson() {
        StringBuilder out = new StringBuilder();
        all.forEach((name, score) -> out.append(out.length() == 0 ? "" : ",\n")
                .append(String.format(
                        Locale.ROOT, "    \"%s\": {\"ns\": %.3f, \"bytes\": %.1f}", name, score.nanos, score.bytes)));
        return out.toString();
    }

    /** A time in the unit it is best read in: two or three digits. */
    static String time(double nanos) {
        String[] units = {"ns", "us", "ms", "s"};
        double value = nanos;
        int unit = 0;
        while (value >= 999.5 && unit < units.length - 1) {
            value /= 1000;
            unit++;
        }
        return number(value) + " " + units[unit];
    }

    /** Two significant digits under 10, whole numbers above. */
    static String number(double value) {
        if (value >= 9.95) {
            return String.format(Locale.ROOT, "%,.0f", value);
        }
        return String.format(Locale.ROOT, value < 0.0995 ? "%.3f" : value < 0.995 ? "%.2f" : "%.1f", value);
    }

    static String size(double bytes) {
        if (bytes < 0.5) {
            return "0 B";
        }
        return bytes < 9_999.5 ? number(bytes) + " B" : number(bytes / 1000) + " kB";
    }
}
