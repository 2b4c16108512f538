package org.neckgeom.strength;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Interval;
import org.neckgeom.neck.Strip;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * The change of a size across the grain with the air, such as {@code -0.53 mm (-0.90 to -0.22 mm)}: negative when
 * it gets smaller. Immutable.
 *
 * <p>{@code change = D (f(S) - 1)}, {@code f = (1 - S (30 - M2)/30)/(1 - S (30 - M1)/30)} (Wood Handbook, FPL-GTR-190,
 * 2010, Eq. 13-3), {@code S = ST cos^2 phi + SR sin^2 phi} with phi from the direction measured to the growth rings.
 * Estimate. Its interval takes pieces of a species to vary by 15 % in shrinkage (coefficient of variation, Wood Handbook
 * chapter 4, from memory), and as long as the rings are not known, any way they can lie.
 */
public final class SizeChange extends ValueAnswer {

    /** Moisture, in percent, above which wood neither swells nor shrinks. */
    private static final double FIBRE_SATURATION = 30;

    /** Coefficient of variation of shrinkage between pieces of a species. */
    static final double SHRINKAGE_VARIATION = 0.15;

    /** How the growth rings lie. */
    static final Kind<SizeChange> RINGS = Kind.answer(Form.<SizeChange>of("rings")
            .fact("angle", Kind.RAD, "from the direction of the size to the rings, where known", x -> x.ringAngle)
            .finds("known", "at {angle:..1} to the size")
            .finds("not-known", "not known: any way from along the rays to along the rings"));

    /** In a row of another answer. */
    static final Kind<SizeChange> IN_ROW = Kind.answer(Form.<SizeChange>of("change-of-width")
            .fact("change", Likely.KIND, "negative when the width shrinks", SizeChange::likely)
            .fact("before", Kind.MM, "width before", x -> x.size)
            .fact("wood", Kind.NAME, "the wood", x -> x.wood.name())
            .finds("change", "{change} on {before:brief}, {wood}"));

    private static final Form<SizeChange> FORM = Form.<SizeChange>of("size-change")
            .fact("before", Kind.MM, "size before", x -> x.size)
            .fact("wood", Kind.NAME, "the wood", x -> x.wood.name())
            .phrase("size", "{before:brief} across {wood}")
            .finds("smaller", x -> x.changeMm() < 0, "{size}: smaller")
            .finds("larger", x -> x.changeMm() > 0, "{size}: larger")
            .finds("no-change", "{size}: no change")
            .row("change", "change", Likely.KIND, "negative when the size shrinks", SizeChange::likely)
            .row("moisture", "moisture", Moistures.KIND, "of the wood", SizeChange::moistures)
            .factIfAny(
                    "air",
                    AirInWood.IN_ROW,
                    "how far the air has reached the wood, where not all the way",
                    SizeChange::air)
            .line("air", "so far", "{air}")
            .row("rings", "rings", RINGS, "how the growth rings lie", x -> x)
            .note(
                    "estimate",
                    x -> x.air == null,
                    "Estimate (Wood Handbook 2010, Eq. 4-5 and 13-3): balance before and after, bare wood,")
            .note(
                    "estimate",
                    x -> x.air != null,
                    "Estimate (Wood Handbook 2010, Eq. 4-5 and 13-3): balance before, bare wood,")
            .note("estimate", "shrinkage of a piece: its species' plus or minus 29 % (95 % interval).");

    /** In balance. */
    private final Moistures moistures;

    private final double size;
    private final Wood wood;
    private final double radial;
    private final double tangential;
    private final double ringAngle;
    private final @Nullable AirInWood air;

    private SizeChange(
            Moistures moistures,
            double size,
            Wood wood,
            double radial,
            double tangential,
            double ringAngle,
            @Nullable AirInWood air,
            LengthStyle style) {
        super(FORM, style);
        this.moistures = moistures;
        this.size = size;
        this.wood = wood;
        this.radial = radial;
        this.tangential = tangential;
        this.ringAngle = ringAngle;
        this.air = air;
    }

    static SizeChange of(Moistures moistures, double size, Wood wood, LengthStyle style) {
        return new SizeChange(
                moistures,
                size,
                wood,
                Objects.requireNonNull(wood, "wood").radialShrinkage(),
                wood.tangentialShrinkage(),
                Double.NaN,
                null,
                style);
    }

    /** Of strips side by side, each with its own shrinkage: as much as the same width of their mean. */
    static SizeChange of(Moistures moistures, double size, List<Strip> strips, List<Double> edges, LengthStyle style) {
        double radial = 0;
        double tangential = 0;
        double all = 0;
        for (int i = 0; i < strips.size(); i++) {
            double width = Math.min(size / 2, edges.get(i + 1)) - Math.max(-size / 2, edges.get(i));
            double share = Math.max(0, width);
            radial += share * strips.get(i).wood().radialShrinkage();
            tangential += share * strips.get(i).wood().tangentialShrinkage();
            all += share;
        }
        Wood middle = strips.get(strips.size() / 2).wood();
        return new SizeChange(moistures, size, middle, radial / all, tangential / all, Double.NaN, null, style);
    }

