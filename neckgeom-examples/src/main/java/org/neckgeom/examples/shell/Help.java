package org.neckgeom.examples.shell;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The text of {@code help()} in the shell: the topics by question, and each one with its answer.
 *
 * <p>A topic is a text file: the question, the sentence in short, and what was typed and answered. The tests type it again
 * and compare.
 */
public final class Help {

    private static final List<String> TOPICS = List.of(
            "units",
            "centring",
            "verdict",
            "leaves",
            "rounds",
            "turned pass",
            "channel",
            "passes",
            "stops",
            "spacer",
            "scarf",
            "frets",
            "neck angle",
            "heel",
            "wood left",
            "strings",
            "relief",
            "weather",
            "errors",
            "plan");

    private Help() {}

    /** {@return the topics; their names, in the order of work} */
    public static List<String> topics() {
        return TOPICS;
    }

    /** {@return all topics on one screen; a line a topic} */
    public static String screen() {
        String lines = TOPICS.stream().map(Help::line).collect(Collectors.joining("\n"));
        return "Topics, in the order of work. help(\"centring\") shows one with its answer, /exit ends.\n\n"
                + lines
                + "\n\nEvery answer prints itself. At the prompt end a line with a dot or a comma when the sentence goes on.";
    }

    private static String line(String topic) {
        List<String> text = topic(topic).lines().limit(2).toList();
        return String.format(Locale.ROOT, "  %-11s  %-48s  %s", topic, text.get(1), text.get(0));
    }

    /**
     * {@return one topic; the sentence in short, and an example with its answers}
     *
     * @param name its name
     */
    public static String topic(String name) {
        String known = name.strip().toLowerCase(Locale.ROOT);
        if (!TOPICS.contains(known)) {
            return "There is no help on \"" + name + "\". There is on: " + String.join(", ", TOPICS) + ".";
        }
        String file = "/help/" + known.replace(' ', '-') + ".txt";
        try (InputStream in = Help.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("the examples lack " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
