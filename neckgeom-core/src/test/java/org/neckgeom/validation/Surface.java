package org.neckgeom.validation;

import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The public answers of both modules and the tests that touch them, read from classes and sources. */
final class Surface {

    /** Packages that compute; the nouns of bench and sheet hand back and draw what they are given. */
    private static final List<String> PACKAGES = List.of(
            "units",
            "measure",
            "numeric",
            "stock",
            "neck",
            "shape",
            "channel",
            "board",
            "head",
            "heel",
            "solid",
            "strength",
            "budget",
            "state",
            "order",
            "plan");

    private static final Path API = Path.of("..", "neckgeom-api", "src");
    private static final Path CORE = Path.of("src");

    /** The same answer as a double, as in {@code angle} and {@code degrees}, {@code runMm} and {@code run}. */
    private static final Pattern UNIT = Pattern.compile("(Mm|Rad|MPa|Newton|Percent|Degrees|KgPerM3|Nm2)$");

    private static final Set<String> NO_ANSWERS = Set.of(
            "equals",
            "hashCode",
            "toString",
            "compareTo",
            "in",
            "style",
            "table",
            "list",
            "iterator",
            "values",
            "valueOf");

    private final Map<String, Set<String>> answers = new TreeMap<>();
    private final Map<String, Set<String>> tests = new TreeMap<>();

    Surface() throws IOException, ClassNotFoundException {
        for (Path root : List.of(API, CORE)) {
            for (Path file : sources(root.resolve("main"))) {
                String name = file.getFileName().toString().replace(".java", "");
                String folder = file.getParent().getFileName().toString();
                if (PACKAGES.contains(folder)) {
                    Class<?> type = Class.forName("org.neckgeom." + folder + "." + name);
                    if (Modifier.isPublic(type.getModifiers())) {
                        answers.put(folder + "." + name, answers(type));
                    }
                }
            }
        }
        answers.values().removeIf(Set::isEmpty);
        Map<String, String> bySimpleName =
                answers.keySet().stream().collect(Collectors.toMap(key -> key.replaceFirst(".*\\.", ""), key -> key));
        Pattern word = Pattern.compile("\\b[A-Z]\\w+\\b");
        for (Path root : List.of(API, CORE)) {
            for (Path file : sources(root.resolve("test"))) {
                String test = file.getFileName().toString().replace(".java", "");
                if (test.endsWith("Test") && !file.toString().contains("contract")) {
                    Matcher matcher = word.matcher(Files.readString(file));
                    while (matcher.find()) {
                        String type = bySimpleName.get(matcher.group());
                        if (type != null) {
                            tests.computeIfAbsent(type, key -> new TreeSet<>()).add(test);
                        }
                    }
                }
            }
        }
    }

    private static List<Path> sources(Path root) throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(file -> file.toString().endsWith(".java")
                            && !file.endsWith("package-info.java")
                            && !file.endsWith("module-info.java"))
                    .sorted()
                    .toList();
        }
    }

    private static Set<String> answers(Class<?> type) {
        Set<String> names = new TreeSet<>();
        for (Method method : type.getDeclaredMethods()) {
            if (Modifier.isPublic(method.getModifiers())
                    && !method.isSynthetic()
                    && isAnswer(method.getReturnType(), type, Modifier.isStatic(method.getModifiers()))
                    && !NO_ANSWERS.contains(method.getName())) {
                names.add(plain(method.getName()));
            }
        }
        return names;
    }

    /** A number, a quantity or a value of ours; not a copy of the thing itself. */
    private static boolean isAnswer(Class<?> result, Class<?> type, boolean isStatic) {
        boolean number = result == double.class || result == int.class || result.isArray();
        boolean value = result.getName().startsWith("org.neckgeom.")
                && result != type
                && result.getEnclosingClass() != type
                && !result.getName().endsWith("LengthStyle")
                && !result.getName().endsWith("form.Form")
                && !result.getName().startsWith("org.neckgeom.fault.")
                && !result.getName().endsWith("ShopUnit");
        boolean many = result == List.class || result == java.util.Optional.class;
        return number || many || (value && !(isStatic && type.getSimpleName().equals("Amount")));
    }

    static String plain(String method) {
        if (method.matches("library[A-Z].*")) {
            return Character.toLowerCase(method.charAt(7)) + method.substring(8);
        }
        Matcher matcher = UNIT.matcher(method);
        return matcher.find() && matcher.start() > 0 ? method.substring(0, matcher.start()) : method;
    }

    /** Type with its package to its answers. */
    Map<String, Set<String>> answers() {
        return answers;
    }

    /** The key of a simple type name, or the name itself where no public type with answers has it. */
    String type(String simpleName) {
        List<String> found = answers.keySet().stream()
                .filter(key -> key.endsWith("." + simpleName))
                .toList();
        return found.size() == 1 ? found.get(0) : simpleName;
    }

    /** A test class that names the type: the one named after it, or else the first; blank where others reach it. */
    String test(String type) {
        Set<String> all = tests.getOrDefault(type, Set.of());
        String own = type.replaceFirst(".*\\.", "") + "Test";
        return all.contains(own) ? own : all.stream().findFirst().orElse("");
    }
}
