package org.neckgeom.examples.service;

import java.util.List;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;

/** Why a request is refused: the status, one sentence, and what is wrong with what was given. */
final class Refused extends Exception {

    private static final long serialVersionUID = 1L;

    private final int status;
    private final transient List<Fault> faults;

    private Refused(int status, String sentence, List<Fault> faults) {
        super(sentence);
        this.status = status;
        this.faults = faults;
    }

    static Refused because(int status, String sentence) {
        return new Refused(status, sentence, List.of());
    }

    /** What the library refuses: every fault with its path and its rule. */
    static Refused of(Refusal refusal) {
        return new Refused(400, refusal.getMessage(), refusal.faults());
    }

    int status() {
        return status;
    }

    List<Fault> faults() {
        return faults;
    }
}
