package org.neckgeom.strength;

/** A measure that changes evenly along the neck: {@code atZero + slope x}. */
record Taper(double atZero, double slope) {

    static Taper through(double x1, double value1, double x2, double value2) {
        double slope = (value2 - value1) / (x2 - x1);
        return new Taper(value1 - slope * x1, slope);
    }

    Taper plus(double more) {
        return new Taper(atZero + more, slope);
    }

    double at(double x) {
        return atZero + slope * x;
    }
}
