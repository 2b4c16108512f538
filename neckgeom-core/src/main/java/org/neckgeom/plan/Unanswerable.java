package org.neckgeom.plan;

import java.util.Objects;
import org.neckgeom.design.NeckDesign;

/**
 * Why a plan has no answers although each of its parts may be told: its message is the sentence, {@link #part} what to
 * change. Immutable.
 */
public final class Unanswerable extends IllegalArgumentException {

    private static final long serialVersionUID = 1;

    /** What a maker would change. */
    public enum Part {
        /** The back's depth at its first fret. */
        BACK_FIRST("back depth at the first fret"),
        /** The back's depth at its second fret. */
        BACK_SECOND("back depth at the second fret"),
        /** The fingerboard. */
        FINGERBOARD(""),
        /** The neck set. */
        NECK_SET(""),
        /** The wood of neck or fingerboard, of which too little is known. */
        WOOD(""),
        /** Several parts together. */
        WHOLE("");

        private final String words;

        Part(String words) {
            this.words = words;
        }
    }

    /** The part of the plan that has no answer. */
    private final Part part;
    /** The sentence that states why. */
    private final String why;

    private Unanswerable(Part part, String why) {
        super((part.words + " " + why).strip());
        this.part = part;
        this.why = why;
    }

    /** By what was asked in vain. */
    static Unanswerable of(RuntimeException refused) {
        String sentence = Objects.requireNonNullElse(refused.getMessage(), "has no answer");
        Unanswerable placed = new Unanswerable(part(sentence), sentence);
        placed.initCause(refused);
        return placed;
    }

    private static Part part(String sentence) {
        if (sentence.contains("fingerboard") || sentence.startsWith("the crown's radius")) {
            return Part.FINGERBOARD;
        }
        if (sentence.startsWith("neck angle")) {
            return Part.NECK_SET;
        }
        return sentence.contains("give the wood one") ? Part.WOOD : Part.WHOLE;
    }

    /** The depth runs straight through its two frets: where it comes to nothing there is no neck to plan. */
    static void checkBack(NeckDesign design) {
        double channelStart = design.channel().orElseThrow().startMm();
        double channelEnd = design.channel().orElseThrow().endMm();
        double second = design.scale().fretMm(design.back().secondFret());
        double last = Math.max(Math.max(second, design.bodyJointMm()), channelEnd);
        refuseNothing(
                design,
                Math.min(0, channelStart),
                Part.BACK_FIRST,
                design.back().firstDepthMm());
        refuseNothing(design, last, Part.BACK_SECOND, design.back().secondDepthMm());
    }

    private static void refuseNothing(NeckDesign design, double x, Part part, double depth) {
        if (!(design.backDepthAtMm(x) > 0)) {
            throw new Unanswerable(
                    part,
                    "is " + design.style().brief(depth) + ", and runs out to nothing before "
                            + design.style().brief(x) + " from the nut");
        }
    }

    /**
     * Returns what a maker would change.
     *
     * @return the part
     */
    public Part part() {
        return part;
    }

    /**
     * Returns the reason alone, to be read after the name of a part where the part is a single figure.
     *
     * @return such as {@code is 1 mm, and runs out to nothing before 300 mm from the nut}, or a whole sentence
     */
    public String why() {
        return why;
    }
}
