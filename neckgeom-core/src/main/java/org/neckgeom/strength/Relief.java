package org.neckgeom.strength;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.Rod;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * Questions about the relief of a neck: {@code Relief.of(neck).underStrings()}, {@code .rodForceFor(mm(0.2))}. Immutable.
 *
 * <p>Relief is the greatest gap under a straightedge laid on two frets, unless told the 1st and the one at the body.
 *
 * <p>Estimate. The neck is a beam from the nut to the body joint, where it is clamped: fingerboard, wood less channel,
 * strip and bonded bars as one transformed section, plane sections, no shear; frets, head, heel and the rod's own
 * stiffness left out. The strings pull on the bent neck. {@code EI w'' = M}, M from {@link StringLoad} and the rod. Wood
 * that is loaded for months creeps on beyond that. Answers carry the interval that the moduli of the two pieces leave.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class Relief extends ValueAnswer {

    /** Between which frets the straightedge lies. */
    static final Kind<Relief> STRAIGHTEDGE = Kind.answer(Form.<Relief>of("straightedge")
            .fact("fromFret", Kind.WHOLE, "0 is the nut", Relief::fromFret)
            .fact("toFret", Kind.WHOLE, "at most the fret at the body", Relief::toFret)
            .finds("from-nut", x -> x.fromFret == 0, "from the nut to fret {toFret}")
            .finds("from-fret", "from fret {fromFret} to fret {toFret}"));

    /** What the moduli of neck and fingerboard are taken to be. */
    static final Kind<List<Wood>> WOODS = Kind.table(Form.<Wood>of("wood-modulus")
            .fact("wood", Kind.NAME, "its name", Wood::name)
            .fact("modulus", Kind.house(ShopUnit.GIGAPASCAL), "mean of the species", Wood::modulusMPa)
            .fact("variation", Kind.RATIO, "standard deviation over mean", wood -> wood.modulusVariation())
            .finds("wood", "{wood} {modulus} +- {variation:percent 0}"));

    /** The greatest force of the rod. */
    static final Kind<Relief> ROD_LIMIT = Kind.answer(Form.<Relief>of("rod-limit")
            .fact("force", Kind.house(ShopUnit.NEWTON), "at most", Relief::limitNewton)
            .factIfAny("assumedStress", Kind.house(ShopUnit.MEGAPASCAL), "on its thread", Relief::assumedStress)
            .finds("assumed", "{force:0}, assumed: {assumedStress:0} on its thread")
            .finds("given", "{force:0}"));

    private static final Form<Relief> FORM = Form.<Relief>of("relief")
            .fact("neck", Kind.NAME, "its name", Relief::neckName)
            .factIfAny("relief", Likely.KIND, "under the strings, the rod slack; positive forward", Relief::likely)
            .factIfAny("obstacle", Kind.NAME, "why there is no relief", Relief::obstacle)
            .findsOnly("incomplete", x -> x.woods().isEmpty(), "Relief of {neck} cannot be told: {obstacle}")
            .finds("relief", "Relief of {neck}")
            .line("relief", "under the strings", "{relief}")
            .line("obstacle", "under the strings", "none: {obstacle}")
            .row("straightedge", "straightedge", STRAIGHTEDGE, "where it lies", x -> x)
            .row("strings", "strings", Kind.answer(StringHeights.FORM), "how high they lie", x -> x.heights)
            .factIfAny("woods", WOODS, "of neck and fingerboard", Relief::woods)
            .line("woods", "woods", "{woods}")
            .factIfAny("bars", Kind.ANSWER, "bonded, one on each side", x -> Optional.ofNullable(x.bar))
            .line("bars", "bars", "a pair, {bars}")
            .factIfAny("rodLimit", ROD_LIMIT, "an adjustable rod", Relief::ifRod)
            .line("rodLimit", "rod stands", "{rodLimit}")
            .note("estimate", "Estimate; ask .underStrings(), .rodForceFor(...), .rodTravel(), .stress().");

    /** What a threaded rod of mild steel carries, MPa on the core of its thread; from memory, on the safe side. */
    private static final double ROD_MPA = 300;

    /** Core of a thread over its full section; from memory. */
    private static final double THREAD_CORE = 0.75;

    private final NeckDesign neck;
    private final StringHeights heights;
    private final int fromFret;
    private final int toFret;
    private final double arm;
    private final double limit;
    private final @Nullable Rod bar;
    private final double barOffCentre;

    private Relief(
            NeckDesign neck,
            StringHeights heights,
            int fromFret,
            int toFret,
            double arm,
            double limit,
            @Nullable Rod bar,
            double barOffCentre) {
        super(neck.style());
        this.neck = neck;
        this.heights = heights;
        this.fromFret = fromFret;
        this.toFret = toFret;
        this.arm = arm;
        this.limit = limit;
        this.bar = bar;
        this.barOffCentre = barOffCentre;
    }

    /**
     * {@return the questions about a neck; straightedge from the 1st fret to the body joint, strings at the usual
     * heights}
     *
     * @param neck with scale, fingerboard and its wood, back, wood and strings
     */
    public static Relief of(NeckDesign neck) {
        return new Relief(
                neck,
                StringHeights.usual(),
                Objects.requireNonNull(neck, "neck").bodyAtFret() > 1 ? 1 : 0,
                neck.bodyAtFret(),
                neck.channel().map(channel -> channel.rod().heightMm() / 2).orElse(0.0),
                usualLimit(neck),
                null,
                0);
    }

    /** What the rod stands unless told: its thread is as thick as one of its bars. */
    private static double usualLimit(NeckDesign neck) {
        Rod rod = neck.channel().map(channel -> channel.rod()).orElse(null);
        if (rod == null || !rod.isAdjustable()) {
            return 0;
        }
        double thread = rod.kind() == Rod.Kind.TWO_WAY ? Math.min(rod.widthMm(), rod.heightMm() / 2) : rod.heightMm();
        return ROD_MPA * THREAD_CORE * Math.PI * thread * thread / 4;
    }

    /**
     * {@return these questions with the strings at other heights}
     *
     * @param other the heights
     */
    public Relief heights(StringHeights other) {
        Objects.requireNonNull(other, "heights");
        return new Relief(neck, other, fromFret, toFret, arm, limit, bar, barOffCentre);
    }

    /**
     * {@return these questions with the straightedge on two frets}
     *
     * @param from 0 (the nut) or more
     * @param to more than from, at most the fret at the body
     */
    public Relief between(int from, int to) {
        if (from < 0 || to <= from || to > neck.bodyAtFret()) {
            throw Refusal.of(
                    "frets of the straightedge",
                    "range",
                    "be ascending between 0 and that at the body, " + neck.bodyAtFret(),
                    "were",
                    from + " and " + to);
        }
        return new Relief(neck, heights, from, to, arm, limit, bar, barOffCentre);
    }

    /**
     * {@return these questions with the distance between the axes of a two-way rod's bars; unless told half the rod's
     * height}
     *
     * @param distance more than 0
     */
    public Relief rodArm(Quantity<Length> distance) {
        double mm = HouseUnits.mmPositive(distance, "rod arm");
        return new Relief(neck, heights, fromFret, toFret, mm, limit, bar, barOffCentre);
    }

    /**
     * {@return these questions with the force the rod stands; unless told 300 MPa on the core of its thread, which is
     * from memory for mild steel} The maker's figure is better.
     *
     * @param force more than 0
     */
    public Relief rodStands(Quantity<Force> force) {
        double newton = HouseUnits.positive(force, ShopUnit.NEWTON, "force the rod stands");
        return new Relief(neck, heights, fromFret, toFret, arm, newton, bar, barOffCentre);
    }

    /**
     * {@return these questions with a bonded bar on each side of the rod, from the nut toward the body, flush with the
     * glue face}
     *
     * @param pairOf a steel bar or a carbon bar
     * @param offCentre from the centreline to the middle of each bar, more than half its width
     */
    public Relief withBars(Rod pairOf, Quantity<Length> offCentre) {
        double mm = HouseUnits.mmPositive(offCentre, "distance of the bars from the centreline");
        NeckModel.pair(pairOf, mm);
        double channel = neck.channel().map(c -> c.widthMm() / 2).orElse(0.0);
        if (!(mm >= pairOf.widthMm() / 2 + channel)) {
            throw HouseUnits.refused(
                    "distance of the bars from the centreline",
                    "at-least",
                    style().brief(pairOf.widthMm() / 2 + channel) + " or more, clear of each other and of the channel",
                    offCentre);
        }
        return new Relief(neck, heights, fromFret, toFret, arm, limit, pairOf, mm);
    }

    /**
     * {@return what bonded bars beside the rod change; the neck without and with them}
     *
     * @param pairOf a steel bar or a carbon bar, one on each side
     * @param offCentre from the centreline to the middle of each bar
     */
    public BarsAdded addingBars(Rod pairOf, Quantity<Length> offCentre) {
        return BarsAdded.of(this, withBars(pairOf, offCentre));
    }

    /** {@return the bow under the strings, the rod slack} */
    public Bow underStrings() {
        return Bow.of(this, 0);
    }

    /**
     * {@return the bow under the strings with a force in the rod}
     *
     * @param force positive straightens the neck, negative bows a neck with a two-way rod forward
     * @throws IllegalArgumentException if the neck has no adjustable rod, or a single-action rod would have to push
     */
    public Bow withRodAt(Quantity<Force> force) {
        return Bow.of(this, rodNewton(force));
    }

    private double rodNewton(Quantity<Force> force) {
        double newton = HouseUnits.newton(force, "rod force");
        if (newton != 0 && !hasRod()) {
            throw HouseUnits.refused("rod force", "no-rod", "0 N in a neck without an adjustable rod", force);
        }
        if (newton < leastForce()) {
            throw HouseUnits.refused("rod force", "at-least", "0 N or more in a single-action rod", force);
        }
        return newton;
    }

    /** {@return the stress under the strings, the rod slack: whether the neck stands} */
    public Stress stress() {
        return Stress.of(this, 0);
    }

    /**
     * {@return the stress under the strings with a force in the rod}
     *
     * @param inRod positive straightens the neck, negative bows a neck with a two-way rod forward
     * @throws IllegalArgumentException if the neck has no adjustable rod, or a single-action rod would have to push
     */
    public Stress stressWithRodAt(Quantity<Force> inRod) {
        return Stress.of(this, rodNewton(inRod));
    }

    /**
     * {@return the force in the rod that leaves the wanted relief under the strings, and whether the rod can do it}
     *
     * @param wanted relief, positive forward, 0 for as straight as it gets, negative for a hump
     */
    public RodForce rodForceFor(Quantity<Length> wanted) {
        return RodForce.of(this, HouseUnits.mm(wanted, "relief wanted"), LengthStyle.of(wanted));
    }

    /**
     * {@return how far the rod can take the relief under the strings; the relief at both ends of what the rod stands}
     *
     * @throws IllegalArgumentException if the neck has no adjustable rod
     */
    public RodTravel rodTravel() {
        if (!hasRod()) {
            throw Refusal.of(
                    "\"" + neck.name() + "\"",
                    "missing",
                    "have an adjustable rod for this",
                    "has",
                    "none: add .rod(...)");
        }
        return RodTravel.of(this);
    }

    NeckDesign neck() {
        return neck;
    }

    String neckName() {
        return neck.name();
    }

    List<Wood> pair() {
        return List.of(neck.wood(), NeckModel.boardWood(neck));
    }

    int fromFret() {
        return fromFret;
    }

    int toFret() {
        return toFret;
    }

    double armMm() {
        return arm;
    }

    double limitNewton() {
        return limit;
    }

    boolean hasRod() {
        return neck.channel().map(channel -> channel.rod().isAdjustable()).orElse(false);
    }

    boolean isTwoWay() {
        return neck.channel()
                .map(channel -> channel.rod().kind() == Rod.Kind.TWO_WAY)
                .orElse(false);
    }

    /** The least force of this rod: a two-way rod works both ways. */
    double leastForce() {
        return isTwoWay() ? Double.NEGATIVE_INFINITY : 0;
    }

    @Nullable
    RodPull rodPull() {
        if (!hasRod()) {
            return null;
        }
        return neck.channel()
                .map(channel -> isTwoWay()
                        ? new RodPull.Couple(
                                channel.startMm(),
                                channel.startMm() + channel.rod().lengthMm(),
                                arm)
                        : new RodPull.Tendon(channel))
                .orElse(null);
    }

    NeckBeam beam() {
        NeckBeam beam = NeckModel.beam(neck);
        return bar == null ? beam : beam.withBars(NeckModel.pair(bar, barOffCentre));
    }

    StringPull pull() {
        return NeckModel.pull(neck, heights);
    }

    /** The straightedge over this neck, for any multiple of the two moduli. */
    Bench bench() {
        NeckBeam beam = beam();
        StringPull pull = pull();
        RodPull rod = rodPull();
        double from = neck.scale().fretMm(fromFret);
        double to = neck.scale().fretMm(toFret);
        return (back, board) -> {
            NeckBeam other = beam.withModuli(
                    back * beam.back().modulus(), board * beam.board().modulus());
            BeamScan scan = BeamScan.of(other, pull, rod, BeamScan.USUAL_PANELS);
            return new Straightedge(scan.strings(), scan.rod(), from, to);
        };
    }

    /** Lays the straightedge on a neck whose moduli are multiples of their species' means. */
    interface Bench {
        Straightedge with(double backFactor, double boardFactor);
    }

    static ModulusSpread spread(NeckDesign neck) {
        return ModulusSpread.of(
                neck.wood().modulusVariation(), NeckModel.boardWood(neck).modulusVariation());
    }

    /** Both, or nothing of a neck with a part missing. */
    private Optional<List<Wood>> woods() {
        try {
            bench();
        } catch (IllegalArgumentException missing) {
            return Optional.empty();
        } catch (ArithmeticException none) {
            // No relief, and yet its woods.
        }
        return Optional.of(pair());
    }

    private Optional<Relief> ifRod() {
        return hasRod() ? Optional.of(this) : Optional.empty();
    }

    private Optional<Likely<Length>> likely() {
        try {
            return Optional.of(underStrings().likely());
        } catch (IllegalArgumentException | ArithmeticException none) {
            return Optional.empty();
        }
    }

    /** What is to be printed must be printable, even of a neck that could not stand. */
    private Optional<String> obstacle() {
        try {
            underStrings();
            return Optional.empty();
        } catch (IllegalArgumentException | ArithmeticException none) {
            return Optional.ofNullable(none.getMessage());
        }
    }

    private Optional<Double> assumedStress() {
        return limit == usualLimit(neck) ? Optional.of(ROD_MPA) : Optional.empty();
    }

    @Override
    public Form<Relief> form() {
        return FORM;
    }

    @Override
    protected @Nullable Object[] parts() {
        return new Object[] {neck, heights, fromFret, toFret, arm, limit, bar, barOffCentre};
    }
}
