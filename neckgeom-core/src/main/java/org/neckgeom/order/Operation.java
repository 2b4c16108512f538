package org.neckgeom.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.text.Names;
import org.neckgeom.text.Words;
import org.neckgeom.units.LengthStyle;

/**
 * One piece of work, such as {@code cut rod channel}: what it needs, what would be in its way, what it takes away, what it
 * leaves behind, and how it can be done despite a need that is not met. Immutable.
 *
 * <pre>
 * Operation.named("inlay the head").
 *     needs(Condition.HEAD_VENEER).
 *     blockedBy(Condition.NUT).
 *     puts(Condition.named("head inlay"))
 * </pre>
 *
 * <p>A condition that an operation only needs is still there after it.
 */
public final class Operation implements Answer {

    // Names of the usual neck's operations, in their usual order.

    /** Let the stock come to rest. */
    public static final String REST_THE_STOCK = "rest the stock";

    /** Flatten the glue face. */
    public static final String FLATTEN_THE_FACE = "flatten the face";

    /** Make the edges straight, parallel and square to the face. */
    public static final String SQUARE_THE_EDGES = "square the edges";

    /** Mark centreline, nut and body joint on all sides. */
    public static final String MARK_THE_LINES = "mark the lines";

    /** Cut the channel for the rod. */
    public static final String CUT_ROD_CHANNEL = "cut rod channel";

    /** Saw and plane the scarf. */
    public static final String CUT_SCARF = "cut scarf";

    /** Glue the head piece on. */
    public static final String GLUE_HEAD = "glue head";

    /** Saw the head out of a blank thick enough for it, in the place of scarf and gluing. */
    public static final String SAW_OUT_THE_HEAD = "saw out the head";

    /** Bring the head to its thickness, faces and sides true. */
    public static final String TRUE_THE_HEAD = "true the head";

    /** Glue the heel block to the back. */
    public static final String GLUE_HEEL_BLOCK = "glue heel block";

    /** Cut tenon, dovetail, pocket or bolt holes. */
    public static final String CUT_HEEL_JOINT = "cut heel joint";

    /** Glue on the strips that widen the head. */
    public static final String GLUE_EARS = "glue ears";

    /** Glue the veneer on the head's face. */
    public static final String GLUE_HEAD_VENEER = "glue head veneer";

    /** Glue the veneer on the head's back. */
    public static final String GLUE_BACK_STRAP = "glue back strap";

    /** Cut the sides to the taper. */
    public static final String TAPER_THE_SIDES = "taper the sides";

    /** Saw the back near its shape. */
    public static final String ROUGH_OUT_THE_BACK = "rough out the back";

    /** Let the roughed out neck come to rest, and flatten its face again. */
    public static final String REST_AND_FLATTEN_AGAIN = "rest and flatten again";

    /** Make the fingerboard's own edges straight and parallel. */
    public static final String SQUARE_THE_FINGERBOARD = "square the fingerboard";

    /** Saw the fret slots. */
    public static final String SAW_FRET_SLOTS = "saw fret slots";

    /** Cut the fingerboard to its taper. */
    public static final String TAPER_THE_FINGERBOARD = "taper the fingerboard";

    /** Test the rod and lay it in its channel. */
    public static final String LAY_IN_THE_ROD = "lay in the rod";

    /** Glue the fingerboard on. */
    public static final String GLUE_FINGERBOARD = "glue fingerboard";

    /** Trim the sides to the fingerboard. */
    public static final String TRIM_TO_THE_FINGERBOARD = "trim to the fingerboard";

    /** Carve the neck to its section. */
    public static final String CARVE_THE_NECK = "carve the neck";

    /** Fit the heel to the finished body. */
    public static final String FIT_HEEL_TO_BODY = "fit heel to body";

    /** Press or hammer the frets in. */
    public static final String FRET_THE_FINGERBOARD = "fret the fingerboard";

    /** Level the frets with the rod at neutral. */
    public static final String LEVEL_THE_FRETS = "level the frets";

    /** Fit the nut. */
    public static final String FIT_THE_NUT = "fit the nut";

    /** String the neck and set it up. */
    public static final String SET_UP = "set up";

    static final Kind<List<String>> NAMES = Kind.shortList(Kind.NAME);

