package org.neckgeom.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReader;
import java.lang.module.ModuleReference;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The public types of a module and their public methods, found where its classes lie, in an order that never changes. */
public final class PublicTypes {

    private static final Set<String> OF_EVERY_OBJECT = Set.of(
            "equals", "hashCode", "toString", "compareTo", "valueOf", "values", "ordinal", "name", "compareToImpl");

    private PublicTypes() {}

    /** The packages that a type's module exports, be it to one other module alone. */
    public static Set<String> exported(Class<?> member) {
        return module(member).descriptor().exports().stream()
                .map(ModuleDescriptor.Exports::source)
                .collect(Collectors.toSet());
    }

    /** Every public type beside the given one in a package that is exported. */
    public static List<Class<?>> beside(Class<?> member) {
        Set<String> exported = exported(member);
        try (ModuleReader reader = module(member).open();
                Stream<String> files = reader.list()) {
            return files.filter(name -> name.startsWith("org/neckgeom/"))
                    .filter(name -> name.endsWith(".class") && !name.endsWith("package-info.class"))
                    .map(name ->
                            name.substring(0, name.length() - ".class".length()).replace('/', '.'))
                    .sorted()
                    .<Class<?>>map(name -> load(name, member))
                    .filter(PublicTypes::isPublic)
                    .filter(type -> exported.contains(type.getPackageName()))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The module of a type, in a folder while testing alone, in a jar in a build that has packed it already. */
    private static ModuleReference module(Class<?> member) {
        try {
            Path home = Path.of(
                    member.getProtectionDomain().getCodeSource().getLocation().toURI());
            return ModuleFinder.of(home).findAll().stream().findFirst().orElseThrow();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Whether a type is a mere collection of static methods. */
    public static boolean isStaticOnly(Class<?> type) {
        boolean noInstanceMethods =
                Arrays.stream(type.getDeclaredMethods()).allMatch(method -> Modifier.isStatic(method.getModifiers()));
        return !type.isEnum() && !type.isInterface() && !type.isRecord() && noInstanceMethods;
    }

    /** The public methods a type itself declares; the JVM names them in any order, this list has one. */
    public static List<Method> methods(Class<?> type) {
        return Arrays.stream(type.getDeclaredMethods())
                .filter(method -> Modifier.isPublic(method.getModifiers()) && !method.isSynthetic())
                .filter(method -> !isOfEveryObject(type, method))
                .sorted(Comparator.comparing(Method::getName).thenComparing(Method::toGenericString))
                .toList();
    }

    private static boolean isOfEveryObject(Class<?> type, Method method) {
        boolean named = OF_EVERY_OBJECT.contains(method.getName());
        boolean ownNoun = method.getName().equals("name") && !type.isEnum();
        return named && !ownNoun;
    }

    private static Class<?> load(String name, Class<?> member) {
        try {
            return Class.forName(name, false, member.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Whether users can name a type. */
    public static boolean isPublic(Class<?> type) {
        boolean outerToo = type.getDeclaringClass() == null || isPublic(type.getDeclaringClass());
        return Modifier.isPublic(type.getModifiers()) && outerToo;
    }
}
