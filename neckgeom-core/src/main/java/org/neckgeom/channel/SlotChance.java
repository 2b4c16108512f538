package org.neckgeom.channel;

import java.util.Arrays;
import org.neckgeom.numeric.NormalLaw;
import org.neckgeom.numeric.StudentLaw;

/**
 * How likely a slot keeps a limit along its whole length, from what is known of its two ends.
 *
 * <p>The offset at the part t of the channel is {@code e(t) = (1 - t) e1 + t e2 - r(t)}: e1 and e2 share what the setting is
 * uncertain by (variance V) and have a part of their own each (the blank's width read there); r is known at knots. That all
 * knots keep {@code |e| <= L} is a polygon in (e1, e2), and the chance is one integral over e1 of the part of e2 between the
 * least upper and the greatest lower bound, by Gauss and Legendre between the bounds' kinks. With few degrees of freedom e1 is
 * Student's and e2 given e1 is Student's with one more, its scale times {@code sqrt((nu + z^2)/(nu + 1))}. Lengths in mm.
 */
final class SlotChance {

    private static final double FARTHEST = 10;
    private static final double SMALLEST_TAIL = 1e-9;
    private static final int MOST_PANELS = 24;
    /** Panels no longer than this many of the narrower scale keep the error under 1e-8. */
    private static final double PANEL = 5;

    private static final double[] NODES = {
        0.09501250983763744, 0.28160355077925891, 0.45801677765722739, 0.61787624440264375,
        0.75540440835500303, 0.86563120238783174, 0.94457502307323258, 0.98940093499164993
    };
    private static final double[] WEIGHTS = {
        0.18945061045506850, 0.18260341504492359, 0.16915651939500254, 0.14959598881657673,
        0.12462897125553387, 0.09515851168249278, 0.06225352393864789, 0.02715245941175409
    };

    private final double limit;
    /** Parts of the channel, 0 first and 1 last, and what the fence shifts the slot by there. */
    private final double[] parts;

    private final double[] shifts;
    private final double degreesOfFreedom;
    /** How far from its middle a law still counts, in its scale. */
    private final double reach;

    private final LawTable law;
    private final LawTable given;

    SlotChance(double limit, double[] parts, double[] shifts, double degreesOfFreedom) {
        this.limit = limit;
        this.parts = parts;
        this.shifts = shifts;
        this.degreesOfFreedom = degreesOfFreedom;
        this.reach = Double.isInfinite(degreesOfFreedom)
                ? FARTHEST
                : Math.sqrt(degreesOfFreedom) * StrictMath.pow(SMALLEST_TAIL, -1 / degreesOfFreedom);
        this.law = LawTable.of(degreesOfFreedom);
        this.given = LawTable.of(degreesOfFreedom + 1);
    }

    /**
     * Whether the chance of breaking the limit is at least so much, by what one end alone shows: true is certain, false is not.
     *
     * @param scales so many of its own scales inside the limit a value breaks it with that chance: {@link #scalesFor}
     */
    boolean surelyBreaks(double scales, double e1, double e2, double variance, double u1, double u2) {
        int last = shifts.length - 1;
        return limit - Math.abs(e1 - shifts[0]) <= scales * Math.sqrt(variance + u1 * u1)
                || limit - Math.abs(e2 - shifts[last]) <= scales * Math.sqrt(variance + u2 * u2);
    }

    /** How many scales from its middle a value is exceeded on one side with a chance; that chance under a half. */
    double scalesFor(double chance) {
        return law.upperQuantile(chance);
    }

