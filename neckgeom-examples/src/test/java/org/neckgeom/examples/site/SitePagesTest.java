package org.neckgeom.examples.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The guides made of the project's Markdown, and what the search box finds in them. */
class SitePagesTest {

    private static final Path PROJECT = Path.of("..");

    @TempDir
    Path site;

    @BeforeEach
    void write() throws IOException {
        for (String kind : Set.of("type", "member", "package")) {
            Files.writeString(
                    site.resolve(kind + "-search-index.js"), kind + "SearchIndex = [];updateSearchResults();");
        }
        Files.writeString(
                site.resolve("tag-search-index.js"),
                "tagSearchIndex = [{\"l\":\"headstock\",\"h\":\"x\",\"u\":\"a/Head.html#headstock\"}];updateSearchResults();");
        SitePages.write(site, PROJECT);
    }

    @Test
    void everyMarkdownFile_isAPageForOneOfFourReaders() throws IOException {
        try (Stream<Path> files = Stream.of("", "neckgeom-api", "neckgeom-core", "neckgeom-examples")
                .flatMap(SitePagesTest::markdown)) {
            assertThat(SitePages.GUIDES.stream().map(SitePages.Guide::file))
                    .containsExactlyInAnyOrderElementsOf(files.map(
                                    file -> PROJECT.relativize(file).toString().replace('\\', '/'))
                            .toList());
        }
        assertThat(SitePages.GUIDES.stream().map(SitePages.Guide::reader).collect(Collectors.toSet()))
                .containsExactlyInAnyOrder("maker", "embedder", "evaluator", "contributor");
    }

    private static Stream<Path> markdown(String folder) {
        try {
            return Files.list(PROJECT.resolve(folder))
                    .filter(file -> file.toString().endsWith(".md"));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The first question of the cookbook, as its Markdown has it. */
    @Test
    void cookbook_hasItsQuestionsCodeAndAnswers() throws IOException {
        String page = Files.readString(site.resolve("guides/cookbook.html"));

        assertThat(page)
                .contains("1. The trial cut is off the middle: how far does the fence go, and which way?</h3>")
                .contains("println(centring.move());")
                .contains("fence away from the cutter by 0.710 mm")
                .contains("<h1 id=")
                .doesNotContain("```");
    }

    @Test
    void headings_areFoundByTheSearchBox_besideWhatWasThere() throws IOException {
        SearchIndex index = new SearchIndex(site);

        assertThat(index.pages("headstock")).contains("a/Head.html");
        assertThat(index.pages("Which feeler gauges")).containsExactly("guides/cookbook.html");
        assertThat(index.pages("safety")).contains("guides/maker.html");
        assertThat(index.pages("adding a computation")).containsExactly("guides/contributor.html");
        assertThat(index.pages("carburettor")).isEmpty();
    }

    @Test
    void filesNamedInText_areLinks() throws IOException {
        assertThat(Files.readString(site.resolve("guides/maker.html")))
                .contains("<a href=\"benchmarks.html\"><code>neckgeom-examples/BENCHMARKS.md</code></a>")
                .contains("<a href=\"#safety\">Safety</a>");
    }

    @Test
    void pictures_lieBesideTheirPage() throws IOException {
        assertThat(Files.readString(site.resolve("guides/maker.html"))).contains("src=\"channel-card.svg\"");
        assertThat(site.resolve("guides/channel-card.svg"))
                .hasSameBinaryContentAs(Path.of("src/main/resources/pictures/channel-card.svg"));
    }

    @Test
    void overview_leadsToEveryGuide() throws IOException {
        String overview = Files.readString(Path.of("src/main/javadoc/overview.html"));

        assertThat(SitePages.GUIDES)
                .allSatisfy(guide -> assertThat(overview).contains("href=\"guides/" + guide.page() + "\""));
    }
}
