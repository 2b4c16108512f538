package org.neckgeom.testing;

import java.lang.reflect.Array;
import java.lang.reflect.GenericArrayType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/**
 * What may be passed for a parameter: sensible values, and values that a slip, a raw type or another provider's quantity
 * could bring. Values of this project's own types come from the samples.
 */
final class Arguments {

    private static final List<Double> SENSIBLE = List.of(0.5, 2.0, 7.0, 0.05);
    private static final List<Double> BAD = List.of(
            Double.NaN,
            Double.POSITIVE_INFINITY,
            Double.NEGATIVE_INFINITY,
            0.0,
            -0.0,
            -1.0,
            1e9,
            Double.MAX_VALUE,
            -Double.MAX_VALUE,
            Double.MIN_VALUE);
    private static final Map<String, ShopUnit<?>> UNITS = new LinkedHashMap<>();

    static {
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
            UNITS.put(unit.kind().getTypeName(), unit);
        }
    }

    private final Function<Class<?>, List<Object>> samples;
    private final List<String> texts;
    private final Map<Class<?>, List<Object>> formulas;

    /** Arguments whose own types come from the samples, formulas by their type, and texts that mean something. */
    Arguments(Function<Class<?>, List<Object>> samples, Map<Class<?>, List<Object>> formulas, List<String> texts) {
        this.samples = samples;
        this.formulas = formulas;
        this.texts = texts;
    }

    /** What someone who read the documentation might pass. */
    List<Object> sensible(Class<?> type, Type generic) {
        if (Quantity.class.isAssignableFrom(type)) {
            return sensibleQuantities(argument(generic));
        }
        if (type == double.class) {
            return List.copyOf(SENSIBLE);
        }
        if (type == int.class) {
            return List.of(1, 12, 14, 2, 0, 5);
        }
        if (type == long.class) {
            return List.of(2_000L, 1L, 100L);
        }
        if (type == boolean.class) {
            return List.of(true, false);
        }
        if (type == String.class) {
            return List.copyOf(texts);
        }
        if (List.class.isAssignableFrom(type)) {
            return elements(generic, true).stream()
                    .<Object>map(List::of)
                    .limit(8)
                    .toList();
        }
        if (type.isArray()) {
            return arrays(type.getComponentType(), elements(generic, true), 1, 2, 3);
        }
        if (type == Map.class) {
            return List.of(Map.of());
        }
        if (type == Optional.class) {
            return List.of(Optional.empty());
        }
        if (type == DoubleUnaryOperator.class) {
            return List.<Object>of((DoubleUnaryOperator) x -> x);
        }
        return plain(type, true);
    }

    /** What makes no sense there, or little. */
    List<Object> bad(Class<?> type, Type generic) {
        if (Quantity.class.isAssignableFrom(type)) {
            return badQuantities(argument(generic)).stream()
                    .filter(quantity -> quantity == null || type.isInstance(quantity))
                    .toList();
        }
        if (type == double.class) {
            return List.copyOf(BAD);
        }
        if (type == int.class) {
            return List.of(0, -1, 3, 1000, Integer.MAX_VALUE, Integer.MIN_VALUE);
        }
        if (type == long.class) {
            return List.of(0L, -1L, 3L, Long.MAX_VALUE, Long.MIN_VALUE);
        }
        if (type == boolean.class) {
            return List.of(true, false);
        }
        if (type == String.class) {
            return Arrays.asList(
                    null,
                    "",
                    " ",
                    "x",
                    "1 3/4 in",
                    "3,5 mm",
                    "A3",
                    "12 mm\n",
                    "1e999 in",
                    "y".repeat(2_000),
                    "\u001b[31mx\nforged row\u202e",
                    "\uD800\uFFFE");
        }
        if (List.class.isAssignableFrom(type)) {
            return lists(elements(generic, false));
        }
        if (type.isArray()) {
            List<Object> arrays = new ArrayList<>(arrays(type.getComponentType(), elements(generic, false), 1, 3, 200));
            arrays.add(null);
            arrays.add(Array.newInstance(type.getComponentType(), 0));
            return arrays;
        }
        if (type == Map.class) {
            Map<Object, Object> odd = new HashMap<>();
            odd.put("x", null);
            odd.put(null, Double.NaN);
            return Arrays.asList(null, odd, Map.of("x", Double.NaN), Map.of("x", -1.0), Map.of("", 1e308));
        }
        if (type == Optional.class) {
            return Arrays.asList(null, Optional.of(""));
        }
        if (type == DoubleUnaryOperator.class) {
            return Arrays.asList(null, (DoubleUnaryOperator) x -> Double.NaN, (DoubleUnaryOperator) x -> 1e308);
        }
        return plain(type, false);
    }

    private List<Object> plain(Class<?> type, boolean good) {
        List<Object> values = new ArrayList<>();
        if (Number.class.isAssignableFrom(type)) {
            values.addAll(good ? List.of(0.5, 2) : List.of(0, Double.NaN, Double.POSITIVE_INFINITY, 1e-320));
        } else if (type == Class.class) {
            values.addAll(List.of(Length.class, Mass.class, Quantity.class));
        } else if (Unit.class.isAssignableFrom(type)) {
            values.addAll(List.of(ShopUnit.INCH.jsr385(), ShopUnit.HERTZ.jsr385()));
        } else if (type == Object.class) {
            values.add("text");
        } else if (type.isEnum()) {
            values.addAll(List.of(type.getEnumConstants()));
        } else {
            values.addAll(formulas.getOrDefault(type, samples.apply(type)));
        }
        if (!good) {
            values.add(null);
        }
        return values;
    }

    private List<Object> elements(Type generic, boolean good) {
        Type element = generic instanceof GenericArrayType array
                ? array.getGenericComponentType()
                : generic instanceof Class<?> array ? array.getComponentType() : argument(generic);
        Class<?> raw = raw(element);
        return good ? sensible(raw, element) : bad(raw, element);
    }

    private static Class<?> raw(Type type) {
        if (type instanceof ParameterizedType parameterized) {
            return (Class<?>) parameterized.getRawType();
        }
        return type instanceof Class<?> plain ? plain : Object.class;
    }

    private static List<Object> sensibleQuantities(Type kind) {
        ShopUnit<?> unit = unit(kind);
        double[] values = {10};
        if (unit == ShopUnit.MILLIMETRE) {
            values = new double[] {0.1, 1.5, 6, 9, 20, 45, 78, 300, 560};
        } else if (unit == ShopUnit.DEGREE) {
            values = new double[] {1, 13, 4, 88};
        } else if (unit == ShopUnit.PERCENT) {
            values = new double[] {95, 45, 60};
        } else if (unit == ShopUnit.NEWTON || unit == ShopUnit.HERTZ) {
            values = new double[] {90, 250};
        }
        List<Object> quantities = new ArrayList<>();
        for (double value : values) {
            quantities.add(unit.of(value));
        }
        return quantities;
    }

    private static List<Object> badQuantities(Type kind) {
        ShopUnit<?> unit = unit(kind);
        List<Object> quantities = new ArrayList<>();
        quantities.add(null);
        for (double value : new double[] {0, -1, 0.5, 10, 61, 1e6, -1e6, 1e-9, 1e308, -1e308, 1e-320}) {
            quantities.add(unit.of(value));
        }
        for (double value : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 12}) {
            quantities.add(foreign(value, unit));
        }
        quantities.add(foreign(null, unit));
        quantities.add(new OtherQuantity<>(1, null));
        quantities.add(new Unreadable<>());
        quantities.addAll(Hostile.quantities(unit.jsr385()));
        quantities.add(unit.kind() == Length.class ? ShopUnits.newton(3) : ShopUnits.mm(3));
        return quantities;
    }

    private static ShopUnit<?> unit(Type kind) {
        return UNITS.getOrDefault(kind == null ? "" : kind.getTypeName(), ShopUnit.MILLIMETRE);
    }

    private static <Q extends Quantity<Q>> Quantity<Q> foreign(Number value, ShopUnit<Q> unit) {
        return new OtherQuantity<>(value, unit.jsr385());
    }

    private static List<Object> lists(List<Object> elements) {
        List<Object> lists = new ArrayList<>();
        lists.add(null);
        lists.add(List.of());
        Object usual = elements.stream()
                .filter(element -> element instanceof Amount<?> amount && amount.value() > 1)
                .findFirst()
                .orElse(elements.get(0));
        for (Object element : elements) {
            lists.add(Collections.singletonList(element));
            lists.add(Arrays.asList(element, element));
            lists.add(Arrays.asList(usual, element));
            lists.add(Collections.nCopies(2_000, element));
        }
        return lists;
    }

    private static List<Object> arrays(Class<?> component, List<Object> elements, int... lengths) {
        List<Object> arrays = new ArrayList<>();
        for (Object element : elements) {
            for (int length : lengths) {
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
        if (generic instanceof WildcardType wildcard) {
            return argument(wildcard.getUpperBounds()[0]);
        }
        if (generic instanceof ParameterizedType parameterized) {
            Type argument = parameterized.getActualTypeArguments()[0];
            return argument instanceof WildcardType wildcard ? wildcard.getUpperBounds()[0] : argument;
        }
        return null;
    }
}
