package org.neckgeom.strength;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Force;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.fault.Refusal;
import org.neckgeom.measure.Interval;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.Torque;

/**
 * What the strings of a neck do to it, such as {@code 760 N, 9.1 N.m at fret 7}: the pull of each, of all, and the moment it
 * makes about the neutral axis of each section. Immutable.
 *
 * <p>Pull from pitch by {@code T = mu (2 L f)^2} (Mersenne, Taylor; exact for an ideal string) unless it was told. Moment
 * {@code M(x) = sum T cos s (h(x) - zN(x))}, h the string's height over the glue face and zN the neutral axis, on the
 * straight neck. Estimate through zN, which depends on the moduli of neck and fingerboard.
 */
public final class StringLoad implements SaysLengths<StringLoad> {

    private final NeckDesign neck;
    private final StringHeights heights;
    private final double[] tensions;
    private final StringPull pull;

    private StringLoad(NeckDesign neck, StringHeights heights) {
        this.neck = neck;
        this.heights = heights;
        this.tensions = NeckModel.tensions(neck);
        this.pull = NeckModel.pull(neck, heights);
    }

    /**
     * Returns the load on a neck, its strings at the usual heights.
     *
     * @param neck with scale, fingerboard and strings, whose pull is told or follows from mass per length or diameter
     * @return the load
     * @throws IllegalArgumentException if a part has not been told
     */
    public static StringLoad of(NeckDesign neck) {
        return new StringLoad(Objects.requireNonNull(neck, "neck"), StringHeights.usual());
    }

    /**
     * Returns the load with the strings at other heights.
     *
     * @param other the heights
     * @return the load
     */
    public StringLoad heights(StringHeights other) {
        return new StringLoad(neck, Objects.requireNonNull(other, "heights"));
    }

    /**
     * Returns the pull of a single string of each course, from bass to treble.
     *
     * @return one to a course
     */
    public List<Amount<Force>> tensions() {
        return Arrays.stream(tensions).mapToObj(StringLoad::force).toList();
    }

    /**
     * Returns the pull of all strings together, along the neck.
     *
     * @return the sum
     */
    public Amount<Force> total() {
        return force(totalNewton());
    }

    /**
     * Returns the pull of all strings together in N.
     *
     * @return the sum, along each string
     */
    public double totalNewton() {
        double sum = 0;
        for (double tension : tensions) {
            sum += tension * neck.strings().inCourse();
        }
        return sum;
    }

    /**
     * Returns the moment the strings make about the neutral axis of the section at a fret, positive: it bows the neck
     * forward.
     *
     * @param fret 0 (the nut) to the fret at the body
     * @return the moment
     */
    public Amount<Torque> momentAtFret(int fret) {
        return likelyAtFret(fret).amount();
    }

    /**
     * Returns the interval of the moment at a fret.
     *
     * @param fret 0 (the nut) to the fret at the body
     * @return where the moment lies for 95 of 100 pairs of woods
     */
    public Interval<Torque> momentIntervalAtFret(int fret) {
        return likelyAtFret(fret).interval();
    }

    private Likely<Torque> likelyAtFret(int fret) {
        if (fret < 0 || fret > neck.bodyAtFret()) {
            throw Refusal.of("fret", "range", "be between 0 and that at the body, " + neck.bodyAtFret(), fret);
        }
        NeckBeam beam = NeckModel.beam(neck);
        double x = neck.scale().fretMm(fret);
        SectionMoments section = new SectionMoments();
        double[] found = Relief.spread(neck).interval((back, board) -> {
            beam.withModuli(back * beam.back().modulus(), board * beam.board().modulus())
                    .section(x, section);
            return pull.moment(x, section.neutralAxis());
        });
        return Likely.of(found, ShopUnit.NEWTON_METRE);
    }

    private static Amount<Force> force(double newton) {
        return Amount.ofHouse(newton, ShopUnit.NEWTON);
    }

    @Override
    public StringLoad in(LengthStyle other) {
        return new StringLoad(neck.in(other), heights.in(other));
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof StringLoad other && neck.equals(other.neck) && heights.equals(other.heights);
    }

    @Override
    public int hashCode() {
        return Objects.hash(neck, heights);
    }

    /** Returns the total, the pull of each string, and the moment at nut, half way and body joint. */
    @Override
    public String toString() {
        try {
            return likely();
        } catch (IllegalArgumentException | ArithmeticException e) {
            return "Strings of " + neck.name() + " cannot be told: " + e.getMessage();
        }
    }

    private String likely() {
        int inCourse = neck.strings().inCourse();
        String each = tensions.length > 10
                ? "from " + Numbers.fixed(Arrays.stream(tensions).min().orElseThrow(), 1) + " to "
                        + Numbers.fixed(Arrays.stream(tensions).max().orElseThrow(), 1)
                : String.join(
                        ", ",
                        Arrays.stream(tensions)
                                .mapToObj(t -> Numbers.fixed(t, 1))
                                .toList());
        int middle = (neck.bodyAtFret() + 1) / 2;
        return Report.titled("Strings of " + neck.name() + ": " + Numbers.fixed(totalNewton(), 0) + " N")
                .row("each string", each + " N" + (inCourse > 1 ? ", " + inCourse + " to a course" : ""))
                .row("moment at the nut", likelyAtFret(0))
                .row("at fret " + middle, likelyAtFret(middle))
                .row("at fret " + neck.bodyAtFret(), likelyAtFret(neck.bodyAtFret()))
                .row("heights", heights.in(neck.style()))
                .note("Estimate of the moment: about the neutral axis, whose place rests on the woods' moduli.")
                .toString();
    }
}
