package org.neckgeom.search;

/** Ends a search from inside: all designs are used up, or it was stopped. What was asked stays. */
final class SearchOver extends RuntimeException {

    private static final long serialVersionUID = 1L;

    SearchOver() {
        super("the search is over", null, false, false);
    }
}
