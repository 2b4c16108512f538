package org.neckgeom.plan;

import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.measure.quantity.Length;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Neck;
import org.neckgeom.strength.Sections;

/**
 * A neck planned again as if it had been repaired.
 *
 * @param before the plan of the neck as it is
 * @param after the plan of the repaired one
 */
record RepairedNeck(Stages before, Stages after) {

    /** The neck left as it is. */
    static RepairedNeck asItIs(Stages plan) {
        return new RepairedNeck(plan, plan);
    }

    /** With another reading in the place of one, as well known. */
    RepairedNeck reading(NeckFeature feature, double mm) {
        Estimate<Length> was = before.measured()
                .of(feature)
                .orElseGet(() -> Estimate.ofLibrary(
                        0, 0, Double.POSITIVE_INFINITY, before.style().unit()));
        return reading(after.measured().read(feature, asWellKnown(was, mm)));
    }

    /** With other readings in the place of all. */
    RepairedNeck reading(MeasuredNeck other) {
        return new RepairedNeck(before, Stages.of(after.job().with(after.neck(), other)));
    }

    private Estimate<Length> asWellKnown(Estimate<Length> was, double mm) {
        return Estimate.ofLibrary(
                mm,
                was.libraryUncertainty(),
                was.degreesOfFreedom(),
                before.style().unit());
    }

    /** With the slot in the middle. */
    RepairedNeck centred() {
        RepairedNeck head = reading(NeckFeature.SLOT_OFFSET, 0);
        return before.measured().has(NeckFeature.SLOT_OFFSET_AT_HEEL)
                ? head.reading(NeckFeature.SLOT_OFFSET_AT_HEEL, 0)
                : head;
    }

    RepairedNeck neck(UnaryOperator<Neck> change) {
        return new RepairedNeck(before, Stages.of(after.job().with(change.apply(after.neck()), after.measured())));
    }

    /** With another glue face, or another back: what was read of the back is so much deeper too. */
    RepairedNeck deeper(double mm) {
        RepairedNeck drawn = neck(neck -> deeper(neck, mm));
        for (double station : before.measured().backDepths().keySet()) {
            drawn = drawn.deeperAt(station, mm);
        }
        return drawn;
    }

    /** With a back that is so much deeper where it was read. */
    RepairedNeck deeperAt(double station, double mm) {
        Estimate<Length> was =
                Objects.requireNonNull(after.measured().backDepths().get(station));
        return reading(
                after.measured().backDepth(before.style().amount(station), asWellKnown(was, was.libraryValue() + mm)));
    }

    private Neck deeper(Neck neck, double mm) {
        BackProfile back = neck.back();
        return neck.back(back.depths(
                before.style().amount(back.firstDepthMm() + mm), before.style().amount(back.secondDepthMm() + mm)));
    }

    /** The least wood under the channel; less than 0 where it is through; nothing where it can't be computed. */
    Optional<Double> woodMm() {
        return Attempt.atAll(() -> Optional.of(after.floor().wood().least().woodMm()))
                .answer();
    }

    /** Its stiffness over the drawn neck's, where the wood is thinnest between nut and body joint. */
    Optional<Double> stiffness() {
        return Attempt.atAll(() -> Optional.of(before.floor().wood().least().stationMm()))
                .answer()
                .flatMap(x -> stiffnessAt(Math.max(0, Math.min(x, before.neck().bodyJointMm())), 0));
    }

    /** The same at a station, with the back so much deeper there than it is planned. */
    Optional<Double> stiffnessAt(double x, double more) {
        return Attempt.atAll(() ->
                        Optional.of(ofSection(deeper(after.made().design(), more), x) / ofSection(before.neck(), x)))
                .answer();
    }

    private double ofSection(Neck neck, double x) {
        return Sections.of(neck).at(before.style().amount(x)).stiffnessNm2();
    }
}
