package org.neckgeom.examples.release;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.tools.ToolProvider;

/** A small stage with nothing wrong, made without the build, for tests to break. */
final class MadeUpStage {

    static final String VERSION = "1.2.3";

    private static final Map<String, Map<String, byte[]>> COMPILED = new HashMap<>();

    /** The folder the classes are compiled in; a trace of it must be found. */
    private final Path work;

    private final Path root;
    private final ThrowAwayKey key;

    private MadeUpStage(Path work, Path root, ThrowAwayKey key) {
        this.work = work;
        this.root = root;
        this.key = key;
    }

    /** A stage below {@code folder}, signed with {@code key}. */
    static MadeUpStage in(Path folder, ThrowAwayKey key) throws IOException {
        MadeUpStage stage = new MadeUpStage(folder.resolve("work"), folder.resolve("stage"), key);
        for (StageCheck.Published published : StageCheck.PUBLISHED) {
            stage.put(published, ".pom", stage.pom(published.artifact()));
            stage.put(published, ".jar", zip(stage.classes(published, "requires java.base;")));
            stage.put(published, "-sources.jar", zip(texts("module-info.java", "org/neckgeom/some/Some.java")));
            stage.put(
                    published,
                    "-javadoc.jar",
                    zip(texts("index.html", published.module() + "/org/neckgeom/some/package-summary.html")));
            String purl = "pkg:maven/org.neckgeom/" + published.artifact() + "@" + VERSION
                    + "?type=jar pkg:maven/javax.measure/unit-api@2.2?type=jar";
            stage.put(published, "-cyclonedx.json", utf8("{\"bomFormat\": \"" + purl + "\"}"));
            stage.put(published, "-cyclonedx.xml", utf8("<bom>" + purl + "</bom>"));
        }
        return stage;
    }

    Path root() {
        return root;
    }

    Path work() {
        return work;
    }

    MachineTraces traces() {
        return new MachineTraces(List.of(work.toString()));
    }

    /** Where a part of an artefact lies. */
    Path file(StageCheck.Published published, String part) {
        return root.resolve("org/neckgeom")
                .resolve(published.artifact())
                .resolve(VERSION)
                .resolve(published.artifact() + "-" + VERSION + part);
    }

    /** Stages a part with true sums and a true signature. */
    void put(StageCheck.Published published, String part, byte[] bytes) throws IOException {
        Path file = file(published, part);
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
        write(published, part + ".asc", key.sign(bytes));
        write(published, part + ".md5", utf8(Checksums.of(bytes, ".md5")));
        write(published, part + ".sha1", utf8(Checksums.of(bytes, ".sha1")));
    }

    /** Writes a file alone. */
    void write(StageCheck.Published published, String part, byte[] bytes) throws IOException {
        Files.write(file(published, part), bytes);
    }

    void delete(StageCheck.Published published, String part) throws IOException {
        Files.delete(file(published, part));
    }

    /** Stages the POM of an artefact with one text changed into another. */
    void changePom(StageCheck.Published published, String from, String to) throws IOException {
        String pom = new String(pom(published.artifact()), StandardCharsets.UTF_8);
        if (!pom.contains(from)) {
            throw new IllegalArgumentException("the made-up POM has no " + from);
        }
        put(published, ".pom", utf8(pom.replace(from, to)));
    }

    /** Stages a jar with these entries more, or replaced. */
    void changeJar(StageCheck.Published published, Map<String, byte[]> entries) throws IOException {
        Map<String, byte[]> all = classes(published, "requires java.base;");
        all.putAll(entries);
        all.values().removeIf(bytes -> bytes.length == 0);
        put(published, ".jar", zip(all));
    }

    /** Compiles the module with another requirement and stages it. */
    void changeModule(StageCheck.Published published, String requires) throws IOException {
        put(published, ".jar", zip(classes(published, requires)));
    }

    /** The class files of the module of an artefact, which requires this besides; compiled once for all stages. */
    Map<String, byte[]> classes(StageCheck.Published published, String requires) throws IOException {
        String descriptor = "module " + published.module() + " { " + requires + " exports org.neckgeom.some; }";
        if (!COMPILED.containsKey(descriptor)) {
            COMPILED.put(descriptor, compiled(descriptor));
        }
        return new TreeMap<>(COMPILED.get(descriptor));
    }

    private Map<String, byte[]> compiled(String descriptor) throws IOException {
        Path out = work.resolve("out");
        Path info = work.resolve("module-info.java");
        Path some = work.resolve("org/neckgeom/some/Some.java");
        Files.createDirectories(some.getParent());
        Files.writeString(info, descriptor);
        Files.writeString(some, "package org.neckgeom.some; public interface Some { interface Part {} }");
        List<String> options = List.of("--release", "17", "--module-version", VERSION, "-d", out.toString());
        List<String> arguments = Stream.concat(options.stream(), Stream.of(info.toString(), some.toString()))
                .toList();
        if (ToolProvider.getSystemJavaCompiler().run(null, null, null, arguments.toArray(String[]::new)) != 0) {
            throw new IllegalStateException("the made-up module does not compile");
        }
        Map<String, byte[]> entries = new TreeMap<>(texts("META-INF/LICENSE"));
        for (String name : List.of("module-info", "org/neckgeom/some/Some", "org/neckgeom/some/Some$Part")) {
            entries.put(name + ".class", Files.readAllBytes(out.resolve(name + ".class")));
        }
        return entries;
    }

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    static byte[] zip(Map<String, byte[]> entries) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
            }
        }
        return bytes.toByteArray();
    }

    private static Map<String, byte[]> texts(String... names) {
        Map<String, byte[]> entries = new TreeMap<>();
        for (String name : names) {
            entries.put(name, utf8("text of " + name));
        }
        return entries;
    }

    private byte[] pom(String artifact) {
        return utf8("""
                <project>
                  <groupId>org.neckgeom</groupId>
                  <artifactId>%s</artifactId>
                  <version>%s</version>
                  <name>A name</name>
                  <description>A description</description>
                  <url>https://home/</url>
                  <licenses><license><name>Apache-2.0</name><url>https://licence/</url></license></licenses>
                  <developers><developer><name>Somebody</name></developer></developers>
                  <scm><url>https://scm/</url><connection>scm:git:https://scm/</connection></scm>
                  <dependencies>
                    <dependency>
                      <groupId>javax.measure</groupId>
                      <artifactId>unit-api</artifactId>
                      <version>2.2</version>
                    </dependency>
                  </dependencies>
                </project>
                """.formatted(artifact, VERSION));
    }
}
