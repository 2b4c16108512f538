package org.neckgeom.examples.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.neckgeom.units.ShopUnits;

/** The names a maker has at hand in JShell mean one thing each. */
class NamesTest {

    @Test
    void surface_isFound() {
        assertThat(PublicSurface.modules()).hasSize(2);
        assertThat(PublicSurface.types()).contains(ShopUnits.class).hasSizeGreaterThan(5);
    }

    @Test
    void types_doNotBearANameThatJShellOrTheUnitsStandardImports() {
        List<String> theirs = new ArrayList<>(ScriptShell.classicImports());
        theirs.addAll(List.of("java.lang", "javax.measure", "javax.measure.quantity"));

        List<String> conflicts = new ArrayList<>();
        for (Class<?> type : PublicSurface.types()) {
            for (String name : theirs) {
                if (PublicSurface.load(name + "." + type.getSimpleName()) != null) {
                    conflicts.add(type.getName() + " with " + name);
                }
            }
        }

        assertThat(conflicts).isEmpty();
        assertThat(PublicSurface.load("java.util.List")).as("the look-up works").isNotNull();
        assertThat(PublicSurface.load("javax.measure.quantity.Length")).isNotNull();
    }

    @Test
    void types_bearEachNameOnce() {
        Map<String, List<String>> byName = PublicSurface.types().stream()
                .collect(Collectors.groupingBy(
                        Class::getSimpleName, Collectors.mapping(Class::getName, Collectors.toList())));

        assertThat(byName.values()).allSatisfy(types -> assertThat(types).hasSize(1));
    }

    @Test
    void startup_importsEveryExportedPackageAndNoOther() {
        String startup = TestShell.read(TestShell.STARTUP);
        Set<String> imported = Pattern.compile("^import (org\\.neckgeom\\.[a-z.]+)\\.\\*;$", Pattern.MULTILINE)
                .matcher(startup)
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(imported)
                .as("packages imported in startup.jsh, against those exported")
                .isEqualTo(PublicSurface.packages());
        assertThat(startup).contains("import static org.neckgeom.units.ShopUnits.*;");
    }

    @Test
    void everyName_canBeSaidInTheShell() throws Exception {
        List<Class<?>> types = PublicSurface.types();
        String names =
                types.stream().map(type -> type.getSimpleName() + ".class").collect(Collectors.joining(", "));
        String script = "for (Class<?> type : new Class<?>[] {" + names + "}) println(type.getName());";

        String printed = Printed.by(() -> {
            try (ScriptShell shell = TestShell.open()) {
                shell.run("every name", script);
            }
        });

        assertThat(printed.lines().toList())
                .isEqualTo(types.stream().map(Class::getName).toList());
    }
}
