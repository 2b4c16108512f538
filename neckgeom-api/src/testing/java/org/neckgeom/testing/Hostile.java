package org.neckgeom.testing;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Quantities of providers that break what JSR 385 promises: answers that change between two calls, are null, are no number
 * or are thrown, units that are equal to all and convert by nothing.
 */
public final class Hostile {

    private static final Number THROWING = new Number() {
        private static final long serialVersionUID = 1L;

        @Override
        public int intValue() {
            throw angry();
        }

        @Override
        public long longValue() {
            throw angry();
        }

        @Override
        public float floatValue() {
            throw angry();
        }

        @Override
        public double doubleValue() {
            throw angry();
        }
    };

    private Hostile() {}

    /** One of each kind; they begin with the good unit given. */
    public static List<Quantity<?>> quantities(Unit<?> good) {
        Unit<?> nulls = unit((proxy, method, arguments) -> ofNothing(method));
        Unit<?> throwing = unit((proxy, method, arguments) -> {
            throw angry();
        });
        Unit<?> equalToAll = unit((proxy, method, arguments) -> switch (method.getName()) {
            case "equals", "isCompatible" -> true;
            case "toString" -> "\u001b[31mzoll\nforged row";
            case "getSystemUnit" -> good.getSystemUnit();
            default -> ofNothing(method);
        });
        List<Quantity<?>> all = new ArrayList<>();
        all.add(quantity(cycle(-3.0), cycle(good, null), cycle(Quantity.Scale.ABSOLUTE)));
        all.add(quantity(cycle(3.0), cycle(good, null), cycle(Quantity.Scale.ABSOLUTE)));
        all.add(quantity(cycle(3.0, Double.NaN, null, -1e300), cycle(good), cycle(Quantity.Scale.ABSOLUTE)));
        all.add(quantity(cycle(-3.0, THROWING), cycle(good), cycle((Object) null)));
        all.add(quantity(cycle(3.0), cycle(good, nulls), cycle(Quantity.Scale.RELATIVE, null)));
        all.add(quantity(cycle(3.0), cycle(nulls), cycle(Quantity.Scale.ABSOLUTE)));
        all.add(quantity(cycle(3.0), cycle(throwing), cycle(Quantity.Scale.ABSOLUTE)));
        all.add(quantity(cycle(3.0), cycle(equalToAll), cycle(Quantity.Scale.ABSOLUTE)));
        return all;
    }

    private static IllegalStateException angry() {
        return new IllegalStateException("\u001b[31mno\nforged row\u202e");
    }

    private static AtomicAnswers cycle(Object... answers) {
        return new AtomicAnswers(answers, new AtomicInteger());
    }

    /** Answers that come in turn. */
    private record AtomicAnswers(Object[] answers, AtomicInteger asked) {

        Object next() {
            return answers[Math.floorMod(asked.getAndIncrement(), answers.length)];
        }
    }

    private static Quantity<?> quantity(AtomicAnswers values, AtomicAnswers units, AtomicAnswers scales) {
        return (Quantity<?>) proxy(Quantity.class, (proxy, method, arguments) -> switch (method.getName()) {
            case "getValue" -> values.next();
            case "getUnit" -> units.next();
            case "getScale" -> scales.next();
            case "equals" -> proxy == arguments[0];
            case "hashCode" -> 7;
            case "toString" -> "hostile";
            default -> throw angry();
        });
    }

    private static Unit<?> unit(InvocationHandler handler) {
        return (Unit<?>) proxy(Unit.class, handler);
    }

    private static Object proxy(Class<?> type, InvocationHandler handler) {
        return Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, handler);
    }

    private static Object ofNothing(Method method) {
        return method.getReturnType() == boolean.class
                ? (Object) false
                : method.getReturnType() == int.class ? 0 : null;
    }
}
