package org.neckgeom.order;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.order.AddedError.Way;
import org.neckgeom.text.Names;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnits;

/**
 * A way to do an operation although a condition it needs is gone or something is in its way, such as a
 * {@code parallel spacer between shaft and fence}, and the error it adds. Immutable.
 *
 * <p>The ready-made remedies are common practice. Their sizes are Estimates from general trade figures, to be replaced by
 * what the shop measures: {@code Remedy.parallelSpacer().adding(ErrorDistribution.rectangular(mm(0.02)))}.
 */
public final class Remedy extends ValueAnswer {

    static final Form<Remedy> FORM = Form.<Remedy>of("remedy")
            .fact("name", Kind.NAME, "of the remedy", Remedy::name)
            .factIfAny("error", Kind.NAME, "name of the error it adds", r -> r.adds(Adds::errorName))
            .factIfAny("direction", Kind.code(Way.class), "that error works in", r -> r.adds(Adds::way))
            .factIfAny("spread", Kind.SPREAD, "of that error", r -> r.adds(Adds::spread))
            .finds("remedy", "{name}")
            .factIfAny("how", Kind.NAME, "it is done", Remedy::howIfAny)
            .line("how", "how", "{how}")
            .line("adds", "adds", "{error}, {direction}: {spread}")
            .line("adds", "adds", remedy -> remedy.adds == null, "error not given");

    private static final double PLANED_MM = 0.05;
    private static final double TABLE_MM = 0.10;
    private static final double TWO_LINES_BY_EYE_MM = 0.25;
    private static final double RULE_AND_EYE_MM = 0.5;

    private final String name;
    private final String how;
    private final @Nullable Adds adds;

    private Remedy(String name, String how, @Nullable Adds adds) {
        super(
                FORM,
                adds == null
                        ? LengthStyle.MILLIMETRES
                        : LengthStyle.ofUnit(adds.spread().unit()));
        this.name = name;
        this.how = how;
        this.adds = adds;
    }

    /** The error a remedy adds, for any operation. */
    private record Adds(String errorName, Way way, ErrorDistribution<Length> spread) {}

    private <V> Optional<V> adds(Function<Adds, V> part) {
        return Optional.ofNullable(adds).map(part);
    }

    /**
     * {@return a remedy of the maker's own; the error it adds is not given yet}
     *
     * @param name 1 to 50 characters, such as {@code clamping caul with a notch}
     */
    public static Remedy named(String name) {
        return new Remedy(Names.checked(name, "a remedy's name"), "", null);
    }

    /**
     * {@return the parallel spacer: wings or a wide head meet the fence before the shaft does, so a strip thicker than
     * they stand proud goes between shaft and fence}
     *
     * <p>Its full thickness error shifts the slot. Estimate: half-width 0.05 mm, as an edge is planed parallel (common
     * practice).
     */
    public static Remedy parallelSpacer() {
        return usual(
                "parallel spacer between shaft and fence",
                "thicker than the head stands proud; centre the cutter with the spacer in place",
                "spacer's thickness",
                Way.ACROSS,
                PLANED_MM);
    }

    /**
     * {@return the shim: a veneer under the head tips the blank, so a strip of the same height goes under the other
     * end}
     *
     * <p>Estimate: half-width of its height 0.05 mm, as a strip is planed (common practice).
     */
    public static Remedy shim() {
        return usual(
                "shim under the far end",
                "as high as the veneer stands proud, so that the face lies parallel to the table",
                "shim's height",
                Way.DEPTH,
                PLANED_MM);
    }

    /**
     * {@return the raised table: a flat board under the shaft only, thicker than what stands proud, with the head past
     * its end}
     *
     * <p>Estimate: flat and of one thickness, half-width 0.10 mm (common practice).
     */
    public static Remedy raisedTable() {
        return usual(
                "raised table under the shaft",
                "a flat board, thicker than the head stands proud, the head past its end; set the depth on it",
                "raised table's thickness",
                Way.DEPTH,
                TABLE_MM);
    }

