package org.neckgeom.order;

import static org.neckgeom.order.Condition.FINGERBOARD;
import static org.neckgeom.order.Condition.FLAT_FACE;
import static org.neckgeom.order.Condition.HEAD_VENEER;
import static org.neckgeom.order.Condition.HEEL_BLOCK;
import static org.neckgeom.order.Condition.MARKED_LINES;
import static org.neckgeom.order.Condition.PARALLEL_EDGES;
import static org.neckgeom.order.Condition.ROUNDED_BACK;
import static org.neckgeom.order.Condition.SQUARE_EDGES;
import static org.neckgeom.order.Condition.WINGS;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.shop.Caution;
import org.neckgeom.text.Names;
import org.neckgeom.units.LengthStyle;

/**
 * An operation (step): one piece of work, such as {@code cut rod channel}, with its needs, its obstacles, the
 * conditions it ends and the conditions it leaves, and the remedies for a need that is not met. Immutable.
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
public final class Operation extends ValueAnswer {

    // Names of the usual neck's operations, in their usual order.

    /** Glue up the strips of a laminated shaft. */
    public static final String GLUE_UP_THE_STRIPS = "glue up the strips";

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

    /** Cut the locating groove of a neck without rod, in the place of the channel. */
    public static final String CUT_LOCATING_GROOVE = "cut locating groove";

    /** Cut the channel for one bar in the middle, in the place of a rod's. */
    public static final String CUT_BAR_CHANNEL = "cut bar channel";

    /** Cut the channels for two bars beside the middle. */
    public static final String CUT_BAR_CHANNELS = "cut bar channels";

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
    public static final String GLUE_WINGS = "glue wings";

    /** Glue the veneer on the head's face. */
    public static final String GLUE_HEAD_VENEER = "glue head veneer";

    /** Glue the veneer on the head's back. */
    public static final String GLUE_BACK_STRAP = "glue back strap";

    /** Drill for the rollers of a slotted head and rout its slots. */
    public static final String CUT_HEAD_SLOTS = "cut head slots";

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

    /** Glue a bar into its channel, in the place of laying in a rod. */
    public static final String GLUE_IN_THE_BAR = "glue in the bar";

    /** Glue two bars into their channels beside the middle. */
    public static final String GLUE_IN_THE_BARS = "glue in the bars";

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

    /** Screw or pin the string anchor to the end of a headless neck. */
    public static final String FIT_THE_STRING_ANCHOR = "fit the string anchor";

    /** String the neck and set it up. */
    public static final String SET_UP = "set up";

    static final Kind<List<String>> NAMES = Kind.shortList(Kind.NAME);

    private static final Kind<List<Condition>> CONDITIONS = Kind.shortList(Kind.answer(Condition.FORM));

    private static final Kind<List<Caution>> CAUTIONS =
            Kind.table(Caution.known("MACHINE_FIRST").form());
    private static final int MOST_CAUTIONS = 5;

    private static final Form<Operation> FORM = Form.<Operation>of("operation")
            .fact("name", Kind.NAME, "of the operation", Operation::name)
            .fact("code", Kind.NAME, "of the operation", Operation::code)
            .finds("operation", "{name}")
            .row("needs", "needs", CONDITIONS, "when it begins", Operation::needs)
            .row("blockedBy", "blocked by", CONDITIONS, "when it begins", Operation::blockers)
            .row("takesAway", "takes away", CONDITIONS, "conditions that end with it", Operation::takesAway)
            .row("puts", "leaves", CONDITIONS, "conditions that hold after it", Operation::puts)
            .fact("cautions", CAUTIONS, "what can hurt the maker or spoil the neck", Operation::cautions)
            .noteEach("cautions", "{sentence}", MOST_CAUTIONS, "and {more} more in cautions()");

    private final String name;
    private final Set<Condition> needs = new LinkedHashSet<>();
    private final Set<Condition> blockers = new LinkedHashSet<>();
    private final Set<Condition> takes = new LinkedHashSet<>();
    private final Set<Condition> puts = new LinkedHashSet<>();
    private final Map<Condition, String> reasons = new LinkedHashMap<>();
    private final Map<Condition, List<Remedy>> remedies = new LinkedHashMap<>();
    private final List<Caution> cautions = new ArrayList<>();

    private Operation(String name) {
        super(FORM, LengthStyle.MILLIMETRES);
        this.name = name;
    }

    /** A copy, changed before anybody else sees it. */
    private Operation changed(Consumer<Operation> change) {
        Operation copy = new Operation(name);
        copy.needs.addAll(needs);
        copy.blockers.addAll(blockers);
        copy.takes.addAll(takes);
        copy.puts.addAll(puts);
        copy.reasons.putAll(reasons);
        copy.remedies.putAll(remedies);
        copy.cautions.addAll(cautions);
        change.accept(copy);
        refuseBoth(copy.needs, copy.blockers, "needed and in the way");
        refuseBoth(copy.puts, copy.takes, "put and taken away");
        return copy;
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
     * {@return an operation without needs or effects; add them by the other methods}
     *
     * @param name 1 to 50 characters, such as {@code inlay the head}
     */
    public static Operation named(String name) {
        return new Operation(Names.checked(name, "an operation's name"));
    }

    /**
     * {@return a cut made face down on the table with an edge along the fence, as for rod channel and stiffening bars:
     * it needs a flat face, marked lines and straight, parallel, square edges; wings, head veneer, heel block and a
     * rounded back are in its way, each with its usual remedies; a fingerboard covers the face, and nothing helps}
     *
     * <p>Common practice. A head tilted back rises from the table, face down, and is not in the way itself; its wings are.
     *
     * @param name 1 to 50 characters
     */
    public static Operation alongFence(String name) {
        Remedy carrier = Remedy.carrierBoard();
        Remedy rails = Remedy.plungeRouterBetweenRails();
        return named(name)
                .needs(FLAT_FACE, PARALLEL_EDGES, SQUARE_EDGES, MARKED_LINES)
                .blockedBy(WINGS, HEAD_VENEER, HEEL_BLOCK, ROUNDED_BACK, FINGERBOARD)
                .because(FLAT_FACE, "the face lies on the table and sets the depth")
                .because(PARALLEL_EDGES, "the fence centres the cut from a straight edge")
                .because(SQUARE_EDGES, "an edge out of square rocks on the fence")
                .because(WINGS, "the wings meet the fence before the shaft does")
                .because(HEAD_VENEER, "the veneer lifts the face off the table at the nut")
                .because(HEEL_BLOCK, "the heel block fouls fence and hold-downs")
                .because(ROUNDED_BACK, "a rounded back cannot be held down flat")
                .because(FINGERBOARD, "it covers the face")
                .despite(PARALLEL_EDGES, carrier, rails)
                .despite(SQUARE_EDGES, carrier, rails)
                .despite(WINGS, Remedy.parallelSpacer(), carrier, rails)
                .despite(HEAD_VENEER, Remedy.raisedTable(), Remedy.shim())
                .despite(HEEL_BLOCK, rails)
                .despite(ROUNDED_BACK, Remedy.cradle(), rails)
                .minding("CLIMB_FEED", "FULL_SLOT", "HANDS", "ISOLATE", "EYES_EARS");
    }

    /**
     * {@return this operation with more that must hold when it begins}
     *
     * @param first a condition
     * @param more others
     */
    public Operation needs(Condition first, Condition... more) {
        return changed(copy -> addAll(copy.needs, first, more));
    }

    /**
     * {@return this operation with more that must not be there when it begins}
     *
     * @param first a condition
     * @param more others
     */
    public Operation blockedBy(Condition first, Condition... more) {
        return changed(copy -> addAll(copy.blockers, first, more));
    }

    /**
     * {@return this operation with more that no longer holds after it}
     *
     * @param first a condition
     * @param more others
     */
    public Operation takesAway(Condition first, Condition... more) {
        return changed(copy -> addAll(copy.takes, first, more));
    }

    /**
     * {@return this operation with more that holds after it}
     *
     * @param first a condition
     * @param more others
     */
    public Operation puts(Condition first, Condition... more) {
        return changed(copy -> addAll(copy.puts, first, more));
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
        return changed(copy -> copy.reasons.put(condition, words));
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
        return changed(copy -> copy.remedies.put(condition, List.copyOf(all)));
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
     * @param words the code of a caution, such as {@code BAND_SAW}, or a rule of the maker's own, 1 to 300 characters on one
     *     line
     */
    public Operation caution(String words) {
        return caution(Caution.given(words));
    }

    /**
     * {@return this operation with a caution}
     *
     * @param caution what to mind
     */
    public Operation caution(Caution caution) {
        Objects.requireNonNull(caution, "caution");
        return changed(copy -> copy.cautions.add(caution));
    }

    /** With the cautions of these codes. */
    Operation minding(String... codes) {
        List<Caution> all = Arrays.stream(codes).map(Caution::known).toList();
        return changed(copy -> copy.cautions.addAll(all));
    }

    /**
     * {@return whether it cuts what all later steps are located from: the usual rod channel, or the bar channel or the locating
     * groove in its place}
     */
    public boolean cutsTheChannel() {
        return name.equals(CUT_ROD_CHANNEL) || name.equals(CUT_BAR_CHANNEL) || name.equals(CUT_LOCATING_GROOVE);
    }

    /** {@return the name; not blank} */
    public String name() {
        return name;
    }

    /** {@return the name in lower case with hyphens, such as {@code cut-rod-channel}; stable for the usual neck's} */
    public String code() {
        return Names.code(name);
    }

    /** {@return what must hold when it begins; the conditions in the order given} */
    public List<Condition> needs() {
        return List.copyOf(needs);
    }

    /** {@return what must not be there when it begins; the conditions in the order given} */
    public List<Condition> blockers() {
        return List.copyOf(blockers);
    }

    /** {@return what no longer holds after it; the conditions in the order given} */
    public List<Condition> takesAway() {
        return List.copyOf(takes);
    }

    /** {@return what holds after it; the conditions in the order given} */
    public List<Condition> puts() {
        return List.copyOf(puts);
    }

    /**
     * {@return why a condition matters to it; empty if no reason was given}
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

    /** {@return what to mind, each with its source; the cautions in the order given} */
    public List<Caution> cautions() {
        return List.copyOf(cautions);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {name, needs(), blockers(), takesAway(), puts(), reasons, remedies, cautions};
    }
}
