package org.neckgeom.examples.shell;

/** A script that could not be run to its end; the message names script, line, reason and the source line. */
public final class ScriptFailed extends Exception {

    private static final long serialVersionUID = 1L;

    ScriptFailed(String message) {
        super(message);
    }
}
