package org.neckgeom.testing;

import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Values of every public type, grown from a few: factories, steps and nouns are called with sensible arguments, round by
 * round, until each type has some. The arguments that were answered are kept, to be spoiled one at a time.
 */
public final class Grown {

    private static final int ROUNDS = 5;
    private static final int TRIES = 150;
    private static final int MOST_OF_A_TYPE = 5;
    private static final int MOST_RECIPES = 2;

    /** A receiver and arguments that were answered. */
    record Recipe(Object receiver, Object[] arguments) {}

    private final Map<Class<?>, List<Object>> values = new LinkedHashMap<>();
    private final Map<Executable, List<Recipe>> recipes = new HashMap<>();
    private final Arguments arguments;
    private final SplittableRandom random = new SplittableRandom(1);

    private Grown(List<Object> seeds, Map<Class<?>, List<Object>> formulas, List<String> texts) {
        arguments = new Arguments(this::of, formulas, texts);
        seeds.forEach(this::keep);
    }

    /** Values of the types, grown from the seeds, with formulas where one is asked for and texts that mean something. */
    public static Grown from(
            List<Class<?>> types, List<Object> seeds, Map<Class<?>, List<Object>> formulas, List<String> texts) {
        Grown grown = new Grown(seeds, formulas, texts);
        for (int round = 0; round < ROUNDS; round++) {
            types.forEach(grown::grow);
        }
        return grown;
    }

    /** The values of a type, none if none was found. */
    public List<Object> of(Class<?> type) {
        return values.getOrDefault(type, List.of());
    }

    Arguments arguments() {
        return arguments;
    }

    /** What a method answered, none if it never did. */
    List<Recipe> recipes(Executable method) {
        return recipes.getOrDefault(method, List.of());
    }

    private void grow(Class<?> type) {
        for (Executable method : BadInput.waysIn(type)) {
            List<Recipe> found = recipes.computeIfAbsent(method, key -> new ArrayList<>());
            List<Object> receivers = BadInput.isStatic(method) ? Arrays.asList((Object) null) : of(type);
            for (int i = 0; i < TRIES && found.size() < MOST_RECIPES && !receivers.isEmpty(); i++) {
                Object receiver = receivers.get(i % receivers.size());
                attempt(method, receiver).ifPresent(found::add);
                if (method.getParameterCount() == 0 && i + 1 >= receivers.size()) {
                    break;
                }
            }
        }
    }

    private Optional<Recipe> attempt(Executable method, Object receiver) {
        Object[] chosen = new Object[method.getParameterCount()];
        for (int i = 0; i < chosen.length; i++) {
            List<Object> candidates =
                    arguments.sensible(method.getParameterTypes()[i], method.getGenericParameterTypes()[i]);
            if (candidates.isEmpty()) {
                return Optional.empty();
            }
            boolean anyWord = BadInput.isCallersWord(method, i);
            chosen[i] = anyWord ? "thing" : candidates.get(random.nextInt(candidates.size()));
        }
        try {
            Object answer = BadInput.invoke(method, receiver, chosen);
            if (answer == null) {
                return Optional.empty();
            }
            // The form of an answer takes answers of that type alone, which no raw call can see.
            if (!method.getName().equals("form")) {
                keep(answer);
            }
            return Optional.of(new Recipe(receiver, chosen));
        } catch (InvocationTargetException e) {
            return Optional.empty(); // what was refused is judged when bad input is
        }
    }

    private void keep(Object value) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresent(this::keep);
        } else if (value instanceof Collection<?> collection) {
            collection.stream().limit(3).forEach(this::keep);
        } else if (value.getClass().getName().startsWith("org.neckgeom.")) {
            List<Object> known = values.computeIfAbsent(value.getClass(), key -> new ArrayList<>());
            if (known.size() < MOST_OF_A_TYPE && !known.contains(value)) {
                known.add(value);
            }
        }
    }
}
