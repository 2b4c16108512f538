package org.neckgeom.examples.release;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Follows every link of a site that stays inside it, to its file and to its place in the file. Links that leave the site
 * are counted and not followed.
 */
final class LinkCheck {

    private static final Pattern LINK = Pattern.compile("\\b(?:href|src)=\"([^\"]*)\"");
    private static final Pattern PLACE = Pattern.compile("\\b(?:id|name)=\"([^\"]*)\"");
    private static final Pattern OUTSIDE = Pattern.compile("(https?|mailto|javascript|data):.*");

    private final Path site;
    private final Map<Path, Set<String>> places = new HashMap<>();
    private final List<String> broken = new ArrayList<>();
    private int pages;
    private int inside;
    private int outside;

    private LinkCheck(Path site) {
        this.site = site.toAbsolutePath().normalize();
    }

    /** The check of a site, done. */
    static LinkCheck of(Path site) throws IOException {
        LinkCheck check = new LinkCheck(site);
        check.follow();
        return check;
    }

    /** Checks the site in the first argument; throws when a link leads nowhere, or when there is no site. */
    public static void main(String[] arguments) throws IOException {
        LinkCheck check = of(Path.of(arguments[0]));
        check.broken.forEach(link -> System.out.println("link: " + link));
        if (!check.broken.isEmpty() || check.pages == 0) {
            throw new IllegalStateException(
                    "links that lead nowhere: " + check.broken.size() + ", on pages: " + check.pages);
        }
        System.out.println("link: " + check.inside + " links on " + check.pages + " pages lead somewhere; "
                + check.outside + " leave the site and were not followed");
    }

    /** One sentence for each link that leads nowhere. */
    List<String> broken() {
        return List.copyOf(broken);
    }

    int inside() {
        return inside;
    }

    int outside() {
        return outside;
    }

    private void follow() throws IOException {
        List<Path> files;
        try (Stream<Path> walk = Files.walk(site)) {
            files = walk.filter(file -> file.toString().endsWith(".html"))
                    .sorted()
                    .toList();
        }
        pages = files.size();
        for (Path page : files) {
            Set<String> seen = new HashSet<>();
            LINK.matcher(Files.readString(page))
                    .results()
                    .map(link -> link.group(1).replace("&amp;", "&"))
                    .filter(seen::add)
                    .forEach(link -> follow(page, link));
        }
    }

    private void follow(Path page, String link) {
        if (OUTSIDE.matcher(link).matches()) {
            outside++;
            return;
        }
        inside++;
        String from = site.relativize(page).toString();
        int hash = link.indexOf('#');
        String path = link.substring(0, hash < 0 ? link.length() : hash);
        String file = path.indexOf('?') < 0 ? path : path.substring(0, path.indexOf('?'));
        Path target = file.isEmpty() ? page : page.resolveSibling(decoded(file)).normalize();
        if (Files.isDirectory(target)) {
            target = target.resolve("index.html");
        }
        if (!target.startsWith(site)) {
            broken.add(from + " links to " + link + " outside the site");
        } else if (!Files.isRegularFile(target)) {
            broken.add(from + " links to " + link + ", which is not there");
        } else if (hash >= 0 && hash + 1 < link.length() && !isPlace(target, link.substring(hash + 1))) {
            broken.add(from + " links to " + link + ", a place that is not on that page");
        }
    }

    private boolean isPlace(Path target, String place) {
        Set<String> known = places.computeIfAbsent(target, LinkCheck::placesOn);
        // JDK 17's javadoc heads the constants of a.b.* with the place of the first package, a.b.c, and links to a.b.
        boolean isHeadOfConstants = target.endsWith("constant-values.html")
                && known.stream().anyMatch(each -> each.startsWith(place + "."));
        return known.contains(place) || known.contains(decoded(place)) || isHeadOfConstants;
    }

    private static Set<String> placesOn(Path page) {
        try {
            Set<String> found = new HashSet<>();
            PLACE.matcher(Files.readString(page))
                    .results()
                    .map(place -> place.group(1)
                            .replace("&lt;", "<")
                            .replace("&gt;", ">")
                            .replace("&amp;", "&"))
                    .forEach(found::add);
            return found;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String decoded(String text) {
        try {
            return URI.create(text).getPath();
        } catch (IllegalArgumentException notEncoded) {
            return text;
        }
    }
}
