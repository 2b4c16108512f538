package org.neckgeom.examples.shell;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReader;
import java.lang.module.ModuleReference;
import java.lang.reflect.Modifier;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The packages the library's modules export to everyone, and the public types in them. */
final class PublicSurface {

    private PublicSurface() {}

    static List<ModuleReference> modules() {
        return Arrays.stream(TestShell.classPath().split(File.pathSeparator))
                .filter(entry -> entry.contains("neckgeom-"))
                .flatMap(PublicSurface::modulesIn)
                .toList();
    }

    private static Stream<ModuleReference> modulesIn(String entry) {
        return ModuleFinder.of(Path.of(entry)).findAll().stream()
                .filter(module -> module.descriptor().name().startsWith("org.neckgeom.")
                        && !module.descriptor().isAutomatic());
    }

    static Set<String> packages() {
        return modules().stream().flatMap(PublicSurface::exported).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Stream<String> exported(ModuleReference module) {
        return module.descriptor().exports().stream()
                .filter(export -> !export.isQualified())
                .map(ModuleDescriptor.Exports::source);
    }

    static List<Class<?>> types() {
        List<Class<?>> types = new ArrayList<>();
        for (ModuleReference module : modules()) {
            Set<String> packages = exported(module).collect(Collectors.toSet());
            try (ModuleReader reader = module.open();
                    Stream<String> files = reader.list()) {
                files.filter(file -> file.endsWith(".class") && !file.contains("-info") && !file.contains("$"))
                        .map(file -> file.substring(0, file.length() - ".class".length())
                                .replace('/', '.'))
                        .map(PublicSurface::load)
                        .filter(Objects::nonNull)
                        .filter(type -> packages.contains(type.getPackageName()))
                        .filter(type -> Modifier.isPublic(type.getModifiers()))
                        .forEach(types::add);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
        return types;
    }

    static Class<?> load(String name) {
        try {
            return Class.forName(name, false, PublicSurface.class.getClassLoader());
        } catch (ClassNotFoundException none) {
            return null;
        }
    }
}
