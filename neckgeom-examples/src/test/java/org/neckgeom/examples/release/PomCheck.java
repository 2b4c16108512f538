package org.neckgeom.examples.release;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** What a published POM must say, and what it must not. */
final class PomCheck {

    /** The fields a public repository asks for. */
    private static final List<String> FIELDS = List.of(
            "name",
            "description",
            "url",
            "licenses/license/name",
            "licenses/license/url",
            "developers/developer/name",
            "scm/url",
            "scm/connection");

    /** Says to compilers what may be null; a user gets no further jar. */
    private static final String JSPECIFY = "org.jspecify:jspecify";

    /** What an embedder takes on; more is a decision, not an accident. */
    private static final Set<String> ALLOWED =
            Set.of("org.neckgeom:neckgeom-api", "javax.measure:unit-api", "tech.units:indriya", JSPECIFY);

    private final Element project;
    private final String text;
    private final String artifact;
    private final String version;
    private final boolean rehearsal;

    PomCheck(byte[] pom, String artifact, String version, boolean rehearsal) throws IOException {
        this.project = parse(pom);
        this.text = new String(pom, StandardCharsets.UTF_8);
        this.artifact = artifact;
        this.version = version;
        this.rehearsal = rehearsal;
    }

    List<String> problems() {
        List<String> problems = new ArrayList<>();
        for (String field : FIELDS) {
            if (at(project, field).isBlank()) {
                problems.add("says no " + field);
            }
        }
        mustBe("groupId", "org.neckgeom", problems);
        mustBe("artifactId", artifact, problems);
        mustBe("version", version, problems);
        for (String part :
                List.of("parent", "repositories", "pluginRepositories", "distributionManagement", "profiles")) {
            if (!children(project, part).isEmpty()) {
                problems.add("must stand alone, but has " + part);
            }
        }
        if (text.contains("${")) {
            problems.add("has a property that nobody resolved");
        }
        if (text.contains("SNAPSHOT")) {
            problems.add("names a SNAPSHOT");
        }
        if (!rehearsal && text.contains(".example/")) {
            problems.add("has a reserved address (.example) where a public one must stand");
        }
        for (Element dependency : dependencyElements(project)) {
            String name = at(dependency, "groupId") + ":" + at(dependency, "artifactId");
            if (!ALLOWED.contains(name)) {
                problems.add("brings " + name);
            }
            boolean forCompilersOnly =
                    name.equals(JSPECIFY) && at(dependency, "scope").equals("provided");
            if (!at(dependency, "scope").matches("|compile|runtime") && !forCompilersOnly) {
                problems.add("has " + name + " in scope " + at(dependency, "scope"));
            }
            if (at(dependency, "version").isBlank()) {
                problems.add("says no version of " + name);
            }
        }
        return problems;
    }

    /** The dependencies of a POM, written {@code group/artifact@version}. */
    static List<String> dependencies(byte[] pom) throws IOException {
        return dependencyElements(parse(pom)).stream()
                .map(each -> at(each, "groupId") + "/" + at(each, "artifactId") + "@" + at(each, "version"))
                .toList();
    }

    private void mustBe(String field, String wanted, List<String> problems) {
        String said = at(project, field);
        if (!said.equals(wanted)) {
            problems.add(field + " must be " + wanted + ", but was " + (said.isEmpty() ? "nothing" : said));
        }
    }

    private static List<Element> dependencyElements(Element project) {
        return children(project, "dependencies").stream()
                .flatMap(all -> children(all, "dependency").stream())
                .toList();
    }

    /** The text at a path of element names, empty when there is none. */
    private static String at(Element from, String path) {
        Element element = from;
        for (String name : path.split("/")) {
            List<Element> next = children(element, name);
            if (next.isEmpty()) {
                return "";
            }
            element = next.get(0);
        }
        return element.getTextContent().strip();
    }

    private static List<Element> children(Node parent, String name) {
        NodeList nodes = parent.getChildNodes();
        return IntStream.range(0, nodes.getLength())
                .mapToObj(nodes::item)
                .filter(node ->
                        node instanceof Element element && element.getTagName().equals(name))
                .map(Element.class::cast)
                .toList();
    }

    private static Element parse(byte[] pom) throws IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            return factory.newDocumentBuilder()
                    .parse(new ByteArrayInputStream(pom))
                    .getDocumentElement();
        } catch (ParserConfigurationException | SAXException unreadable) {
            throw new IOException("not a POM: " + unreadable.getMessage(), unreadable);
        }
    }
}
