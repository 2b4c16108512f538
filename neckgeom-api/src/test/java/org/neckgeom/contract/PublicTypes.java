package org.neckgeom.contract;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.neckgeom.units.Amount;

/** The public types of neckgeom-api, found where its classes lie. */
final class PublicTypes {

    private PublicTypes() {}

    static List<Class<?>> all() {
        try {
            Path root = Path.of(Amount.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            try (Stream<Path> files = Files.walk(root.resolve("org/neckgeom"))) {
                return files.map(file -> root.relativize(file).toString().replace('\\', '/'))
                        .filter(name -> name.endsWith(".class") && !name.endsWith("package-info.class"))
                        .map(name -> name.substring(0, name.length() - ".class".length())
                                .replace('/', '.'))
                        .sorted()
                        .<Class<?>>map(PublicTypes::load)
                        .filter(PublicTypes::isPublic)
                        .toList();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (java.net.URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Those that are made: neither enums nor interfaces, nor mere collections of static methods. */
    static List<Class<?>> values() {
        return all().stream()
                .filter(type -> !type.isInterface() && !type.isEnum() && !isStaticOnly(type))
                .toList();
    }

    static boolean isStaticOnly(Class<?> type) {
        boolean noInstanceMethods =
                Arrays.stream(type.getDeclaredMethods()).allMatch(method -> Modifier.isStatic(method.getModifiers()));
        return !type.isEnum() && !type.isInterface() && !type.isRecord() && noInstanceMethods;
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name, false, Amount.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    private static boolean isPublic(Class<?> type) {
        boolean outerToo = type.getDeclaringClass() == null || isPublic(type.getDeclaringClass());
        return Modifier.isPublic(type.getModifiers()) && outerToo;
    }

    static List<Constructor<?>> publicConstructors(Class<?> type) {
        return List.of(type.getConstructors());
    }
}
