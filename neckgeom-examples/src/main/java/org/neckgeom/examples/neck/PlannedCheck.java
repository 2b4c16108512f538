package org.neckgeom.examples.neck;

import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Section;
import org.neckgeom.plan.Unanswerable;

/** Whether all of a neck can be planned: what no part shows by itself is noted where its sentence points to. */
final class PlannedCheck {

    private PlannedCheck() {}

    /** The file, once all of its checks, settings and steps have been planned. */
    static Found<NeckFile> of(Section top, NeckFile file) {
        try {
            file.plan().checked();
            return Found.of(file);
        } catch (Unanswerable refused) {
            note(top, refused);
            return Found.unusable();
        }
    }

    private static void note(Section top, Unanswerable refused) {
        String why = refused.why();
        switch (refused.part()) {
            case BACK_FIRST -> top.at(NeckKeys.BACK).value().problem(BackPart.FIRST_DEPTH, why);
            case BACK_SECOND -> top.at(NeckKeys.BACK).value().problem(BackPart.SECOND_DEPTH, why);
            case FINGERBOARD -> top.at(NeckKeys.FINGERBOARD).value().problem(why);
            case WOOD ->
                top.problem(
                        NeckKeys.WOOD,
                        "or the fingerboard's tells too little: " + why + ", or say which listed wood it is \"like\"");
            case NECK_SET, WHOLE -> {
                boolean isOfSet = refused.part() == Unanswerable.Part.NECK_SET
                        && top.at(NeckKeys.NECK_SET).isThere();
                (isOfSet ? top.at(NeckKeys.NECK_SET).value() : top).problem(why);
            }
        }
    }
}
