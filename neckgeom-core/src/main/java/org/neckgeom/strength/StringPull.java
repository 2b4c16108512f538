package org.neckgeom.strength;

import java.util.ArrayList;
import java.util.List;
import org.neckgeom.shape.Line;

/**
 * The strings as one load on the neck: a section at x carries {@code M(x) = m0 + m1 x - P zN(x)}.
 *
 * <p>The strings leave the nut in straight lines toward the saddle, so cutting neck and strings at x leaves on the head
 * side nothing but their tension. With tension T, slope angle s along the neck and height h0 over the glue face where its line
 * crosses x = 0, each string adds {@code T cos s} to P, {@code T cos s h0} to m0 and {@code T sin s} to m1. Exact for the
 * straight neck; what the bow adds is left to {@link BeamScan}. M is positive when it bows the neck forward. A string whose
 * nut point lies past x = 0, on fanned frets, loads the neck from there on.
 *
 * @param pull P, N
 * @param atNut m0, N mm
 * @param perMm m1, N
 * @param overSaddle sum of each string's part of P over the x of its saddle, N/mm
 * @param late strings that begin past x = 0
 */
record StringPull(double pull, double atNut, double perMm, double overSaddle, List<Late> late) {

    static final StringPull NONE = new StringPull(0, 0, 0, 0);

    /** A string that begins at a station past x = 0: its parts of P, m0 and m1. */
    record Late(double from, double pull, double atNut, double perMm) {}

    StringPull(double pull, double atNut, double perMm, double overSaddle) {
        this(pull, atNut, perMm, overSaddle, List.of());
    }

    /** Adds a string along the line on which its tension acts, from nut to saddle. */
    StringPull plus(double tension, Line line) {
        double run = line.to().xMm() - line.from().xMm();
        double rise = line.to().zMm() - line.from().zMm();
        double along = tension * run / line.lengthMm();
        double up = tension * rise / line.lengthMm();
        double atZero = along * line.from().zMm() - up * line.from().xMm();
        List<Late> others = late;
        if (line.from().xMm() > 0) {
            others = new ArrayList<>(late);
            others.add(new Late(line.from().xMm(), along, atZero, up));
        }
        return new StringPull(
                pull + along,
                atNut + atZero,
                perMm + up,
                overSaddle + along / line.to().xMm(),
                List.copyOf(others));
    }

    double moment(double x, double neutralAxis) {
        double moment = atNut + perMm * x - pull * neutralAxis;
        for (Late string : late) {
            if (x < string.from()) {
                moment -= string.atNut() + string.perMm() * x - string.pull() * neutralAxis;
            }
        }
        return moment;
    }

    /** What the bow adds at x: the strings run from the lifted nut to the saddle while the neck there has risen. */
    double momentOfBow(double x, double nutLift, double rise) {
        return nutLift * (pull - x * overSaddle) - pull * rise;
    }

    /** Where strings begin past x = 0, mm. */
    double[] starts() {
        return late.stream().mapToDouble(Late::from).toArray();
    }

    /** This load times a number. */
    StringPull times(double factor) {
        return new StringPull(
                factor * pull,
                factor * atNut,
                factor * perMm,
                factor * overSaddle,
                late.stream()
                        .map(s -> new Late(s.from, factor * s.pull, factor * s.atNut, factor * s.perMm))
                        .toList());
    }

    /** This load with all strings higher over the glue face. */
    StringPull higher(double mm) {
        return new StringPull(pull, atNut + pull * mm, perMm, overSaddle, late);
    }

    /** This load with more of m1. */
    StringPull steeper(double newtonMore) {
        return new StringPull(pull, atNut, perMm + newtonMore, overSaddle, late);
    }
}