    /** The middle of the band from the least to the greatest offset, for ends whose best values are e1 and e2. */
    double middle(double e1, double e2) {
        double most = Double.NEGATIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < parts.length; i++) {
            double e = (1 - parts[i]) * e1 + parts[i] * e2 - shifts[i];
            most = Math.max(most, e);
            least = Math.min(least, e);
        }
        return (most + least) / 2;
    }

    /**
     * The chance.
     *
     * @param e1 best value at the channel's head end, before the fence's shift
     * @param e2 at its heel end
     * @param variance that the ends share
     * @param u1 standard uncertainty of the first end's own part
     * @param u2 of the second's
     */
    double keeps(double e1, double e2, double variance, double u1, double u2) {
        if (u1 == 0 && u2 == 0) {
            return together(e1, e2, variance);
        }
        double v1 = variance + u1 * u1;
        double s1 = Math.sqrt(v1);
        double pull = variance / v1;
        double rest = Math.sqrt(Math.max(0, variance + u2 * u2 - variance * pull));
        double from = Math.max(-limit + shifts[0], e1 - reach * s1);
        double to = Math.min(limit + shifts[0], e1 + reach * s1);
        if (!(from < to)) {
            return 0;
        }
        double sum = 0;
        double[] kinks = kinks(from, to);
        for (int i = 1; i < kinks.length; i++) {
            double width = kinks[i] - kinks[i - 1];
            double scale = Math.min(s1, rest > 0 ? rest : s1);
            int panels = (int) Math.min(MOST_PANELS, Math.max(1, Math.ceil(width / (PANEL * scale))));
            for (int panel = 0; panel < panels; panel++) {
                double half = width / panels / 2;
                double centre = kinks[i - 1] + (2 * panel + 1) * half;
                double part = 0;
                for (int k = 0; k < NODES.length; k++) {
                    part += WEIGHTS[k]
                            * (slice(centre + half * NODES[k], e1, e2, s1, pull, rest)
                                    + slice(centre - half * NODES[k], e1, e2, s1, pull, rest));
                }
                sum += half * part;
            }
        }
        return Math.min(1, sum);
    }

    /** Density of e1 at x times the chance of e2 between its bounds there. */
    private double slice(double x, double e1, double e2, double s1, double pull, double rest) {
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int i = 1; i < parts.length; i++) {
            double t = parts[i];
            double known = (1 - t) * x;
            high = Math.min(high, (limit + shifts[i] - known) / t);
            low = Math.max(low, (-limit + shifts[i] - known) / t);
        }
        if (!(high > low)) {
            return 0;
        }
        double z = (x - e1) / s1;
        double mean = e2 + pull * (x - e1);
        if (rest == 0) {
            return mean >= low && mean <= high ? law.density(z) / s1 : 0;
        }
        double wider = Double.isInfinite(degreesOfFreedom)
                ? rest
                : rest * Math.sqrt((degreesOfFreedom + z * z) / (degreesOfFreedom + 1));
        return law.density(z) / s1 * (given.cdf((high - mean) / wider) - given.cdf((low - mean) / wider));
    }

    /** Both ends move as one: all knots keep the limit for a stretch of the setting. */
    private double together(double e1, double e2, double variance) {
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int i = 0; i < parts.length; i++) {
            double e = (1 - parts[i]) * e1 + parts[i] * e2 - shifts[i];
            low = Math.max(low, -limit - e);
            high = Math.min(high, limit - e);
        }
        if (!(high > low)) {
            return 0;
        }
        if (variance == 0) {
            return low <= 0 && high >= 0 ? 1 : 0;
        }
        double u = Math.sqrt(variance);
        return between(low / u, high / u, degreesOfFreedom);
    }

    /** From the nearer tail, so that a small chance keeps its digits. */
    private static double between(double low, double high, double degreesOfFreedom) {
        if (Double.isInfinite(degreesOfFreedom)) {
            return low > 0
                    ? NormalLaw.upperTail(low) - NormalLaw.upperTail(high)
                    : NormalLaw.cdf(high) - NormalLaw.cdf(low);
        }
        return low > 0
                ? StudentLaw.upperTail(low, degreesOfFreedom) - StudentLaw.upperTail(high, degreesOfFreedom)
                : StudentLaw.cdf(high, degreesOfFreedom) - StudentLaw.cdf(low, degreesOfFreedom);
    }

    /** Where one bound on e2 takes over from another, in order, with both ends. */
    private double[] kinks(double from, double to) {
        double[] kinks = new double[2 + 2 * parts.length * parts.length];
        kinks[0] = from;
        kinks[1] = to;
        int count = 2;
        for (int i = 1; i < parts.length; i++) {
            double own = (1 - parts[i]) / parts[i];
            for (int j = 1; j < i; j++) {
                double turn = own - (1 - parts[j]) / parts[j];
                for (int side = -1; side <= 1 && turn != 0; side += 2) {
                    double at = ((side * limit + shifts[i]) / parts[i] - (side * limit + shifts[j]) / parts[j]) / turn;
                    if (at > from && at < to) {
                        kinks[count++] = at;
                    }
                }
            }
        }
        double[] sorted = Arrays.copyOf(kinks, count);
        Arrays.sort(sorted);
        return sorted;
    }
}
