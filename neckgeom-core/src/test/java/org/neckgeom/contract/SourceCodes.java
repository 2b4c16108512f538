package org.neckgeom.contract;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Codes as the main sources give them to calls: as a literal, as one of two, or by a constant's name. */
final class SourceCodes {

    private static final Pattern LITERAL = Pattern.compile("\"([a-z][a-z0-9]*(?:-[a-z0-9]+)*|[A-Z]+(?:_[A-Z]+)*)\"");
    private static final Pattern CONSTANT = Pattern.compile("static final String ([A-Z_]+) =\\s*" + LITERAL);
    private static final Pattern NAME = Pattern.compile("(?:\\w+\\.)?([A-Z_]+)");

    private final List<String> sources = new ArrayList<>();
    private final Map<String, String> constants = new HashMap<>();

    private SourceCodes() {}

    /** Of api and core. */
    static SourceCodes ofMain() throws IOException {
        SourceCodes codes = new SourceCodes();
        for (String module : List.of("neckgeom-api", "neckgeom-core")) {
            try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "main", "java"))) {
                for (Path file : files.filter(path -> path.toString().endsWith(".java"))
                        .sorted()
                        .toList()) {
                    codes.take(Files.readString(file));
                }
            }
        }
        return codes;
    }

    static SourceCodes of(String source) {
        SourceCodes codes = new SourceCodes();
        codes.take(source);
        return codes;
    }

    private void take(String source) {
        String code = source.replaceAll("(?m)^\\s*(?:/?\\*|//).*$", "");
        sources.add(code);
        Matcher constant = CONSTANT.matcher(code);
        while (constant.find()) {
            constants.put(constant.group(1), constant.group(2));
        }
    }

    /** What calls are given as their argument of a number, 0 for the first, as far as it is a code. */
    Set<String> given(String call, int number) {
        Pattern calls = Pattern.compile("(?<!\\w)" + call + "\\(");
        Set<String> all = new TreeSet<>();
        for (String source : sources) {
            Matcher found = calls.matcher(source);
            while (found.find()) {
                List<String> arguments = arguments(source, found.end());
                if (arguments.size() > number) {
                    all.addAll(codes(arguments.get(number)));
                }
            }
        }
        return all;
    }

    private List<String> codes(String argument) {
        Matcher name = NAME.matcher(argument);
        if (name.matches()) {
            return Stream.ofNullable(constants.get(name.group(1))).toList();
        }
        boolean isChosen = argument.contains(" ? ");
        Matcher literal = LITERAL.matcher(argument);
        return isChosen || literal.matches()
                ? LITERAL.matcher(argument)
                        .results()
                        .map((MatchResult result) -> result.group(1))
                        .toList()
                : List.of();
    }

    /** The arguments of the call that begins there, each as it is written. */
    private static List<String> arguments(String source, int start) {
        List<String> all = new ArrayList<>();
        int depth = 0;
        int from = start;
        for (int at = start; at < source.length() && depth >= 0; at++) {
            char c = source.charAt(at);
            if (c == '"') {
                at = end(source, at);
            } else if (c == '(' || c == '[' || c == '{') {
                depth++;
            } else if (c == ')' || c == ']' || c == '}') {
                depth--;
            }
            if (depth < 0 || c == ',' && depth == 0) {
                all.add(source.substring(from, at).strip());
                from = at + 1;
            }
        }
        return all;
    }

    private static int end(String source, int quote) {
        int at = quote + 1;
        while (source.charAt(at) != '"') {
            at += source.charAt(at) == '\\' ? 2 : 1;
        }
        return at;
    }
}
