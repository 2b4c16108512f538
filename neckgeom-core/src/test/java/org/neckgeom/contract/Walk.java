package org.neckgeom.contract;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Type;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.BudgetCode;
import org.neckgeom.plan.CheckCode;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Plan;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.SectionCode;

/** Every answer that can be reached by asking answers for more, with a few arguments at hand. */
final class Walk {

    private static final int MOST_OF_A_TYPE = 8;
    private static final int MOST_CHECKS = 100;

    /** A plan takes a quarter of a second to print. */
    private static final int MOST_PLANS = 1;

    private final Map<Class<?>, List<Object>> found = new LinkedHashMap<>();
    private final Map<String, List<Object>> arguments;
    private final Deque<Object> open = new ArrayDeque<>();

    private Walk(Map<String, List<Object>> arguments) {
        this.arguments = arguments;
    }

    static Map<Class<?>, List<Object>> from(List<Supplier<Object>> roots, Map<String, List<Object>> arguments) {
        Walk walk = new Walk(arguments);
        for (Supplier<Object> root : roots) {
            try {
                walk.take(root.get());
            } catch (IllegalArgumentException | ArithmeticException noSuchThing) {
                continue; // sizes that no neck has
            }
        }
        while (!walk.open.isEmpty()) {
            walk.ask(walk.open.remove());
        }
        return walk.found;
    }

    private void take(Object answer) {
        if (answer instanceof Optional<?> perhaps) {
            perhaps.ifPresent(this::take);
        } else if (answer instanceof Collection<?> several) {
            several.stream().limit(3).forEach(this::take);
        } else if (answer != null
                && answer.getClass().getName().startsWith("org.neckgeom.")
                && isPublic(answer.getClass())) {
            List<Object> ofType = found.computeIfAbsent(answer.getClass(), type -> new ArrayList<>());
            if (ofType.size() < most(answer)) {
                ofType.add(answer);
                open.add(answer);
            }
        }
    }

    private void ask(Object answer) {
        Arrays.stream(answer.getClass().getMethods())
                .filter(method -> method.getDeclaringClass() != Object.class && !method.isBridge())
                .filter(method -> !Modifier.isStatic(method.getModifiers()))
                .filter(method -> Modifier.isPublic(method.getDeclaringClass().getModifiers()))
                .filter(method -> !method.getName().equals("in"))
                .sorted(Comparator.comparing(Method::toString))
                .forEach(method -> combinations(method).forEach(given -> take(result(answer, method, given))));
    }

    private List<Object[]> combinations(Method method) {
        List<Object[]> all = new ArrayList<>();
        all.add(new Object[0]);
        for (Type type : method.getGenericParameterTypes()) {
            List<Object[]> longer = new ArrayList<>();
            for (Object given : arguments.getOrDefault(type.getTypeName(), constants(type))) {
                for (Object[] before : all) {
                    Object[] more = Arrays.copyOf(before, before.length + 1);
                    more[before.length] = given;
                    longer.add(more);
                }
            }
            all = longer;
        }
        return all;
    }

    /** Each kind of finding is in a check. */
    private static int most(Object answer) {
        return isWholePlan(answer) ? MOST_PLANS : answer instanceof PlanCheck ? MOST_CHECKS : MOST_OF_A_TYPE;
    }

    private static List<Object> constants(Type type) {
        return type == CheckCode.class || type == SectionCode.class || type == BudgetCode.class
                ? List.of(((Class<?>) type).getEnumConstants())
                : List.of();
    }

    static Object result(Object answer, Method method, Object... given) {
        try {
            return method.invoke(answer, given);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof IllegalArgumentException
                    || refused.getCause() instanceof ArithmeticException
                    || refused.getCause() instanceof IndexOutOfBoundsException
                    || refused.getCause() instanceof java.util.NoSuchElementException
                    || refused.getCause() instanceof IllegalStateException) {
                return null;
            }
            throw new AssertionError(method + " of " + answer, refused.getCause());
        } catch (IllegalAccessException closed) {
            throw new AssertionError(closed);
        }
    }

    static boolean isWholePlan(Object answer) {
        return answer instanceof Job || answer instanceof Plan || answer instanceof Sheet;
    }

    static boolean isPublic(Class<?> type) {
        return Modifier.isPublic(type.getModifiers())
                && (type.getEnclosingClass() == null || isPublic(type.getEnclosingClass()));
    }
}
