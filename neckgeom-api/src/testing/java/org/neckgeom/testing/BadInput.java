package org.neckgeom.testing;

import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.regex.Pattern;
import javax.measure.UnconvertibleException;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.testing.Grown.Recipe;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;

/**
 * Bad input to every way in of a type: each argument of a call that is answered spoiled in every way in turn, then several
 * at once. Allowed are a value that is finite all through and can be printed, a {@code NullPointerException} that names
 * the parameter, and a {@code Refusal} or a {@code NoAnswer} with a sentence, a place and a rule (and what JSR 385 itself
 * asks for).
 */
public final class BadInput {

    private static final Pattern PARAMETER = Pattern.compile("[\\p{Alnum}][\\p{Alnum}/ '(),%-]{0,59}");

    private static final Pattern RULE = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

    private final Grown grown;
    private final int mixed;
    private final Finite finite = new Finite();
    private final Map<String, Integer> outcomes = new TreeMap<>();
    private int calls;
    private volatile Call now;

    private record Call(Executable method, Object receiver, Object[] arguments) {

        @Override
        public String toString() {
            String on = receiver == null ? "" : " on " + cut(text(receiver), 60);
            return method.getDeclaringClass().getSimpleName() + "." + method.getName()
                    + cut(text(Arrays.asList(arguments)), 120) + on;
        }

        private static String text(Object value) {
            try {
                return String.valueOf(value).replace('\n', ' ');
            } catch (RuntimeException e) {
                return "something that cannot be printed";
            }
        }

        private static String cut(String text, int most) {
            return text.substring(0, Math.min(most, text.length()));
        }
    }

    /** Bad input to the types of the grown values, with so many calls of each way in where several arguments are bad. */
    public BadInput(Grown grown, int mixed) {
        this.grown = grown;
        this.mixed = mixed;
    }

    /** Calls every way into a type; returns a sentence for each fault. */
    public List<String> faults(Class<?> type) {
        List<String> faults = new ArrayList<>();
        for (Executable method : waysIn(type)) {
            SplittableRandom random =
                    new SplittableRandom(method.toGenericString().hashCode());
            for (Recipe recipe : recipes(method, type)) {
                for (Object[] arguments : spoiled(method, recipe, random)) {
                    call(method, recipe.receiver(), arguments, faults);
                }
            }
        }
        return faults.stream().distinct().toList();
    }

    /** How often something was called, and how it ended. */
    public String count() {
        return calls + " calls, " + outcomes + ", " + finite.walked() + " values walked through";
    }

    public int calls() {
        return calls;
    }

    /** The call that is going on, for whoever waits for it. */
    public String now() {
        return String.valueOf(now);
    }

    /** Public methods and constructors. */
    static List<Executable> waysIn(Class<?> type) {
        List<Executable> ways = new ArrayList<>(List.of(type.getConstructors()));
        ways.addAll(PublicTypes.methods(type));
        return ways;
    }

    static boolean isStatic(Executable method) {
        return method instanceof Constructor || Modifier.isStatic(method.getModifiers());
    }

    static Object invoke(Executable method, Object receiver, Object[] arguments) throws InvocationTargetException {
        try {
            return method instanceof Constructor<?> made
                    ? made.newInstance(arguments)
                    : ((Method) method).invoke(receiver, arguments);
        } catch (IllegalAccessException | InstantiationException e) {
            throw new IllegalStateException(method.toString(), e);
        }
    }

    /** Calls that were answered; where there are none, any receiver with nothing sensible to start from. */
    private List<Recipe> recipes(Executable method, Class<?> type) {
        List<Recipe> recipes = new ArrayList<>(grown.recipes(method));
        List<Object> receivers = new ArrayList<>();
        if (isStatic(method)) {
            receivers.add(null);
        } else {
            receivers.addAll(type.isEnum() ? List.of(type.getEnumConstants()) : grown.of(type));
        }
        for (Object receiver : receivers) {
            if (recipes.stream().noneMatch(recipe -> recipe.receiver() == receiver)) {
                recipes.add(new Recipe(receiver, null));
            }
        }
        return recipes;
    }

