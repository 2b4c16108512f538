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
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.HeelTransition;
import org.neckgeom.neck.Tenon;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Spot;
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

    /** The cut that a jig is for. */
    public enum Cut {
        /** The tapered sides. */
        TAPER("taper jig"),
        /** The back on the centreline, from the side. */
        SIDE_PROFILE("side-profile jig"),
        /** Cheeks, shoulder and tenon of the heel. */
        HEEL("heel jig"),
        /** The fret slots. */
        FRETTING("fretting fence"),
        /** Outline and posts of the head. */
        HEAD("head template");

        private final String words;

        Cut(String words) {
            this.words = words;
        }

        /** Returns it in words, such as {@code taper jig}. */
        @Override
        public String toString() {
            return words;
        }
    }

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
            .fact("cut", Kind.code(Cut.class), "the jig is for", j -> j.cut)
            .fact("neck", Kind.NAME, "whose jig", j -> j.solid.neck().name())
            .fact("inside", Kind.MM, "edges inside the wanted line, by bush and cutter", j -> j.inside)
            .factIfAny("play", Kind.ANSWER, "of key or pins", j -> Optional.ofNullable(j.play))
            .fact("places", Kind.table(Place.FORM), "edges, stops and pins", ChannelJig::places)
            .finds("jig", "{neck}, {cut} from the channel's centreline")
            .each(
                    "places",
                    "{name}",
                    "along {along:text}, across {across:text}, height {height:text}{play}",
                    10,
                    "and {more} more")
            .line("inside", "edges", j -> j.inside > 0, "{inside:brief} inside the wanted line")
            .note(
                    "hollow",
                    ChannelJig::isTooHollow,
                    "the cutter is too wide for the heel's curve: it leaves wood in the hollow");

    private final Cut cut;
    private final NeckSolid solid;
    private final double inside;
    private final double cutter;
    private final @Nullable JigPlay play;
    private final List<Double> stations;

    private ChannelJig(
            Cut cut, NeckSolid solid, double inside, double cutter, @Nullable JigPlay play, List<Double> stations) {
        super(FORM, solid.style());
        this.cut = cut;
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
     * @param cut that the jig is for
     * @param solid shape of the neck, which has a channel
     * @throws IllegalArgumentException if the neck has no channel, or not the part to be cut
     */
    public static ChannelJig of(Cut cut, NeckSolid solid) {
        Objects.requireNonNull(cut, "cut");
        if (Objects.requireNonNull(solid, "solid").floorThickness().isEmpty()) {
            throw missing(solid, "channel", "a jig in the channel");
        }
        if (cut == Cut.HEEL && solid.neck().heel().isEmpty()) {
            throw missing(solid, "heel", "a heel jig");
        }
        if (cut == Cut.HEAD && solid.head().isEmpty()) {
            throw missing(solid, "head", "a head template");
        }
        return new ChannelJig(cut, solid, 0, 0, null, checkedAt(cut, solid));
    }

    private static Refusal missing(NeckSolid solid, String part, String jig) {
        return Refusal.because(
                part,
                "missing",
                "\"" + solid.neck().name() + "\" has no " + part + " for " + jig + ": add ." + part + "(...)");
    }

    private static List<Double> checkedAt(Cut cut, NeckSolid solid) {
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
     * {@return a copy whose edges a guide bush runs on}
     *
     * @param bush outer diameter of the bush, no less than the cutter's
     * @param cutterDiameter of the cutter, more than 0
     */
    public ChannelJig guided(Quantity<Length> bush, Quantity<Length> cutterDiameter) {
        double narrow = LibraryUnits.mmPositive(cutterDiameter, "cutter's diameter");
        double wide = LibraryUnits.mmPositive(bush, "bush's diameter");
        if (!(wide >= narrow)) {
            throw LibraryUnits.refused(
                    "bush's diameter", "at-least", "the cutter's " + style().brief(narrow) + " or more", bush);
        }
        return new ChannelJig(cut, solid, (wide - narrow) / 2, narrow, play, stations);
    }

    /**
     * {@return a copy located in the channel with play}
     *
     * @param inChannel of its key or pins
     */
    public ChannelJig located(JigPlay inChannel) {
        return new ChannelJig(cut, solid, inside, cutter, Objects.requireNonNull(inChannel, "play"), stations);
    }

    /**
     * {@return a copy of a taper jig, a side-profile jig or a head template at other stations}
     *
     * @param others along the jig from the nut line, one or more, negative in the head; up to the body joint, of a head template no
     *     farther than the tip
     */
    public ChannelJig at(List<? extends Quantity<Length>> others) {
        if (cut == Cut.HEEL || cut == Cut.FRETTING) {
            throw Refusal.because(
                    "stations", "not-free", "a " + cut + " has its own places: its stations cannot be given");
        }
        if (Objects.requireNonNull(others, "stations").isEmpty()) {
            throw Refusal.of("stations", "one", "be one or more", "were", "none");
        }
        double low = -solid.head().map(h -> h.head().lengthMm()).orElse(0.0);
        double high = cut == Cut.HEAD ? 0 : solid.bodyJointMm();
        List<Double> checked = new ArrayList<>();
        for (Quantity<Length> one : others) {
            double x = LibraryUnits.mm(one, "station");
            if (!(x >= (cut == Cut.TAPER ? 0 : low) && x <= high)) {
                throw LibraryUnits.refused(
                        "station",
                        "range",
                        "from " + style().brief(cut == Cut.TAPER ? 0 : low) + " to " + style().brief(high),
                        one);
            }
            checked.add(x);
        }
        return new ChannelJig(cut, solid, inside, cutter, play, List.copyOf(checked));
    }

    /** {@return the cut it is for} */
    public Cut cut() {
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

    private boolean isTooHollow() {
        return cut == Cut.SIDE_PROFILE
                && solid.neck()
                        .back()
                        .heelTransition()
                        .map(HeelTransition::radiusMm)
                        .filter(radius -> radius < cutter / 2)
                        .isPresent();
    }

    private List<Place> places() {
        List<Place> all = new ArrayList<>();
        switch (cut) {
            case TAPER -> taper(all);
            case SIDE_PROFILE -> sideProfile(all);
            case HEEL -> heel(all, solid.neck().heel().orElseThrow());
            case FRETTING -> fretting(all);
            case HEAD -> head(all, solid.head().orElseThrow());
        }
        if (play != null) {
            add(all, "first pin", play.first().libraryValue(), 0, 0);
            add(all, "second pin", play.second().libraryValue(), 0, 0);
        }
        return List.copyOf(all);
    }

    private void add(List<Place> all, String name, double along, double across, double height) {
        double worst =
                play == null ? Double.NaN : play.worstAt(style().amount(along)).libraryValue();
        all.add(new Place(name, new Point(along + 0.0, across + 0.0, height + 0.0), worst));
    }

    private void sides(List<Place> all, String name, double along, double half, double height) {
        add(all, "bass " + name, along, -half, height);
        add(all, "treble " + name, along, half, height);
    }

    private void taper(List<Place> all) {
        stations.forEach(x -> sides(all, "edge", x, JigEdge.taper(solid.neck(), x, inside), 0));
    }

    private void sideProfile(List<Place> all) {
        stations.forEach(x -> add(all, "edge", x, 0, -JigEdge.inward(solid.depth()::valueAt, x, inside)));
    }

    private void heel(List<Place> all, Heel heel) {
        double joint = solid.bodyJointMm();
        double foot = joint - solid.lean() * heel.heightMm();
        double square = inside * Math.sqrt(1 + solid.lean() * solid.lean());
        double fall = (heel.widthMm() - heel.capWidthMm()) / 2 / heel.heightMm();
        double cheek = inside * Math.sqrt(1 + fall * fall);
        sides(all, "cheek at the glue face", joint, heel.widthMm() / 2 - cheek, 0);
        sides(all, "cheek at the cap", foot, heel.capWidthMm() / 2 - cheek, -heel.heightMm());
        add(all, "shoulder at the glue face", joint - square, 0, 0);
        add(all, "shoulder at the cap", foot - square, 0, -heel.heightMm());
        heel.tenon()
                .flatMap(Tenon::width)
                .ifPresent(width -> sides(all, "side of the tenon", joint, width.libraryValue() / 2 - inside, 0));
    }

    private void fretting(List<Place> all) {
        for (FretLine line : solid.frets()) {
            String name = line.fret() == 0 ? "nut line" : "fret " + line.fret();
            if (solid.neck().fannedFrets().isEmpty()) {
                add(all, name, line.bass().uMm(), 0, 0);
            } else {
                add(all, name + ", bass end", line.bass().uMm(), line.bass().vMm(), 0);
                add(
                        all,
                        name + ", treble end",
                        line.treble().uMm(),
                        line.treble().vMm(),
                        0);
            }
        }
    }

    private void head(List<Place> all, HeadSolid there) {
        List<Spot> posts = there.posts();
        for (int i = 0; i < posts.size(); i++) {
            Spot spot = onNeckAxis(there, posts.get(i));
            add(all, "post " + (i + 1), spot.uMm(), spot.vMm(), 0);
        }
        double tip = -there.head().lengthMm();
        for (double u : stations) {
            for (int side : new int[] {-1, 1}) {
                double reach = JigEdge.inward(
                        x -> JigEdge.reach(there.outline(), Math.max(tip, Math.min(0, x)), side), u, inside);
                Spot spot = onNeckAxis(there, new Spot(u, side * reach));
                add(all, side < 0 ? "bass edge" : "treble edge", spot.uMm(), spot.vMm(), 0);
            }
        }
        Spot end = onNeckAxis(there, new Spot(tip + inside, 0));
        add(all, "tip", end.uMm(), end.vMm(), 0);
    }

    /** In the head's face along the neck's own axis, which a swung head leaves. */
    private static Spot onNeckAxis(HeadSolid there, Spot spot) {
        Spot axis = there.neckAxis();
        return new Spot(
                spot.uMm() * axis.uMm() - spot.vMm() * axis.vMm(), spot.vMm() * axis.uMm() + spot.uMm() * axis.vMm());
    }

    @Override
    protected @Nullable Object[] parts() {
        return new @Nullable Object[] {cut, solid, inside, cutter, play, stations};
    }
}
