package org.neckgeom.examples.neck;

import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Section;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;

/** Whether all of a neck can be planned: what no part shows by itself is noted where its sentence points to. */
final class PlannedCheck {

    private PlannedCheck() {}

    /** The file, once all of its checks, settings and steps have been planned. */
    static Found<NeckFile> of(Section top, NeckFile file) {
        try {
            file.plan().checked();
            return Found.of(file);
        } catch (Refusal refused) {
            note(top, refused.faults().get(0));
            return Found.unusable();
        }
    }

    private static void note(Section top, Fault fault) {
        String must = fault.must();
        switch (fault.path()) {
            case "back.firstDepth" -> top.problemAt("back.first depth", "must " + must + ", but was " + fault.given());
            case "back.secondDepth" ->
                top.problemAt("back.second depth", "must " + must + ", but was " + fault.given());
            case "fingerboard" -> top.problem(Refusal.because("fingerboard", fault.rule(), "fingerboard: " + must));
            case "wood" ->
                top.problem(
                        NeckKeys.WOOD,
                        "or the fingerboard's tells too little: " + must + ", or say which listed wood it is \"like\"");
            default -> {
                boolean isOfSet = fault.path().equals("neckSet")
                        && top.at(NeckKeys.NECK_SET).isThere();
                (isOfSet ? top.at(NeckKeys.NECK_SET).value() : top).problem(must);
            }
        }
    }
}
