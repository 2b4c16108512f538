package org.neckgeom.examples.release;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Looks at a staged release as a public repository does before it takes one: file by file, from outside, without the
 * build that made it. The profile {@code release} runs it on {@code target/stage} and stops at a problem.
 */
final class StageCheck {

    /** What is published, and the module in each. */
    static final List<Published> PUBLISHED = List.of(
            new Published("neckgeom-api", "org.neckgeom.api"), new Published("neckgeom-core", "org.neckgeom.core"));

    private static final String GROUP = "org/neckgeom";

    /** What each artefact consists of, after {@code name-version}. */
    private static final List<String> PARTS =
            List.of(".pom", ".jar", "-sources.jar", "-javadoc.jar", "-cyclonedx.json", "-cyclonedx.xml");

    /** An artefact's name and the name of its module. */
    record Published(String artifact, String module) {}

    private final Path stage;
    private final String version;
    private final boolean rehearsal;
    private final SignatureCheck signatures;
    private final MachineTraces traces;

    /**
     * A check of one stage.
     *
     * @param stage the file repository
     * @param version the version that is to be released
     * @param rehearsal whether reserved addresses may stand where public ones must
     * @param signatures knows the key that signed
     * @param traces knows the paths of the machine that built
     */
    StageCheck(Path stage, String version, boolean rehearsal, SignatureCheck signatures, MachineTraces traces) {
        this.stage = stage;
        this.version = version;
        this.rehearsal = rehearsal;
        this.signatures = signatures;
        this.traces = traces;
    }

    /** Checks the stage in the first argument for the version in the second; throws when there is a problem. */
    public static void main(String[] arguments) throws IOException {
        Path stage = Path.of(arguments[0]).toAbsolutePath().normalize();
        boolean rehearsal = Boolean.getBoolean("neckgeom.rehearsal");
        StageCheck check = new StageCheck(
                stage, arguments[1], rehearsal, SignatureCheck.ofThisRelease(), MachineTraces.ofThisMachine(stage));
        List<String> problems = check.problems();
        for (String problem : problems) {
            System.out.println("stage: " + problem);
        }
        if (!problems.isEmpty()) {
            throw new IllegalStateException("the stage is not fit to publish: problems: " + problems.size());
        }
        System.out.println("stage: " + check.files().size() + " files in " + stage + " are fit to publish"
                + (rehearsal ? ", but for the reserved addresses of a rehearsal" : ""));
    }

    /** What is wrong with the stage, one sentence each; none when it is fit to publish. */
    List<String> problems() throws IOException {
        List<String> problems = new ArrayList<>();
        if (version.endsWith("-SNAPSHOT")) {
            problems.add("version must be one for ever, but was " + version);
        }
        Set<String> expected = new TreeSet<>();
        for (Published published : PUBLISHED) {
            expected.addAll(expectedFiles(published));
        }
        Set<String> found = files();
        expected.stream().filter(file -> !found.contains(file)).forEach(file -> problems.add(file + " is missing"));
        for (String file : found) {
            if (isMetadata(file)) {
                continue;
            }
            if (expected.contains(file)) {
                checkFile(file, found, problems);
            } else if (!isOptional(file)) {
                problems.add(file + " was not expected");
            }
        }
        for (Published published : PUBLISHED) {
            String base = base(published);
            if (found.contains(base + ".pom")) {
                new PomCheck(bytes(base + ".pom"), published.artifact(), version, rehearsal)
                        .problems()
                        .forEach(problem -> problems.add(base + ".pom: " + problem));
            }
            if (found.containsAll(List.of(base + ".jar", base + "-sources.jar", base + "-javadoc.jar"))) {
                new JarCheck(stage.resolve(base + ".jar"), published.module(), version)
                        .problems(stage.resolve(base + "-sources.jar"), stage.resolve(base + "-javadoc.jar"))
                        .forEach(problem -> problems.add(base + ".jar: " + problem));
            }
            if (found.containsAll(List.of(base + ".pom", base + "-cyclonedx.json", base + "-cyclonedx.xml"))) {
                checkBillsOfMaterials(published, problems);
            }
        }
        return problems;
    }

    private void checkFile(String file, Set<String> found, List<String> problems) throws IOException {
        byte[] bytes = bytes(file);
        if (bytes.length == 0) {
            problems.add(file + " is empty");
        }
        if (file.endsWith(".asc") || file.endsWith(".md5") || file.endsWith(".sha1")) {
            return;
        }
        Checksums.problems(file, bytes, ending -> text(file + ending)).forEach(problems::add);
        if (found.contains(file + ".asc")) {
            signatures
                    .problem(bytes, bytes(file + ".asc"))
                    .ifPresent(problem -> problems.add(file + ".asc: " + problem));
        }
        traces.in(file, bytes).forEach(problems::add);
    }

    /** Both bills name the artefact itself and each dependency of its POM. */
    private void checkBillsOfMaterials(Published published, List<String> problems) throws IOException {
        String base = base(published);
        List<String> wanted = new ArrayList<>(PomCheck.dependencies(bytes(base + ".pom")));
        wanted.add("org.neckgeom/" + published.artifact() + "@" + version);
        for (String bill : List.of(base + "-cyclonedx.json", base + "-cyclonedx.xml")) {
            String text = new String(bytes(bill), StandardCharsets.UTF_8);
            for (String name : wanted) {
                if (!text.contains("pkg:maven/" + name + "?type=jar")) {
                    problems.add(bill + " does not name " + name);
                }
            }
        }
    }

    /** Every file of the stage, by its path with slashes. */
    Set<String> files() throws IOException {
        if (!Files.isDirectory(stage)) {
            return Set.of();
        }
        try (Stream<Path> walk = Files.walk(stage)) {
            return walk.filter(Files::isRegularFile)
                    .map(file -> stage.relativize(file).toString().replace('\\', '/'))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private List<String> expectedFiles(Published published) {
        return PARTS.stream()
                .flatMap(part -> Stream.of("", ".asc", ".md5", ".sha1").map(more -> base(published) + part + more))
                .toList();
    }

    private String base(Published published) {
        return GROUP + "/" + published.artifact() + "/" + version + "/" + published.artifact() + "-" + version;
    }

    /** The list of versions, which the repository keeps itself. */
    private static boolean isMetadata(String file) {
        return file.matches(GROUP + "/[a-z-]+/maven-metadata\\.xml(\\.md5|\\.sha1)?");
    }

    /** Some Maven versions sum signatures too. */
    private static boolean isOptional(String file) {
        return file.endsWith(".asc.md5") || file.endsWith(".asc.sha1");
    }

    private byte[] bytes(String file) throws IOException {
        return Files.readAllBytes(stage.resolve(file));
    }

    private String text(String file) throws IOException {
        Path path = stage.resolve(file);
        return Files.exists(path) ? Files.readString(path) : "";
    }
}
