package org.neckgeom.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * The slot's depth read after each pass, held against what was set: does the cutter creep out of its collet?
 * Immutable.
 *
 * <p>A slot deeper than set by more than {@code k = 3} standard uncertainties of the reading has crept; so has one
 * whose excess has grown, over all passes read, by more than 3 standard uncertainties of a difference. Three and not
 * two, because the check is made after every pass and must not cry wolf.
 */
public final class CreepCheck extends ValueAnswer {

    private static final Form<CreepCheck> FORM = Form.<CreepCheck>of("creep-check")
            .fact("pass", Kind.WHOLE, "the last pass read", check -> check.excessesMm.size())
            .factIfAny(
                    "excess", Kind.ESTIMATE, "how much deeper than set the slot is after that pass", CreepCheck::excess)
            .phrase("deeper", check -> check.excessMm() < 0, "{excess:size small} shallower")
            .phrase("deeper", "{excess:size small} deeper")
            .findsOnly("not-read", check -> check.excessesMm.isEmpty(), "no depth read yet: read it after each pass")
            .finds("holds", check -> check.call() == Call.HOLDS, "pass {pass} as deep as set, u {excess:u}")
            .finds(
                    "creeps",
                    check -> check.call() == Call.CREEPS,
                    "cutter creeps: pass {pass} is {deeper} than set, u {excess:u}; stop, clean collet and shank, clamp it"
                            + " short of the bottom, set again")
            .finds(
                    "shallow",
                    "pass {pass} is {excess:size small} shallower than set, u {excess:u}; look for chips under the work and a"
                            + " blank that is not flat on the table");

    /** What the readings say. */
    public enum Call {
        /** The depths agree with what was set. */
        HOLDS,
        /** The cutter has moved up out of the collet: stop. */
        CREEPS,
        /** The slot is shallower than set: chips under the work, or a work that is not flat on the table. */
        SHALLOW
    }

    private static final double K = 3;

    private final double[] setMm;
    private final double uncertaintyMm;
    private final List<Double> excessesMm;

    CreepCheck(double[] setMm, double uncertaintyMm, List<Double> excessesMm, LengthStyle style) {
        super(FORM, style);
        this.setMm = setMm;
        this.uncertaintyMm = uncertaintyMm;
        this.excessesMm = List.copyOf(excessesMm);
    }

    /**
     * {@return the check with the depth read after the next pass}
     *
     * @param depth of the slot as it is now, more than 0
     * @throws IllegalArgumentException if the depth is not more than 0, or all passes have been read
     */
    public CreepCheck read(Quantity<Length> depth) {
        double mm = LibraryUnits.mmPositive(depth, "slot depth");
        int next = excessesMm.size();
        if (next >= setMm.length) {
            throw Refusal.of(
                    "readings",
                    "at-most",
                    "be no more than the " + setMm.length + (setMm.length == 1 ? " pass" : " passes") + " planned",
                    "one more was given",
                    "");
        }
        List<Double> all = new ArrayList<>(excessesMm);
        all.add(mm - setMm[next]);
        return new CreepCheck(setMm, uncertaintyMm, all, style());
    }

    /** {@return what the readings say; the call; HOLDS before the first reading} */
    public Call call() {
        if (excessesMm.isEmpty()) {
            return Call.HOLDS;
        }
        double last = excessMm();
        double least = excessesMm.stream().mapToDouble(e -> e).min().orElse(last);
        if (last > K * uncertaintyMm || last - least > K * Math.sqrt(2) * uncertaintyMm) {
            return Call.CREEPS;
        }
        return last < -K * uncertaintyMm ? Call.SHALLOW : Call.HOLDS;
    }

    /** {@return how much deeper than set the slot is after the last pass read, in mm; 0 before the first} */
    public double excessMm() {
        return excessesMm.isEmpty() ? 0 : excessesMm.get(excessesMm.size() - 1);
    }

    private Optional<Estimate<Length>> excess() {
        return excessesMm.isEmpty()
                ? Optional.empty()
                : Optional.of(Estimate.ofLibrary(excessMm(), uncertaintyMm, Double.POSITIVE_INFINITY, style().unit()));
    }

    @Override
    protected Object[] parts() {
        return new Object[] {setMm, uncertaintyMm, excessesMm};
    }
}
