package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.BudgetKeys;
import org.neckgeom.budget.Dual;
import org.neckgeom.channel.Cautions;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.GlobalRisk;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Reading;
import org.neckgeom.measure.Verdict;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.BenchQuestion;
import org.neckgeom.plan.BenchSession;
import org.neckgeom.plan.Finding;
import org.neckgeom.plan.PlanChange;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.shape.Plane;
import org.neckgeom.shop.Caution;
import org.neckgeom.sweep.Best;
import org.neckgeom.testing.PublicTypes;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/** One walk over all answers: each is written for people, and says its lengths in the style asked for. */
class EveryAnswerTest {

    private static final Pattern MILLIMETRES = Pattern.compile("\\d mm\\b");
    private static final Pattern INCHES = Pattern.compile("\\d (in(?! \\d)|thou)\\b");
    private static final Pattern NOISE = Pattern.compile("\\d\\.\\d{11,}|\\d{14,}");
    private static final Pattern CODE =
            Pattern.compile("@[0-9a-f]{5,}|org\\.neckgeom|\\bNaN\\b|\\bnull\\b|-0(\\.0+)? ");

    /** Leaves are called by what is stamped on them. */
    private static final Pattern STAMPED = Pattern.compile("[\\d.]+( \\+ [\\d.]+)* (mm|in) lea(f|ves)");

    /** What is added up is called by where it was placed, in the unit that was said in. */
    private static final Pattern PLACED = Pattern.compile("(?<=\\b(at|its)) -?[\\d.]+ (mm|in)\\b");

    /** Safety has lengths in both units. */
    private static final Set<Class<?>> IN_BOTH_UNITS = Set.of(Caution.class, Cautions.class, Operation.class);

    /** A session prints in its job's style, as a plan does. */
    private static final Set<Class<?>> OF_A_SESSION =
            Set.of(BenchSession.class, BenchSession.Reply.class, BenchQuestion.class, PlanChange.class);

    /** Hold types or functions of their own, of which nobody has a value. */
    private static final Set<Class<?>> HOLDERS = Set.of(Best.class, BudgetKeys.class);

    /** A way to make lengths, by which a walk begins. */
    enum Made {
        MILLIMETRES(ShopUnits::mm),
        INCHES(value -> ShopUnits.mm(value).in(ShopUnit.INCH)),
        TINY(value -> ShopUnits.mm(value * 1e-3)),
        /** As large as a noun's gate lets a neck be: 3 m. */
        LARGE(value -> ShopUnits.mm(value * 4).in(ShopUnit.INCH));

        private final DoubleFunction<Amount<Length>> length;

        Made(DoubleFunction<Amount<Length>> length) {
            this.length = length;
        }

        Map<Class<?>, List<Object>> walk() {
            CoreSamples samples = new CoreSamples(length);
            List<Supplier<Object>> roots = new ArrayList<>(samples.roots());
            if (this == MILLIMETRES || this == INCHES) {
                roots.addAll(samples.plans());
            }
            return Walk.from(roots, samples.arguments());
        }
    }

    static Stream<Made> made() {
        return Stream.of(Made.values());
    }

    @Test
    void walk_reachesEveryPublicType() throws IOException, URISyntaxException {
        Set<String> missed = new TreeSet<>();
        Set<Class<?>> reached = Made.MILLIMETRES.walk().keySet();
        for (Class<?> type : publicTypes()) {
            boolean answer = !type.isInterface()
                    && !type.isEnum()
                    && !Throwable.class.isAssignableFrom(type)
                    && !HOLDERS.contains(type);
            if (answer && !reached.contains(type)) {
                missed.add(type.getName());
            }
        }

        assertThat(missed).as("public types no sample leads to").isEmpty();
    }

