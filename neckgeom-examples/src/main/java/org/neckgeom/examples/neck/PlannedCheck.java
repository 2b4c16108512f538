package org.neckgeom.examples.neck;

import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Section;
import org.neckgeom.plan.NeckPlan;

/** Whether all of a neck can be planned: what no part shows by itself is noted where its sentence points to. */
final class PlannedCheck {

    private PlannedCheck() {}

    /** The file, once all of its checks, settings and steps have been planned. */
    static Found<NeckFile> of(Section top, NeckFile file) {
        NeckPlan plan = file.plan();
        try {
            plan.order();
            plan.checks();
            return Found.of(file);
        } catch (IllegalArgumentException | ArithmeticException refused) {
            note(top, String.valueOf(refused.getMessage()));
            return Found.unusable();
        }
    }

    private static void note(Section top, String sentence) {
        if (sentence.contains("fingerboard")) {
            top.at(NeckKeys.FINGERBOARD).value().problem(sentence);
        } else if (sentence.startsWith("neck angle")
                && top.at(NeckKeys.NECK_SET).isThere()) {
            top.at(NeckKeys.NECK_SET).value().problem(sentence);
        } else if (sentence.contains("give the wood one")) {
            top.problem(
                    NeckKeys.WOOD,
                    "or the fingerboard's tells too little: " + sentence + ", or say which listed wood it is \"like\"");
        } else {
            top.problem(sentence);
        }
    }
}
