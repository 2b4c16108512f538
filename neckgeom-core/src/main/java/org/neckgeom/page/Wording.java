package org.neckgeom.page;

/** Sentences that the text and the page have in common. */
final class Wording {

    static final String MACHINE_FIRST =
            "The machine's own instructions, guards, local rules and licensed practice come before these cautions.";

    static final String NOT_TO_SCALE = "Do not measure on the drawings. Full-size templates are a file of their own.";

    static final String FRAME =
            "Stations run along the centreline from the fingerboard side of the nut, positive toward the body. Depths are"
                    + " measured from the face the fingerboard is glued to. Read every setting back on scrap before it is"
                    + " cut in the neck.";

    static final String NO_ORDER = "No order works: see the conflicts.";

    private Wording() {}
}
