package org.neckgeom.state;

import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.Once;
import org.neckgeom.units.LengthStyle;

/**
 * What is known of a neck (the state of knowledge): the causes of its errors, which are independent, and what has been
 * read. Every deviation, chance, share and piece of advice is asked of it. Immutable; each step returns another state.
 *
 * <p>A reading informs every cause in it, and so every deviation that contains one of them; it never replaces a cause. The
 * order of readings changes nothing. Nothing is taken away by later work either: wood that is
 * removed is a further cause of what comes after.
 *
 * <p>Mean and standard uncertainty are those of the best linear estimate, for any laws. Causes that no reading
 * touches keep their laws exactly; those that readings touch count as normal.
 *
 * <p>Source: JCGM 100:2008, 5; the square-root update is J. E. Potter's (from memory).
 *
 * @see NeckErrors
 */
public final class NeckState extends ValueAnswer {

    private static final Form<NeckState> FORM = Form.<NeckState>of("neck-state")
            .fact("causes", Kind.table(Cause.FORM), "of its errors, by name", NeckState::causes)
            .fact("readings", Kind.table(NeckReading.FORM), "by name", NeckState::readings)
            .fact("causeCount", Kind.WHOLE, "causes", state -> state.causes().size())
            .fact(
                    "readingCount",
                    Kind.WHOLE,
                    "readings",
                    state -> state.readings().size())
            .finds("known", "State of a neck: {causeCount:of cause/causes}, {readingCount:of reading/readings}")
            .each("causes", "{name}", "{spread}, {basis}", 6, "and {more:of other cause/other causes}")
            .each("readings", "{name}", "{value}", 6, "and {more:of other reading/other readings}")
            .fitted();

    private final Knowledge known;
    private final Supplier<Agreement> agreement;

    private NeckState(Knowledge known) {
        super(FORM, known.style());
        this.known = known;
        this.agreement = new Once<>(() -> Agreement.of(known));
    }

    /**
     * {@return a state of which nothing has been read yet}
     *
     * @param causes of its errors, in any order; no two of one name
     * @throws IllegalArgumentException if two causes share a name, or there are more than 2,000
     */
    public static NeckState of(List<Cause> causes) {
        given(causes, "causes");
        return of(
                causes,
                causes.isEmpty() ? LengthStyle.MILLIMETRES : causes.get(0).style());
    }

    static NeckState of(List<Cause> causes, LengthStyle style) {
        return new NeckState(Knowledge.of(causes, style));
    }

    /**
     * {@return this state with one more cause, such as a second cut or a joint fitted again}
     *
     * @param cause its name not yet in the state
     * @throws IllegalArgumentException if the name is taken
     */
    public NeckState with(Cause cause) {
        return new NeckState(known.with(cause));
    }

    /**
     * {@return this state with one more reading}
     *
     * @param reading of causes that the state has; its name not yet in the state
     * @throws IllegalArgumentException if the name is taken, or the reading is of a cause that the state has not
     */
    public NeckState read(NeckReading reading) {
        return new NeckState(known.read(Objects.requireNonNull(reading, "reading")));
    }

    /**
     * {@return this state without a reading, which was a mistake}
     *
     * @param reading its name
     * @throws IllegalArgumentException if there is no such reading
     */
    public NeckState withdraw(String reading) {
        return new NeckState(known.withdraw(Objects.requireNonNull(reading, "reading")));
    }

    /** {@return the causes, by name} */
    public List<Cause> causes() {
        return known.causes();
    }

    /** {@return the readings, by name} */
    public List<NeckReading> readings() {
        return known.readings();
    }

    /**
     * {@return what is known of a deviation}
     *
     * @param title of the deviation, in words
     * @param of the deviation, of causes that the state has
     * @throws IllegalArgumentException if it is of a cause that the state has not
     */
    public Known known(String title, Deviation of) {
        return new Known(known, title, Objects.requireNonNull(of, "deviation"));
    }

    /** {@return whether the readings agree with each other and with the causes, and which is doubtful} */
    public Agreement agreement() {
        return agreement.get();
    }

    /**
     * {@return the chance that all of several limits are kept together}
     *
     * @param wanted what is to be kept; 1 to 12
     */
    public JointChance chanceOfAll(List<Requirement> wanted) {
        return JointChance.of(known, given(wanted, "wanted"));
    }

    /**
     * {@return what each of several possible readings is worth, the best first} Reading alone does not change what is to be
     * expected. It is worth what the correction that it makes possible takes off the chance of breaking a limit.
     *
     * @param possible readings that can be taken now
     * @param wanted limits to keep
     */
    public List<ReadingWorth> worthReading(List<PossibleReading> possible, List<Requirement> wanted) {
        return ReadingWorth.ranked(known, given(possible, "possible"), given(wanted, "wanted"));
    }

    /**
     * {@return what half the spread of each step would do for a limit, the most helpful step first}
     *
     * @param wanted limit to keep
     */
    public List<StepWorth> worthImproving(Requirement wanted) {
        return StepWorth.ranked(known, Objects.requireNonNull(wanted, "wanted"));
    }

    private static <T> List<T> given(List<T> some, String name) {
        for (T one : Objects.requireNonNull(some, name)) {
            Objects.requireNonNull(one, name);
        }
        return some;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {known};
    }
}
