package org.neckgeom.strength;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Force;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Interval;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.Torque;

/**
 * String tension ({@index pull}) as a load on the neck, such as {@code 760 N, 9.1 N.m at fret 7}: the tension of each string,
 * of all, and the moment it makes about the neutral axis of each section. Immutable.
 *
 * <p>Tension from pitch by {@code T = mu (2 L f)^2} (Mersenne, Taylor; exact for an ideal string) unless the tension is
 * given. Moment {@code M(x) = sum T cos s (h(x) - zN(x))}, h the string's height over the glue face and zN the neutral
 * axis, on the straight neck. Estimate through zN, which depends on the moduli of neck and fingerboard.
 */
public final class StringLoad extends ValueAnswer {

    private static final Kind<Double> NEWTON = Kind.libraryValue(ShopUnit.NEWTON);

    private static final Form<StringLoad> FORM = Form.<StringLoad>of("string-load")
            .fact("neck", Kind.NAME, "its name", load -> load.neck.name())
            .factIfAny("obstacle", Kind.NAME, "why there is no moment", StringLoad::obstacle)
            .findsOnly(
                    "incomplete",
                    x -> x.obstacle().isPresent(),
                    "String tension of {neck} cannot be computed: {obstacle}")
            .fact("total", NEWTON, "tension of all strings together", StringLoad::totalNewton)
            .finds("string-load", "Strings of {neck}: {total:0}")
            .fact("tensions", Kind.list(NEWTON), "of one string of each course, bass first", StringLoad::newtons)
            .fact("pullLower", NEWTON, "least of them", load -> Collections.min(load.newtons()))
            .fact("pullUpper", NEWTON, "greatest of them", load -> Collections.max(load.newtons()))
            .fact(
                    "inCourse",
                    Kind.WHOLE,
                    "strings in a course",
                    load -> NeckModel.strings(load.neck).inCourse())
            .phrase("course", load -> NeckModel.strings(load.neck).inCourse() > 1, ", {inCourse} to a course")
            .line(
                    "tensions",
                    "each string",
                    load -> load.tensions.length > 10,
                    "from {pullLower:1 bare} to {pullUpper:1}{course}")
            .line("tensions", "each string", load -> load.tensions.length <= 10, "{tensions:1 bare} N{course}")
            .factIfAny("momentAtNut", Likely.KIND, "positive bows the neck forward", load -> load.likely(0))
            .line("momentAtNut", "moment at the nut", "{momentAtNut}")
            .fact("middleFret", Kind.WHOLE, "half way to the body", StringLoad::middleFret)
            .factIfAny("momentAtMiddle", Likely.KIND, "at that fret", load -> load.likely(load.middleFret()))
            .line("momentAtMiddle", "at fret {middleFret}", "{momentAtMiddle}")
            .fact("bodyFret", Kind.WHOLE, "at the body", load -> load.neck.bodyAtFret())
            .factIfAny("momentAtBody", Likely.KIND, "at that fret", load -> load.likely(load.neck.bodyAtFret()))
            .line("momentAtBody", "at fret {bodyFret}", "{momentAtBody}")
            .row("heights", "heights", Kind.answer(StringHeights.FORM), "of the strings", load -> load.heights)
            .note(
                    "estimate",
                    "Estimate of the moment: about the neutral axis, whose place rests on the woods' moduli.");

    private final Neck neck;
    private final StringHeights heights;
    private final double[] tensions;
    private final StringPull pull;

    private StringLoad(Neck neck, StringHeights heights) {
        super(FORM, neck.style());
        this.neck = neck;
        this.heights = heights;
        this.tensions = NeckModel.tensions(neck);
        this.pull = NeckModel.pull(neck, heights);
    }

    /**
     * {@return the load on a neck, its strings at the usual heights}
     *
     * @param neck with scale, fingerboard and strings, whose tension is given or follows from linear density or
     *     diameter
     * @throws IllegalArgumentException if a part is missing
     */
    public static StringLoad of(Neck neck) {
        return new StringLoad(Objects.requireNonNull(neck, "neck"), StringHeights.usual());
    }

    /**
     * {@return the load with the strings at other heights}
     *
     * @param other the heights
     */
    public StringLoad heights(StringHeights other) {
        return new StringLoad(neck, Objects.requireNonNull(other, "heights"));
    }

    /** {@return the tension of a single string of each course, from bass to treble; one to a course} */
    public List<Amount<Force>> tensions() {
        return Arrays.stream(tensions).mapToObj(StringLoad::force).toList();
    }

    /** {@return the tension of all strings together, along the neck} */
    public Amount<Force> total() {
        return force(totalNewton());
    }

    private double totalNewton() {
        double sum = 0;
        for (double tension : tensions) {
            sum += tension * NeckModel.strings(neck).inCourse();
        }
        return sum;
    }

    /**
     * {@return the moment of the strings about the neutral axis at a fret, positive: bows the neck forward}
     *
     * @param fret 0 (the nut) to the fret at the body
     */
    public Amount<Torque> momentAtFret(int fret) {
        return likelyAtFret(fret).amount();
    }

    /**
     * {@return the 95 % interval of the moment at a fret over pairs of woods}
     *
     * @param fret 0 (the nut) to the fret at the body
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
        double[] found = NeckModel.spread(neck).interval((back, board) -> {
            beam.stiffer(back, board).section(x, section);
            return pull.moment(x, section.neutralAxis());
        });
        return Likely.of(found, ShopUnit.NEWTON_METRE);
    }

    private static Amount<Force> force(double newton) {
        return Amount.ofLibrary(newton, ShopUnit.NEWTON);
    }

    private List<Double> newtons() {
        return Arrays.stream(tensions).boxed().toList();
    }

    private int middleFret() {
        return (neck.bodyAtFret() + 1) / 2;
    }

    private Optional<Likely<Torque>> likely(int fret) {
        return obstacle().isEmpty() ? Optional.of(likelyAtFret(fret)) : Optional.empty();
    }

    private Optional<String> obstacle() {
        try {
            likelyAtFret(0);
            likelyAtFret(middleFret());
            likelyAtFret(neck.bodyAtFret());
            return Optional.empty();
        } catch (IllegalArgumentException | ArithmeticException none) {
            return Optional.ofNullable(none.getMessage());
        }
    }

    @Override
    protected Object[] parts() {
        return new Object[] {neck, heights};
    }
}
