package org.neckgeom.contract;

import java.io.IOException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReader;
import java.lang.module.ModuleReference;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Member;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The public API of a module as text: what its exported packages promise, sorted, one line a member. */
final class ApiList {

    private final ModuleReference module;

    private ApiList(ModuleReference module) {
        this.module = module;
    }

    /** The list of the module this class lies in. */
    static ApiList ofModuleOf(Class<?> type) {
        try {
            Path place = Path.of(
                    type.getProtectionDomain().getCodeSource().getLocation().toURI());
            return new ApiList(
                    ModuleFinder.of(place).findAll().stream().findFirst().orElseThrow());
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    String module() {
        return module.descriptor().name();
    }

    /** The packages exported to everyone. */
    Set<String> packages() {
        return module.descriptor().exports().stream()
                .filter(export -> !export.isQualified())
                .map(ModuleDescriptor.Exports::source)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The whole list. */
    String text() throws IOException {
        StringBuilder text = new StringBuilder("module " + module() + "\n");
        for (String name : packages()) {
            text.append("\npackage ").append(name).append('\n');
            types(name).forEach(type -> text.append(of(type)));
        }
        return text.toString();
    }

    private List<Class<?>> types(String name) throws IOException {
        try (ModuleReader reader = module.open();
                Stream<String> files = reader.list()) {
            return files.filter(file -> file.matches(name.replace('.', '/') + "/[^/]+\\.class"))
                    .filter(file -> !file.endsWith("package-info.class"))
                    .map(file ->
                            file.substring(0, file.length() - ".class".length()).replace('/', '.'))
                    .sorted()
                    .<Class<?>>map(ApiList::load)
                    .filter(ApiList::isPromised)
                    .toList();
        }
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name, false, ApiList.class.getClassLoader());
        } catch (ClassNotFoundException gone) {
            throw new IllegalStateException(gone);
        }
    }

    private static boolean isPromised(Class<?> type) {
        boolean outerToo = type.getDeclaringClass() == null || isPromised(type.getDeclaringClass());
        return isPromised(type.getModifiers()) && outerToo && !type.isSynthetic();
    }

    private static boolean isPromised(int modifiers) {
        return Modifier.isPublic(modifiers) || Modifier.isProtected(modifiers);
    }

    /** A type's lines: itself, then its fields, constructors and methods by name. */
    static String of(Class<?> type) {
        Stream<String> fields = promised(type.getDeclaredFields())
                .filter(field -> !field.isEnumConstant())
                .map(ApiList::field);
        Stream<String> constructors = promised(type.getDeclaredConstructors()).map(ApiList::constructor);
        Stream<String> methods = promised(type.getDeclaredMethods()).map(ApiList::method);
        return Stream.of(fields, constructors, methods)
                .flatMap(Function.identity())
                .map(line -> "    " + line + "\n")
                .collect(Collectors.joining("", "  " + head(type) + "\n", ""));
    }

    private static <M extends Member> Stream<M> promised(M[] members) {
        return Arrays.stream(members)
                .filter(member -> isPromised(member.getModifiers()) && !member.isSynthetic())
                .sorted(Comparator.comparing(Member::getName).thenComparing(Object::toString));
    }

    private static String head(Class<?> type) {
        StringBuilder head = new StringBuilder(deprecated(type.isAnnotationPresent(Deprecated.class)));
        head.append(kind(type)).append(' ');
        head.append(type.getName().substring(type.getPackageName().length() + 1));
        head.append(variables(type.getTypeParameters()));
        if (type.isRecord()) {
            head.append(Arrays.stream(type.getRecordComponents())
                    .map(ApiList::component)
                    .collect(Collectors.joining(", ", "(", ")")));
        }
        if (type.getGenericSuperclass() != null && !type.isEnum() && !type.isRecord()) {
            head.append(listed(" extends ", List.of(type.getGenericSuperclass())));
        }
        head.append(listed(" implements ", List.of(type.getGenericInterfaces())));
        if (type.isSealed()) {
            head.append(listed(" permits ", List.of(type.getPermittedSubclasses())));
        }
        if (type.isEnum()) {
            head.append(Arrays.stream(type.getEnumConstants())
                    .map(constant -> ((Enum<?>) constant).name())
                    .collect(Collectors.joining(", ", " {", "}")));
        }
        return head.toString();
    }

    private static String kind(Class<?> type) {
        String access = Modifier.isProtected(type.getModifiers()) ? "protected " : "";
        if (type.isAnnotation()) {
            return access + "@interface";
        }
        if (type.isInterface()) {
            return access + (type.isSealed() ? "sealed interface" : "interface");
        }
        if (type.isRecord()) {
            return access + "record";
        }
        if (type.isEnum()) {
            return access + "enum";
        }
        String openness = type.isSealed() ? "sealed " : Modifier.isFinal(type.getModifiers()) ? "final " : "";
        return access + openness + (Modifier.isAbstract(type.getModifiers()) ? "abstract class" : "class");
    }

    private static String component(RecordComponent component) {
        return name(component.getGenericType()) + " " + component.getName();
    }

    private static String field(Field field) {
        String value = "";
        if (Modifier.isStatic(field.getModifiers())
                && Modifier.isFinal(field.getModifiers())
                && (field.getType().isPrimitive() || field.getType() == String.class)) {
            value = " = " + constant(field);
        }
        return deprecated(field.isAnnotationPresent(Deprecated.class))
                + modifiers(field, Modifier.STATIC | Modifier.FINAL)
                + name(field.getGenericType()) + " " + field.getName() + value;
    }

    private static Object constant(Field field) {
        try {
            return field.get(null);
        } catch (IllegalAccessException isPublic) {
            throw new IllegalStateException(isPublic);
        }
    }

    private static String constructor(Constructor<?> constructor) {
        return deprecated(constructor.isAnnotationPresent(Deprecated.class))
                + modifiers(constructor, 0)
                + "new" + arguments(constructor);
    }

    private static String method(Method method) {
        String variables = variables(method.getTypeParameters());
        return deprecated(method.isAnnotationPresent(Deprecated.class))
                + modifiers(method, Modifier.STATIC | Modifier.ABSTRACT)
                + (method.isDefault() ? "default " : "")
                + (variables.isEmpty() ? "" : variables + " ")
                + name(method.getGenericReturnType()) + " " + method.getName() + arguments(method);
    }

    private static String arguments(Executable executable) {
        String list = Arrays.stream(executable.getGenericParameterTypes())
                .map(ApiList::name)
                .collect(Collectors.joining(", ", "(", ")"));
        String varied = executable.isVarArgs() ? list.replaceFirst("\\[]\\)$", "...)") : list;
        return varied + listed(" throws ", List.of(executable.getGenericExceptionTypes()));
    }

    private static String modifiers(Member member, int shown) {
        String access = Modifier.isProtected(member.getModifiers()) ? "protected " : "";
        String rest = Modifier.toString(member.getModifiers() & shown);
        return access + (rest.isEmpty() ? "" : rest + " ");
    }

    private static String deprecated(boolean is) {
        return is ? "@Deprecated " : "";
    }

    private static String variables(TypeVariable<?>[] variables) {
        return variables.length == 0
                ? ""
                : Arrays.stream(variables)
                        .map(variable -> variable.getName() + listed(" extends ", List.of(variable.getBounds())))
                        .collect(Collectors.joining(", ", "<", ">"));
    }

    private static String listed(String word, List<? extends Type> types) {
        List<String> names = types.stream()
                .filter(type -> type != Object.class)
                .map(ApiList::name)
                .toList();
        return names.isEmpty() ? "" : word + String.join(", ", names);
    }

    private static String name(Type type) {
        return type.getTypeName().replaceAll("\\bjava\\.lang\\.(?=[A-Z])", "");
    }
}