    /** {@return the change for a quartersawn piece: rings upright, across the size, so that it moves as the rays do} */
    public SizeChange quartersawn() {
        return withRings(Math.PI / 2);
    }

    /** {@return the change for a flatsawn piece: rings along the size; the change with the rings known} */
    public SizeChange flatsawn() {
        return withRings(0);
    }

    /**
     * {@return the change for rings at an angle; the change with the rings known}
     *
     * @param angle from the direction of the size to the rings, from 0 deg (flatsawn) to 90 deg (quartersawn), both
     *     belong
     * @throws IllegalArgumentException if the angle is out of its range
     */
    public SizeChange ringsAt(Quantity<Angle> angle) {
        double rad = LibraryUnits.rad(angle, "ring angle");
        if (!(rad >= 0 && rad <= Math.PI / 2)) {
            throw LibraryUnits.refused("ring angle", "range", "between 0 and 90 deg", angle);
        }
        return withRings(rad);
    }

    private SizeChange withRings(double rad) {
        return new SizeChange(moistures, size, wood, radial, tangential, rad, air, style());
    }

    /**
     * {@return the change that is done once the air has reached the wood so far; else it is the one at the end}
     *
     * @param reached how far: thickness and days
     */
    public SizeChange after(AirInWood reached) {
        Objects.requireNonNull(reached, "reached");
        return new SizeChange(moistures, size, wood, radial, tangential, ringAngle, reached, style());
    }

    private Optional<AirInWood> air() {
        return Optional.ofNullable(air);
    }

    private Moistures moistures() {
        return air == null ? moistures : moistures.done(air.shareDone());
    }

    private boolean ringsKnown() {
        return !Double.isNaN(ringAngle);
    }

    private double changeFor(double shrinkage, Moistures reached) {
        double share = changeOf(shrinkage, reached.before(), reached.after());
        return size * share + 0.0;
    }

    /** {@return the size before; more than 0} */
    public Amount<Length> before() {
        return style().amount(size);
    }

    /** {@return the change, negative when it shrinks; half way between radial and tangential for unknown rings} */
    public Amount<Length> change() {
        return style().amount(changeMm());
    }

    /** {@return the change, negative when the size shrinks; the change in mm} */
    public double changeMm() {
        double shrinkage = ringsKnown() ? shrinkageAcross(radial, tangential, ringAngle) : (radial + tangential) / 2;
        return changeFor(shrinkage, moistures());
    }

    /** {@return the 95 % interval of the change over pieces} */
    public Interval<Length> interval() {
        return likely().interval();
    }

    Likely<Length> likely() {
        double least = Math.min(radial, tangential);
        double most = Math.max(radial, tangential);
        if (ringsKnown()) {
            least = shrinkageAcross(radial, tangential, ringAngle);
            most = least;
        }
        double spread = ModulusSpread.K95 * SHRINKAGE_VARIATION;
        Moistures few = air == null ? moistures : moistures.done(air.leastDone());
        Moistures many = air == null ? moistures : moistures.done(air.mostDone());
        return new Likely<>(
                changeMm(), changeFor(least * (1 - spread), few), changeFor(most * (1 + spread), many), style().unit());
    }

    /** {@return the size after; the size before plus the change} */
    public Amount<Length> after() {
        return style().amount(size + changeMm());
    }

    /**
     * Returns the change from one moisture to another as a share of the size at the first.
     *
     * <p>{@code S (M2 - M1)/30 / (1 - S (30 - M1)/30)}: Wood Handbook (2010) Eq. 13-3. Exactly undone by going back,
     * which {@code C (M2 - M1)} is not. Estimate: straight line from 0 to 30 % moisture.
     *
     * @param shrinkage S, green to ovendry, a ratio of the green size
     * @param fromPercent M1, moisture in percent
     * @param toPercent M2, moisture in percent
     */
    static double changeOf(double shrinkage, double fromPercent, double toPercent) {
        double from = Math.min(fromPercent, FIBRE_SATURATION);
        double to = Math.min(toPercent, FIBRE_SATURATION);
        // Not the ratio of two sizes less 1: a small change would lose its digits.
        return shrinkage * (to - from) / (FIBRE_SATURATION - shrinkage * (FIBRE_SATURATION - from));
    }

    /**
     * Returns the shrinkage in a direction across the grain: {@code ST cos^2 phi + SR sin^2 phi}. Estimate: the two are
     * principal strains, rings flat over the piece.
     *
     * @param radial SR, a ratio
     * @param tangential ST, a ratio
     * @param ringAngle phi, from the direction measured to the growth rings, rad: 0 where the rings lie along it
     */
    static double shrinkageAcross(double radial, double tangential, double ringAngle) {
        double c = StrictMath.cos(ringAngle);
        double s = StrictMath.sin(ringAngle);
        return tangential * c * c + radial * s * s;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {moistures, size, wood, radial, tangential, ringAngle, air()};
    }
}
