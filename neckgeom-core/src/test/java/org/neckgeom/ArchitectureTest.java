package org.neckgeom;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.io.Serializable;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.reflect.Method;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.units.Amount;

/** Arrows run down the list of packages and never up; api and core touch nothing but numbers. */
class ArchitectureTest {

    private static final String ROOT = "org.neckgeom.";

    /** Each row may use the rows above it. Packages in one row do not use each other, but for {@link #BESIDE}. */
    private static final List<Set<String>> ROWS = List.of(
            Set.of("fault"),
            Set.of("text"),
            Set.of("units"),
            Set.of("numeric"),
            Set.of("measure"),
            Set.of("form"),
            Set.of("table"),
            Set.of("shop", "stock", "neck"),
            Set.of("kernel", "shape"),
            Set.of("board", "head", "heel", "channel", "budget", "sweep", "order"),
            Set.of("solid", "state"),
            Set.of("strength"),
            Set.of("plan"),
            Set.of("drawing", "search"),
            Set.of("page"),
            Set.of("template"), // on it the mark of the plan's data
            Set.of("fixture")); // for tests: nothing uses it

    /**
     * A design names the wood it is made of, a string its place at the nut, an error from a remedy its line of a budget, where the
     * head lies its planes.
     */
    private static final Set<String> BESIDE =
            Set.of("neck > stock", "kernel > shape", "head > board", "order > budget");

    /**
     * The three packages whose types define each other: an amount has a unit and a unit makes amounts, an answer has a form and a
     * form is that of an answer, a key is a part of a group and a group is the type of a key. No other package has a circle.
     */
    private static final Set<String> CIRCULAR = Set.of("units", "form", "table");

    private static JavaClasses neckgeom;

    @BeforeAll
    static void read() throws URISyntaxException, IOException, ClassNotFoundException {
        // Names are all the rules need of the JDK's classes; reading those takes ten times as long.
        ArchConfiguration.get().setResolveMissingDependenciesFromClassPath(false);
        neckgeom = new ClassFileImporter()
                .importLocations(List.of(home(Amount.class), home(Class.forName("org.neckgeom.head.Scarf"))));
    }

    /** A folder while testing alone, a jar in a build that has packed it already. */
    private static Location home(Class<?> type) throws IOException, URISyntaxException {
        Path path =
                Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
        return Files.isDirectory(path) ? Location.of(path) : Location.of(new JarFile(path.toFile()));
    }

    static Stream<String> packages() {
        return ROWS.stream().flatMap(Set::stream).sorted();
    }

    @Test
    void import_seesBothModules() {
        assertThat(neckgeom.size()).isGreaterThan(90);
        assertThat(neckgeom.contain("org.neckgeom.units.Amount")).isTrue();
        assertThat(neckgeom.contain("org.neckgeom.head.Scarf")).isTrue();
        assertThat(neckgeom.stream().map(JavaClass::getName)).noneMatch(name -> name.endsWith("Test"));
    }

    /** The last bit of these may differ between machines; StrictMath gives the same bits everywhere. */
    @Test
    void functions_areThoseWithTheSameBitsEverywhere() {
        Set<String> loose = Set.of(
                "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "exp", "expm1", "log",
                "log10", "log1p", "pow", "cbrt", "hypot");

        assertThat(neckgeom.stream()
                        .flatMap(type -> type.getCodeUnitAccessesFromSelf().stream())
                        .filter(access ->
                                access.getTargetOwner().isEquivalentTo(Math.class) && loose.contains(access.getName()))
                        .map(Object::toString))
                .isEmpty();
    }

    @Test
    void apiPackages_lieInTheApiAlone() {
        assertThat(neckgeom.stream()
                        .filter(type -> type.getSource()
                                .map(source -> source.getUri().toString())
                                .orElse("")
                                .contains("neckgeom-api"))
                        .map(JavaClass::getPackageName)
                        .map(name -> name.equals("") ? name : name.substring(ROOT.length()))
                        .filter(name -> !name.isEmpty())
                        .distinct())
                .containsExactlyInAnyOrder(
                        "fault", "text", "units", "numeric", "measure", "form", "table", "shop", "stock", "neck",
                        "fixture");
    }

    @ParameterizedTest
    @MethodSource("packages")
    void package_usesOnlyWhatLiesBelow(String name) {
        classes()
                .that()
                .resideInAPackage(ROOT + name)
                .should(useOnly(below(name)))
                .check(neckgeom);
    }

    private static Set<String> below(String name) {
        Set<String> below = new HashSet<>(Set.of(name));
        for (Set<String> row : ROWS) {
            if (row.contains(name)) {
                row.stream()
                        .filter(other -> BESIDE.contains(name + " > " + other))
                        .forEach(below::add);
                return below;
            }
            below.addAll(row);
        }
        throw new AssertionError(name);
    }

