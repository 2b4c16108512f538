package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Unfinished;
import org.neckgeom.testing.PublicTypes;
import org.neckgeom.units.Amount;

/** One walk over all public types: closed, made by factories, readable, and named as the house names things. */
class PublicApiTest {

    /** Names that JShell has in scope without an import; a type of ours must not fight them. */
    private static final List<String> JSHELL_PACKAGES = List.of(
            "java.io",
            "java.math",
            "java.net",
            "java.nio.file",
            "java.util",
            "java.util.concurrent",
            "java.util.function",
            "java.util.prefs",
            "java.util.regex",
            "java.util.stream",
            "java.lang",
            "javax.measure.quantity");

    private static final Set<String> JSR385_GETTERS = Set.of("getValue", "getUnit", "getScale");

    static Stream<Class<?>> types() {
        return PublicTypes.beside(Amount.class).stream();
    }

    @Test
    void walk_seesThePublicTypes() {
        assertThat(PublicTypes.beside(Amount.class)).contains(Amount.class).hasSizeGreaterThan(35);
    }

    private static final Set<Class<?>> OPEN = Set.of(Noun.class, Unfinished.class, LeanAnswer.class, ValueAnswer.class);

    /** Closed is what nothing outside its package can extend; nouns, and answers that are values, are open, for core has its own. */
    @ParameterizedTest
    @MethodSource("types")
    void type_isClosed(Class<?> type) {
        boolean closed = Modifier.isFinal(type.getModifiers())
                || type.isEnum()
                || type.isInterface()
                || Arrays.stream(type.getDeclaredConstructors()).noneMatch(PublicApiTest::isOpen);

        assertThat(closed).as("%s", type).isNotEqualTo(OPEN.contains(type));
    }

    private static boolean isOpen(Constructor<?> constructor) {
        return Modifier.isPublic(constructor.getModifiers()) || Modifier.isProtected(constructor.getModifiers());
    }

    @ParameterizedTest
    @MethodSource("types")
    void type_isMadeByFactories(Class<?> type) {
        if (!type.isRecord()) {
            assertThat(type.getConstructors()).as("%s", type).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    void type_hasATextOfItsOwn(Class<?> type) throws NoSuchMethodException {
        if (!type.isInterface() && !type.isEnum() && !PublicTypes.isStaticOnly(type)) {
            assertThat(type.getMethod("toString").getDeclaringClass()).isNotEqualTo(Object.class);
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    void type_hasEqualsAndHashCodeTogether(Class<?> type) throws NoSuchMethodException {
        if (!type.isInterface()) {
            boolean equals = type.getMethod("equals", Object.class).getDeclaringClass() != Object.class;
            boolean hash = type.getMethod("hashCode").getDeclaringClass() != Object.class;

            assertThat(equals).as("%s", type).isEqualTo(hash);
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    void name_isFreeInJShell(Class<?> type) {
        for (String scope : JSHELL_PACKAGES) {
            assertThat(exists(scope + "." + type.getSimpleName()))
                    .as("%s is also in %s", type.getSimpleName(), scope)
                    .isFalse();
        }
    }

    private static boolean exists(String name) {
        try {
            Class.forName(name, false, Quantity.class.getClassLoader());
            return true;
        } catch (ClassNotFoundException e) {
            return false;
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    void methods_areNamedForWhatTheyReturn(Class<?> type) {
        for (Method method : type.getDeclaredMethods()) {
            if (Modifier.isPublic(method.getModifiers()) && !method.isSynthetic()) {
                assertThat(JSR385_GETTERS.contains(method.getName())
                                || !method.getName().matches("(get|set|compute|calculate)([A-Z].*|$)"))
                        .as("%s", method)
                        .isTrue();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    void methods_giveAmountsNotForeignQuantities(Class<?> type) {
        for (Method method : type.getDeclaredMethods()) {
            boolean giving = Modifier.isPublic(method.getModifiers())
                    && !method.isSynthetic()
                    && Quantity.class.isAssignableFrom(method.getReturnType());
            // JSR 385's own methods may leave the shop's units.
            if (giving && type != Amount.class) {
                assertThat(method.getReturnType()).as("%s", method).isEqualTo(Amount.class);
            }
        }
    }
}
