package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Array;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.UnconvertibleException;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.fixture.Nearness;
import org.neckgeom.testing.OtherQuantity;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/**
 * Bad input to every public method by reflection: null, NaN, infinities, zero, negative, huge, of another kind, empty, in
 * every combination that stays under a bound. Allowed are a value that can be printed, a {@code NullPointerException} that
 * names the parameter, and an {@code IllegalArgumentException} or {@code ArithmeticException} with a sentence (and what
 * JSR 385 itself asks for).
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BadInputTest {

    private static final int MOST_CALLS = 4_000;
    private static final Set<String> FROM_OBJECT =
            Set.of("equals", "hashCode", "toString", "compareTo", "valueOf", "compareToImpl");

    private final Map<String, Integer> outcomes = new TreeMap<>();
    private int calls;

    /** Text and numeric are exported to core only, which keeps their promises by its own tests. */
    static Stream<Class<?>> types() {
        Set<String> inner = Set.of("org.neckgeom.text", "org.neckgeom.numeric");
        return PublicTypes.all().stream().filter(type -> !inner.contains(type.getPackageName()));
    }

    @BeforeAll
    void reset() {
        calls = 0;
    }

    @AfterAll
    void printTheCount() {
        System.out.println("bad input: " + calls + " calls, " + outcomes);
    }

    @Test
    void candidates_holdEveryKindOfBadQuantity() {
        List<Object> lengths = quantities(Length.class);

        assertThat(lengths).hasSizeGreaterThan(9).contains((Object) null);
    }

    @ParameterizedTest
    @MethodSource("types")
    void badInput_isRefusedInWords(Class<?> type) throws IllegalAccessException {
        List<String> faults = new ArrayList<>();
        for (Method method : type.getDeclaredMethods()) {
            boolean wanted = Modifier.isPublic(method.getModifiers())
                    && !method.isSynthetic()
                    && !FROM_OBJECT.contains(method.getName());
            if (wanted && method.getParameterCount() > 0) {
                List<Object> receivers =
                        Modifier.isStatic(method.getModifiers()) ? Collections.singletonList(null) : receivers(type);
                for (Object receiver : receivers) {
                    for (Object[] arguments : combinations(method)) {
                        call(method, receiver, arguments, faults);
                    }
                }
            }
        }

        assertThat(faults.stream().distinct().limit(25)).isEmpty();
    }

    private static List<Object> receivers(Class<?> type) {
        return type.isEnum() ? List.of(type.getEnumConstants()) : Samples.of(type);
    }

    private void call(Method method, Object receiver, Object[] arguments, List<String> faults)
            throws IllegalAccessException {
        calls++;
        Object result;
        try {
            result = method.invoke(receiver, arguments);
        } catch (InvocationTargetException e) {
            count(e.getCause().getClass().getSimpleName());
            judge(method, arguments, e.getCause(), faults);
            return;
        }
        count("answered");
        if (result != null && result.getClass().getName().startsWith("org.neckgeom.")) {
            String where = where(method, arguments);
            try {
                String text = result.toString();
                if (text.length() >= 1000) {
                    faults.add(method + " gave a text of " + text.length() + " characters");
                }
                if (!result.equals(result) || result.hashCode() != result.hashCode()) {
                    faults.add(where + " gave a value that is not equal to itself");
                }
            } catch (RuntimeException e) {
                faults.add(where + " gave a value that cannot be printed: " + e);
            }
        }
    }

    private void judge(Method method, Object[] arguments, Throwable thrown, List<String> faults) {
        String message = thrown.getMessage();
        boolean spoken = message != null && message.length() > 1;
        boolean ok;
        if (thrown.getClass() == NullPointerException.class) {
            // The JVM's own message begins "Cannot invoke ..."; ours is the parameter's name.
            ok = spoken && !message.startsWith("Cannot ") && message.length() < 60;
        } else if (thrown.getClass() == ClassCastException.class) {
            ok = spoken && method.getName().equals("asType"); // as JSR 385 says
        } else if (thrown.getClass() == UnconvertibleException.class) {
            ok = spoken && method.getName().equals("to"); // as JSR 385 says
        } else if (thrown.getClass() == AssertionError.class) {
            ok = spoken && method.getDeclaringClass() == Nearness.class; // says that a test has failed
        } else {
            ok = spoken
                    && (thrown.getClass() == IllegalArgumentException.class
                            || thrown.getClass() == ArithmeticException.class);
        }
        if (!ok) {
            faults.add(where(method, arguments) + " threw " + thrown);
        }
    }

    private void count(String outcome) {
        outcomes.merge(outcome, 1, Integer::sum);
    }

    private static String where(Method method, Object[] arguments) {
        String text = Arrays.deepToString(arguments);
        return method.getDeclaringClass().getSimpleName() + "." + method.getName()
                + text.substring(0, Math.min(120, text.length()));
    }

    /** Every combination, or where there are too many, each candidate against every other in one pass round. */
    private static List<Object[]> combinations(Method method) {
        List<List<Object>> candidates = new ArrayList<>();
        for (int i = 0; i < method.getParameterCount(); i++) {
            // The name that goes into a message is the caller's own word.
            boolean naming = method.getParameterTypes()[i] == String.class
                    && (method.getDeclaringClass() == HouseUnits.class || method.getDeclaringClass() == Amount.class);
            candidates.add(
                    naming
                            ? List.of("thing")
                            : candidates(method.getParameterTypes()[i], method.getGenericParameterTypes()[i]));
        }
        long all = 1;
        for (List<Object> list : candidates) {
            all *= list.size();
        }
        long step = Math.max(1, all / MOST_CALLS | 1);
        List<Object[]> combinations = new ArrayList<>();
        for (long n = 0; n < all; n += step) {
            long left = n;
            Object[] arguments = new Object[candidates.size()];
            for (int i = 0; i < arguments.length; i++) {
                arguments[i] =
                        candidates.get(i).get((int) (left % candidates.get(i).size()));
                left /= candidates.get(i).size();
            }
            combinations.add(arguments);
        }
        return combinations;
    }

    private static List<Object> candidates(Class<?> type, Type generic) {
        if (Quantity.class.isAssignableFrom(type)) {
            return quantities(argument(generic));
        }
        if (type == double.class) {
            return List.of(
                    Double.NaN,
                    Double.POSITIVE_INFINITY,
                    Double.NEGATIVE_INFINITY,
                    0.0,
                    -0.0,
                    -1.0,
                    0.5,
                    3.0,
                    Double.MAX_VALUE,
                    Double.MIN_VALUE);
        }
        if (type == int.class) {
            return List.of(0, 1, 2, 14, -1, Integer.MAX_VALUE, Integer.MIN_VALUE);
        }
        if (type == String.class) {
            return Arrays.asList(null, "", " ", "x", "1 3/4 in", "3,5 mm", "A3", "12 mm\n", "y".repeat(2_000));
        }
        if (List.class.isAssignableFrom(type)) {
            return lists(quantities(argument(argument(generic))));
        }
        if (type.isArray()) {
            return arrays(type.getComponentType(), ((java.lang.reflect.GenericArrayType) generic));
        }
        if (Number.class.isAssignableFrom(type)) {
            return Arrays.asList(null, 0, 2.5, Double.NaN, Double.POSITIVE_INFINITY);
        }
        if (type == Class.class) {
            return Arrays.asList(null, Length.class, javax.measure.quantity.Mass.class, Quantity.class);
        }
        if (Unit.class.isAssignableFrom(type)) {
            return Arrays.asList(null, ShopUnit.INCH.jsr385(), ShopUnit.HERTZ.jsr385());
        }
        if (type == Object.class) {
            return Arrays.asList(null, "text");
        }
        List<Object> samples = new ArrayList<>(receivers(type));
        assertThat(samples).as("samples of %s", type).isNotEmpty();
        samples.add(null);
        return samples;
    }

    private static List<Object> quantities(Type kind) {
        Map<String, ShopUnit<?>> units = new LinkedHashMap<>();
        for (ShopUnit<?> unit : List.of(
                ShopUnit.MILLIMETRE,
                ShopUnit.DEGREE,
                ShopUnit.NEWTON,
                ShopUnit.HERTZ,
                ShopUnit.MEGAPASCAL,
                ShopUnit.PERCENT,
                ShopUnit.CELSIUS,
                ShopUnit.MM_PER_SECOND,
                ShopUnit.GRAM_PER_METRE,
                ShopUnit.KG_PER_M3)) {
            units.put(unit.kind().getTypeName(), unit);
        }
        ShopUnit<?> unit = units.getOrDefault(kind == null ? "" : kind.getTypeName(), ShopUnit.MILLIMETRE);
        List<Object> quantities = new ArrayList<>();
        quantities.add(null);
        for (double value : new double[] {0, -1, 0.5, 10, 61, 1e308, -1e308, 1e-320}) {
            quantities.add(unit.of(value));
        }
        for (double value : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 12}) {
            quantities.add(foreign(value, unit));
        }
        quantities.add(unit.kind() == Length.class ? ShopUnits.newton(3) : ShopUnits.mm(3));
        return quantities;
    }

    private static <Q extends Quantity<Q>> Quantity<Q> foreign(double value, ShopUnit<Q> unit) {
        return new OtherQuantity<>(value, unit.jsr385());
    }

    private static List<Object> lists(List<Object> elements) {
        List<Object> lists = new ArrayList<>();
        lists.add(null);
        lists.add(List.of());
        for (Object element : elements) {
            lists.add(Collections.singletonList(element));
            lists.add(Arrays.asList(elements.get(4), element));
        }
        return lists;
    }

    private static List<Object> arrays(Class<?> component, java.lang.reflect.GenericArrayType generic) {
        List<Object> arrays = new ArrayList<>();
        arrays.add(null);
        arrays.add(Array.newInstance(component, 0));
        for (Object element : quantities(argument(generic.getGenericComponentType()))) {
            for (int length : new int[] {1, 3, 200}) {
                Object array = Array.newInstance(component, length);
                for (int i = 0; i < length; i++) {
                    Array.set(array, i, element);
                }
                arrays.add(array);
            }
        }
        return arrays;
    }

    private static Type argument(Type generic) {
        if (generic instanceof java.lang.reflect.WildcardType wildcard) {
            return argument(wildcard.getUpperBounds()[0]);
        }
        if (generic instanceof ParameterizedType parameterized) {
            Type argument = parameterized.getActualTypeArguments()[0];
            return argument instanceof java.lang.reflect.WildcardType wildcard
                    ? wildcard.getUpperBounds()[0]
                    : argument;
        }
        return null;
    }

    @Test
    void call_seesAFault() throws ReflectiveOperationException {
        // The judge itself: an unnamed null is a fault, a named one is not.
        List<String> faults = new ArrayList<>();
        Method mm = HouseUnits.class.getMethod("mm", Quantity.class, String.class);
        judge(mm, new Object[2], new NullPointerException("Cannot invoke \"x\""), faults);
        judge(mm, new Object[2], new IndexOutOfBoundsException("1"), faults);
        assertThat(faults).hasSize(2);
        judge(mm, new Object[2], new NullPointerException("length"), faults);
        judge(mm, new Object[2], new IllegalArgumentException("length must be more than 0 mm"), faults);
        assertThat(faults).hasSize(2);
        assertThat(Amount.class).isFinal();
    }
}
