package org.neckgeom.plan;

import java.util.Objects;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.neck.Neck;

/** What may have no answer although each part may be given: refused at the part that a maker would change. */
final class Answerable {

    static final String UNANSWERABLE = "unanswerable";

    private static final String FRET_PLANE = "fret plane";

    private Answerable() {}

    /** The depth runs straight through its two frets: where it comes to nothing there is no neck to plan. */
    static void checkBack(Neck design) {
        double channelStart = design.channel().orElseThrow().startMm();
        double channelEnd = design.channel().orElseThrow().endMm();
        double second = design.scale().fretMm(design.back().secondFret());
        double last = Math.max(Math.max(second, design.bodyJointMm()), channelEnd);
        refuseNothing(
                design,
                Math.min(0, channelStart),
                "back.depths[1].depth",
                design.back().firstDepthMm());
        refuseNothing(design, last, "back.depths[2].depth", design.back().secondDepthMm());
    }

    private static void refuseNothing(Neck design, double x, String path, double depth) {
        if (!(design.backDepthAtMm(x) > 0)) {
            throw Refusal.of(
                    path,
                    UNANSWERABLE,
                    "leave depth in the back " + design.style().brief(x) + " from the nut",
                    design.style().brief(depth));
        }
    }

    /** By what was asked in vain. */
    static Refusal placed(RuntimeException refused) {
        String sentence = Objects.requireNonNullElse(refused.getMessage(), "has no answer");
        String path = path(refused);
        if (refused instanceof Refusal refusal
                && FRET_PLANE.equals(refusal.faults().get(0).path())) {
            Fault fault = refusal.faults().get(0);
            return fault.given().isEmpty()
                    ? Refusal.because("neck set", fault.rule(), "neck set: " + sentence)
                    : Refusal.of("neck set." + FRET_PLANE, fault.rule(), fault.must(), fault.given());
        }
        String own = path.equals("neck set") ? path + ": " + sentence : sentence;
        return Refusal.because(path, UNANSWERABLE, own).causedBy(refused);
    }

    private static String path(RuntimeException refused) {
        Fault fault = refused instanceof Refusal several
                ? several.faults().get(0)
                : refused instanceof NoAnswer none ? none.fault() : new Fault("plan", UNANSWERABLE, "", "");
        if (fault.rule().equals("no-figure")) {
            return "wood";
        }
        return switch (fault.path()) {
            case "neck angle", FRET_PLANE -> "neck set";
            case "fingerboard", "fingerboard's wood" -> "fingerboard";
            default -> "plan";
        };
    }
}