    private static final Kind<List<Condition>> CONDITIONS = Kind.shortList(Kind.answer(Condition.FORM));

    private static final Form<Operation> FORM = Form.<Operation>of("operation")
            .fact("name", Kind.NAME, "of the operation", Operation::name)
            .fact("code", Kind.NAME, "of the operation", Operation::code)
            .finds("operation", "{name}")
            .row("needs", "needs", CONDITIONS, "when it begins", Operation::needs)
            .row("blockedBy", "blocked by", CONDITIONS, "when it begins", Operation::blockers)
            .row("takesAway", "takes away", CONDITIONS, "what no longer holds after it", Operation::takesAway)
            .row("puts", "leaves", CONDITIONS, "what holds after it", Operation::puts);

    private static final int LONGEST_CAUTION = 300;

    private final String name;
    private final Set<Condition> needs;
    private final Set<Condition> blockers;
    private final Set<Condition> takes;
    private final Set<Condition> puts;
    private final Map<Condition, String> reasons;
    private final Map<Condition, List<Remedy>> remedies;
    private final List<String> cautions;

    private Operation(Parts parts) {
        this.name = parts.name;
        this.needs = parts.needs;
        this.blockers = parts.blockers;
        this.takes = parts.takes;
        this.puts = parts.puts;
        this.reasons = parts.reasons;
        this.remedies = parts.remedies;
        this.cautions = parts.cautions;
    }

    /** The parts on their way from one operation to the next; never leaves this class. */
    private static final class Parts {
        private final String name;
        private Set<Condition> needs = new LinkedHashSet<>();
        private Set<Condition> blockers = new LinkedHashSet<>();
        private Set<Condition> takes = new LinkedHashSet<>();
        private Set<Condition> puts = new LinkedHashSet<>();
        private Map<Condition, String> reasons = new LinkedHashMap<>();
        private Map<Condition, List<Remedy>> remedies = new LinkedHashMap<>();
        private List<String> cautions = new ArrayList<>();

        private Parts(String name) {
            this.name = name;
        }
    }

    private Operation changed(Consumer<Parts> change) {
        Parts parts = new Parts(name);
        parts.needs.addAll(needs);
        parts.blockers.addAll(blockers);
        parts.takes.addAll(takes);
        parts.puts.addAll(puts);
        parts.reasons.putAll(reasons);
        parts.remedies.putAll(remedies);
        parts.cautions.addAll(cautions);
        change.accept(parts);
        refuseBoth(parts.needs, parts.blockers, "needed and in the way");
        refuseBoth(parts.puts, parts.takes, "put and taken away");
        return new Operation(parts);
    }

    private void refuseBoth(Set<Condition> one, Set<Condition> other, String words) {
        for (Condition condition : one) {
            if (other.contains(condition)) {
                throw Refusal.because(
                        "condition",
                        "contradiction",
                        "operation \"" + name + "\" must not have \"" + condition + "\" both " + words);
            }
        }
    }

    /**
     * {@return an operation that needs nothing and changes nothing until told}
     *
     * @param name 1 to 50 characters, such as {@code inlay the head}
     */
    public static Operation named(String name) {
        return new Operation(new Parts(Names.checked(name, "an operation's name")));
    }

    /**
     * {@return a cut made face down on the table with an edge along the fence, as for rod channel and stiffening bars:
     * it needs a flat face, marked lines and straight, parallel, square edges; ears, head veneer, heel block and a
     * rounded back are in its way, each with its usual remedies; a fingerboard covers the face, and nothing helps}
     *
     * <p>Common practice. A head pitched back rises from the table, face down, and is not in the way itself; its ears are.
     *
     * @param name 1 to 50 characters
     */
    public static Operation alongFence(String name) {
        return UsualNeck.alongFence(name);
    }

    /**
     * {@return this operation with more that must hold when it begins}
     *
     * @param first a condition
     * @param more others
     */
    public Operation needs(Condition first, Condition... more) {
        return changed(parts -> addAll(parts.needs, first, more));
    }

    /**
     * {@return this operation with more that must not be there when it begins}
     *
     * @param first a condition
     * @param more others
     */
    public Operation blockedBy(Condition first, Condition... more) {
        return changed(parts -> addAll(parts.blockers, first, more));
    }

