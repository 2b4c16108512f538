package org.neckgeom.state;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.channel.JigPlay;
import org.neckgeom.channel.SlotPlace;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Neck;
import org.neckgeom.stock.Blank;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;

/**
 * The errors of a usual neck: its causes, how far each feature lies off where it is drawn, and the deviations a maker asks
 * for first. Immutable.
 *
 * <p>Two stations of the neck locate what is located along it: 5 and 95 percent of the way to the body joint. Deviations
 * are linear in the causes:
 *
 * <pre>
 * W(x)       width of the blank less its nominal width, a straight line between the two stations
 * channel    centring + skew (x - xc) + s (W(x) - W(xc))/2      centred at xc, s = 1 along the treble edge, else -1
 *            -s e(x) + centring + s W(x)/2     e(x) the offset as trial cuts set it, W read at the channel's ends
 *            -s e(x) + what is left open       e(x) the offset as read on the neck
 * heel, side taper                                            base + its line between two stations + its cut
 *   base     the channel, or an edge: s W(x)/2 the same, -s W(x)/2 the opposite edge
 *   on a jig in the channel: channel + the jig's error + its play on a line between its pins + its cut
 * fingerboard                                                 channel + its line between two stations
 * body       heel + turn of the joint
 * string line at the bridge    fingerboard - body
 * </pre>
 *
 * <p>The joint turns the neck by what its cheeks, or the gaps at its face, let it. A gap at the top of the heel's face tips
 * the head back: {@code (L - xj)/H} of it at the bridge, and the foot's gap as much the other way; the top's gap also
 * lengthens the string, by {@code 1 + p/H} of it.
 *
 * <p>Exact for errors small against the distances: first order (0.29 mm at the bridge is right to 0.0001 mm).
 *
 * @see NeckState
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class NeckErrors extends ValueAnswer {

    /** What heel and side taper are located on. */
    public enum Located {
        /** The rod channel. */
        CHANNEL("rod channel"),
        /** The edge that the channel was cut along, by a stop set from the nominal width. */
        SAME_EDGE("edge the channel was cut along"),
        /** The other edge, by a stop set from the nominal width. */
        OPPOSITE_EDGE("opposite edge");

        private final String words;

        Located(String words) {
            this.words = words;
        }

        /** Returns it in words, such as {@code rod channel}. */
        @Override
        public String toString() {
            return words;
        }
    }

    /** What guides the body joint across the neck. */
    public enum Guide {
        /** Its cheeks: a pocket, a tenon or a dovetail. */
        CHEEKS("cheeks"),
        /** Its face: a butt joint. */
        FACE("face");

        private final String words;

        Guide(String words) {
            this.words = words;
        }

        /** Returns it in words, such as {@code cheeks}. */
        @Override
        public String toString() {
            return words;
        }
    }

    /** Reach of the body joint's cheeks along the neck, in mm: an assumption. */
    public static final double CHEEK_MM = 40.0;

    /** Height of the heel's face where the design gives none, in mm: an assumption. */
    public static final double USUAL_HEEL_MM = 90.0;

    /** Width of the heel's face where the design gives none, in mm: an assumption. */
    public static final double USUAL_FACE_MM = 54.0;

    private static final double USUAL_FRET_MM = 1.0;
    private static final double NEAR_NUT = 0.05;
    private static final double NEAR_JOINT = 0.95;
    private static final double CENTRED_AT = 0.1;

    private static final String AT_NUT = " near the nut";
    private static final String AT_JOINT = " near the body joint";
    private static final String FRONT = "front of the cheeks";
    private static final String BACK = "back of the cheeks";
    private static final String WIDTH = "blank width";
    private static final String CENTRING = "centring of the channel";
    private static final String SKEW = "skew of the channel";
    private static final String HEEL = "heel";
    private static final String TAPER = "side taper";
    private static final String CALLIPER = "zero of the calliper";

    private static final Form<NeckErrors> FORM = Form.<NeckErrors>of("neck-errors")
            .fact("name", Kind.NAME, "of the neck", errors -> errors.design.name())
            .fact("located", Kind.code(Located.class), "what heel and side taper are located on", e -> e.located)
            .fact("guide", Kind.code(Guide.class), "what guides the body joint", e -> e.guide)
            .fact("causes", Kind.table(Cause.FORM), "of error", NeckErrors::causes)
            .finds("neck-errors", "{name}: heel and taper located on the {located}, joint guided by its {guide}")
            .each("causes", "{name}", "{spread}, {basis}", 6, "and {more:of other cause/other causes}")
            .fitted();

    private final Neck design;
    private final Workmanship work;
    private final Located located;
    private final Guide guide;
    private final boolean alongTreble;
    private final double centredAt;
    private final @Nullable ErrorDistribution<Angle> skew;
    private final @Nullable ErrorDistribution<Length> zero;
    private final @Nullable Slot slot;
    private final Jigs jigs;

    /**
     * Where the slot runs.
     *
     * @param place its offset all along
     * @param blank that it runs in
     * @param onTheNeck whether it was read on the neck itself, and not set by trial cuts
     */
    private record Slot(SlotPlace place, Blank blank, boolean onTheNeck) {

        double startMm() {
            return place.startStation().libraryValue();
        }

        double endMm() {
            return place.endStation().libraryValue();
        }

        double widerMm(double x) {
            return blank.widthAtMm(x) - blank.widthMm();
        }

        Estimate<Length> shared() {
            return Estimate.of(
                    place.style().amount(0),
                    place.sharedUncertainty(),
                    place.start().estimate().degreesOfFreedom());
        }

        ErrorDistribution<Length> own(Amount<Length> station) {
            double all = place.at(station).estimate().libraryUncertainty();
            double shared = place.sharedUncertainty().libraryValue();
            return ErrorDistribution.normal(place.style().amount(Math.sqrt(Math.max(0, all * all - shared * shared))));
        }
    }

    private NeckErrors(
            Neck design,
            Workmanship work,
            Located located,
            Guide guide,
            boolean alongTreble,
            double centredAt,
            @Nullable ErrorDistribution<Angle> skew,
            @Nullable ErrorDistribution<Length> zero,
            @Nullable Slot slot,
            Jigs jigs) {
        super(FORM, design.style());
        this.design = design;
        this.work = Objects.requireNonNull(work, "workmanship");
        this.located = Objects.requireNonNull(located, "located");
        this.guide = Objects.requireNonNull(guide, "guide");
        this.alongTreble = alongTreble;
        this.centredAt = centredAt;
        this.skew = skew;
        this.zero = zero;
        this.slot = slot;
        this.jigs = jigs;
    }

    /**
     * {@return the errors of a neck all of whose steps are located on the channel, its joint guided by its cheeks, with the
     * default workmanship}
     *
     * @param design with a scale
     */
    public static NeckErrors of(Neck design) {
        return new NeckErrors(
                Objects.requireNonNull(design, "design"),
                Workmanship.withDefaults(),
                Located.CHANNEL,
                Guide.CHEEKS,
                true,
                CENTRED_AT * design.bodyJointMm(),
                null,
                null,
                null,
                Jigs.NONE);
    }

    /**
     * {@return the same neck made with other workmanship}
     *
     * @param its how well each kind of step is done
     */
    public NeckErrors with(Workmanship its) {
        return new NeckErrors(design, its, located, guide, alongTreble, centredAt, skew, zero, slot, jigs);
    }

    /**
     * {@return the same neck with heel and side taper located otherwise}
     *
     * @param on what they are located on
     */
    public NeckErrors locatedOn(Located on) {
        return new NeckErrors(design, work, on, guide, alongTreble, centredAt, skew, zero, slot, jigs);
    }

    /**
     * {@return the same neck with its body joint guided otherwise}
     *
     * @param by what guides it
     */
    public NeckErrors guidedBy(Guide by) {
        return new NeckErrors(design, work, located, by, alongTreble, centredAt, skew, zero, slot, jigs);
    }

    /** {@return the same neck with its channel cut along the bass edge of the blank instead of the treble edge} */
    public NeckErrors alongTheBassEdge() {
        return new NeckErrors(design, work, located, guide, false, centredAt, skew, zero, slot, jigs);
    }

    /**
     * {@return the same neck with its channel centred at another station}
     *
     * @param station at which the walls were read
     */
    public NeckErrors centredAt(Quantity<Length> station) {
        return new NeckErrors(
                design, work, located, guide, alongTreble, LibraryUnits.mm(station, "station"), skew, zero, slot, jigs);
    }

    /**
     * {@return the same neck with a channel that may be askew}
     *
     * @param spread of the angle between channel and fence, positive where the body end swings toward the treble side
     */
    public NeckErrors skewed(ErrorDistribution<Angle> spread) {
        return new NeckErrors(
                design,
                work,
                located,
                guide,
                alongTreble,
                centredAt,
                Objects.requireNonNull(spread, "skew"),
                zero,
                slot,
                jigs);
    }

    /**
     * {@return the same neck with one calliper, whose zero is in every reading against a single face}
     *
     * @param spread of its zero
     */
    public NeckErrors calliperZero(ErrorDistribution<Length> spread) {
        return new NeckErrors(
                design,
                work,
                located,
                guide,
                alongTreble,
                centredAt,
                skew,
                Objects.requireNonNull(spread, "zero"),
                slot,
                jigs);
    }

    /**
     * {@return the same neck, its channel where trial cuts set it: the blank's width read at the channel's ends}
     *
     * @param place where the slot runs, as set
     * @param blank in which it runs
     */
    public NeckErrors slotSet(SlotPlace place, Blank blank) {
        return slot(place, blank, false);
    }

    /**
     * {@return the same neck, its channel where it was read on the neck itself}
     *
     * @param place where the slot runs, as read
     * @param blank in which it runs
     */
    public NeckErrors slotRead(SlotPlace place, Blank blank) {
        return slot(place, blank, true);
    }

    private NeckErrors slot(SlotPlace place, Blank blank, boolean onTheNeck) {
        Slot runs = new Slot(Objects.requireNonNull(place, "place"), Objects.requireNonNull(blank, "blank"), onTheNeck);
        return new NeckErrors(design, work, located, guide, alongTreble, centredAt, skew, zero, runs, jigs);
    }

    /**
     * {@return the same neck with its sides tapered on a jig that sits in its channel: the jig's error, common to every neck made on
     * it, and its play, new each time, are there instead of the locating error}
     *
     * @param jig its error
     * @param play of its key or pins in this neck's channel; pressed to one wall the jig is cut for its shift, and adds none
     * @throws IllegalArgumentException if the heel is made on a jig of that name with another error
     */
    public NeckErrors sideTaperOn(JigError jig, JigPlay play) {
        return on(jigs.with(TAPER, jig, play));
    }

    /**
     * {@return the same neck with its heel cut on a jig that sits in its channel: as for {@link #sideTaperOn}}
     *
     * @param jig its error
     * @param play of its key or pins in this neck's channel; pressed to one wall the jig is cut for its shift, and adds none
     * @throws IllegalArgumentException if the sides are tapered on a jig of that name with another error
     */
    public NeckErrors heelOn(JigError jig, JigPlay play) {
        return on(jigs.with(HEEL, jig, play));
    }

    /**
     * {@return the same neck as one of several in one state: its causes have this label before their names, but for the errors of
     * jigs and the calliper's zero, which the necks share}
     *
     * @param label of the neck, no two necks the same
     */
    public NeckErrors labelled(String label) {
        return on(jigs.label(Words.name(label, "a neck's label")));
    }

    private NeckErrors on(Jigs other) {
        return new NeckErrors(design, work, located, guide, alongTreble, centredAt, skew, zero, slot, other);
    }

    /**
     * {@return the state of several necks together, what they share being one cause: a reading of one neck informs the others}
     *
     * @param necks one or more, each {@link #labelled}
     * @throws IllegalArgumentException if two have the same label, or share the name of a cause but not its spread
     */
    public static NeckState together(List<NeckErrors> necks) {
        Map<String, Cause> all = new LinkedHashMap<>();
        for (NeckErrors one : Objects.requireNonNull(necks, "necks")) {
            for (Cause cause : Objects.requireNonNull(one, "necks").causes()) {
                Cause before = all.put(cause.name(), cause);
                if (before != null && !(one.isShared(cause.name()) && before.equals(cause))) {
                    throw Refusal.of(
                            "necks", "distinct", "share no cause but that of one jig or calliper", cause.name());
                }
            }
        }
        if (all.isEmpty()) {
            throw Refusal.of("necks", "one", "be one or more", "were", "none");
        }
        return NeckState.of(List.copyOf(all.values()));
    }

    private boolean isShared(String cause) {
        return cause.equals(CALLIPER) || jigs.isJig(cause);
    }

    private Cause own(Cause cause) {
        return new Cause(own(cause.name()), cause.step(), cause.spread(), cause.basis());
    }

    private Deviation own(Deviation deviation) {
        return jigs.isLabelled() ? deviation.renamed(this::own) : deviation;
    }

    private String own(String cause) {
        return isShared(cause) ? cause : jigs.labelled(cause);
    }

    /** {@return the state of the neck before anything is read} */
    public NeckState state() {
        return NeckState.of(causes(), style());
    }

    /** {@return the causes of its errors} */
    public List<Cause> causes() {
        List<Cause> all = new ArrayList<>();
        addChannel(all);
        if (skew != null) {
            all.add(new Cause(SKEW, "rod channel", skew, Basis.GIVEN));
        }
        if (zero != null) {
            all.add(new Cause(CALLIPER, "reading", zero, Basis.GIVEN));
        }
        for (String cut : List.of(HEEL, TAPER)) {
            if (jigs.of(cut) == null) {
                line(all, cut, cut, work.locating(), "locating");
            }
            add(all, cut + " cut", cut, work.cutting(), "cutting");
        }
        line(all, "fingerboard", "fingerboard", work.gluing(), "gluing");
        line(all, "fingerboard height", "fingerboard", unshifted(work.gluing()), "gluing");
        List<String> joint = new ArrayList<>(
                guide == Guide.CHEEKS
                        ? List.of(FRONT, BACK)
                        : List.of("gap at the treble cheek", "gap at the bass cheek", "slip of the joint"));
        joint.addAll(List.of("gap at the top of the heel", "gap at the foot of the heel", "height of the seat"));
        joint.forEach(name -> add(all, name, "body joint", work.fitting(), "fitting"));
        for (String stop : List.of("nut", "body joint", "bridge")) {
            add(all, "stop at the " + stop, "stops", work.stopping(), "stopping");
        }
        all.addAll(jigs.causes());
        return all.stream().map(this::own).toList();
    }

    private void addChannel(List<Cause> all) {
        if (slot == null || slot.onTheNeck()) {
            line(all, WIDTH, "blank's edges", work.edge().scaled(2.0), "edge");
        } else {
            own(all, WIDTH, "blank's edges", 2.0);
        }
        if (slot == null) {
            add(all, CENTRING, "rod channel", work.centring(), "centring");
            return;
        }
        read(all, CENTRING, "rod channel", ErrorDistribution.of(slot.shared()));
        if (slot.onTheNeck()) {
            own(all, CENTRING, "rod channel", 1.0);
        }
    }

    private void own(List<Cause> all, String name, String step, double times) {
        Slot its = Objects.requireNonNull(slot);
        read(all, name + AT_NUT, step, its.own(its.place().startStation()).scaled(times));
        read(all, name + AT_JOINT, step, its.own(its.place().endStation()).scaled(times));
    }

    private static void read(List<Cause> all, String name, String step, ErrorDistribution<Length> spread) {
        all.add(new Cause(name, step, spread, basis(spread)));
    }

    private void line(List<Cause> all, String name, String step, ErrorDistribution<Length> spread, String key) {
        add(all, name + AT_NUT, step, spread, key);
        add(all, name + AT_JOINT, step, spread, key);
    }

    /** A board that is glued too far toward one side is not too high by it. */
    private static ErrorDistribution<Length> unshifted(ErrorDistribution<Length> sideways) {
        return sideways.shifted(Amount.ofLibrary(0.0 - sideways.libraryMean(), sideways.unit()));
    }

    private void add(List<Cause> all, String name, String step, ErrorDistribution<Length> spread, String key) {
        all.add(new Cause(name, step, spread, work.given().contains(key) ? basis(spread) : Basis.COMMON_PRACTICE));
    }

    private static Basis basis(ErrorDistribution<Length> spread) {
        return spread.degreesOfFreedom() < Double.POSITIVE_INFINITY ? Basis.READINGS : Basis.GIVEN;
    }

    private double near() {
        return NEAR_NUT * joint();
    }

    private double far() {
        return NEAR_JOINT * joint();
    }

    private double joint() {
        return design.bodyJointMm();
    }

    private double bridge() {
        return design.scale().lengthMm();
    }

    private double sign() {
        return alongTreble ? 1.0 : -1.0;
    }

    private Deviation onLine(String name, double x) {
        return onLine(name, near(), far(), x);
    }

    private static Deviation onLine(String name, double first, double second, double x) {
        return Deviation.onLine(Deviation.of(name + AT_NUT), first, Deviation.of(name + AT_JOINT), second, x);
    }

    /**
     * {@return how much wider than drawn the blank is}
     *
     * @param x the station
     */
    public Deviation width(Quantity<Length> x) {
        return own(width(LibraryUnits.mm(x, "station")));
    }

    private Deviation width(double x) {
        return slot == null ? onLine(WIDTH, x) : widthsError(x).plusMm(slot.widerMm(x));
    }

    /** Of a blank in which the slot was set the width was read at the slot's ends. */
    private Deviation widthsError(double x) {
        return slot == null || slot.onTheNeck() ? onLine(WIDTH, x) : onLine(WIDTH, slot.startMm(), slot.endMm(), x);
    }

    /**
     * {@return how far the rod channel lies off the middle of the blank as drawn}
     *
     * @param x the station
     */
    public Deviation channel(Quantity<Length> x) {
        return own(channel(LibraryUnits.mm(x, "station")));
    }

    private Deviation channel(double x) {
        Deviation centred = slot == null
                ? Deviation.of(CENTRING).plus(width(x).minus(width(centredAt)).times(0.5 * sign()))
                : inTheBlank(slot, x);
        return skew == null ? centred : centred.plus(Deviation.of(SKEW).times(x - centredAt));
    }

    private Deviation inTheBlank(Slot its, double x) {
        Deviation left = its.onTheNeck()
                ? onLine(CENTRING, its.startMm(), its.endMm(), x)
                : widthsError(x).times(0.5 * sign());
        return Deviation.of(CENTRING).plus(left).plusMm(-sign() * its.place().offsetMmAt(x));
    }

    private Deviation located(String name, double x) {
        Jigs.Located jig = jigs.of(name);
        if (jig != null) {
            return channel(x).plus(jig.deviation(x)).plus(Deviation.of(name + " cut"));
        }
        Deviation base = switch (located) {
            case CHANNEL -> channel(x);
            case SAME_EDGE -> width(x).times(0.5 * sign());
            case OPPOSITE_EDGE -> width(x).times(-0.5 * sign());
        };
        return base.plus(onLine(name, x)).plus(Deviation.of(name + " cut"));
    }

    /**
     * {@return how far the heel lies off, across}
     *
     * @param x the station
     */
    public Deviation heel(Quantity<Length> x) {
        return own(located(HEEL, LibraryUnits.mm(x, "station")));
    }

    /**
     * {@return how far the middle of the tapered sides lies off, across}
     *
     * @param x the station
     */
    public Deviation sideTaper(Quantity<Length> x) {
        return own(located(TAPER, LibraryUnits.mm(x, "station")));
    }

    /**
     * {@return how far the fingerboard lies off, across}
     *
     * @param x the station
     */
    public Deviation fingerboard(Quantity<Length> x) {
        return own(fingerboard(LibraryUnits.mm(x, "station")));
    }

    private Deviation fingerboard(double x) {
        return channel(x).plus(onLine("fingerboard", x));
    }

    /**
     * {@return how far the neck's line lies off in the body, across}
     *
     * @param x the station
     */
    public Deviation body(Quantity<Length> x) {
        return own(body(LibraryUnits.mm(x, "station")));
    }

    private Deviation body(double x) {
        Deviation heel = located(HEEL, x);
        if (guide == Guide.CHEEKS) {
            return heel.plus(Deviation.onLine(Deviation.of(FRONT), joint(), Deviation.of(BACK), joint() + CHEEK_MM, x));
        }
        double turn = (x - joint()) / design.heel().map(Heel::widthMm).orElse(USUAL_FACE_MM);
        // A gap at the treble cheek swings the neck's line at the bridge toward treble: seen from the neck, the body
        // goes to bass.
        return heel.minus(Deviation.of("slip of the joint"))
                .minus(Deviation.of("gap at the treble cheek").times(turn))
                .plus(Deviation.of("gap at the bass cheek").times(turn));
    }

    /**
     * {@return how far the fingerboard lies off in height}
     *
     * @param x the station
     */
    public Deviation fingerboardHeight(Quantity<Length> x) {
        return own(onLine("fingerboard height", LibraryUnits.mm(x, "station")));
    }

    /** {@return how far the strings' line lies off the bridge's middle, positive toward the treble side} */
    public Deviation stringLine() {
        return own(fingerboard(bridge()).minus(body(bridge())));
    }

    /**
     * {@return how far the fingerboard misses the neck's tapered sides, across}
     *
     * @param x the station
     */
    public Deviation boardOnNeck(Quantity<Length> x) {
        double at = LibraryUnits.mm(x, "station");
        return own(fingerboard(at).minus(located(TAPER, at)));
    }

    /**
     * {@return how far the sides lie off the channel: so much more wood than drawn on its treble side, and as much less on
     * its bass side}
     *
     * @param x the station
     */
    public Deviation woodEachSide(Quantity<Length> x) {
        double at = LibraryUnits.mm(x, "station");
        return own(located(TAPER, at).minus(channel(at)));
    }

    /** {@return how far the frets' plane, extended to the bridge, lies too high over the body} */
    public Deviation projection() {
        return own(onLine("fingerboard height", bridge())
                .plus(tilt().times(bridge() - joint()))
                .plus(Deviation.of("height of the seat")));
    }

    private Deviation tilt() {
        return Deviation.of("gap at the top of the heel")
                .minus(Deviation.of("gap at the foot of the heel"))
                .times(1.0 / design.heel().map(Heel::heightMm).orElse(USUAL_HEEL_MM));
    }

    /** {@return how far the bridge lies too far from the nut} */
    public Deviation stringLength() {
        return own(Deviation.of("stop at the bridge")
                .plus(Deviation.of("stop at the body joint"))
                .minus(Deviation.of("stop at the nut"))
                .plus(Deviation.of("gap at the top of the heel"))
                .plus(tilt().times(fretPlane())));
    }

    /** Height of the fret plane over the top of the heel's face. */
    private double fretPlane() {
        return design.boardThicknessAtMm(joint())
                + design.fingerboard().fretHeight().map(Amount::libraryValue).orElse(USUAL_FRET_MM);
    }

    /**
     * {@return the zero of the calliper, a part of every reading against a single face; nothing where none was given}
     */
    public Deviation calliperZero() {
        return own(zero == null ? Deviation.none() : Deviation.of(CALLIPER));
    }

    /** {@return the station near the nut at which the wood beside the channel is least, 5 percent of the way to the joint} */
    public Amount<Length> nearNut() {
        return style().amount(near());
    }

    /** {@return the station near the body joint, 95 percent of the way to it} */
    public Amount<Length> nearJoint() {
        return style().amount(far());
    }

    @Override
    protected Object[] parts() {
        return new Object[] {
            design,
            work,
            located,
            guide,
            alongTreble,
            centredAt,
            Optional.ofNullable(skew),
            Optional.ofNullable(zero),
            Optional.ofNullable(slot),
            jigs
        };
    }
}
