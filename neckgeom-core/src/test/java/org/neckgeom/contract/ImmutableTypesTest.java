package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.neckgeom.head.Scarf;
import org.neckgeom.table.Table;
import org.neckgeom.testing.PublicTypes;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;

/**
 * Every value a user can hold is made of fields that cannot be set twice and whose types cannot change, all the way down;
 * arrays are private and stay inside; what a collection holds is asked of the values themselves, in {@link SharedValuesTest}.
 */
class ImmutableTypesTest {

    /** Types whose objects never change, or change nothing that can be seen. */
    private static final Set<Class<?>> KNOWN = Set.of(
            String.class,
            Boolean.class,
            Integer.class,
            Long.class,
            Double.class,
            Class.class,
            Object.class,
            BigDecimal.class,
            MathContext.class,
            Pattern.class,
            Optional.class);

    /** Interfaces of which our values hold unmodifiable copies, and functions, which are asked to be pure. */
    private static boolean isTrusted(Class<?> type) {
        return type.isPrimitive()
                || type.isEnum()
                || KNOWN.contains(type)
                || type == List.class
                || type == Set.class
                || type == Map.class
                || type == NavigableMap.class
                || Unit.class.isAssignableFrom(type)
                || type.isInterface() && type.getPackageName().equals("java.util.function")
                || type.isInterface() && type.getPackageName().startsWith("org.neckgeom.");
    }

    @Test
    void walk_seesBothModules() throws Exception {
        assertThat(publicTypes()).contains(Amount.class, Scarf.class).hasSizeGreaterThan(150);
    }

    @Test
    void fields_areFinalAndOfTypesThatCannotChange() throws Exception {
        Set<String> faults = new TreeSet<>();
        Set<Class<?>> seen = new LinkedHashSet<>();
        Deque<Class<?>> open = new ArrayDeque<>(publicTypes());
        while (!open.isEmpty()) {
            Class<?> type = open.remove();
            // A Report is a builder for one text, and never leaves the method that makes it; a Table takes its keys
            // while the
            // class of its noun loads, and refuses more once it is used.
            if (type == Report.class || type == Table.class || !seen.add(type)) {
                continue;
            }
            for (Field field : type.getDeclaredFields()) {
                if (!field.isSynthetic() && !(Modifier.isStatic(field.getModifiers()) && isOwnCache(type))) {
                    judge(field, faults, open);
                }
            }
        }
        assertThat(seen).hasSizeGreaterThan(200);
        assertThat(faults).isEmpty();
    }

    /** The list of known units: a cache whose filling nobody can see. */
    private static boolean isOwnCache(Class<?> type) {
        return type.getName().equals("org.neckgeom.units.Border");
    }

    private static void judge(Field field, Set<String> faults, Deque<Class<?>> open) {
        Class<?> type = field.getType();
        if (!Modifier.isFinal(field.getModifiers())) {
            faults.add(field + " is not final");
        }
        if (type.isArray()) {
            if (!Modifier.isPrivate(field.getModifiers())
                    && Modifier.isPublic(field.getDeclaringClass().getModifiers())) {
                faults.add(field + " is an array in reach of others");
            }
            type = component(type);
        }
        if (isTrusted(type)) {
            return;
        }
        if (!type.getName().startsWith("org.neckgeom.")) {
            faults.add(field + " may change");
        } else if (!Modifier.isFinal(type.getModifiers()) && !Modifier.isAbstract(type.getModifiers())) {
            faults.add(field + " may be of a subclass that changes");
        } else {
            open.add(type);
        }
    }

    private static Class<?> component(Class<?> array) {
        Class<?> type = array;
        while (type.isArray()) {
            type = type.getComponentType();
        }
        return type;
    }

    /** An array that is handed out must be a fresh one: two calls, two arrays. */
    @Test
    void arrays_areHandedOutAsCopies() throws Exception {
        List<String> faults = new ArrayList<>();
        int asked = 0;
        for (Object value : SharedValues.all()) {
            for (Method method : value.getClass().getMethods()) {
                if (method.getReturnType().isArray()
                        && method.getParameterCount() == 0
                        && !Modifier.isStatic(method.getModifiers())
                        && method.getDeclaringClass() != Object.class) {
                    asked++;
                    Object first = method.invoke(value);
                    if (first == method.invoke(value) && java.lang.reflect.Array.getLength(first) > 0) {
                        faults.add(method + " hands out its own array");
                    }
                }
            }
        }
        assertThat(faults).isEmpty();
        assertThat(asked).isPositive();
    }

    @Test
    void collections_areHandedOutUnmodifiable() throws Exception {
        List<String> faults = new ArrayList<>();
        int asked = 0;
        for (Object value : SharedValues.all()) {
            for (Method method : value.getClass().getMethods()) {
                boolean plain = method.getParameterCount() == 0 && !Modifier.isStatic(method.getModifiers());
                if (plain && Collection.class.isAssignableFrom(method.getReturnType())) {
                    asked++;
                    try {
                        ((Collection<?>) method.invoke(value)).clear();
                        faults.add(method + " lets its list be emptied");
                    } catch (UnsupportedOperationException asItShould) {
                        continue;
                    }
                }
            }
        }
        assertThat(faults).isEmpty();
        assertThat(asked).isGreaterThan(10);
    }

    @Test
    void judge_seesAFault() throws Exception {
        Set<String> faults = new TreeSet<>();
        for (Field field : Leaky.class.getDeclaredFields()) {
            if (!field.isSynthetic()) {
                judge(field, faults, new ArrayDeque<>());
            }
        }
        assertThat(faults).hasSize(3);
    }

    /** Does what a value must not. */
    public static final class Leaky {
        final double[] handedOut = {1};
        private final StringBuilder text = new StringBuilder();
        private int count;

        @Override
        public String toString() {
            return text.append(handedOut[0]).append(count++).toString();
        }
    }

    private static List<Class<?>> publicTypes() {
        return Stream.<Class<?>>of(Amount.class, Scarf.class)
                .flatMap(one -> PublicTypes.beside(one).stream())
                .toList();
    }
}
