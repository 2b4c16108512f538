package org.neckgeom.page;

import java.util.List;
import java.util.StringTokenizer;

/** Lines of plain text for a terminal, none longer than 80 characters unless one word is. */
final class TextLines {

    static final int WIDTH = 80;
    private static final int MOST_INDENT = 44;

    private final StringBuilder out = new StringBuilder();

    TextLines heading(String title, char under) {
        if (out.length() > 0) {
            out.append('\n');
        }
        String line = title.strip();
        out.append(line).append('\n');
        out.append(String.valueOf(under).repeat(Math.min(WIDTH, Math.max(1, line.length()))))
                .append('\n');
        return this;
    }

    /** Writes a line as it is. */
    TextLines line(String line) {
        out.append(line.stripTrailing()).append('\n');
        return this;
    }

    /** Writes a text of lines after a lead, each wrapped. */
    TextLines lines(String first, String text) {
        String lead = first;
        for (String line : text.lines().toList()) {
            wrapped(lead, line);
            lead = " ".repeat(first.length());
        }
        return this;
    }

    /** Writes a sentence after a lead, further lines indented under its first word, or less where that leaves no room. */
    TextLines wrapped(String lead, String sentence) {
        String indent = " ".repeat(Math.min(MOST_INDENT, lead.length()));
        int start = out.length();
        out.append(lead);
        boolean empty = true;
        StringTokenizer words = new StringTokenizer(sentence.strip());
        while (words.hasMoreTokens()) {
            String word = words.nextToken();
            if (!empty && out.length() - start + 1 + word.length() > WIDTH) {
                out.append('\n');
                start = out.length();
                out.append(indent);
                empty = true;
            }
            out.append(empty ? "" : " ").append(word);
            empty = false;
        }
        while (out.length() > start && Character.isWhitespace(out.charAt(out.length() - 1))) {
            out.setLength(out.length() - 1);
        }
        out.append('\n');
        return this;
    }

    /** What has been written, line by line. */
    List<String> list() {
        return out.toString().lines().toList();
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
