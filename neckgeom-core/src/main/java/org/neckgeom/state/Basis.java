package org.neckgeom.state;

/** What the spread of a cause rests on. */
public enum Basis {
    /** Common practice: a guess, whose size is uncertain by a quarter. */
    COMMON_PRACTICE("common practice"),
    /** Given by the maker: as well known as its degrees of freedom allow. */
    GIVEN("as given"),
    /** Readings of this shop: as well known as their number allows. */
    READINGS("your readings");

    private final String words;

    Basis(String words) {
        this.words = words;
    }

    /** Returns it in words, such as {@code common practice}. */
    @Override
    public String toString() {
        return words;
    }
}