    /**
     * {@return this operation with more that no longer holds after it}
     *
     * @param first a condition
     * @param more others
     */
    public Operation takesAway(Condition first, Condition... more) {
        return changed(parts -> addAll(parts.takes, first, more));
    }

    /**
     * {@return this operation with more that holds after it}
     *
     * @param first a condition
     * @param more others
     */
    public Operation puts(Condition first, Condition... more) {
        return changed(parts -> addAll(parts.puts, first, more));
    }

    private static void addAll(Set<Condition> set, Condition first, Condition... more) {
        set.add(Objects.requireNonNull(first, "condition"));
        set.addAll(Names.all(more, "condition"));
    }

    /**
     * {@return this operation with the reason why a condition matters to it}
     *
     * @param condition one that it needs or that is in its way
     * @param reason a sentence of 1 to 100 characters without full stop
     */
    public Operation because(Condition condition, String reason) {
        refuseStranger(condition);
        String words = Names.sentence(reason, "a reason");
        return changed(parts -> parts.reasons.put(condition, words));
    }

    /**
     * {@return this operation with ways to do it although a need is not met or something is in the way}
     *
     * @param condition one that it needs or that is in its way
     * @param best the remedy to take
     * @param others further remedies, the better first
     */
    public Operation despite(Condition condition, Remedy best, Remedy... others) {
        refuseStranger(condition);
        List<Remedy> all = new ArrayList<>();
        all.add(Objects.requireNonNull(best, "remedy"));
        all.addAll(Names.all(others, "remedy"));
        return changed(parts -> parts.remedies.put(condition, List.copyOf(all)));
    }

    private void refuseStranger(Condition condition) {
        if (!needs.contains(condition) && !blockers.contains(condition)) {
            throw Refusal.of(
                    "condition",
                    "unknown",
                    "be one that \"" + name + "\" needs or is blocked by",
                    "\"" + condition + "\"");
        }
    }

    /**
     * {@return this operation with a caution}
     *
     * @param words what to mind, 1 to 300 characters on one line
     */
    public Operation caution(String words) {
        String line = Words.line(words, "a caution", LONGEST_CAUTION);
        return changed(parts -> parts.cautions.add(line));
    }

    /** {@return the name; not blank} */
    public String name() {
        return name;
    }

    /**
     * {@return the name as a code, such as {@code cut-rod-channel}: that of the usual neck's is stable; the name in
     * lower case, with hyphens}
     */
    public String code() {
        return Names.code(name);
    }

    /** {@return what must hold when it begins; the conditions in the order told} */
    public List<Condition> needs() {
        return List.copyOf(needs);
    }

    /** {@return what must not be there when it begins; the conditions in the order told} */
    public List<Condition> blockers() {
        return List.copyOf(blockers);
    }

    /** {@return what no longer holds after it; the conditions in the order told} */
    public List<Condition> takesAway() {
        return List.copyOf(takes);
    }

    /** {@return what holds after it; the conditions in the order told} */
    public List<Condition> puts() {
        return List.copyOf(puts);
    }

    /**
     * {@return why a condition matters to it; empty if none was told}
     *
     * @param condition the condition
     */
    public String reason(Condition condition) {
        return reasons.getOrDefault(condition, "");
    }

    /**
     * {@return the ways to do it despite a condition, the one to take first; empty if there is none}
     *
     * @param condition the condition
     */
    public List<Remedy> remedies(Condition condition) {
        return remedies.getOrDefault(condition, List.of());
    }

    /** {@return what to mind; the cautions in the order told} */
    public List<String> cautions() {
        return List.copyOf(cautions);
    }

    @Override
    public Form<Operation> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.MILLIMETRES;
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Operation other
                && name.equals(other.name)
                && needs().equals(other.needs())
                && blockers().equals(other.blockers())
                && takesAway().equals(other.takesAway())
                && puts().equals(other.puts())
                && reasons.equals(other.reasons)
                && remedies.equals(other.remedies)
                && cautions.equals(other.cautions);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, needs(), blockers(), takesAway(), puts(), reasons, remedies, cautions);
    }

    /** Returns the name, then a row each for what it needs, what is in its way, what it takes away and leaves. */
    @Override
    public String toString() {
        return text(style());
    }
}
