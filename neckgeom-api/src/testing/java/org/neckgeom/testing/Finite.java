package org.neckgeom.testing;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.neckgeom.fault.Fault;

/** Walks through everything an answer can be asked without an argument, and looks for what is no finite number. */
final class Finite {

    private static final int DEPTH = 3;
    private static final int MOST_REMEMBERED = 200_000;
    private static final Set<String> ENDLESS = Set.of(
            "degreesOfFreedom",
            "cutScatterDegreesOfFreedom",
            "libraryLower",
            "libraryUpper",
            "nutRadiusMm",
            "farRadiusMm",
            "crownRadiusAtMm");
    private static final Pattern NO_NUMBER = Pattern.compile("\\b(NaN|[Ii]nfinity|null)\\b");

    private static final Pattern MINUS_ZERO = Pattern.compile("-(?<![0-9]-)0(\\.0*)?(?![.0-9])");

    /** A text may quote what a formula of the caller's gave. */
    private static final Pattern REFUSED = Pattern.compile("but was -?(NaN|infinity)");

    private final Map<Object, Integer> seen = new HashMap<>();
    private int walked;
    private boolean oversize;

    int walked() {
        return walked;
    }

    /** What is wrong with what a noun gave, or nothing; texts may be long where much was said. */
    String fault(Object value, String noun, boolean saidMuch) {
        oversize = saidMuch;
        return fault(value, DEPTH, "." + noun);
    }

    private String fault(Object value, int depth, String path) {
        if (value instanceof Fault) {
            return ""; // names what was refused, which may be no number
        }
        if (value instanceof Double number) {
            return Double.isFinite(number) || isMeant(number, path) ? "" : number + " in " + path;
        }
        if (value instanceof double[] numbers) {
            for (double number : numbers) {
                if (!Double.isFinite(number)) {
                    return number + " in " + path;
                }
            }
            return "";
        }
        if (value instanceof String text) {
            return hasNoNumber(text) ? "\"" + text + "\" in " + path : "";
        }
        if (value instanceof Optional<?> optional) {
            return optional.isPresent() ? fault(optional.get(), depth, path) : "";
        }
        if (value instanceof Collection<?> collection) {
            for (Object element : collection) {
                String fault = fault(element, depth, path + "[]");
                if (!fault.isEmpty()) {
                    return fault;
                }
            }
            return "";
        }
        if (value instanceof Map<?, ?> map) {
            return fault(map.values(), depth, path);
        }
        if (value != null && value.getClass().getName().startsWith("org.neckgeom.")) {
            return inside(value, depth, path);
        }
        return "";
    }

    /** Most texts have no such letters, and are long: they are looked for first. */
    private static boolean hasNoNumber(String text) {
        String own = text.contains("but was ") ? REFUSED.matcher(text).replaceAll("") : text;
        boolean mayHave = own.contains("NaN") || own.contains("nfinity") || own.contains("null");
        return mayHave && NO_NUMBER.matcher(own).find()
                || MINUS_ZERO.matcher(own).find();
    }

    /** Infinities that mean what they say and are documented: a limit that is not there, a crown that is flat. */
    private static boolean isMeant(double number, String path) {
        String noun = path.substring(path.lastIndexOf('.') + 1);
        return Double.isInfinite(number) && ENDLESS.contains(noun) && (number > 0 || noun.equals("libraryLower"));
    }

    private String inside(Object value, int depth, String path) {
        if (value.getClass().isEnum() || value.getClass().isSynthetic()) {
            return "";
        }
        String text;
        try {
            text = value.toString();
            if (!value.equals(value) || value.hashCode() != value.hashCode()) {
                return "a value that is not equal to itself in " + path;
            }
        } catch (RuntimeException | StackOverflowError e) {
            return "a value that cannot be printed: " + e + " in " + path;
        }
        if (text.contains(value.getClass().getName() + "@")) {
            return "a value without a text of its own in " + path;
        }
        if (text.length() >= 1_000 && !oversize) {
            return "a text of " + text.length() + " characters in " + path;
        }
        String fault = fault(text, depth, path + ".toString");
        if (depth == 0 || !fault.isEmpty() || seen.getOrDefault(value, 0) >= depth || seen.size() > MOST_REMEMBERED) {
            return fault;
        }
        seen.put(value, depth);
        walked++;
        for (Method noun : PublicTypes.methods(value.getClass())) {
            if (noun.getParameterCount() == 0 && !BadInput.isStatic(noun) && PublicTypes.isPublic(value.getClass())) {
                fault = ask(value, noun, depth, path + "." + noun.getName());
                if (!fault.isEmpty()) {
                    return fault;
                }
            }
        }
        return "";
    }

    private String ask(Object value, Method noun, int depth, String path) {
        try {
            return fault(BadInput.invoke(noun, value, new Object[0]), depth - 1, path);
        } catch (InvocationTargetException e) {
            return BadInput.isInWords(noun.getName(), e.getCause()) ? "" : e.getCause() + " from " + path;
        }
    }
}
