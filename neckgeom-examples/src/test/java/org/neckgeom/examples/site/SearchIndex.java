package org.neckgeom.examples.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.neckgeom.form.Json;

/** The index behind the search box of a documentation site, and what it offers for a term. */
final class SearchIndex {

    private static final List<String> FILES =
            List.of("type-search-index.js", "member-search-index.js", "tag-search-index.js", "package-search-index.js");

    /** What the box offers: a label, and the page it leads to. */
    private record Entry(String label, String page) {}

    private final List<Entry> entries = new ArrayList<>();

    SearchIndex(Path site) throws IOException {
        for (String file : FILES) {
            String text = Files.readString(site.resolve(file));
            String json = text.substring(text.indexOf('['), text.lastIndexOf(']') + 1);
            for (Object entry : (List<?>) Json.read(json).plain()) {
                add((Map<?, ?>) entry);
            }
        }
    }

    private void add(Map<?, ?> entry) {
        String label = entry.get("l").toString();
        if (entry.containsKey("h")) {
            entries.add(new Entry(label, entry.get("u").toString().replaceAll("#.*", "")));
        } else if (entry.containsKey("c")) {
            entries.add(new Entry(
                    label.replaceAll("\\(.*", ""), page(entry, entry.get("c").toString())));
        } else if (entry.containsKey("p")) {
            entries.add(new Entry(label, page(entry, label)));
        }
    }

    /** Without its module's folder, which the script of the box finds by the package. */
    private static String page(Map<?, ?> entry, String type) {
        return entry.get("p").toString().replace('.', '/') + "/" + type + ".html";
    }

    /** The pages offered where a word of a label begins with the term; blanks and capitals do not count, as in the box. */
    List<String> pages(String term) {
        String wanted = letters(term);
        return entries.stream()
                .filter(entry -> isFound(entry.label(), wanted))
                .map(Entry::page)
                .distinct()
                .toList();
    }

    private static boolean isFound(String label, String wanted) {
        String spaced = label.replaceAll("([a-z])([A-Z])", "$1 $2");
        String[] words = spaced.split("[^A-Za-z0-9]+");
        for (int i = 0; i < words.length; i++) {
            String rest = letters(String.join("", List.of(words).subList(i, words.length)));
            if (rest.startsWith(wanted)) {
                return true;
            }
        }
        return false;
    }

    private static String letters(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    }

    int size() {
        return entries.size();
    }
}
