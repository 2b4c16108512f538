package org.neckgeom.testing;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What everything that a module runs or is tested on is licensed under, read from the POMs beside the jars. The list
 * {@code licences.csv} says what was looked at, and from how a dependency is used follows what it may be licensed under.
 */
public final class Licences {

    private static final Path LIST = Path.of("..", "neckgeom-api", "src", "testing", "licences.csv");

    /** What an Apache-2.0 library may ask of whoever embeds it. */
    private static final Set<String> HANDED_ON = Set.of("Apache-2.0", "BSD-3-Clause", "MIT");

    /** These besides may stand on the test path, which is not handed on. */
    private static final Set<String> TESTED_WITH =
            Set.of("BSD-2-Clause", "EPL-2.0", "GPL-2.0-with-classpath-exception", "MPL-2.0");

    private static final Map<String, String> NAMES = Map.ofEntries(
            Map.entry("BSD", "BSD-3-Clause"),
            Map.entry("BSD 3-Clause", "BSD-3-Clause"),
            Map.entry("BSD 3-Clause license", "BSD-3-Clause"),
            Map.entry("Bouncy Castle Licence", "MIT"),
            Map.entry("Eclipse Distribution License - v 1.0", "BSD-3-Clause"),
            Map.entry("Eclipse Public License v2.0", "EPL-2.0"),
            Map.entry("Eclipse Public License, Version 2.0", "EPL-2.0"),
            Map.entry("MIT License", "MIT"),
            Map.entry("The MIT License", "MIT"),
            Map.entry(
                    "GNU General Public License (GPL), version 2, with the Classpath exception",
                    "GPL-2.0-with-classpath-exception"),
            Map.entry("Mozilla Public License, Version 2.0", "MPL-2.0"));

    private static final Pattern LICENCES = Pattern.compile("(?s)<licenses>(.*?)</licenses>");
    private static final Pattern NAME = Pattern.compile("(?s)<name>\\s*(.*?)\\s*</name>");
    private static final Pattern PARENT = Pattern.compile("(?s)<parent>(.*?)</parent>");

    private record Row(String use, String licence) {}

    private Licences() {}

    /** The dependencies a module sees, by artifact. */
    public static Set<String> seen() {
        return jars().stream().map(Licences::artifact).collect(Collectors.toSet());
    }

    /** Those in the list that are used so, {@code run}, {@code example} or {@code test}. */
    public static Set<String> listed(String use) throws IOException {
        return list().entrySet().stream()
                .filter(row -> row.getValue().use().equals(use))
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }

    /** What is not listed, listed wrongly, or not to be used so. */
    public static List<String> faults() throws IOException {
        List<String> faults = new ArrayList<>();
        Map<String, Row> list = list();
        for (Path jar : jars()) {
            Row row = list.get(artifact(jar));
            Set<String> licences = licences(pomBeside(jar));
            if (row == null) {
                faults.add(artifact(jar) + " is not in licences.csv; its POM says " + licences);
            } else if (!licences.contains(row.licence())) {
                faults.add(artifact(jar) + " is listed as " + row.licence() + ", but its POM says " + licences);
            }
        }
        list.forEach((artifact, row) -> {
            boolean allowed = HANDED_ON.contains(row.licence())
                    || row.use().equals("test") && TESTED_WITH.contains(row.licence());
            if (!allowed) {
                faults.add(artifact + " must not be used for " + row.use() + " under " + row.licence());
            }
        });
        return faults;
    }

    private static Map<String, Row> list() throws IOException {
        Map<String, Row> rows = new TreeMap<>();
        Files.readAllLines(LIST).stream()
                .filter(line -> !line.startsWith("#"))
                .skip(1)
                .map(line -> line.split(","))
                .forEach(cells -> rows.put(cells[0], new Row(cells[1], cells[2])));
        return rows;
    }

    static List<Path> jars() {
        return Stream.of("surefire.test.class.path", "java.class.path", "jdk.module.path")
                .map(property -> System.getProperty(property, ""))
                .flatMap(path -> Stream.of(path.split(Pattern.quote(File.pathSeparator))))
                .distinct()
                .map(Path::of)
                .filter(jar -> jar.toString().endsWith(".jar") && Files.exists(pomBeside(jar)))
                .toList();
    }

    private static String artifact(Path jar) {
        return Objects.requireNonNull(jar.getParent()).getParent().getFileName().toString();
    }

    private static Path pomBeside(Path jar) {
        return jar.resolveSibling(jar.getFileName().toString().replaceFirst("\\.jar$", ".pom"));
    }

    private static Set<String> licences(Path pom) throws IOException {
        String text = Files.readString(pom).replaceAll("(?s)<!--.*?-->", "");
        Matcher licences = LICENCES.matcher(text);
        if (licences.find()) {
            return NAME.matcher(licences.group(1))
                    .results()
                    .map(result -> spdx(result.group(1)))
                    .collect(Collectors.toSet());
        }
        Matcher parent = PARENT.matcher(text);
        return parent.find() ? licences(parentPom(pom, parent.group(1))) : Set.of();
    }

    private static String spdx(String name) {
        boolean apache = name.matches("(The )?Apache( Software)?[ -]?(License)?,? ?(Version )?2\\.0");
        return apache ? "Apache-2.0" : NAMES.getOrDefault(name, name);
    }

    /** The parent's POM lies under the same repository, however deep the child's group goes. */
    private static Path parentPom(Path pom, String parent) throws IOException {
        String artifact = cell(parent, "artifactId");
        String version = cell(parent, "version");
        String place = cell(parent, "groupId").replace('.', '/') + "/" + artifact + "/" + version + "/" + artifact + "-"
                + version + ".pom";
        for (Path root = pom.getParent(); root != null; root = root.getParent()) {
            if (Files.exists(root.resolve(place))) {
                return root.resolve(place);
            }
        }
        throw new IOException(pom + " has a parent that is not there: " + place);
    }

    private static String cell(String xml, String tag) throws IOException {
        Matcher cell =
                Pattern.compile("<" + tag + ">\\s*(.*?)\\s*</" + tag + ">").matcher(xml);
        if (!cell.find()) {
            throw new IOException("no " + tag + " in " + xml);
        }
        return cell.group(1);
    }
}
