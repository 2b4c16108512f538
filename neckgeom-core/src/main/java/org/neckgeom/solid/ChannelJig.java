package org.neckgeom.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.channel.JigPlay;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.neck.HeelTransition;
import org.neckgeom.neck.Neck;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Polyline;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;

/**
 * A jig that sits in the rod channel: where each of its edges, stops and pins lies from the channel's centreline (across), from
 * the nut line (along) and from the glue face (height). Immutable.
 *
 * <p>Datum: across from the channel's walls, height from the glue face, along from a pin or a line at the nut. An edge that a
 * guide bush runs on lies g inside the wanted line, measured square to it, {@code g = (bush - cutter)/2}; 0 with a bearing of the
 * cutter's diameter. A head template lies in the head's face: along it from the nut line, heights over it. Exact, from the
 * {@link NeckSolid}; without wear.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class ChannelJig extends ValueAnswer {

    /** A place of the jig and how far play can move it across. */
    private record Place(String name, Point at, double worst) {
        private static final Form<Place> FORM = Form.<Place>of("jig-place")
                .fact("name", Kind.NAME, "of the edge, stop or pin", Place::name)
                .fact("along", Kind.MM, "from the nut line, negative in the head", p -> p.at.xMm())
                .fact(
                        "across",
                        Kind.MM,
                        "from the channel's centreline, positive toward the treble side",
                        p -> p.at.yMm())
                .fact("height", Kind.MM, "over the glue face, or over the head's face", p -> p.at.zMm())
                .fact("worst", Kind.MM, "by play, across, at most; none: no play given", p -> p.worst)
                .phrase("play", p -> p.worst > 0, ", play {worst:small}");
    }

    private static final Form<ChannelJig> FORM = Form.<ChannelJig>of("channel-jig")
            .fact("cut", Kind.code(JigCut.class), "the jig is for", j -> j.cut)
            .fact("neck", Kind.NAME, "whose jig", j -> j.solid.neck().name())
            .fact("inside", Kind.MM, "edges inside the wanted line, by bush and cutter", j -> j.inside)
            .factIfAny("play", Kind.ANSWER, "of key or pins", j -> Optional.ofNullable(j.play))
            .fact("places", Kind.table(Place.FORM), "edges, stops and pins", ChannelJig::places)
            .finds("jig", "{neck}, {cut} from the channel's centreline")
            .each(
                    "places",
                    "{name}",
                    "along {along:text}, across {across:text}, height {height:text}{play}",
                    8,
                    "and {more} more")
            .line("inside", "edges", j -> j.inside > 0, "{inside:brief} inside the wanted line")
            .note(
                    "hollow",
                    ChannelJig::isTooHollow,
                    "the cutter is too wide for the heel's curve: it leaves wood in the hollow");

    private final JigCut cut;
    private final NeckSolid solid;
    private final double inside;
    private final double cutter;
    private final @Nullable JigPlay play;
    private final List<Double> stations;
    private final @Nullable ScarfJoint scarf;

    private ChannelJig(
            JigCut cut,
            NeckSolid solid,
            double inside,
            double cutter,
            @Nullable JigPlay play,
            List<Double> stations,
            @Nullable ScarfJoint scarf) {
        super(FORM, solid.style());
        this.cut = cut;
        this.scarf = scarf;
        this.solid = solid;
        this.inside = inside;
        this.cutter = cutter;
        this.play = play;
        this.stations = stations;
    }

    /**
     * {@return a jig for a cut of a neck, with a bearing of the cutter's diameter, at the stations where it is checked in common
     * practice}
     *
     * @param cut that the jig is for; a scarf sled comes from {@link #scarfSled}
     * @param solid shape of the neck, which has a channel
     * @throws IllegalArgumentException if the neck has no channel, or not the part to be cut
     */
    public static ChannelJig of(JigCut cut, NeckSolid solid) {
        if (Objects.requireNonNull(cut, "cut") == JigCut.SCARF) {
            throw Refusal.because("cut", "missing", "a scarf sled needs its joint: scarfSled(solid, joint)");
        }
        needsChannel(solid);
        if (cut == JigCut.HEEL && solid.neck().heel().isEmpty()) {
            throw missing(solid, "heel", "a heel jig");
        }
        if (cut == JigCut.HEAD && solid.head().isEmpty()) {
            throw missing(solid, "head", "a head template");
        }
        return new ChannelJig(cut, solid, 0, 0, null, checkedAt(cut, solid), null);
    }

    /**
     * {@return the sled that carries the shaft past the saw at the head's angle, its fence square to the key; behind a slanted nut
     * along the nut line} Its lines are those of the saw's side toward the shaft, with the wood that is planed off later.
     *
     * @param solid shape of the neck, which has a channel
     * @param joint of its head
     * @throws IllegalArgumentException if the neck has no channel or no head
     */
    public static ChannelJig scarfSled(NeckSolid solid, ScarfJoint joint) {
        needsChannel(solid);
        if (solid.head().isEmpty()) {
            throw missing(solid, "head", "a scarf sled");
        }
        return new ChannelJig(JigCut.SCARF, solid, 0, 0, null, List.of(), Objects.requireNonNull(joint, "joint"));
    }

    private static void needsChannel(NeckSolid solid) {
        if (Objects.requireNonNull(solid, "solid").floorThickness().isEmpty()) {
            throw missing(solid, "channel", "a jig in the channel");
        }
    }

    private static Refusal missing(NeckSolid solid, String part, String jig) {
        return Refusal.because(
                part,
                "missing",
                "\"" + solid.neck().name() + "\" has no " + part + " for " + jig + ": add ." + part + "(...)");
    }

    private static List<Double> checkedAt(JigCut cut, NeckSolid solid) {
        int octave = solid.neck().scale().divisions();
        return switch (cut) {
            case TAPER -> List.of(0.0, solid.neck().scale().fretMm(octave), solid.bodyJointMm());
            case SIDE_PROFILE ->
                List.of(solid.neck().scale().fretMm(1), solid.neck().scale().fretMm(octave * 5.0 / 6));
            case HEAD -> List.of(-solid.head().orElseThrow().head().lengthMm() / 2);
            default -> List.of();
        };
    }

    /**
     * {@return a copy of a jig for a router, whose edges a guide bush runs on}
     *
     * @param bush outer diameter of the bush, no less than the cutter's
     * @param cutterDiameter of the cutter, more than 0
     */
    public ChannelJig guided(Quantity<Length> bush, Quantity<Length> cutterDiameter) {
        if (!cut.isRouted()) {
            throw Refusal.because("bush", "not-free", "no guide bush runs on a " + cut);
        }
        double narrow = LibraryUnits.mmPositive(cutterDiameter, "cutter's diameter");
        double wide = LibraryUnits.mmPositive(bush, "bush's diameter");
        if (!(wide >= narrow)) {
            throw LibraryUnits.refused(
                    "bush's diameter", "at-least", "the cutter's " + style().brief(narrow) + " or more", bush);
        }
        return new ChannelJig(cut, solid, (wide - narrow) / 2, narrow, play, stations, scarf);
    }

    /**
     * {@return a copy located in the channel with play}
     *
     * @param inChannel of its key or pins
     */
    public ChannelJig located(JigPlay inChannel) {
        return new ChannelJig(cut, solid, inside, cutter, Objects.requireNonNull(inChannel, "play"), stations, scarf);
    }

    /**
     * {@return a copy of a taper jig, a side-profile jig or a head template at other stations}
     *
     * @param others along the jig from the nut line, one or more, negative in the head; up to the body joint, of a head template no
     *     farther than the tip
     */
    public ChannelJig at(List<? extends Quantity<Length>> others) {
        if (cut == JigCut.HEEL || !cut.isRouted()) {
            throw Refusal.because(
                    "stations", "not-free", "a " + cut + " has its own places: its stations cannot be given");
        }
        if (Objects.requireNonNull(others, "stations").isEmpty()) {
            throw Refusal.of("stations", "one", "be one or more", "were", "none");
        }
        double low = -solid.head().map(h -> h.head().lengthMm()).orElse(0.0);
        double high = cut == JigCut.HEAD ? 0 : solid.bodyJointMm();
        List<Double> checked = new ArrayList<>();
        for (Quantity<Length> one : others) {
            double x = LibraryUnits.mm(one, "station");
            if (!(x >= (cut == JigCut.TAPER ? 0 : low) && x <= high)) {
                throw LibraryUnits.refused(
                        "station",
                        "range",
                        "from " + style().brief(cut == JigCut.TAPER ? 0 : low) + " to " + style().brief(high),
                        one);
            }
            checked.add(x);
        }
        return new ChannelJig(cut, solid, inside, cutter, play, List.copyOf(checked), scarf);
    }

    /** {@return the neck as designed} */
    public Neck neck() {
        return solid.neck();
    }

    /** {@return where it is located in the channel; nothing without a play} */
    public Optional<JigPlay> play() {
        return Optional.ofNullable(play);
    }

    /** {@return the cut it is for} */
    public JigCut cut() {
        return cut;
    }

    /** {@return how far its edges lie inside the wanted line; 0 or more} */
    public Amount<Length> inside() {
        return style().amount(inside);
    }

    /** {@return the names of its places, in order} */
    public List<String> names() {
        return places().stream().map(Place::name).toList();
    }

    /**
     * {@return its places, in the order of their names: x along from the nut line, y across from the channel's centreline, z over the
     * glue face, of a head template over the head's face}
     */
    public List<Point> points() {
        return places().stream().map(Place::at).toList();
    }

    /**
     * {@return its edges in mm as lines to cut it to; of a taper jig, a scarf sled, a caul and a fretting fence u along from the nut
     * line and v across, of a side-profile jig u along and v over the glue face, of a heel jig u across and v over the glue face, of a
     * head template u along the head's face and v across; curves in chords 1 mm long}
     */
    public List<Polyline> edges() {
        return shape().edges();
    }

    private JigShape shape() {
        return new JigShape(cut, solid, inside, stations, scarf);
    }

    private boolean isTooHollow() {
        return cut == JigCut.SIDE_PROFILE
                && solid.neck()
                        .back()
                        .heelTransition()
                        .map(HeelTransition::radiusMm)
                        .filter(radius -> radius < cutter / 2)
                        .isPresent();
    }

    private List<Place> places() {
        List<Place> all = new ArrayList<>();
        shape().places().forEach(place -> all.add(placed(place.name(), place.at())));
        if (play != null) {
            all.add(placed("first pin", new Point(play.first().libraryValue(), 0, 0)));
            all.add(placed("second pin", new Point(play.second().libraryValue(), 0, 0)));
        }
        return List.copyOf(all);
    }

    private Place placed(String name, Point at) {
        double worst = play == null
                ? Double.NaN
                : play.worstAt(style().amount(at.xMm())).libraryValue();
        return new Place(name, at, worst);
    }

    @Override
    protected @Nullable Object[] parts() {
        return new @Nullable Object[] {cut, solid, inside, cutter, play, stations, scarf};
    }
}
