package org.neckgeom.shape;

import java.util.stream.DoubleStream;

/**
 * One smooth piece of a curve: {@code value + slope (x - at) + height (1 + cos(pi (x - middle) / reach)) / 2 + side
 * sqrt(radius^2 - (x - centre)^2)}, the last two only where height or side is not 0. No piece has both.
 */
record CurvePiece(
        double at,
        double value,
        double slope,
        double height,
        double middle,
        double reach,
        int side,
        double radius,
        double centre) {

    static CurvePiece straight(double at, double value, double slope) {
        return new CurvePiece(at, value, slope, 0, 0, 1, 0, 0, 0);
    }

    static CurvePiece arc(double level, int side, double radius, double centre) {
        return new CurvePiece(centre, level, 0, 0, 0, 1, side, radius, centre);
    }

    boolean isStraight() {
        return height == 0 && side == 0;
    }

    CurvePiece waved(double addedHeight, double newMiddle, double newReach) {
        return new CurvePiece(at, value, slope, addedHeight, newMiddle, newReach, side, radius, centre);
    }

    CurvePiece plus(double from, double more, double moreSlope) {
        return new CurvePiece(
                at,
                value + more + moreSlope * (at - from),
                slope + moreSlope,
                height,
                middle,
                reach,
                side,
                radius,
                centre);
    }

    /** This less a straight piece. */
    CurvePiece minus(CurvePiece straight) {
        return plus(straight.at, -straight.value, -straight.slope);
    }

    double valueAt(double x) {
        double sum = value + slope * (x - at);
        if (height != 0) {
            sum += height * 0.5 * (1 + StrictMath.cos(phase(x)));
        }
        if (side != 0) {
            sum += side * root(x);
        }
        return sum;
    }

    double slopeAt(double x) {
        double sum = slope;
        if (height != 0) {
            sum -= height * StrictMath.PI / (2 * reach) * StrictMath.sin(phase(x));
        }
        if (side != 0) {
            sum -= side * (x - centre) / root(x);
        }
        return sum;
    }

    double bendAt(double x) {
        double sum = 0;
        if (height != 0) {
            double k = StrictMath.PI / reach;
            sum -= height / 2 * k * k * StrictMath.cos(phase(x));
        }
        if (side != 0) {
            double r = root(x);
            sum -= side * radius * radius / (r * r * r);
        }
        return sum;
    }

    private double phase(double x) {
        return StrictMath.PI * (x - middle) / reach;
    }

    private double root(double x) {
        return Math.sqrt(Math.max(0, (radius - (x - centre)) * (radius + (x - centre))));
    }

    /** Where it is level between two x, both included. */
    double[] levelIn(double from, double to) {
        double[] all = new double[0];
        if (side != 0) {
            // slope = side (x - centre) / root
            all = new double[] {centre + side * slope * radius / Math.sqrt(1 + slope * slope)};
        } else if (height != 0) {
            double sine = 2 * reach * slope / (StrictMath.PI * height);
            if (Math.abs(sine) <= 1) {
                double first = StrictMath.asin(sine) * reach / StrictMath.PI;
                double second = Math.copySign(reach, sine) - first;
                all = new double[] {middle + first, middle + second};
            }
        }
        return DoubleStream.of(all).filter(x -> x >= from && x <= to).sorted().toArray();
    }

    /** Upper bound of the slope either way between two x. */
    double steepest(double from, double to) {
        double most = Math.max(Math.abs(slopeAt(from)), Math.abs(slopeAt(to)));
        if (height != 0) {
            for (double x : new double[] {middle - reach / 2, middle + reach / 2}) {
                if (x > from && x < to) {
                    most = Math.max(most, Math.abs(slopeAt(x)));
                }
            }
        }
        return most;
    }

    /** Upper bound of the second derivative either way between two x. */
    double mostBent(double from, double to) {
        double most = Math.max(Math.abs(bendAt(from)), Math.abs(bendAt(to)));
        return height != 0 && middle > from && middle < to ? Math.max(most, Math.abs(bendAt(middle))) : most;
    }
}
