package org.neckgeom.examples;

import java.io.IOException;

/** Why something can't be written, as a sentence. */
final class Unwritable extends IOException {

    private static final long serialVersionUID = 1L;

    Unwritable(String sentence) {
        super(sentence);
    }
}
