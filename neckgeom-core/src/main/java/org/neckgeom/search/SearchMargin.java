package org.neckgeom.search;

import java.util.Optional;
import javax.measure.Quantity;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Limits;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * How far a design of a {@link Search} is inside one of its limits, such as {@code wood under the channel: 4.8 mm, limit 3 mm
 * or more, room 1.8 mm}. Immutable.
 *
 * <p>The room is below 0 outside. Of a value with an error, the room is what the error leaves: 0 where a check is just OK.
 */
public final class SearchMargin extends ValueAnswer {

    static final Form<SearchMargin> FORM = Form.<SearchMargin>of("search-margin")
            .fact("limit", Kind.NAME, "its name, the code of a check", SearchMargin::limit)
            .fact("kept", Kind.FLAG, "whether it is kept", SearchMargin::isKept)
            .factIfAny("value", Kind.AMOUNT, "of the design", SearchMargin::value)
            .factIfAny("limits", Kind.LIMITS, "what is allowed", SearchMargin::limits)
            .factIfAny("room", Kind.AMOUNT, "how far inside; below 0 outside", SearchMargin::room)
            .phrase("standing", SearchMargin::isKept, "kept")
            .phrase("standing", "not kept")
            .phrase("measured", "{value}, limit {limits}, room {room}")
            .phrase("measured", "room {room}")
            .phrase("measured", "no figure")
            .phrase("state", "{standing}: {measured}")
            .finds("margin", "{limit}: {state}");

    private final String limit;
    private final Optional<Amount<?>> value;
    private final Optional<Limits<?>> limits;
    private final Optional<Amount<?>> room;
    private final boolean kept;

    private SearchMargin(
            String limit,
            Optional<Amount<?>> value,
            Optional<Limits<?>> limits,
            Optional<Amount<?>> room,
            boolean kept) {
        super(FORM, value.map(found -> LengthStyle.ofUnit(found.unit())).orElse(LengthStyle.MILLIMETRES));
        this.limit = limit;
        this.value = value;
        this.limits = limits;
        this.room = room;
        this.kept = kept;
    }

    /** A value against limits of its own kind. */
    static <Q extends Quantity<Q>> SearchMargin of(String limit, Amount<Q> value, Limits<Q> limits) {
        double found = value.libraryValue();
        double room = Math.min(found - limits.libraryLower(), limits.libraryUpper() - found);
        return of(limit, value, limits, room, limits.allowLibrary(found));
    }

    /** A value with limits, and the room by whoever decides; a check that is not kept has a room below 0. */
    static SearchMargin of(String limit, Amount<?> value, Limits<?> limits, double room, boolean kept) {
        return new SearchMargin(
                limit,
                Optional.of(value),
                Optional.of(limits),
                Optional.of(difference(signed(room, kept), limits.unit())),
                kept);
    }

    /** What is left of a value that has to be more than 0. */
    static SearchMargin left(String limit, Amount<?> left, boolean kept) {
        return new SearchMargin(
                limit,
                Optional.empty(),
                Optional.empty(),
                Optional.of(difference(signed(left.libraryValue(), kept), left.unit())),
                kept);
    }

    /** A limit that is kept or not, without a figure. */
    static SearchMargin of(String limit, boolean kept) {
        return new SearchMargin(limit, Optional.empty(), Optional.empty(), Optional.empty(), kept);
    }

    private static double signed(double room, boolean kept) {
        return kept ? Math.max(0, room) : Math.min(-Double.MIN_NORMAL, room);
    }

    static <Q extends Quantity<Q>> Amount<Q> difference(double library, ShopUnit<Q> unit) {
        return Amount.ofLibrary(library, unit.forDifferences());
    }

    /** {@return its name; the code of a check, such as {@code wood-left}} */
    public String limit() {
        return limit;
    }

    /** {@return whether it is kept; of a check: whether it is OK} */
    public boolean isKept() {
        return kept;
    }

    /** {@return the value of the design; nothing where there is no figure} */
    public Optional<Amount<?>> value() {
        return value;
    }

    /** {@return what is allowed; nothing where there is no figure} */
    public Optional<Limits<?>> limits() {
        return limits;
    }

    /** {@return how far inside, in the limit's unit; below 0 outside; nothing where there is no figure} */
    public Optional<Amount<?>> room() {
        return room;
    }

    double libraryRoom() {
        return room.map(Amount::libraryValue).orElse(Double.NaN);
    }

    /** One unit of the limit, by which it is eased; nothing: it can only be left out. */
    Optional<Amount<?>> easedBy() {
        return room.map(SearchMargin::one);
    }

    private static <Q extends Quantity<Q>> Amount<?> one(Amount<Q> like) {
        return Amount.of(1, like.unit());
    }

    double oneUnit() {
        return easedBy().map(Amount::libraryValue).orElse(Double.POSITIVE_INFINITY);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {limit, value, limits, room, kept};
    }
}
