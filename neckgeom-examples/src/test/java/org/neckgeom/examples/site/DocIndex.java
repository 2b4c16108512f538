package org.neckgeom.examples.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What the documentation site can be searched by, read off the sources: each public type and member with its name, its first
 * sentence and its {@code @index} tags, and each package with its page.
 *
 * @param entries types and members
 * @param pages text of the page of each package: its own comment, and the first sentences of its types
 */
record DocIndex(List<Entry> entries, Map<String, String> pages) {

    /**
     * A type or a member.
     *
     * @param name such as {@code Head} or {@code Head.backVeneer}
     * @param inPackage its package, such as {@code neck}
     * @param sentence the first of its comment, without tags
     * @param tags words of its {@code @index} tags
     */
    record Entry(String name, String inPackage, String sentence, List<String> tags) {

        boolean isType() {
            return name.indexOf('.') < 0;
        }

        private Set<String> allWords() {
            Set<String> all = new LinkedHashSet<>(words(spaced(name)));
            all.addAll(words(sentence));
            tags.forEach(tag -> all.addAll(words(tag)));
            return all;
        }

        /** Whether the site's search box finds this by a term: the words of its own name, or a tag, begin with it. */
        private boolean isLabelled(String term) {
            String wanted = letters(term);
            String own = name.substring(name.lastIndexOf('.') + 1);
            return letters(own).startsWith(wanted)
                    || tags.stream().anyMatch(tag -> letters(tag).startsWith(wanted));
        }
    }

    private static final Pattern COMMENT =
            Pattern.compile("(?m)^([ ]*)/\\*\\*((?:(?!\\*/).)*)\\*/\\s*((?:@[^\\n]*\\s+)*)([^\\n]*)", Pattern.DOTALL);
    private static final int INDENT = 4;

    private static final Pattern TYPE = Pattern.compile("\\b(?:class|interface|enum|record) (\\w+)");
    private static final Pattern MEMBER = Pattern.compile("(\\w+)\\(|(\\w+) =|(\\w+);");
    private static final Pattern INDEX = Pattern.compile("\\{@index (?:\"([^\"]*)\"|([^\\s}]+))[^}]*}");
    private static final Set<String> SMALL = Set.of(
            ("a an and are at by can do does for from have how i in is it its me my not of off on one or that the there to"
                            + " what which where when class method get find make makes much many must go need with under")
                    .split(" "));

    static DocIndex of(Path... roots) throws IOException {
        List<Entry> entries = new ArrayList<>();
        Map<String, String> pages = new LinkedHashMap<>();
        for (Path root : roots) {
            try (Stream<Path> files = Files.walk(root)) {
                String module = Files.readString(root.resolve("module-info.java"));
                for (Path file :
                        files.filter(each -> isExported(each, module)).sorted().toList()) {
                    read(file, entries, pages);
                }
            }
        }
        return new DocIndex(List.copyOf(entries), pages);
    }

    /** Whether it is a source of a package that the module exports to everyone. */
    private static boolean isExported(Path file, String module) {
        return file.toString().endsWith(".java")
                && module.contains("." + file.getParent().getFileName() + ";");
    }

    private static void read(Path file, List<Entry> entries, Map<String, String> pages) throws IOException {
        String inPackage = file.getParent().getFileName().toString();
        String source = Files.readString(file);
        Matcher found = COMMENT.matcher(source);
        Map<Integer, String> owners = new LinkedHashMap<>();
        while (found.find()) {
            String comment = found.group(2).replaceAll("\\n[ ]*\\* ?", "\n").strip();
            String declared = found.group(4).strip();
            if (declared.startsWith("package ")) {
                pages.merge(inPackage, plain(comment), (a, b) -> a + " " + b);
                continue;
            }
            int indent = found.group(1).length();
            String owner = owners.getOrDefault(indent - INDENT, "");
            Matcher type = TYPE.matcher(declared);
            Matcher member = MEMBER.matcher(declared);
            List<String> tags = INDEX.matcher(comment)
                    .results()
                    .map(tag -> tag.group(1) == null ? tag.group(2) : tag.group(1))
                    .toList();
            String sentence = first(plain(comment));
            if (type.find()) {
                owners.put(indent, type.group(1));
                if (declared.startsWith("public ")) {
                    entries.add(new Entry(type.group(1), inPackage, sentence, tags));
                    pages.merge(inPackage, spaced(type.group(1)) + " " + sentence, (a, b) -> a + " " + b);
                }
            } else if (declared.startsWith("public ") && !owner.isEmpty() && member.find()) {
                String name = Stream.of(member.group(1), member.group(2), member.group(3))
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElseThrow();
                entries.add(new Entry(owner + "." + name, inPackage, sentence, tags));
            }
        }
    }

