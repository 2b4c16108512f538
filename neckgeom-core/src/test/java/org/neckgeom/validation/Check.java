package org.neckgeom.validation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** One line of the report: figures of one kind from one source, of which the one farthest off is shown. */
public final class Check {

    /** Differences under this share of the figure are rounding and differ from machine to machine. */
    private static final double ROUNDING = 1e-12;

    private final String what;
    private final Source source;
    private final String where;
    private final Status status;
    private final String unit;
    private final List<String> answers = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();
    private int figures;
    private double worst = -1;
    private double expected;
    private double ours;
    private double allowed;

    Check(String what, Source source, String where, Status status, String unit) {
        this.what = what;
        this.source = source;
        this.where = where;
        this.status = status;
        this.unit = unit;
    }

    /** Names the public answers that the figures hold, such as {@code Scarf.run}. */
    public Check of(String... typeAndMethod) {
        answers.addAll(List.of(typeAndMethod));
        return this;
    }

    /** Adds a figure that ours may miss by no more than the given amount. */
    public Check figure(double expectedFigure, double oursFigure, double most) {
        figures++;
        double off = Math.abs(oursFigure - expectedFigure);
        if (!(off <= most)) {
            faults.add(what + ": expected " + expectedFigure + ", ours " + oursFigure + ", off by " + off + ", allowed "
                    + most);
        }
        // By how much of what is allowed; of those that differ by rounding alone the first that is not nought.
        double rank = off <= ROUNDING * Math.abs(expectedFigure) ? 0 : off / Math.max(most, Double.MIN_VALUE);
        if (rank > worst || (rank == 0 && worst == 0 && expected == 0)) {
            worst = rank;
            expected = expectedFigure;
            ours = oursFigure;
            allowed = most;
        }
        return this;
    }

    /** Adds a figure that ours may miss by no more than a share of it. */
    public Check relative(double expectedFigure, double oursFigure, double share) {
        return figure(expectedFigure, oursFigure, share * Math.abs(expectedFigure));
    }

    String what() {
        return what;
    }

    Source source() {
        return source;
    }

    Status status() {
        return status;
    }

    int figures() {
        return figures;
    }

    List<String> answers() {
        return answers;
    }

    List<String> faults() {
        return faults;
    }

    String row() {
        double off = Math.abs(ours - expected);
        String difference = off <= ROUNDING * Math.abs(expected) ? (off == 0 ? "none" : "rounding") : number(off, 2);
        // A machine whose sine rounds another way may have a rounding where this one has none.
        String shown = difference.equals("none") && status != Status.PRACTICE && allowed > 0 ? "rounding" : difference;
        return "| "
                + String.join(
                        " | ",
                        what + (figures == 1 ? "" : String.format(Locale.ROOT, " (%,d figures)", figures)),
                        source.label() + (where.isEmpty() ? "" : ", " + where),
                        number(expected, 10) + (unit.isEmpty() ? "" : " " + unit),
                        number(ours, 10),
                        shown,
                        allowed == 0 ? "none" : number(allowed, 2),
                        status.words())
                + " |";
    }

    private static String number(double value, int digits) {
        if (value == 0 || Double.isInfinite(value)) {
            return value == 0 ? "0" : "infinite";
        }
        BigDecimal rounded =
                new BigDecimal(value).round(new MathContext(digits)).stripTrailingZeros();
        int exponent = rounded.precision() - rounded.scale() - 1;
        return exponent < -4 || exponent > 11
                ? rounded.unscaledValue().toString().replaceFirst("^(-?\\d)(\\d+)$", "$1.$2") + "e" + exponent
                : rounded.toPlainString();
    }
}