    /**
     * {@return the carrier board: the neck is fixed to a straight board, its centreline laid to the board's own, and
     * the board's edge rides the fence}
     *
     * <p>Estimate: two lines laid on each other by eye, half-width 0.25 mm (common practice: the margin to which a
     * fingerboard is centred).
     */
    public static Remedy carrierBoard() {
        return usual(
                "straight carrier board",
                "centreline laid to the carrier's own; the carrier's edge rides the fence",
                "centreline laid to the carrier's",
                Way.ACROSS,
                TWO_LINES_BY_EYE_MM);
    }

    /**
     * {@return the plunge router between rails: the neck stays where it is, heel hanging free, and two rails laid to
     * the centreline guide the router}
     *
     * <p>Estimate: rails laid by eye, half-width 0.25 mm, as for {@link #carrierBoard}.
     */
    public static Remedy plungeRouterBetweenRails() {
        return usual(
                "plunge router between rails",
                "rails parallel to the centreline, neck clamped, heel hanging free",
                "rails laid to the centreline",
                Way.ACROSS,
                TWO_LINES_BY_EYE_MM);
    }

    /**
     * {@return the cradle: a block hollowed to the back holds a neck that can no longer lie on it}
     *
     * <p>Estimate: laid in by rule and eye, half-width 0.5 mm (common practice).
     */
    public static Remedy cradle() {
        return usual(
                "cradle hollowed to the back",
                "centreline laid to the cradle's own, the face level",
                "centreline laid to the cradle's",
                Way.ACROSS,
                RULE_AND_EYE_MM);
    }

    private static Remedy usual(String name, String how, String errorName, Way way, double halfWidthMm) {
        Quantity<Length> halfWidth = ShopUnits.mm(halfWidthMm);
        return new Remedy(name, how, new Adds(errorName, way, ErrorDistribution.rectangular(halfWidth)));
    }

    /**
     * {@return this remedy with how it is done}
     *
     * @param words one short sentence of 1 to 100 characters
     */
    public Remedy how(String words) {
        return new Remedy(name, Names.sentence(words, "how a remedy is done"), adds);
    }

    /**
     * {@return this remedy with the error it adds}
     *
     * @param name what the error is of, 1 to 50 characters
     * @param direction the direction it works in
     * @param size how it spreads
     */
    public Remedy adding(String name, Way direction, ErrorDistribution<Length> size) {
        Objects.requireNonNull(direction, "way");
        Objects.requireNonNull(size, "spread");
        return new Remedy(this.name, how, new Adds(Names.checked(name, "an added error's name"), direction, size));
    }

    /**
     * {@return this remedy with another size of the error it adds, as the shop has measured it}
     *
     * @param size how it spreads
     * @throws IllegalArgumentException if the remedy adds no error yet: then name it
     */
    public Remedy adding(ErrorDistribution<Length> size) {
        if (adds == null) {
            throw Refusal.because(
                    "error",
                    "missing",
                    "remedy \"" + name
                            + "\" must have its error named first: add .adding(\"...\", AddedError.Way.ACROSS, spread)");
        }
        return adding(adds.errorName(), adds.way(), size);
    }

    /** {@return the name} */
    public String name() {
        return name;
    }

    /** {@return how it is done; empty if not given} */
    public String how() {
        return how;
    }

    Optional<String> howIfAny() {
        return Optional.of(how).filter(words -> !words.isEmpty());
    }

    /**
     * {@return what the remedy adds to the budget of an operation; the error, or nothing if the remedy adds none}
     *
     * @param operation the operation's name
     */
    public Optional<AddedError> addsTo(String operation) {
        return adds(error -> new AddedError(error.errorName(), error.way(), operation, error.spread()));
    }

    @Override
    protected Object[] parts() {
        return new Object[] {name, how, Optional.ofNullable(adds)};
    }
}
