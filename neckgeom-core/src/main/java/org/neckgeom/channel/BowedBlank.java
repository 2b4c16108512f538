package org.neckgeom.channel;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.DoubleStream;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * A bowed (cupped lengthwise) neck blank on the table, glue face down and hollow: how far the face lifts over the cutter, how
 * much shallower the channel becomes, and the push that closes the hollow. Immutable.
 *
 * <p>The face is a parabola of hollow h over the length L. At s from the head end, the cutter in the middle of a table of length
 * T, it bears at {@code a = max(0, s - T/2)} and {@code b = min(L, s + T/2)}:
 *
 * <pre>
 * lift  4 h (s - a)(b - s)/L^2        h in the middle of a long table; h (T/L)^2 on a shorter one
 * push  48 E I h (T/L)^2/T^3          in the middle of the table, T no more than L; I = W t^3/12
 * </pre>
 *
 * Geometry exact for such a face; the push is an estimate, a beam on two supports. Pressed flat, the depth is right from the
 * face; it springs back with the blank. Face down and hollow up the blank rocks on its middle: that is refused.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class BowedBlank extends ValueAnswer {

    private record Place(double station, double lift) {
        private static final Form<Place> FORM = Form.<Place>of("bowed-blank-place")
                .fact("station", Kind.MM, "from the nut, positive toward the body", Place::station)
                .fact("lift", Kind.MM, "how much too shallow the channel is", Place::lift)
                .phrase("place", place -> place.station == 0, "at the nut")
                .phrase("place", "at {station:brief}");
    }

    private static final Form<BowedBlank> FORM = Form.<BowedBlank>of("bowed-blank")
            .fact("hollow", Kind.MM, "of the glue face over the blank's length", b -> b.hollow)
            .fact("table", Kind.MM, "its length along the fence; the blank's where it is longer", BowedBlank::tableMm)
            .fact("lift", Kind.MM, "of the face over the cutter at most", b -> b.liftMm(b.blank.lengthMm() / 2))
            .fact("places", Kind.table(Place.FORM), "along the blank", BowedBlank::places)
            .factIfAny("push", Kind.AMOUNT, "that closes the hollow; estimate", BowedBlank::push)
            .findsOnly("flat", b -> b.hollow == 0, "Blank flat on the table: the channel's depth is as set")
            .finds("bowed", "Blank hollow by {hollow:text}, face down: channel up to {lift:text} too shallow")
            .each("places", "{place}", "{lift:text} too shallow")
            .line("push", "push that closes it", b -> b.wood != null, "about {push} over the cutter (estimate)")
            .note("press", "press it flat over the cutter line with pads, else plane the face flat first");

    private final Blank blank;
    private final double hollow;
    private final double table;
    private final @Nullable Wood wood;

    private BowedBlank(Blank blank, double hollow, double table, @Nullable Wood wood) {
        super(FORM, blank.style());
        this.blank = blank;
        this.hollow = hollow;
        this.table = table;
        this.wood = wood;
    }

    /**
     * {@return a blank with its hollow face down, on a table longer than it is}
     *
     * @param blank the blank
     * @param hollow greatest gap between its glue face and a straightedge over its length, 0 or more; a face that is high in its
     *     middle rocks on the table and has no depth that can be foreseen: it is refused
     */
    public static BowedBlank of(Blank blank, Quantity<Length> hollow) {
        double mm = LibraryUnits.mm(hollow, "hollow");
        if (!(mm >= 0)) {
            throw LibraryUnits.refused(
                    "hollow",
                    "at-least",
                    "0 mm or more (a face high in its middle rocks and no depth can be foreseen: plane it flat first)",
                    hollow);
        }
        double most = Objects.requireNonNull(blank, "blank").lengthMm() / 10;
        if (!(mm <= most)) {
            throw LibraryUnits.refused(
                    "hollow",
                    "at-most",
                    "no more than a tenth of the blank's length, "
                            + blank.style().brief(most),
                    hollow);
        }
        return new BowedBlank(blank, mm, Double.POSITIVE_INFINITY, null);
    }

    /**
     * {@return a copy on a table with the cutter in its middle}
     *
     * @param length of the table along the fence, more than 0
     */
    public BowedBlank table(Quantity<Length> length) {
        return new BowedBlank(blank, hollow, LibraryUnits.mmPositive(length, "table's length"), wood);
    }

    /**
     * {@return a copy of a wood, so that the push is known}
     *
     * @param kind with its modulus of elasticity
     */
    public BowedBlank wood(Wood kind) {
        Objects.requireNonNull(kind, "wood").modulusMPa();
        return new BowedBlank(blank, hollow, table, kind);
    }

    /**
     * {@return how far the face lifts over the cutter: so much shallower is the channel there; 0 or more}
     *
     * @param station from the nut, on the blank
     */
    public Amount<Length> liftAt(Quantity<Length> station) {
        double s = LibraryUnits.mm(station, "station") + blank.nutFromHeadEndMm();
        if (!(s >= 0 && s <= blank.lengthMm())) {
            throw LibraryUnits.refused(
                    "station",
                    "range",
                    "on the blank, from " + style().brief(-blank.nutFromHeadEndMm()) + " to "
                            + style().brief(blank.lengthMm() - blank.nutFromHeadEndMm()),
                    station);
        }
        return style().amount(liftMm(s));
    }

    /** {@return the push over the cutter that closes the hollow on the table; nothing without a wood; estimate} */
    public Optional<Amount<Force>> push() {
        return Optional.ofNullable(wood).map(kind -> {
            double inertia = blank.widthMm() * cube(blank.thicknessMm()) / 12;
            double share = tableMm() / blank.lengthMm();
            double newton = 48 * kind.modulusMPa() * inertia * hollow * share * share / cube(tableMm());
            return Amount.ofLibrary(newton, ShopUnit.NEWTON);
        });
    }

    private static double cube(double a) {
        return a * a * a;
    }

    private double tableMm() {
        return Math.min(table, blank.lengthMm());
    }

    /** At s from the head end. */
    private double liftMm(double s) {
        double from = Math.max(0, s - table / 2);
        double to = Math.min(blank.lengthMm(), s + table / 2);
        return 4 * hollow * (s - from) * (to - s) / (blank.lengthMm() * blank.lengthMm());
    }

    private List<Place> places() {
        double length = blank.lengthMm();
        return DoubleStream.of(0, 0.25, 0.5, 0.75, 1)
                .map(share -> share * length)
                .mapToObj(s -> new Place(s - blank.nutFromHeadEndMm(), liftMm(s)))
                .toList();
    }

    @Override
    protected @Nullable Object[] parts() {
        return new @Nullable Object[] {blank, hollow, table, wood};
    }
}
