package org.neckgeom.kernel;

import java.util.List;
import java.util.stream.Stream;

/** Independent errors that add up: those that have a real characteristic function, and samples. */
record RoughParts(List<RoughPart> smooth, List<RoughPart> samples) {

    /** Sub-Gaussian errors pass so many standard deviations with a probability of 1.2e-12. */
    private static final double LIGHT = 7.5;

    static RoughParts of(List<RoughPart> parts) {
        return new RoughParts(
                parts.stream().filter(part -> !part.isSamples()).toList(),
                parts.stream().filter(RoughPart::isSamples).toList());
    }

    boolean isNothing() {
        return smooth.isEmpty() && samples.isEmpty();
    }

    /** Whether there is one error at most, so that no series is needed. */
    boolean isLone() {
        return smooth.size() + samples.size() < 2;
    }

    /** Probability of the one error under low or above high. */
    double lone(double low, double high) {
        return all().findAny().map(part -> part.outside(low, high)).orElse(low > 0.0 || high < 0.0 ? 1.0 : 0.0);
    }

    private Stream<RoughPart> all() {
        return Stream.concat(smooth.stream(), samples.stream());
    }

    /** Variance at the scales' medians. */
    double variance() {
        return all().mapToDouble(RoughPart::variance).sum();
    }

    List<RoughPart> students() {
        return smooth.stream().filter(RoughPart::isStudent).toList();
    }

    /**
     * An error that the sum of these and of others, taken so many times, all but never passes, Student's tails aside. No two
     * scales are likely to be wider than at 5 standard deviations of their logarithms at once.
     */
    static double reach(RoughParts one, RoughParts two, double times) {
        double[] sums = new double[4];
        one.addTo(sums, 1.0);
        two.addTo(sums, times);
        double sd = Math.sqrt(one.variance() + times * times * two.variance());
        double reach = Math.min(LIGHT * Math.sqrt(sums[0] + sums[1]), sums[2] + sums[3]);
        for (RoughPart part : one.students()) {
            reach += part.studentReach(sd);
        }
        for (RoughPart part : two.students()) {
            reach += times * part.studentReach(sd / times);
        }
        return reach;
    }

    private void addTo(double[] sums, double times) {
        for (RoughPart part : smooth) {
            if (!part.isStudent()) {
                part.addTo(sums, times, part.variance());
            }
        }
        for (RoughPart part : samples) {
            part.addTo(sums, times, part.end() * part.end());
        }
    }
}