    @ParameterizedTest
    @MethodSource("made")
    void texts_areWrittenForPeople(Made made) {
        List<String> faults = new ArrayList<>();
        made.walk()
                .forEach((type, answers) -> answers.forEach(answer -> {
                    String text = answer.toString();
                    if (answer instanceof Finding) {
                        return; // data, which a check prints
                    }
                    if (text.isEmpty()
                            || text.length() > 999
                            || CODE.matcher(text).find()
                            || isNoisy(answer, text)) {
                        faults.add(type.getSimpleName() + ": " + text);
                    }
                }));

        assertThat(faults).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("made")
    void lengths_areSaidInTheStyleAskedFor(Made made) {
        List<String> faults = new ArrayList<>();
        made.walk()
                .forEach((type, answers) -> answers.forEach(answer -> {
                    String own = answer.toString();
                    if (answer instanceof Answer speaker) {
                        for (LengthStyle style : LengthStyle.values()) {
                            hold(speaker, style, faults);
                        }
                    } else if (takesAStyle(type)) {
                        for (LengthStyle style : LengthStyle.values()) {
                            hold(answer, style, faults);
                        }
                    } else if (type != PlanSection.Row.class
                            && !(answer instanceof Finding) // a check prints it
                            && !Walk.isWholePlan(answer)
                            && !OF_A_SESSION.contains(type)
                            && type.getPackage() != Plane.class.getPackage() // shapes are numbers in mm
                            && (MILLIMETRES.matcher(own).find()
                                    || INCHES.matcher(own).find())) {
                        faults.add(type.getSimpleName() + " says a length but takes no style: " + own);
                    }
                }));

        assertThat(faults).isEmpty();
    }

    private static void hold(Answer answer, LengthStyle style, List<String> faults) {
        String text = answer.text(style);
        boolean other = !IN_BOTH_UNITS.contains(answer.getClass()) && isInAnotherStyle(named(answer, text), style);
        if (other || text.length() > 999 || isNoisy(answer, text)) {
            faults.add(answer.getClass().getSimpleName() + " in " + style + ": " + text);
        }
        if (style == answer.style() && !answer.toString().equals(text)) {
            faults.add(answer.getClass().getSimpleName() + " prints itself otherwise: " + answer);
        }
    }

    /** Amounts and what is measured alone: an answer takes a style when it is written, a plan by its key. */
    private static boolean takesAStyle(Class<?> type) {
        return Arrays.stream(type.getMethods())
                .anyMatch(method -> method.getName().equals("in")
                        && Arrays.equals(method.getParameterTypes(), new Class<?>[] {LengthStyle.class}));
    }

    @Test
    void copiesInAStyle_areOfAmountsAndMeasuresAlone() throws IOException, URISyntaxException {
        assertThat(Stream.concat(publicTypes().stream(), PublicTypes.beside(Amount.class).stream())
                        .filter(EveryAnswerTest::takesAStyle))
                .containsExactlyInAnyOrder(
                        Amount.class,
                        Estimate.class,
                        Limits.class,
                        ErrorDistribution.class,
                        Verdict.class,
                        Interval.class,
                        Reading.class,
                        GlobalRisk.class);
    }

    private static void hold(Object answer, LengthStyle style, List<String> faults) {
        Object said = Kind.printedIn(answer, style);
        String where = answer.getClass().getSimpleName() + " in " + style + ": ";
        String text = said.toString();
        if (isInAnotherStyle(named(answer, text), style) || text.length() > 999 || isNoisy(answer, text)) {
            faults.add(where + text);
        }
        if (saysItsEquals(answer.getClass()) && (!said.equals(answer) || said.hashCode() != answer.hashCode())) {
            faults.add(where + "is another value");
        }
        for (LengthStyle first : LengthStyle.values()) {
            Object there = Kind.printedIn(Kind.printedIn(answer, first), style);
            if (!there.toString().equals(text)) {
                faults.add(where + "by way of " + first + " it is " + there);
            }
        }
        if (answer instanceof Amount<?> || Walk.isWholePlan(answer)) {
            return;
        }
        for (Method method : answer.getClass().getMethods()) {
            if (method.getParameterCount() == 0 && method.getDeclaringClass() == answer.getClass()) {
                holdPart(answer, said, method, style, faults, where);
            }
        }
    }

    /** What an answer hands out follows its style, and is the same value. */
    private static void holdPart(
            Object answer, Object said, Method method, LengthStyle style, List<String> faults, String where) {
        Object before = Walk.result(answer, method);
        Object after = Walk.result(said, method);
        if (after instanceof Amount<?> amount && amount.unit().kind() == (Class<?>) Length.class) {
            String text = amount.toString();
            if (isInAnotherStyle(text, style)) {
                faults.add(where + method.getName() + " is " + text);
            }
        }
        boolean value = after instanceof Double || after instanceof Amount<?>;
        if (value && !after.equals(before)) {
            faults.add(where + method.getName() + " is another value: " + before + ", " + after);
        }
    }

    /** A number with its slopes is for programs, and has all twelve digits. */
    private static boolean isNoisy(Object answer, String text) {
        return !(answer instanceof Dual) && NOISE.matcher(text).find();
    }

    private static String named(Object answer, String text) {
        boolean addsUp = answer.getClass().getPackage() == Budget.class.getPackage();
        return addsUp ? PLACED.matcher(text).replaceAll(" its place") : text;
    }

    private static boolean isInAnotherStyle(String text, LengthStyle style) {
        String unstamped = STAMPED.matcher(text).replaceAll("leaf");
        return (style == LengthStyle.MILLIMETRES ? INCHES : MILLIMETRES)
                .matcher(unstamped)
                .find();
    }

    private static boolean saysItsEquals(Class<?> type) {
        try {
            return type.getMethod("equals", Object.class).getDeclaringClass() != Object.class;
        } catch (NoSuchMethodException impossible) {
            throw new AssertionError(impossible);
        }
    }

    private static List<Class<?>> publicTypes() throws IOException, URISyntaxException {
        Set<String> exported = PublicTypes.exported(Budget.class);
        return types().stream()
                .filter(Walk::isPublic)
                .filter(type -> exported.contains(type.getPackageName()))
                .toList();
    }

    /** Every class of the module, those inside others too, public or not. */
    static List<Class<?>> types() throws IOException, URISyntaxException {
        Path root = Path.of(
                Budget.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        try (Stream<Path> files = Files.walk(root.resolve("org/neckgeom"))) {
            return files.map(file -> root.relativize(file).toString().replace('\\', '/'))
                    .filter(name -> name.endsWith(".class") && !name.endsWith("package-info.class"))
                    .map(name ->
                            name.substring(0, name.length() - ".class".length()).replace('/', '.'))
                    .sorted()
                    .<Class<?>>map(EveryAnswerTest::load)
                    .toList();
        }
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name, false, Budget.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new AssertionError(e);
        }
    }
}