    /**
     * The names whose own words and first sentence have the most of the question's words, a rare word counting more; the best first, a
     * type before a member as on the site. */
    List<String> answers(String question) {
        return best(question, entries, Entry::name, Entry::isType, Entry::allWords);
    }

    /** The packages whose pages have the most of the question's words; the best first. */
    List<String> pagesFor(String question) {
        return best(question, pages.entrySet(), Map.Entry::getKey, page -> true, page -> words(page.getValue()));
    }

    /** The names that the search box offers for a term. */
    List<String> offered(String term) {
        return entries.stream()
                .filter(entry -> entry.isLabelled(term))
                .map(Entry::name)
                .toList();
    }

    private static <T> List<String> best(
            String question,
            Collection<T> all,
            Function<T, String> name,
            Predicate<T> first,
            Function<T, Set<String>> words) {
        Map<T, Set<String>> of = new LinkedHashMap<>();
        all.forEach(each -> of.put(each, words.apply(each)));
        Map<String, Double> rare = new LinkedHashMap<>();
        for (String word : words(question)) {
            long count = of.values().stream().filter(set -> set.contains(word)).count();
            rare.put(word, Math.log((1.0 + all.size()) / (1.0 + count)));
        }
        Function<T, Double> score = each -> rare.entrySet().stream()
                .filter(word -> of.get(each).contains(word.getKey()))
                .mapToDouble(Map.Entry::getValue)
                .sum();
        return all.stream()
                .filter(each -> rare.keySet().stream().anyMatch(of.get(each)::contains))
                .sorted(Comparator.comparing(score)
                        .reversed()
                        // A thing of that name comes before one that only speaks of it, as in the search box.
                        .thenComparing(
                                each -> !rare.containsKey(name.apply(each).toLowerCase(Locale.ROOT)))
                        .thenComparing(each -> !first.test(each))
                        .thenComparing(each -> of.get(each).size()))
                .map(name)
                .distinct()
                .toList();
    }

    /** The words in small letters, without a plural's s, and without small words. */
    private static Set<String> words(String text) {
        Set<String> words = new LinkedHashSet<>();
        Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^a-z0-9]+"))
                .filter(word -> word.length() > 1 && !SMALL.contains(word))
                .map(word -> word.length() > 3 && word.endsWith("s") && !word.endsWith("ss")
                        ? word.substring(0, word.length() - 1)
                        : word)
                .forEach(words::add);
        return words;
    }

    private static String letters(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    }

    private static String spaced(String name) {
        return name.replaceAll("([a-z])([A-Z])", "$1 $2");
    }

    private static String first(String text) {
        int end = text.indexOf(". ");
        return end < 0 ? text : text.substring(0, end + 1);
    }

    private static String plain(String comment) {
        String withoutTags = INDEX.matcher(comment).replaceAll("$1$2");
        return withoutTags
                .replaceAll("\\{@link(?:plain)? [^\\s}]*[.#](\\w+)[^}]*}", "$1")
                .replaceAll("\\{@(?:link|linkplain|code|return|literal)\\s+([^{}]*)}", "$1")
                .replaceAll("\\{@return\\s+", "")
                .replaceAll("<[^>]*>", " ")
                .replaceAll("(?s)\\n@.*", "")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
