package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.form.Statement;
import org.neckgeom.order.Operation;
import org.neckgeom.units.Amount;

/**
 * A repair (rescue, fix) of what has been read out of its limit: its sizes, whether it is possible after what is done, and
 * its cost in wood, stiffness, looks and budget. Of {@link Plan#repairs}. Immutable.
 *
 * <p>Common practice; the wood left and the stiffness are computed by planning the repaired neck.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class Repair extends LeanAnswer {

    private final RepairCode code;
    private final Statement reading;
    private final Statement how;
    private final Optional<Statement> forbidden;
    private final List<String> undone;
    private final Optional<Amount<Length>> woodLeft;
    private final Optional<Double> stiffness;
    private final Optional<Statement> looks;
    private final Optional<Statement> budget;

    private Repair(Draft draft) {
        super(draft.how.style());
        this.code = draft.code;
        this.reading = draft.reading;
        this.how = draft.how;
        this.forbidden = Optional.ofNullable(draft.forbidden);
        this.undone = List.copyOf(draft.undone);
        this.woodLeft = Optional.ofNullable(draft.woodLeft);
        this.stiffness = Optional.ofNullable(draft.stiffness);
        this.looks = Optional.ofNullable(draft.looks);
        this.budget = Optional.ofNullable(draft.budget);
    }

    /** Least harm first: what can be done, fewest steps undone, most wood left. */
    static Comparator<Repair> leastHarm() {
        return Comparator.comparing((Repair one) -> !one.isPossible())
                .thenComparing(one -> one.undone.size())
                .thenComparing(one -> -one.woodLeft.map(Amount::libraryValue).orElse(Double.NEGATIVE_INFINITY));
    }

    /** {@return what is done; its code} */
    public RepairCode code() {
        return code;
    }

    /** {@return what is out of its limit, such as {@code channel depth}; not empty} */
    public String reading() {
        return reading.toString();
    }

    /** The same with its figures as fields. */
    Statement named() {
        return reading;
    }

    /** {@return how it is done, with its sizes} */
    public Statement how() {
        return how;
    }

    /** {@return whether it is possible after what is done; false if {@link #forbidden} has a reason} */
    public boolean isPossible() {
        return forbidden.isEmpty();
    }

    /** {@return the one thing that rules it out, or nothing} */
    public Optional<Statement> forbidden() {
        return forbidden;
    }

    /** {@return the operations that are done and must be done again; their names, often none} */
    public List<String> undone() {
        return undone;
    }

    /**
     * {@return the least wood under the channel of the repaired neck, less than 0 where it is through; nothing where it
     * does not change or is not known}
     */
    public Optional<Amount<Length>> woodLeft() {
        return woodLeft;
    }

    /**
     * {@return the repaired neck's bending stiffness over the drawn neck's, at the section it is about; more than 0; nothing
     * where it does not change or is not known}
     */
    public Optional<Double> stiffness() {
        return stiffness;
    }

    /** {@return what is seen or felt of it, or nothing} */
    public Optional<Statement> looks() {
        return looks;
    }

    /** {@return its effect on the errors that add up, or nothing} */
    public Optional<Statement> budget() {
        return budget;
    }

    @Override
    public Form<Repair> form() {
        return Sentences.FORM;
    }

    @Override
    protected @Nullable Object[] parts() {
        return new Object[] {code, reading, how, forbidden, undone, woodLeft, stiffness, looks, budget};
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    private static final class Sentences {
        static final Form<Repair> FORM = Form.<Repair>of("repair")
                .fact("code", Kind.code(RepairCode.class), "what is done", Repair::code)
                .fact("reading", Kind.NAME, "what is out of its limit", Repair::reading)
                .fact("how", Kind.ANSWER, "how it is done, with its sizes", Repair::how)
                .factIfAny("forbidden", Kind.ANSWER, "the one thing that rules it out", Repair::forbidden)
                .factIfAny(
                        "undone",
                        Kind.list(Kind.NAME),
                        "operations to be done again",
                        one -> Optional.of(one.undone).filter(names -> !names.isEmpty()))
                .factIfAny("woodLeft", Kind.AMOUNT, "under the repaired neck's channel, at least", Repair::woodLeft)
                .factIfAny("stiffness", Kind.RATIO, "of the repaired neck over the drawn one", Repair::stiffness)
                .factIfAny("looks", Kind.ANSWER, "what is seen or felt of it", Repair::looks)
                .factIfAny("budget", Kind.ANSWER, "its effect on the errors that add up", Repair::budget)
                .finds("not-possible", one -> !one.isPossible(), "{code}: not possible, {forbidden}")
                .finds("possible", "{code}: {how}")
                .line("undone", "do again", Repair::isPossible, "{undone}")
                .line("woodLeft", "wood left", Repair::isPossible, "{woodLeft:brief}")
                .line("stiffness", "stiffness", Repair::isPossible, "{stiffness:2} of the drawn neck's")
                .line("looks", "looks", Repair::isPossible, "{looks}")
                .line("budget", "errors", Repair::isPossible, "{budget}");
    }

    /** A repair being written. */
    static final class Draft {
        private final Stages plan;
        private final RepairCode code;
        private final Statement reading;
        private final Statement how;
        private final List<String> undone = new ArrayList<>();
        private @Nullable Statement forbidden;
        private boolean isUnderTheBoard;
        private int reasons;
        private @Nullable Amount<Length> woodLeft;
        private @Nullable Double stiffness;
        private @Nullable Statement looks;
        private @Nullable Statement budget;

        Draft(Stages plan, RepairCode code, Statement reading, Statement how) {
            this.plan = plan;
            this.code = code;
            this.reading = reading;
            this.how = how;
        }

        RepairCode code() {
            return code;
        }

        /** The first reason counts. */
        Draft unless(boolean isInTheWay, Statement why) {
            if (isInTheWay) {
                reasons++;
                forbidden = forbidden == null ? why : forbidden;
            }
            return this;
        }

        /** Possible only while none of these is done. */
        Draft before(String... operations) {
            for (String operation : operations) {
                isUnderTheBoard |= operation.equals(Operation.GLUE_FINGERBOARD) && plan.isDone(operation);
                unless(
                        plan.isDone(operation),
                        plan.words("is-done", "\"{operation}\" is done").with("operation", Kind.NAME, operation));
            }
            return this;
        }

        /** True where nothing but the glued board is in the way. */
        boolean isUnderTheBoard() {
            return isUnderTheBoard && reasons == 1;
        }

        Draft undoes(String... operations) {
            for (String operation : operations) {
                if (plan.isDone(operation)) {
                    undone.add(operation);
                }
            }
            return this;
        }

        /** What the neck is after it, by planning that. */
        Draft leaves(RepairedNeck after) {
            after.woodMm().ifPresent(wood -> woodLeft = plan.style().amount(wood));
            after.stiffness().ifPresent(ratio -> stiffness = ratio);
            return this;
        }

        /** The same, and only where wood enough is left. */
        Draft leavesEnough(RepairedNeck after) {
            double limit = plan.job().floorLimit().libraryValue();
            double wood = after.woodMm().orElse(0.0);
            return leaves(after)
                    .unless(
                            wood < limit,
                            wood > 0
                                    ? plan.words(
                                                    "too-little-wood",
                                                    "it leaves {wood:size small} of the {limit:brief} wanted")
                                            .with("wood", Kind.MM, wood)
                                            .with("limit", Kind.MM, limit)
                                    : plan.words("no-wood", "the channel is through the back"));
        }

        Draft stiffness(Optional<Double> ratio) {
            ratio.ifPresent(one -> stiffness = one);
            return this;
        }

        Draft looks(String of, String words) {
            looks = plan.words(of, words);
            return this;
        }

        Draft budget(String of, String words) {
            budget = plan.words(of, words);
            return this;
        }

        Repair done() {
            return new Repair(this);
        }
    }
}
