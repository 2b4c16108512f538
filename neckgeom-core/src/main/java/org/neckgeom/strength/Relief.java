package org.neckgeom.strength;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.Once;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.StringHeights;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * Relief ({@index up-bow}, forward bow) of a neck under its strings, and the truss rod force for a wanted relief: {@code
 * Relief.of(neck).underStrings()}, {@code .rodForceFor(mm(0.2))}.
 *
 * <p>Relief is the greatest gap under a straightedge laid on two frets, positive forward; back-bow is negative. Default
 * frets: the 1st and the one at the body.
 *
 * <p>Estimate. The neck is a beam from the nut to the body joint, where it is clamped: fingerboard, wood less channel,
 * fillet (cover strip) and bonded bars as one transformed section, plane sections, no shear; frets, head, heel and the
 * rod's own stiffness left out. The strings pull on the bent neck: {@code EI w'' = M}, M from {@link StringLoad} and
 * the rod. Relief is that of an hour after tuning; {@link Bow#after} adds creep. Each answer carries the 95 % interval over the moduli of the
 * two woods.
 *
 * <p>Without a string tension or wood under the channel, the answers state what is missing. Errors: a value outside its
 * range throws {@link org.neckgeom.fault.Refusal} (an {@code IllegalArgumentException}). Immutable.
 *
 * @see Bow
 * @see RodForce
 */
public final class Relief extends ValueAnswer {

    private static final Form<Relief> FORM = Form.<Relief>of("relief")
            .fact("neck", Kind.NAME, "its name", x -> x.strung.name())
            .factIfAny("relief", Likely.KIND, "under the strings, the rod slack; positive forward", Relief::likely)
            .factIfAny("obstacle", Kind.NAME, "why there is no relief", Relief::obstacle)
            .findsOnly("incomplete", x -> x.woods().isEmpty(), "Relief of {neck} cannot be computed: {obstacle}")
            .finds("relief", "Relief of {neck}")
            .line("relief", "under the strings", "{relief}")
            .line("obstacle", "under the strings", "none: {obstacle}")
            .row("straightedge", "straightedge", StrungNeck.STRAIGHTEDGE, "where it lies", x -> x.strung)
            .row("strings", "strings", StringLoads.HEIGHTS, "how high they lie", x -> x.strung.strings())
            .factIfAny("woods", StrungNeck.WOODS, "of neck and fingerboard", Relief::woods)
            .line("woods", "woods", "{woods}")
            .factIfAny("bars", Kind.ANSWER, "bonded, one on each side", x -> Optional.ofNullable(x.strung.bar()))
            .line("bars", "bars", "a pair, {bars}")
            .factIfAny(
                    "rodLimit",
                    StrungNeck.ROD_LIMIT,
                    "an adjustable rod",
                    x -> Optional.of(x.strung).filter(StrungNeck::hasRod))
            .line("rodLimit", "rod limit", "{rodLimit}")
            .note("estimate", "Estimate; ask .underStrings(), .rodForceFor(...), .rodTravel(), .stress().");

    private final StrungNeck strung;
    private final Supplier<Bow> slack;

    private Relief(StrungNeck strung) {
        super(FORM, strung.style());
        this.strung = strung;
        this.slack = new Once<>(() -> new Bow(strung, 0));
    }

    /**
     * {@return the questions about a neck, straightedge from the 1st fret to the body, strings as it is set, or at
     * the usual heights}
     *
     * @param neck with scale, fingerboard and its wood, back, wood and strings
     */
    public static Relief of(Neck neck) {
        return new Relief(StrungNeck.usual(neck));
    }

    /**
     * {@return these questions with the strings at other heights}
     *
     * @param other the heights
     */
    public Relief heights(StringHeights other) {
        Objects.requireNonNull(other, "heights");
        return with(
                new StringLoads(strung.neck(), other),
                strung.fromFret(),
                strung.toFret(),
                strung.arm(),
                strung.limit());
    }

    /**
     * {@return these questions with the straightedge on two frets}
     *
     * @param from 0 (the nut) or more
     * @param to more than from, at most the fret at the body
     */
    public Relief between(int from, int to) {
        if (from < 0 || to <= from || to > strung.neck().bodyAtFret()) {
            throw Refusal.of(
                    "frets of the straightedge",
                    "range",
                    "be ascending between 0 and that at the body, "
                            + strung.neck().bodyAtFret(),
                    "were",
                    from + " and " + to);
        }
        return with(strung.strings(), from, to, strung.arm(), strung.limit());
    }

    /**
     * {@return these questions with the distance of a two-way rod's bars' axes; half the rod's height unless given}
     *
     * @param distance more than 0
     */
    public Relief rodArm(Quantity<Length> distance) {
        double mm = LibraryUnits.mmPositive(distance, "rod arm");
        return with(strung.strings(), strung.fromFret(), strung.toFret(), mm, strung.limit());
    }

    /**
     * {@return a copy with the force limit of the rod; default: 300 MPa on the core of its thread, from memory for mild
     * steel} The maker's figure is better.
     *
     * @param force more than 0
     */
    public Relief rodStands(Quantity<Force> force) {
        double newton = LibraryUnits.positive(force, ShopUnit.NEWTON, "force limit of the rod");
        return with(strung.strings(), strung.fromFret(), strung.toFret(), strung.arm(), newton);
    }

    private Relief with(StringLoads strings, int from, int to, double arm, double limit) {
        return new Relief(new StrungNeck(
                strung.neck(), strings, from, to, arm, limit, strung.bar(), strung.barOffCentre(), strung.readings()));
    }

    /**
     * {@return these questions with a bonded bar on each side of the rod, from the nut, flush with the glue face}
     *
     * <p>What was read of the neck was read with them in; bars that come later are asked for by {@link #addingBars}.
     *
     * @param pairOf a steel bar or a carbon bar
     * @param offCentre from the centreline to the middle of each bar, more than half its width
     */
    public Relief withBars(Bar pairOf, Quantity<Length> offCentre) {
        double mm = LibraryUnits.mmPositive(offCentre, "distance of the bars from the centreline");
        NeckModel.pair(pairOf, mm);
        double channel = strung.neck().channel().map(c -> c.widthMm() / 2).orElse(0.0);
        if (!(mm >= pairOf.widthMm() / 2 + channel)) {
            throw LibraryUnits.refused(
                    "distance of the bars from the centreline",
                    "at-least",
                    style().brief(pairOf.widthMm() / 2 + channel) + " or more, clear of each other and of the channel",
                    offCentre);
        }
        return new Relief(new StrungNeck(
                strung.neck(),
                strung.strings(),
                strung.fromFret(),
                strung.toFret(),
                strung.arm(),
                strung.limit(),
                pairOf,
                mm,
                strung.readings()));
    }

    /**
     * {@return what bonded bars beside the rod change; the neck without and with them; what was read, was read without}
     *
     * @param pairOf a steel bar or a carbon bar, one on each side
     * @param offCentre from the centreline to the middle of each bar
     */
    public BarsAdded addingBars(Bar pairOf, Quantity<Length> offCentre) {
        return new BarsAdded(strung, withBars(pairOf, offCentre).strung.readOn(strung));
    }

    /**
     * {@return these questions with what has been read of the neck's stiffness: its intervals are narrower}
     *
     * @param readings in any order
     * @throws IllegalArgumentException if one is more than three times, or less than a third of, what the woods' table leads to
     */
    public Relief knowing(StiffnessReadings readings) {
        StrungNeck known = strung.knowing(Objects.requireNonNull(readings, "readings"));
        known.rows(); // refuses what no wood has
        return new Relief(known);
    }

    /** {@return what those readings have narrowed, one after the other} */
    public StiffnessKnowledge stiffness() {
        return new StiffnessKnowledge(strung);
    }

    /** {@return the bow under the strings, the rod slack} */
    public Bow underStrings() {
        return slack.get();
    }

    /**
     * {@return the bow under the strings with a force in the rod}
     *
     * @param force positive straightens the neck, negative bows a neck with a two-way rod forward
     * @throws IllegalArgumentException if the neck has no adjustable rod, or a single-action rod would have to push
     */
    public Bow withRodAt(Quantity<Force> force) {
        return new Bow(strung, strung.rodNewton(force));
    }

    /** {@return the stress under the strings with the rod slack: whether the neck bears them} */
    public Stress stress() {
        return new Stress(strung, 0);
    }

    /**
     * {@return the stress under the strings with a force in the rod}
     *
     * @param inRod positive straightens the neck, negative bows a neck with a two-way rod forward
     * @throws IllegalArgumentException if the neck has no adjustable rod, or a single-action rod would have to push
     */
    public Stress stressWithRodAt(Quantity<Force> inRod) {
        return new Stress(strung, strung.rodNewton(inRod));
    }

    /**
     * {@return the force in the rod that leaves the wanted relief under the strings, and whether the rod can do it}
     *
     * @param wanted relief, positive forward, 0 for as straight as it gets, negative for a hump
     */
    public RodForce rodForceFor(Quantity<Length> wanted) {
        return RodForce.of(strung, wanted);
    }

    /**
     * {@return how far to turn the rod for the wanted relief under the strings, which way, and at which torque to stop}
     *
     * @param wanted relief, positive forward
     * @param pitch of the rod's thread, more than 0; twice it for left-and-right threads
     */
    public RodTurns rodTurnsFor(Quantity<Length> wanted, Quantity<Length> pitch) {
        return RodTurns.of(strung, wanted, pitch);
    }

    /**
     * {@return how far the rod can take the relief under the strings; the relief at both ends of the rod's force range}
     *
     * @throws IllegalArgumentException if the neck has no adjustable rod
     */
    public RodTravel rodTravel() {
        if (!strung.hasRod()) {
            throw Refusal.of(
                    "\"" + strung.name() + "\"",
                    "missing",
                    "have an adjustable rod for this",
                    "has",
                    "none: add .rod(...)");
        }
        return new RodTravel(strung);
    }

    /** Both, or nothing of a neck with a part missing. */
    private Optional<List<Wood>> woods() {
        try {
            strung.bench();
        } catch (IllegalArgumentException missing) {
            return Optional.empty();
        } catch (ArithmeticException none) {
            // No relief, and yet its woods.
        }
        return Optional.of(strung.woods());
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

    @Override
    protected Object[] parts() {
        return new Object[] {strung};
    }
}
