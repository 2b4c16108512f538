package org.neckgeom.page;

import java.util.List;
import java.util.StringTokenizer;

/** Lines of plain text for a terminal, none longer than 80 characters: a word that is longer is parted. */
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
            if (!empty && room(start) < 1 + word.length()) {
                start = newLine(indent);
                empty = true;
            }
            while (empty && room(start) < word.length()) {
                word = word.substring(parted(word, room(start), WIDTH - indent.length()));
                start = newLine(indent);
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

    private int room(int start) {
        return WIDTH - (out.length() - start);
    }

    private int newLine(String indent) {
        out.append('\n');
        int start = out.length();
        out.append(indent);
        return start;
    }

    /** Writes what fits of a word that is longer than a line of its own, and nothing of one that is not; how much that was. */
    private int parted(String word, int room, int ownLine) {
        if (room <= 0 || word.length() <= ownLine && room < ownLine) {
            return 0;
        }
        int end = Character.isHighSurrogate(word.charAt(room - 1)) ? room - 1 : room;
        out.append(word, 0, end);
        return end;
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
