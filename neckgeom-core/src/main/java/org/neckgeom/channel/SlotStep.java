package org.neckgeom.channel;

/** The next step; the order of the first four breaks ties. */
public enum SlotStep {
    /** Stop setting and cut the neck. */
    CUT("cut"),
    /** Read the same cut once more. */
    READ_AGAIN("read-again"),
    /** Move the fence. */
    MOVE("move-fence"),
    /** Make a trial cut, or another one with the fence untouched. */
    TRIAL_CUT("trial-cut"),
    /** Measure the trial piece: walls alone do not place the slot in the blank. */
    MEASURE_PIECE("measure-piece"),
    /** Ask which way the fence went: the cut lies where it would after the opposite move. */
    CHECK_MOVE("check-move"),
    /** Plane the blank's edges parallel. */
    SQUARE_EDGES("square-edges"),
    /** Make a strip that tapers as the blank does. */
    TAPERED_STRIP("tapered-strip"),
    /** No step of this bench leads to the wanted conformance probability. */
    CANNOT("cannot");

    private final String code;

    SlotStep(String code) {
        this.code = code;
    }

    /** {@return the step's code; lower case with hyphens} */
    public String code() {
        return code;
    }
}
