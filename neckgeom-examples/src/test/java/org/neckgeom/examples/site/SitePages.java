package org.neckgeom.examples.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.HeadingAnchorExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.neckgeom.form.Json;

/**
 * The guides of the documentation site, a page for each of the project's Markdown files, so that no fact is written twice. Each
 * heading is found by the site's search box. The code in them is run by the tests of those files.
 */
final class SitePages {

    /** Which reader a page is for, its name in the site, and the file it is made of. */
    record Guide(String reader, String page, String file) {}

    static final List<Guide> GUIDES = List.of(
            new Guide("maker", "maker.html", "README.md"),
            new Guide("maker", "cookbook.html", "neckgeom-examples/README.md"),
            new Guide("embedder", "embedder.html", "neckgeom-core/README.md"),
            new Guide("evaluator", "validation.html", "neckgeom-core/VALIDATION.md"),
            new Guide("evaluator", "benchmarks.html", "neckgeom-examples/BENCHMARKS.md"),
            new Guide("evaluator", "mutation.html", "neckgeom-core/MUTATION.md"),
            new Guide("contributor", "contributor.html", "DEVELOPERS.md"),
            new Guide("contributor", "answers.html", "neckgeom-api/README.md"));

    static final String FOLDER = "guides";

    private static final String INDEX = "tag-search-index.js";
    private static final String START = "tagSearchIndex = [";
    private static final Pattern PICTURE = Pattern.compile("src=\"([^\":]+)\"");
    private static final List<Extension> EXTENSIONS =
            List.of(TablesExtension.create(), HeadingAnchorExtension.create());
    private static final Parser PARSER = Parser.builder().extensions(EXTENSIONS).build();
    private static final HtmlRenderer HTML =
            HtmlRenderer.builder().extensions(EXTENSIONS).build();

    private SitePages() {}

    /** Adds the guides to a site: its folder, then the project's. */
    public static void main(String[] arguments) throws IOException {
        write(Path.of(arguments[0]), Path.of(arguments[1]));
        System.out.println("guides: " + GUIDES.size() + " pages");
    }

    static void write(Path site, Path project) throws IOException {
        Files.createDirectories(site.resolve(FOLDER));
        List<String> tags = new ArrayList<>();
        for (Guide guide : GUIDES) {
            Node document = PARSER.parse(Files.readString(project.resolve(guide.file())));
            List<String> headings = headings(document);
            String body = withPictures(linked(HTML.render(document)), project, site.resolve(FOLDER));
            Files.writeString(site.resolve(FOLDER).resolve(guide.page()), page(guide, headings.get(0), body));
            List<String> places = places(body);
            IntStream.range(0, headings.size()).forEach(i -> tags.add(tag(headings.get(i), guide, places.get(i))));
        }
        Path index = site.resolve(INDEX);
        String before = Files.readString(index);
        if (!before.startsWith(START)) {
            throw new IllegalStateException(INDEX + " must begin with " + START);
        }
        String rest = before.substring(START.length());
        Files.writeString(index, START + String.join(",", tags) + (rest.startsWith("]") ? "" : ",") + rest);
    }

    /** The pictures of a text beside its page, under their own names. */
    private static String withPictures(String body, Path project, Path folder) throws IOException {
        String shown = body;
        for (MatchResult picture : PICTURE.matcher(body).results().toList()) {
            Path file = project.resolve(picture.group(1));
            String name = file.getFileName().toString();
            Files.copy(file, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
            shown = shown.replace(picture.group(), "src=\"" + name + "\"");
        }
        return shown;
    }

    private static List<String> headings(Node document) {
        List<String> headings = new ArrayList<>();
        document.accept(new AbstractVisitor() {
            @Override
            public void visit(Heading heading) {
                StringBuilder words = new StringBuilder();
                heading.accept(new AbstractVisitor() {
                    @Override
                    public void visit(Text text) {
                        words.append(text.getLiteral());
                    }

                    @Override
                    public void visit(Code code) {
                        words.append(code.getLiteral());
                    }
                });
                headings.add(words.toString());
            }
        });
        return headings;
    }

    private static List<String> places(String body) {
        return Pattern.compile("<h[1-6] id=\"([^\"]*)\"")
                .matcher(body)
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    /** Where a text names another file that is a page here, it leads there. */
    private static String linked(String body) {
        String linked = body;
        for (Guide guide : GUIDES) {
            String code = "<code>" + guide.file() + "</code>";
            linked = linked.replace(code, "<a href=\"" + guide.page() + "\">" + code + "</a>");
        }
        return linked;
    }

    private static String tag(String heading, Guide guide, String place) {
        return Json.of(Map.of(
                        "l",
                        heading,
                        "h",
                        "guide",
                        "d",
                        "for the " + guide.reader(),
                        "u",
                        FOLDER + "/" + guide.page() + "#" + place))
                .replace("\n", " ")
                .strip();
    }

    private static String page(Guide own, String title, String body) {
        String others = GUIDES.stream()
                .map(guide -> guide == own
                        ? "<b>" + name(guide) + "</b>"
                        : "<a href=\"" + guide.page() + "\">" + name(guide) + "</a>")
                .collect(Collectors.joining(" &middot; "));
        return """
                <!DOCTYPE html>
                <html lang="en">
                <head>
                <meta charset="utf-8">
                <meta name="viewport" content="width=device-width, initial-scale=1">
                <title>%s</title>
                <link rel="stylesheet" href="../stylesheet.css">
                <style>body{overflow:auto;height:auto}main{max-width:60rem;margin:0 auto;padding:1rem}table{border-collapse:collapse}\
                td,th{border:1px solid #ccc;padding:.2rem .5rem;text-align:left}pre{overflow-x:auto}</style>
                </head>
                <body>
                <main>
                <p><a href="../index.html">Documentation</a> &middot; %s</p>
                %s</main>
                </body>
                </html>
                """.formatted(title.replace("&", "&amp;").replace("<", "&lt;"), others, body);
    }

    private static String name(Guide guide) {
        return guide.page().replace(".html", "");
    }
}
