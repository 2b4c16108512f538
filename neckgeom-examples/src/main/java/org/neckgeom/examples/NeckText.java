package org.neckgeom.examples;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.neckgeom.plan.Job;
import org.neckgeom.table.Spelling;

/**
 * The text of a neck file with another record: trial cuts, readings and operations done are written anew, every other line and
 * its comments stay as they are.
 */
final class NeckText {

    /** The keys of the record, each with the word that older files have for it. */
    private static final Map<String, String> RECORD =
            Map.of("trial cuts", "readings", "measured", "as made", "order of work", "order of work");

    private static final List<String> ORDER = List.of("trial cuts", "measured", "order of work");
    private static final Pattern TOP_KEY = Pattern.compile("[\"'\\p{L}].*");
    private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\p{N}+-][^:#\"'{}\\[\\],&*!|>%@`]*");
    private static final Pattern COMMENT = Pattern.compile("\\s+#.*$");

    private NeckText() {}

    /**
     * {@return the text with the record of a job}
     *
     * @param text of the file
     * @param before the job that the text describes
     * @param after the same job with another record
     */
    static String with(String text, Job before, Job after) {
        Map<?, ?> was = plain(before);
        Map<?, ?> is = plain(after);
        String end = text.contains("\r\n") ? "\r\n" : "\n";
        List<String> lines = new ArrayList<>(text.lines().toList());
        for (String key : ORDER) {
            if (!Objects.equals(was.get(key), is.get(key))) {
                replace(lines, key, is.get(key));
            }
        }
        return String.join(end, lines) + end;
    }

    private static Map<?, ?> plain(Job job) {
        return (Map<?, ?>)
                Objects.requireNonNull(Job.TABLE.write(job, Spelling.WORDS).plain());
    }

    private static void replace(List<String> lines, String key, Object value) {
        int first = first(lines, key);
        List<String> old = List.of();
        if (first < 0) {
            if (value == null) {
                return;
            }
            first = lines.size();
            if (first > 0 && !lines.get(first - 1).isBlank()) {
                lines.add(first++, "");
            }
        } else {
            int last = last(lines, first);
            old = new ArrayList<>(lines.subList(first, last + 1));
            lines.subList(first, last + 1).clear();
        }
        lines.addAll(first, kept(old, value == null ? List.of() : rendered(key, value)));
    }

    private static int first(List<String> lines, String key) {
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).replace("\"", "").replace("'", "");
            if (line.matches(
                    "(?:\\uFEFF)?(?:" + Pattern.quote(key) + "|" + Pattern.quote(RECORD.get(key)) + ")\\s*:.*")) {
                return i;
            }
        }
        return -1;
    }

    /** The last line of the block that begins at a line: comments before the next key are the next key's. */
    private static int last(List<String> lines, int first) {
        int last = first;
        for (int i = first + 1;
                i < lines.size() && !TOP_KEY.matcher(lines.get(i)).matches();
                i++) {
            boolean isContent = !lines.get(i).isBlank() && !lines.get(i).startsWith("#");
            last = isContent ? i : last;
        }
        return last;
    }

    /** New lines; one that was there keeps its comment, and so does the block. */
    private static List<String> kept(List<String> old, List<String> fresh) {
        Map<String, String> comments = new LinkedHashMap<>();
        List<String> own = new ArrayList<>();
        for (String line : old) {
            if (line.strip().startsWith("#")) {
                own.add(line);
            } else {
                comments.putIfAbsent(COMMENT.matcher(line).replaceFirst("").stripTrailing(), line);
            }
        }
        List<String> lines = new ArrayList<>();
        for (String line : fresh) {
            String same = comments.remove(line);
            lines.add(same == null ? line + comment(line, old, fresh) : same);
            if (lines.size() == 1) {
                lines.addAll(own);
            }
        }
        return fresh.isEmpty() ? own : lines;
    }

    /** The comment of the one line that had the same key, where only one has it now. */
    private static String comment(String line, List<String> old, List<String> fresh) {
        String key = line.substring(0, line.indexOf(':') + 1);
        List<String> before = old.stream().filter(one -> one.startsWith(key)).toList();
        boolean isOne = before.size() == 1
                && fresh.stream().filter(one -> one.startsWith(key)).count() == 1;
        Matcher comment = COMMENT.matcher(isOne ? before.get(0) : "");
        return comment.find() ? comment.group() : "";
    }

    private static List<String> rendered(String key, Object value) {
        List<String> lines = new ArrayList<>();
        entry(lines, "", key, value);
        return lines;
    }

    private static void entry(List<String> lines, String lead, String key, Object value) {
        if (value instanceof Map<?, ?> map) {
            lines.add(lead + key + ":");
            String indent = " ".repeat(lead.length()) + "  ";
            map.forEach((name, one) -> entry(lines, indent, String.valueOf(name), one));
        } else if (value instanceof List<?> list && list.stream().anyMatch(Map.class::isInstance)) {
            lines.add(lead + key + ":");
            list.forEach(one -> item(lines, " ".repeat(lead.length()) + "  ", (Map<?, ?>) one));
        } else if (value instanceof List<?> list) {
            lines.add(lead + key + ": ["
                    + String.join(", ", list.stream().map(NeckText::scalar).toList()) + "]");
        } else {
            lines.add(lead + key + ": " + scalar(value));
        }
    }

    private static void item(List<String> lines, String indent, Map<?, ?> map) {
        String lead = indent + "- ";
        for (Map.Entry<?, ?> one : map.entrySet()) {
            entry(lines, lead, String.valueOf(one.getKey()), one.getValue());
            lead = indent + "  ";
        }
    }

    private static String scalar(Object value) {
        String text = value instanceof Boolean yes ? yes ? "yes" : "no" : String.valueOf(value);
        return PLAIN.matcher(text).matches() && text.equals(text.strip())
                ? text
                : "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
