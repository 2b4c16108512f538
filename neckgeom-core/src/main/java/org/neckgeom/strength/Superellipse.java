package org.neckgeom.strength;

import java.util.function.Supplier;
import org.neckgeom.fault.Refusal;
import org.neckgeom.kernel.Once;

/**
 * Area and moments of the half superellipse {@code (y/a)^p + (u/b)^p = 1}, u measured from the flat side, for one p.
 *
 * <p>{@code integral of u^k 2 a (1 - (u/b)^p)^(1/p) du from 0 to b = (2/p) B((k + 1)/p, 1 + 1/p) a b^(k+1)}. Exact; p = 2
 * is the half ellipse.
 */
final class Superellipse {

    /** Smallest exponent: below 1 the back would be hollow. */
    static final double LEAST_EXPONENT = 1;

    /** Largest exponent, practically a rectangle. */
    static final double LARGEST_EXPONENT = 50;

    private final double exponent;
    private final double area;
    private final double first;
    private final double second;
    private final Supplier<SuperellipseStrips> strips;

    private Superellipse(double exponent) {
        double q = 1 / exponent;
        this.exponent = exponent;
        this.area = 2 * q * GammaFunction.beta(q, 1 + q);
        this.first = 2 * q * GammaFunction.beta(2 * q, 1 + q);
        this.second = 2 * q * GammaFunction.beta(3 * q, 1 + q);
        this.strips = new Once<>(() -> new SuperellipseStrips(exponent, area / 2, first, 1.5 * second));
    }

    static Superellipse of(double exponent) {
        if (!(exponent >= LEAST_EXPONENT && exponent <= LARGEST_EXPONENT)) {
            throw Refusal.of(
                    "exponent of the back's curve",
                    "range",
                    "be between " + LEAST_EXPONENT + " and " + LARGEST_EXPONENT,
                    exponent);
        }
        return new Superellipse(exponent);
    }

    /** The p of the curve. */
    double exponent() {
        return exponent;
    }

    /** The area over {@code a b}. */
    double area() {
        return area;
    }

    /** The moment about the flat side over {@code a b^2}. */
    double first() {
        return first;
    }

    /** The second moment about the flat side over {@code a b^3}. */
    double second() {
        return second;
    }

    /** What lies between its middle and a line beside it. */
    SuperellipseStrips strips() {
        return strips.get();
    }

    /** How deep it is so far from its middle, a share of its half-width from 0 to 1, over its depth. */
    double depthAt(double share) {
        return StrictMath.pow(1 - StrictMath.pow(share, exponent), 1 / exponent);
    }

    /** Returns whether the point (y, u) lies inside the curve or on it. */
    boolean holds(double y, double u, double halfWidth, double depth) {
        double v = Math.abs(y) / halfWidth;
        double w = u / depth;
        if (!(v <= 1 && w <= 1)) {
            return false;
        }
        // The curve of exponent p lies outside those of all smaller ones, which saves the powers in nearly every case.
        if (v + w <= 1 || (exponent >= 2 && v * v + w * w <= 1)) {
            return true;
        }
        return StrictMath.pow(v, exponent) + StrictMath.pow(w, exponent) <= 1;
    }
}