    private List<Object[]> spoiled(Executable method, Recipe recipe, SplittableRandom random) {
        List<Object[]> all = new ArrayList<>();
        List<List<Object>> bad = new ArrayList<>();
        int combinations = 1;
        for (int i = 0; i < method.getParameterCount(); i++) {
            bad.add(
                    isCallersWord(method, i)
                            ? List.of("thing")
                            : grown.arguments()
                                    .bad(method.getParameterTypes()[i], method.getGenericParameterTypes()[i]));
            combinations = (int) Math.min((long) combinations * bad.get(i).size(), mixed);
        }
        if (recipe.arguments() != null || bad.isEmpty()) {
            all.add(recipe.arguments() == null ? new Object[0] : recipe.arguments());
            for (int i = 0; i < bad.size(); i++) {
                for (Object candidate : bad.get(i)) {
                    Object[] arguments = recipe.arguments().clone();
                    arguments[i] = candidate;
                    all.add(arguments);
                }
            }
        }
        for (int n = 0; n < combinations && bad.size() > 0; n++) {
            Object[] arguments = new Object[bad.size()];
            for (int i = 0; i < arguments.length; i++) {
                List<Object> candidates = bad.get(i);
                arguments[i] = candidates.get(random.nextInt(candidates.size()));
            }
            all.add(arguments);
        }
        return all;
    }

    /** The name that goes into a message is the caller's own word. */
    static boolean isCallersWord(Executable method, int parameter) {
        return method.getParameterTypes()[parameter] == String.class
                && Set.of(LibraryUnits.class, Amount.class).contains(method.getDeclaringClass());
    }

    private void call(Executable method, Object receiver, Object[] arguments, List<String> faults) {
        calls++;
        now = new Call(method, receiver, arguments);
        try {
            Object result = invoke(method, receiver, arguments);
            outcomes.merge("answered", 1, Integer::sum);
            String fault = finite.fault(
                    result, method.getName(), Arrays.stream(arguments).anyMatch(BadInput::isLong));
            if (!fault.isEmpty()) {
                faults.add(now + " gave " + fault);
            }
        } catch (InvocationTargetException e) {
            Throwable thrown = e.getCause();
            outcomes.merge(thrown.getClass().getSimpleName(), 1, Integer::sum);
            if (!isInWords(method.getName(), thrown)) {
                faults.add(now + " threw " + thrown + inOurCode(thrown));
            }
        }
    }

    /** Whether an exception is of a kind that is promised and says what is wrong. */
    static boolean isInWords(String method, Throwable thrown) {
        String message = thrown.getMessage();
        if (message == null) {
            return false;
        }
        if (thrown.getClass() == NullPointerException.class) {
            // The JVM's own message begins "Cannot invoke ..."; ours is the parameter's name.
            return PARAMETER.matcher(message).matches() && !message.startsWith("Cannot ");
        }
        boolean sentence = message.split(" ").length > 3
                && Words.isLine(message)
                && message.length() < 1_000
                && !message.contains("org.neckgeom.");
        if (thrown.getClass() == AssertionError.class) {
            return method.startsWith("require"); // says to a test that it has failed
        }
        if (thrown.getClass() == ClassCastException.class) {
            return sentence && method.equals("asType"); // as JSR 385 says
        }
        if (thrown.getClass() == UnconvertibleException.class) {
            return sentence && method.equals("to"); // as JSR 385 says
        }
        if (thrown instanceof Refusal refusal) {
            return sentence
                    && !refusal.faults().isEmpty()
                    && refusal.faults().stream().allMatch(BadInput::isWhole);
        }
        return sentence && thrown instanceof NoAnswer none && isWhole(none.fault());
    }

    /** A fault has a place, a stable code and words. */
    private static boolean isWhole(Fault fault) {
        return !fault.path().isBlank()
                && RULE.matcher(fault.rule()).matches()
                && !fault.must().isBlank();
    }

    private static boolean isLong(Object argument) {
        return argument instanceof String text && text.length() > 300
                || argument instanceof Collection<?> list && list.size() > 30
                || argument instanceof Object[] array && array.length > 30;
    }

    private static String inOurCode(Throwable thrown) {
        return Arrays.stream(thrown.getStackTrace())
                .filter(frame -> frame.getClassName().startsWith("org.neckgeom.")
                        && !frame.getClassName().startsWith("org.neckgeom.testing."))
                .findFirst()
                .map(frame -> " at " + frame.getFileName() + ":" + frame.getLineNumber())
                .orElse("");
    }
}
