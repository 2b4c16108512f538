package org.neckgeom.page;

import java.util.List;
import java.util.Locale;

/**
 * The colours of the page, by day and by night. Blue against orange-brown stays apart for every common kind of colour
 * blindness, and nothing is shown by colour alone: every outcome has its word, every part its outline and label.
 */
enum Ink {
    /** What the page is printed on. */
    PAPER("#ffffff", "#14171a"),
    /** Ground of a table's every other row and of figures' legends. */
    PANEL("#f1f0ec", "#20252a"),
    /** Text and outlines. */
    TEXT("#111418", "#f3f1ea"),
    /** Labels beside the numbers. */
    QUIET("#474d54", "#bcc3ca"),
    /** Rules, leaders and the edges of tables. */
    RULE("#70767d", "#8b939b"),
    /** What has been kept, and links. */
    GOOD("#0b4f8a", "#8cc8ff"),
    /** What is not known yet. */
    OPEN("#6b4700", "#f0c060"),
    /** What to stop for: always filled. */
    STOP("#8f2a00", "#ffa27a"),
    /** Text on {@link #STOP}. */
    ON_STOP("#ffffff", "#1c0d06"),
    /** Cut faces of the neck's wood. */
    WOOD("#e9d3ad", "#5a4630"),
    /** The fingerboard. */
    BOARD("#cfab82", "#4d3524"),
    /** Rod and steel. */
    ROD("#8fa3b5", "#6f8496");

    /** Least contrast of text: WCAG 2.2, success criterion 1.4.3, level AA. */
    static final double LEAST_FOR_TEXT = 4.5;

    /** Least contrast of lines that carry meaning: WCAG 2.2, success criterion 1.4.11, level AA. */
    static final double LEAST_FOR_LINES = 3;

    /** Two colours of which the first is seen on the second. */
    record Pair(Ink front, Ink ground, double least) {}

    private final String day;
    private final String night;

    Ink(String day, String night) {
        this.day = day;
        this.night = night;
    }

    String day() {
        return day;
    }

    String night() {
        return night;
    }

    /** Returns the name of the style's variable: {@code --on-stop}. */
    String variable() {
        return "--" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns how the style sheet asks for it: {@code var(--on-stop)}. */
    String use() {
        return "var(" + variable() + ")";
    }

    /** Every pair the page puts upon each other. */
    static List<Pair> pairs() {
        return List.of(
                new Pair(TEXT, PAPER, LEAST_FOR_TEXT),
                new Pair(TEXT, PANEL, LEAST_FOR_TEXT),
                new Pair(QUIET, PAPER, LEAST_FOR_TEXT),
                new Pair(QUIET, PANEL, LEAST_FOR_TEXT),
                new Pair(GOOD, PAPER, LEAST_FOR_TEXT),
                new Pair(GOOD, PANEL, LEAST_FOR_TEXT),
                new Pair(OPEN, PAPER, LEAST_FOR_TEXT),
                new Pair(OPEN, PANEL, LEAST_FOR_TEXT),
                new Pair(ON_STOP, STOP, LEAST_FOR_TEXT),
                new Pair(STOP, PAPER, LEAST_FOR_TEXT),
                new Pair(RULE, PAPER, LEAST_FOR_LINES),
                new Pair(RULE, PANEL, LEAST_FOR_LINES),
                new Pair(TEXT, WOOD, LEAST_FOR_LINES),
                new Pair(TEXT, BOARD, LEAST_FOR_LINES),
                new Pair(TEXT, ROD, LEAST_FOR_LINES));
    }

    /** Returns the style's variables of one light, such as {@code --paper:#ffffff;}. */
    static String variables(boolean byNight) {
        StringBuilder css = new StringBuilder();
        for (Ink ink : values()) {
            css.append(ink.variable())
                    .append(':')
                    .append(byNight ? ink.night : ink.day)
                    .append(';');
        }
        return css.toString();
    }
}
