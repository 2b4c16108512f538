package org.neckgeom.examples.shell;

import java.util.stream.Collectors;
import org.neckgeom.text.Words;

/**
 * The text of a script, for finding lines in it.
 *
 * @param name the script's name
 * @param text the whole text
 */
record Script(String name, String text) {

    /**
     * {@return a failure; the failure with name, line, reason and the source line}
     *
     * @param rest the text from the failing place to its end, or a piece of the script
     * @param reason what went wrong
     */
    ScriptFailed failure(String rest, String reason) {
        String wanted = afterBlanks(rest);
        int at = text.endsWith(wanted) ? text.length() - wanted.length() : Math.max(0, text.indexOf(wanted));
        int line = (int) text.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
        String source = text.lines().skip(line - 1L).findFirst().orElse("").strip();
        String shown =
                reason.lines().map(part -> Words.shown(part.replace('\t', ' '))).collect(Collectors.joining("\n"));
        return new ScriptFailed(
                Words.shown(name) + ":" + line + ": " + shown + "\n    " + Words.shown(source.replace('\t', ' ')));
    }

    /** The text without the blanks and comments it starts with. */
    static String afterBlanks(String text) {
        String rest = text.stripLeading();
        while (true) {
            int end;
            if (rest.startsWith("//") || rest.startsWith("#!")) {
                end = rest.indexOf('\n');
            } else if (rest.startsWith("/*")) {
                int close = rest.indexOf("*/", 2);
                end = close < 0 ? -1 : close + 1;
            } else {
                return rest;
            }
            if (end < 0) {
                return "";
            }
            rest = rest.substring(end + 1).stripLeading();
        }
    }

    /** Whether a text's last word is a semicolon, a comment at the end of its last line set aside. */
    static boolean endsWithSemicolon(String text) {
        String last = text.stripTrailing();
        return withoutComment(last.substring(last.lastIndexOf('\n') + 1))
                .stripTrailing()
                .endsWith(";");
    }

    private static String withoutComment(String line) {
        char quote = 0;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (quote != 0) {
                i += c == '\\' ? 1 : 0;
                quote = c == quote ? 0 : quote;
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (line.startsWith("//", i)) {
                return line.substring(0, i);
            }
        }
        return line;
    }
}