    private static ArchCondition<JavaClass> useOnly(Set<String> allowed) {
        return new ArchCondition<>("use only " + allowed) {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                type.getDirectDependenciesFromSelf().forEach(dependency -> {
                    String target =
                            dependency.getTargetClass().getBaseComponentType().getPackageName();
                    if (target.startsWith(ROOT) && !allowed.contains(target.substring(ROOT.length()))) {
                        events.add(SimpleConditionEvent.violated(type, dependency.getDescription()));
                    }
                });
            }
        };
    }

    @Test
    void packages_haveNoCycles() {
        slices().matching("org.neckgeom.(*)..").should().beFreeOfCycles().check(neckgeom);
    }

    /** A type with its nested types is one: what lies in one file may know its own parts. */
    @ParameterizedTest
    @MethodSource("packages")
    void package_hasNoCircleInside(String name) {
        Set<Set<String>> circles = circles(name);

        if (CIRCULAR.contains(name)) {
            assertThat(circles)
                    .as("%s has no circle any more: take it off the list", name)
                    .isNotEmpty();
        } else {
            assertThat(circles).isEmpty();
        }
    }

    @Test
    void circular_namesPackages() {
        assertThat(packages()).containsAll(CIRCULAR);
    }

    /** Types of a package that lead to each other and back. */
    private static Set<Set<String>> circles(String name) {
        Map<String, Set<String>> uses = new TreeMap<>();
        for (JavaClass type : neckgeom) {
            if (type.getPackageName().equals(ROOT + name)) {
                Set<String> used = uses.computeIfAbsent(outermost(type), key -> new TreeSet<>());
                for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                    JavaClass target = dependency.getTargetClass().getBaseComponentType();
                    if (target.getPackageName().equals(ROOT + name)
                            && !outermost(target).equals(outermost(type))) {
                        used.add(outermost(target));
                    }
                }
            }
        }
        Set<Set<String>> circles = new HashSet<>();
        for (String type : uses.keySet()) {
            Set<String> circle = new TreeSet<>();
            for (String other : reached(type, uses)) {
                if (reached(other, uses).contains(type)) {
                    circle.add(other);
                }
            }
            if (!circle.isEmpty()) {
                circles.add(circle);
            }
        }
        return circles;
    }

    private static String outermost(JavaClass type) {
        return type.getName().split("\\$")[0];
    }

    /** What a type leads to; itself only by way of another. */
    private static Set<String> reached(String from, Map<String, Set<String>> uses) {
        Set<String> reached = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>(uses.getOrDefault(from, Set.of()));
        while (!open.isEmpty()) {
            String next = open.remove();
            if (reached.add(next)) {
                open.addAll(uses.getOrDefault(next, Set.of()));
            }
        }
        return reached;
    }

    @Test
    void publicTypes_lieInTheListedPackages() {
        Set<String> listed = new HashSet<>();
        packages().forEach(name -> listed.add(ROOT + name));
        assertThat(neckgeom.stream()
                        .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
                        .filter(type -> !type.getSimpleName().equals("package-info"))
                        .map(JavaClass::getPackageName))
                .isSubsetOf(listed);
    }

    @Test
    void code_touchesNoFileNetworkOrLog() {
        // A digest is a function of its bytes; the rest of that package is dice and keys.
        DescribedPredicate<JavaClass> digests =
                JavaClass.Predicates.belongToAnyOf(MessageDigest.class, NoSuchAlgorithmException.class);
        noClasses()
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                                "java.io..",
                                "java.nio.file..",
                                "java.nio.channels..",
                                "java.net..",
                                "java.util.logging..",
                                "java.util.prefs..",
                                "java.lang.management..",
                                "java.security..",
                                "java.sql..",
                                "javax.swing..",
                                "java.awt..")
                        .and(DescribedPredicate.not(digests))
                        // What is thrown can be written by whoever logs it, and so must be its parts.
                        .and(not(equivalentTo(Serializable.class))))
                .check(neckgeom);
    }

    /**
     * What an ahead-of-time compiler must be helped with, and what a phone has not: no reflection, no search for services, no
     * desktop, no native code. Stands in for a run on either, which no build has here.
     */
    @Test
    void code_needsNoReflectionServicesOrDesktop() {
        closedWorld().check(neckgeom);
    }

    private static ArchRule closedWorld() {
        DescribedPredicate<JavaClass> looksUp =
                JavaClass.Predicates.belongToAnyOf(ServiceLoader.class, ClassLoader.class);
        return noClasses()
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                                "java.lang.reflect..", "java.beans..", "java.awt..", "javax.swing..", "sun..", "jdk..")
                        .or(looksUp))
                .orShould()
                .accessTargetWhere(target(describe("finds a class by its name", ArchitectureTest::isFinding)));
    }

    private static boolean isFinding(AccessTarget target) {
        return target.getOwner().isEquivalentTo(Class.class)
                        && (target.getName().equals("forName")
                                || target.getName().startsWith("getDeclared")
                                || target.getName().equals("newInstance"))
                || target.getOwner().isEquivalentTo(System.class)
                        && target.getName().startsWith("load");
    }

    @Test
    void modules_areThoseOfASmallRunTime() {
        Set<String> required = Stream.of("org.neckgeom.api", "org.neckgeom.core")
                .flatMap(name -> ModuleFinder.of(Path.of("target/classes"), Path.of("../neckgeom-api/target/classes"))
                        .find(name)
                        .orElseThrow()
                        .descriptor()
                        .requires()
                        .stream())
                .map(ModuleDescriptor.Requires::name)
                .collect(Collectors.toSet());

        assertThat(required)
                .containsExactlyInAnyOrder(
                        "java.base", "java.measure", "tech.units.indriya", "org.neckgeom.api", "org.jspecify");
    }

    /** Finds what is to be found: a test of the test. */
    @Test
    void rule_seesAClassThatReflects() {
        JavaClasses reflecting = new ClassFileImporter().importClasses(Reflecting.class);

        assertThatThrownBy(() -> closedWorld().check(reflecting))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("forName")
                .hasMessageContaining("java.lang.reflect.Method")
                .hasMessageContaining("java.util.ServiceLoader");
    }

    private static final class Reflecting {
        static Object of(String name) throws ReflectiveOperationException {
            Method method = Class.forName(name).getDeclaredMethods()[0];
            return ServiceLoader.load(method.getDeclaringClass());
        }
    }

    /** Every refusal has a path and a rule, and so has every question without an answer. */
    @Test
    void code_refusesByRefusalAndNoAnswerAlone() {
        assertThat(neckgeom.stream()
                        .flatMap(type -> type.getConstructorCallsFromSelf().stream())
                        .filter(call -> call.getTargetOwner().isEquivalentTo(IllegalArgumentException.class)
                                || call.getTargetOwner().isEquivalentTo(ArithmeticException.class))
                        .filter(call -> !call.getOriginOwner().getPackageName().equals(ROOT + "fault"))
                        .map(Object::toString))
                .isEmpty();
    }

    @Test
    void code_asksNoClockLocaleSystemOrDice() {
        quiet().check(neckgeom);
    }

    private static ArchRule quiet() {
        return noClasses()
                .should()
                .accessTargetWhere(target(describe("depends on more than its arguments", ArchitectureTest::isLoud)));
    }

    private static boolean isLoud(AccessTarget target) {
        String owner = target.getOwner().getName();
        String name = target.getName();
        boolean noArguments = target instanceof AccessTarget.CodeUnitCallTarget call
                && call.getRawParameterTypes().isEmpty();
        boolean noLocale = target instanceof AccessTarget.CodeUnitCallTarget call
                && call.getRawParameterTypes().stream().noneMatch(type -> type.isEquivalentTo(Locale.class));
        return switch (owner) {
            case "java.lang.System" ->
                Set.of(
                                "currentTimeMillis",
                                "nanoTime",
                                "getProperty",
                                "getProperties",
                                "getenv",
                                "out",
                                "err",
                                "in",
                                "exit")
                        .contains(name);
            case "java.lang.Math", "java.lang.StrictMath" -> name.equals("random");
            case "java.util.Locale", "java.util.TimeZone" -> name.equals("getDefault") || name.equals("setDefault");
            case "java.util.Random", "java.util.SplittableRandom" -> name.equals("<init>") && noArguments;
            case "java.util.concurrent.ThreadLocalRandom", "java.util.ServiceLoader" -> true;
            case "java.util.UUID" -> name.equals("randomUUID");
            case "java.util.random.RandomGenerator" -> name.equals("getDefault") || name.equals("of");
            case "java.time.Clock" -> name.startsWith("system");
            case "java.lang.String" ->
                name.equals("format") && noLocale
                        || name.equals("formatted")
                        || (name.equals("toLowerCase") || name.equals("toUpperCase")) && noArguments;
            case "javax.measure.spi.ServiceProvider" -> true;
            default -> owner.startsWith("java.time.") && name.equals("now");
        };
    }

    @Test
    void rule_seesALoudClass() {
        JavaClasses loud = new ClassFileImporter().importClasses(Loud.class);

        assertThatThrownBy(() -> quiet().check(loud))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("nanoTime")
                .hasMessageContaining("java.util.Random.<init>()")
                .hasMessageContaining("getDefault")
                .hasMessageContaining("formatted")
                .hasMessageContaining("java.time.Instant.now");
    }

    /** Does what the library must not. */
    static final class Loud {
        private Loud() {}

        static String noise() {
            return "%s %s %s %s"
                    .formatted(
                            System.nanoTime(),
                            new java.util.Random().nextInt(),
                            Locale.getDefault(),
                            java.time.Instant.now());
        }
    }
}
