package org.neckgeom.solid;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.neckgeom.fault.Refusal;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.HeelTransition;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.Volute;
import org.neckgeom.shape.Curve;

/**
 * The depth of the neck's wood on the centreline, as a curve: straight through its two frets, the volute's cosine, the
 * heel's arc and slope and cap; before the nut the head's back where that is shallower.
 *
 * @param curve the depth over x, in mm
 * @param shaft the same without the head: the shaft's back carried on before the nut
 * @param heelStart where the turn into the heel begins, infinite where there is none
 * @param capStart where the cap begins, infinite where there is none
 */
record DepthCurve(Curve curve, Curve shaft, double heelStart, double capStart) {

    private static final String TRANSITION = "back.heel transition";
    private static final int HALVINGS = 200;

    /** Far enough before the nut for any head. */
    private static final double BEFORE_MM = 1e6;

    /**
     * @param headBack depth of the head's back over x, where there is a head
     * @param joint station of the body joint
     */
    static DepthCurve of(BackProfile back, Scale scale, Optional<Heel> heel, double joint, Optional<Curve> headBack) {
        double first = scale.fretMm(back.firstFret());
        double second = scale.fretMm(back.secondFret());
        Curve plain = Curve.straight(
                first, back.firstDepthMm(), (back.secondDepthMm() - back.firstDepthMm()) / (second - first));
        Optional<HeelTransition> turn = back.heelTransition();
        double start = turn.map(t -> start(t, plain, heel, joint)).orElse(Double.POSITIVE_INFINITY);
        double cap = Double.POSITIVE_INFINITY;
        Curve curve = plain;
        if (turn.isPresent()) {
            curve = plain.turned(start, turn.get().radiusMm(), turn.get().slopeRad());
            double high = heel.map(Heel::heightMm).orElse(Double.POSITIVE_INFINITY);
            if (curve.valueAt(joint) >= high) {
                cap = curve.risesTo(high, start, joint);
                curve = curve.levelFrom(cap);
            }
        }
        Optional<Volute> volute = back.volute();
        if (volute.isPresent()) {
            curve = curve.raised(volute.get().extraDepthMm(), 0, volute.get().lengthMm());
        }
        Curve cut = headBack.isPresent() ? curve.least(headBack.get(), -BEFORE_MM, 0) : curve;
        return new DepthCurve(cut, curve, start, cap);
    }

    private static double start(HeelTransition turn, Curve plain, Optional<Heel> heel, double joint) {
        if (turn.start().isPresent()) {
            return turn.start().get().libraryValue();
        }
        double high = heel.map(Heel::heightMm)
                .orElseThrow(() -> Refusal.because(
                        TRANSITION + ".starts at",
                        "missing",
                        TRANSITION + ".starts at must be given where the neck has no heel"));
        double cap = joint - turn.capLengthMm();
        double lo = 0;
        double hi = cap;
        // The plain back is straight, so a turn that starts farther on is this one moved along it.
        Curve atNut = plain.turned(0, turn.radiusMm(), turn.slopeRad());
        DoubleUnaryOperator deepAtCap = x -> atNut.valueAt(cap - x) + plain.slopeAt(0) * x;
        if (!(deepAtCap.applyAsDouble(lo) >= high) || !(plain.valueAt(cap) < high)) {
            throw Refusal.of(
                    TRANSITION,
                    "reaches-the-cap",
                    "bring the back to the heel's height of " + turn.style().brief(high) + " at "
                            + turn.style().brief(cap) + " from the nut, where the cap begins",
                    "brings it",
                    "to " + turn.style().brief(deepAtCap.applyAsDouble(lo)) + " at most");
        }
        for (int i = 0; i < HALVINGS && hi - lo > Math.ulp(lo); i++) {
            double middle = (lo + hi) / 2;
            if (deepAtCap.applyAsDouble(middle) >= high) {
                lo = middle;
            } else {
                hi = middle;
            }
        }
        return lo;
    }
}
