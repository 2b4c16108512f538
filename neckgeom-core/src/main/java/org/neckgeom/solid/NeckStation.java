package org.neckgeom.solid;

import java.util.Optional;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.Amount;

/**
 * One station of a neck with all that a table lists there, such as {@code fret 5, 39.3 mm wide, 15.2 mm deep}. Immutable.
 *
 * <p>Depths are below the glue face. In the head (x under 0) depth and wood left are the least there is, and there is no
 * board. Exact.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class NeckStation extends LeanAnswer {

    /** Where a jump at the nut is looked at a hair before it, what is printed is the nut. */
    private static final double HAIR_MM = 1e-5;

    private final @Nullable String name;
    private final double station;
    private final BackSection section;
    private final double crown;
    private final double board;
    private final @Nullable Double channel;
    private final @Nullable WoodAt wood;

    NeckStation(@Nullable String name, double station, Neck neck, BackShape back, Optional<FloorThickness> under) {
        super(neck.style());
        String there = neck.stringAnchor().isPresent() ? " (anchor)" : " (head)";
        this.name = name != null && station < -HAIR_MM ? name + there : name;
        this.station = station;
        this.section = back.sectionMm(station);
        boolean onBoard = station >= -HAIR_MM;
        this.crown = onBoard ? neck.crownRadiusAtMm(station) : Double.NaN;
        this.board = onBoard ? neck.boardThicknessAtMm(station) : Double.NaN;
        Optional<FloorThickness> here = under.filter(w -> w.channel().depthAtMm(station) > 0);
        this.channel = here.map(w -> w.channel().depthAtMm(station)).orElse(null);
        this.wood = here.map(w -> w.atMm(station)).orElse(null);
    }

    /** {@return its name, such as {@code fret 5}; nothing for one by its distance alone} */
    public Optional<String> name() {
        return Optional.ofNullable(name);
    }

    /** {@return x from the nut in mm, positive toward the body; 0 within what a rule can show of the nut} */
    public double fromNutMm() {
        return Math.abs(station) < HAIR_MM ? 0 : station;
    }

    /** {@return whether it lies in the head: depth and wood left are then the least there is} */
    public boolean isInHead() {
        return station < -HAIR_MM;
    }

    /** {@return the width of the glue face; more than 0} */
    public Amount<Length> width() {
        return style().amount(2 * section.halfWidth());
    }

    /** {@return the depth of the wood on the centreline, with volute, heel and carving; more than 0} */
    public Amount<Length> depth() {
        return style().amount(section.depth());
    }

    /** {@return the area of the wood's section in mm2, the channel not taken out; more than 0} */
    public double areaMm2() {
        return section.area();
    }

    /** {@return the depth of the channel, adjuster pocket counted; nothing where it does not reach} */
    public Optional<Amount<Length>> channelDepth() {
        return Optional.ofNullable(channel).map(style()::amount);
    }

    /** {@return the wood left under the channel; nothing where it does not reach} */
    public Optional<WoodAt> wood() {
        return Optional.ofNullable(wood);
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        static final Form<NeckStation> FORM = Form.<NeckStation>of("neck-station")
                .factIfAny("name", Kind.NAME, "such as nut or fret 5", NeckStation::name)
                .fact("fromNut", Kind.MM, "negative: in the head", NeckStation::fromNutMm)
                .fact("width", Kind.MM, "of the glue face", s -> 2 * s.section.halfWidth())
                .fact("woodDepth", Kind.MM, "on the centreline; in the head at least", s -> s.section.depth())
                .fact("area", Kind.RATIO, "of the wood's section in mm2, channel not taken out", NeckStation::areaMm2)
                .fact(
                        "bassExponent",
                        Kind.RATIO,
                        "of the back on the bass side",
                        s -> s.section.bass().exponent())
                .fact(
                        "trebleExponent",
                        Kind.RATIO,
                        "of the back on the treble side",
                        s -> s.section.treble().exponent())
                .fact("crownRadius", Kind.MM, "of the fingerboard; none: flat", s -> s.crown)
                .fact("boardThickness", Kind.MM, "of the fingerboard on the centreline", s -> s.board)
                .factIfAny("channelDepth", Kind.MM, "adjuster pocket counted", s -> Optional.ofNullable(s.channel))
                .factIfAny(
                        "woodLeft",
                        Kind.MM,
                        "under the channel; in the head at least",
                        s -> s.wood().map(WoodAt::woodMm))
                .phrase("under", ", {woodLeft:brief} left under the channel")
                .finds(
                        "named",
                        s -> s.name != null,
                        "{name}, {fromNut:brief} from the nut: {width:brief} wide, {woodDepth:brief} deep{under}")
                .finds("station", "{fromNut:brief} from the nut: {width:brief} wide, {woodDepth:brief} deep{under}");
    }

    @Override
    public Form<NeckStation> form() {
        return Sentences.FORM;
    }

    @Override
    protected @Nullable Object[] parts() {
        return new @Nullable Object[] {name, station, section, crown, board, channel, wood};
    }
}
