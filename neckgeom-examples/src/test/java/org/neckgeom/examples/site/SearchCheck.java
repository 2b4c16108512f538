package org.neckgeom.examples.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Types the thirty questions' terms into a site's search box, and the words of its guides, and looks where they lead. */
final class SearchCheck {

    /** Words of each guide, and its page. */
    private static final List<List<String>> OF_GUIDES = List.of(
            List.of("plan a neck", "guides/maker.html"),
            List.of("which feeler gauges", "guides/cookbook.html"),
            List.of("scarf joint", "guides/cookbook.html"),
            List.of("contract", "guides/embedder.html"),
            List.of("service", "guides/cookbook.html"),
            List.of("validation", "guides/validation.html"),
            List.of("rejected optimisations", "guides/benchmarks.html"),
            List.of("releasing", "guides/contributor.html"));

    private SearchCheck() {}

    /** Checks the site in the first argument with the questions in the second; throws where one is not answered. */
    public static void main(String[] arguments) throws IOException {
        SearchIndex index = new SearchIndex(Path.of(arguments[0]));
        List<String> unanswered = new ArrayList<>();
        int asked = 0;
        for (String line : Files.readAllLines(Path.of(arguments[1])).subList(1, 31)) {
            String[] cells = line.split(",");
            String answer = cells[2].replaceAll("\\..*", "") + ".html";
            asked++;
            if (index.pages(cells[1]).stream().noneMatch(page -> page.endsWith("/" + answer))) {
                unanswered.add(cells[0] + ": " + cells[1] + " does not lead to " + answer);
            }
        }
        for (List<String> guide : OF_GUIDES) {
            asked++;
            if (!index.pages(guide.get(0)).contains(guide.get(1))) {
                unanswered.add(guide.get(0) + " does not lead to " + guide.get(1));
            }
        }
        unanswered.forEach(question -> System.out.println("search: " + question));
        if (!unanswered.isEmpty()) {
            throw new IllegalStateException("questions without an answer: " + unanswered.size());
        }
        System.out.println("search: " + asked + " questions lead to their pages, in an index of " + index.size());
    }
}
