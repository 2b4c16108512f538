package org.neckgeom.validation;

/** What stands behind an expected figure. */
public enum Status {
    PUBLISHED("published", "printed in the source named; seen there or in a text that reproduces it"),
    LIBRARY("library", "computed during the test by a general library of another make"),
    EXACT("exact arithmetic", "computed with 20 to 60 digits, its script beside the table, or a closed form"),
    SIMULATED(
            "simulation",
            "counted in simulated work by a seeded generator; two simulations differ by up to four standard errors"),
    PRACTICE("common practice", "a figure of the trade, not of a standard"),
    MEMORY("memory", "printed in the source named, written down from memory and not seen");

    private final String words;
    private final String meaning;

    Status(String words, String meaning) {
        this.words = words;
        this.meaning = meaning;
    }

    public String words() {
        return words;
    }

    public String meaning() {
        return meaning;
    }

    /** Status of a row in the reference tables. */
    public static Status ofTable(String word) {
        return switch (word) {
            case "VERIFIED", "published" -> PUBLISHED;
            case "COMPUTED", "computed" -> EXACT;
            case "MEMORY", "printed" -> MEMORY;
            default -> throw new IllegalArgumentException("no status is called \"" + word + "\"");
        };
    }
}
