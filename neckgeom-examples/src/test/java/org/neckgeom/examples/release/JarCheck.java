package org.neckgeom.examples.release;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.module.ModuleDescriptor;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;

/** What the jar of a module must hold, and its sources and documentation beside it. */
final class JarCheck {

    /** Class files of Java 17, so that the oldest JDK promised reads them. */
    private static final int JAVA_17 = 61;

    private static final Set<String> ALLOWED_MODULES =
            Set.of("java.base", "java.measure", "tech.units.indriya", "org.neckgeom.api", "org.jspecify");

    private static final List<String> TEST_LIBRARIES =
            List.of("org/junit/", "org/assertj/", "com/tngtech/", "org/openjdk/jmh/");

    private final Map<String, byte[]> entries;
    private final String module;
    private final String version;

    JarCheck(Path jar, String module, String version) throws IOException {
        this.entries = read(jar);
        this.module = module;
        this.version = version;
    }

    List<String> problems(Path sourcesJar, Path docsJar) throws IOException {
        List<String> problems = new ArrayList<>();
        Set<String> sources = read(sourcesJar).keySet();
        Set<String> docs = read(docsJar).keySet();
        if (!entries.containsKey("META-INF/LICENSE")) {
            problems.add("does not bring its licence");
        }
        checkClasses(sources, problems);
        byte[] compiled = entries.get("module-info.class");
        if (compiled == null) {
            problems.add("has no module descriptor");
        } else {
            checkModule(ModuleDescriptor.read(new ByteArrayInputStream(compiled)), docs, problems);
        }
        if (!docs.contains("index.html")) {
            problems.add("has documentation without a first page");
        }
        return problems;
    }

    private void checkModule(ModuleDescriptor descriptor, Set<String> docs, List<String> problems) {
        if (!descriptor.name().equals(module)) {
            problems.add("must be the module " + module + ", but was " + descriptor.name());
        }
        String said = descriptor.rawVersion().orElse("none");
        if (!said.equals(version)) {
            problems.add("must have the module version " + version + ", but had " + said);
        }
        Set<String> exported = descriptor.exports().stream()
                .filter(export -> !export.isQualified())
                .map(ModuleDescriptor.Exports::source)
                .collect(Collectors.toCollection(TreeSet::new));
        if (exported.isEmpty()) {
            problems.add("exports nothing");
        }
        for (String name : exported) {
            String page = module + "/" + name.replace('.', '/') + "/package-summary.html";
            if (!docs.contains(page)) {
                problems.add("has no documentation of " + name);
            }
        }
        descriptor.requires().stream()
                .map(ModuleDescriptor.Requires::name)
                .filter(name -> !ALLOWED_MODULES.contains(name))
                .sorted()
                .forEach(name -> problems.add("requires the module " + name));
    }

    private void checkClasses(Set<String> sources, List<String> problems) {
        int classes = 0;
        for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
            String name = entry.getKey();
            if (!name.endsWith(".class")) {
                continue;
            }
            classes++;
            byte[] code = entry.getValue();
            int major = (code[6] & 0xff) << 8 | code[7] & 0xff;
            if (major != JAVA_17) {
                problems.add(name + " must be of class file version " + JAVA_17 + ", but was " + major);
            }
            String source = name.replaceFirst("(\\$.*)?\\.class$", ".java");
            if (!sources.contains(source)) {
                problems.add(name + " has no source beside it");
            }
            String text = new String(code, StandardCharsets.ISO_8859_1);
            TEST_LIBRARIES.stream()
                    .filter(text::contains)
                    .forEach(library -> problems.add(name + " is a test: it uses " + library));
        }
        if (classes < 2) {
            problems.add("has no classes");
        }
    }

    private static Map<String, byte[]> read(Path file) throws IOException {
        Map<String, byte[]> entries = new TreeMap<>();
        try (JarFile jar = new JarFile(file.toFile())) {
            for (ZipEntry entry : jar.stream().toList()) {
                if (!entry.isDirectory()) {
                    entries.put(entry.getName(), jar.getInputStream(entry).readAllBytes());
                }
            }
        }
        return entries;
    }
}
