package org.neckgeom.mutation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * A mistake made on purpose, and what came of it.
 *
 * @param type the class without {@code org.neckgeom}, with its package
 * @param method the method; a lambda counts to the method it stands in
 * @param mutator PIT's name of the kind of mistake
 * @param status PIT's word for what came of it
 * @param found whether a test noticed it
 */
record Mutant(String type, String method, String mutator, String status, boolean found) {

    private static final Map<String, String> KINDS = Map.of(
            "ConditionalsBoundaryMutator", "boundary",
            "NegateConditionalsMutator", "negated",
            "MathMutator", "arithmetic",
            "IncrementsMutator", "increment",
            "InvertNegsMutator", "sign",
            "VoidMethodCallMutator", "call left out");

    /** All mistakes in the XML files under a folder. */
    static List<Mutant> read(Path folder) throws IOException {
        List<Mutant> all = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(path -> path.endsWith("mutations.xml"))
                    .sorted()
                    .toList()) {
                all.addAll(readFile(file));
            }
        }
        if (all.isEmpty()) {
            throw new IOException("no mutations.xml under " + folder);
        }
        return all;
    }

    private static List<Mutant> readFile(Path file) throws IOException {
        try {
            NodeList mutations = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(file.toFile())
                    .getElementsByTagName("mutation");
            List<Mutant> all = new ArrayList<>();
            for (int i = 0; i < mutations.getLength(); i++) {
                all.add(of((Element) mutations.item(i)));
            }
            return all;
        } catch (org.xml.sax.SAXException | javax.xml.parsers.ParserConfigurationException broken) {
            throw new IOException(file + " cannot be read", broken);
        }
    }

    private static Mutant of(Element mutation) {
        String mutator = text(mutation, "mutator");
        return new Mutant(
                text(mutation, "mutatedClass").replace("org.neckgeom.", "").replace('$', '.'),
                text(mutation, "mutatedMethod").replaceAll("^lambda\\$(\\w+)\\$\\d+$", "$1"),
                mutator.substring(mutator.lastIndexOf('.') + 1),
                mutation.getAttribute("status"),
                Boolean.parseBoolean(mutation.getAttribute("detected")));
    }

    private static String text(Element mutation, String name) {
        return mutation.getElementsByTagName(name).item(0).getTextContent();
    }

    /** The package, such as {@code channel}. */
    String area() {
        return type.substring(0, type.indexOf('.'));
    }

    /** The kind of mistake in a word or two. */
    String kind() {
        return KINDS.getOrDefault(mutator, "result");
    }
}
