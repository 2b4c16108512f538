package org.neckgeom.order;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.shop.Caution;
import org.neckgeom.text.Names;
import org.neckgeom.text.Report;
import org.neckgeom.units.LengthStyle;

/**
 * The order in which a neck is made, each step with the reason for its place, or the conflicts: the answer of
 * {@link OrderOfWork#plan} and {@link OrderOfWork#inThisOrder}. Immutable.
 *
 * <p>An order with conflicts is given only if each has a remedy; otherwise there are no steps, and {@link #conflicts} gives
 * the reason.
 */
public final class OrderPlan extends ValueAnswer {

    /**
     * One step of the plan.
     *
     * @param number 1 for the first
     * @param operation what is done
     * @param why its reasons: the steps it builds on and those it must precede or follow, by step number
     * @param remedies the remedies it is done with despite a conflict, empty without a conflict
     */
    public record Step(int number, Operation operation, String why, List<Remedy> remedies) implements Answer {

        private static final Form<Step> FORM = Form.<Step>of("order-step")
                .fact("number", Kind.WHOLE, "1 for the first", Step::number)
                .fact("operation", Kind.NAME, "the operation", step -> step.operation.name())
                .fact("code", Kind.NAME, "of the operation", step -> step.operation.code())
                .factIfAny(
                        "why",
                        Kind.NAME,
                        "it has its place",
                        s -> Optional.of(s.why).filter(why -> !why.isEmpty()))
                .fact("remedies", Kind.list(Kind.NAME), "it is done with despite a conflict", Step::remedyNames)
                .phrase("because", ": {why}")
                .finds("step", "{number} {operation}{because}");

        /**
         * Copies the list.
         *
         * @param number 1 for the first
         * @param operation what is done
         * @param why its reasons: the steps it builds on and those it must precede or follow, by step number
         * @param remedies the remedies it is done with despite a conflict, empty without a conflict
         */
        public Step {
            Objects.requireNonNull(operation, "operation");
            Objects.requireNonNull(why, "why");
            remedies = Names.all(remedies, "remedy");
            if (number < 1) {
                throw Refusal.of("a step's number", "at-least", "be 1 or more", number);
            }
        }

        private List<String> remedyNames() {
            return remedies.stream().map(Remedy::name).toList();
        }

        @Override
        public Form<Step> form() {
            return FORM;
        }

        /** Returns such as {@code 3 square the edges: needs flat face from 2}. */
        @Override
        public String toString() {
            return text(style());
        }
    }

    private static final Form<OrderPlan> FORM = Form.<OrderPlan>of("order-plan")
            .fact("works", Kind.FLAG, "whether each conflict has a remedy", OrderPlan::works)
            .fact("count", Kind.WHOLE, "how many steps", plan -> plan.steps.size())
            .fact("steps", Kind.table(Step.FORM), "in order; none if it does not work", OrderPlan::steps)
            .fact("kept", Kind.table(KeptOrder.FORM), "by the maker", plan -> plan.work.kept())
            .fact(
                    "conflictCount",
                    Kind.WHOLE,
                    "how many conflicts",
                    plan -> plan.conflicts.list().size())
            .fact("conflicts", Kind.answer(Conflicts.FORM), "the conflicts", OrderPlan::conflicts)
            .finds("not-possible", plan -> !plan.works(), "Order of work: NOT POSSIBLE as given")
            .finds("no-conflict", p -> p.conflicts.isEmpty(), "Order of work: {count} steps, no conflicts")
            .finds(
                    "remedied",
                    p -> p.conflicts.list().size() == 1,
                    "Order of work: {count} steps, 1 conflict, with a remedy")
            .finds("remedied", "Order of work: {count} steps, {conflictCount} conflicts, each with a remedy")
            .laidOut((plan, style) -> plan.fitted(style));

    private static final int MOST_CHARACTERS = 950;
    private static final String MORE = "\n  and more: table()";

    private static final String MACHINE_FIRST =
            Caution.known("MACHINE_FIRST").text() + "; this order replaces neither.";

    private final WorkLeft work;
    private final List<Step> steps;
    private final List<List<Integer>> before;
    private final Conflicts conflicts;

    OrderPlan(WorkLeft work, List<Step> steps, List<List<Integer>> before, Conflicts conflicts) {
        super(FORM, conflicts.style());
        this.work = work;
        this.steps = List.copyOf(steps);
        this.before = List.copyOf(before);
        this.conflicts = conflicts;
    }

    /** {@return whether the work can be done in this order: false if a conflict has no remedy} */
    public boolean works() {
        return conflicts.haveRemedies();
    }

    /** {@return the steps; in order; empty if it does not work} */
    public List<Step> steps() {
        return steps;
    }

    /** {@return the names of the operations in the order of the steps; the names; empty if it does not work} */
    public List<String> names() {
        return steps.stream().map(step -> step.operation().name()).toList();
    }

    /**
     * {@return one step}
     *
     * @param operation the operation's name
     * @throws IllegalArgumentException if there is none of that name
     */
    public Step step(String operation) {
        return steps.stream()
                .filter(step -> step.operation()
                        .name()
                        .equals(Objects.requireNonNull(operation, "operation").strip()))
                .findFirst()
                .orElseThrow(() -> Names.unknown(operation, "operation", names()));
    }

    /**
     * {@return the steps that have to come before a step, by number, in order: those it builds on, those it would spoil, those
     * kept before it; without the ones that have to come before one of these}
     *
     * @param step one of {@link #steps}
     * @throws IllegalArgumentException if it is none of them
     */
    public List<Integer> before(Step step) {
        if (!steps.contains(Objects.requireNonNull(step, "step"))) {
            throw Names.unknown(step.operation().name(), "operation", names());
        }
        return before.get(step.number() - 1);
    }

    /** {@return what conflicts; empty if nothing does} */
    public Conflicts conflicts() {
        return conflicts;
    }

    /** {@return what the remedies add to the budget, each once for an operation; in the order of the steps} */
    public List<AddedError> addedErrors() {
        Set<AddedError> errors = new LinkedHashSet<>();
        conflicts.forEach(conflict -> conflict.adds().ifPresent(errors::add));
        return List.copyOf(errors);
    }

    /** {@return what to mind: the machine's instructions first, then the cautions of each operation, in order} */
    public List<String> cautions() {
        List<String> all = new ArrayList<>();
        all.add(MACHINE_FIRST);
        for (Step step : steps) {
            String name = step.operation().name();
            step.operation().cautions().forEach(caution -> all.add(name + ": " + caution));
            if (!step.remedies().isEmpty()) {
                all.add(name + ": with "
                        + Names.phrase(step.remedyNames())
                        + " in place, set up anew and try it on waste, machine off while you reach in.");
            }
        }
        return List.copyOf(all);
    }

    /** {@return the whole plan as text, every step with its why, then the conflicts, however long} */
    public String table() {
        return text(style(), true, true) + (conflicts.isEmpty() ? "" : "\n" + conflicts.table()) + "\n" + MACHINE_FIRST;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {work, steps, conflicts};
    }

    private String fitted(LengthStyle style) {
        if (!works()) {
            return Report.cut(
                    FORM.render(this, style).finding() + "\n" + conflicts.text(style),
                    MOST_CHARACTERS + MORE.length(),
                    MORE);
        }
        String hint = "\n  the reason for each step: table()";
        String full = text(style, true, true);
        if (full.length() <= MOST_CHARACTERS) {
            return full;
        }
        String some = text(style, false, true) + hint;
        if (some.length() <= MOST_CHARACTERS) {
            return some;
        }
        String none = text(style, false, false) + hint;
        return none.length() <= MOST_CHARACTERS ? none : Report.cut(text(style, false, false), MOST_CHARACTERS, MORE);
    }

    private String text(LengthStyle style, boolean allReasons, boolean someReasons) {
        int width = allReasons
                ? steps.stream()
                        .mapToInt(step -> step.operation().name().length())
                        .max()
                        .orElse(0)
                : 0;
        StringBuilder out = new StringBuilder(FORM.render(this, style).finding());
        for (Step step : steps) {
            String number = Integer.toString(step.number());
            String name = step.operation().name();
            out.append("\n")
                    .append(" ".repeat(Math.max(0, 3 - number.length())))
                    .append(number);
            out.append(" ").append(name);
            String why = allReasons ? step.why() : someReasons ? special(step) : "";
            if (!why.isEmpty()) {
                out.append(" ".repeat(Math.max(0, width - name.length()) + 2)).append(why);
            }
        }
        return out.toString();
    }

    /** Returns what sets a step apart: the remedies it is done with, and the kept orders it is in. */
    private String special(Step step) {
        String name = step.operation().name();
        List<String> parts = new ArrayList<>();
        step.remedyNames().forEach(remedy -> parts.add("with " + remedy));
        work.kept()
                .forEach(order ->
                        order.asksOf(name, other -> step(other).number()).ifPresent(parts::add));
        return parts.isEmpty() ? "" : "(" + String.join("; ", parts) + ")";
    }
}
