package org.neckgeom.strength;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The balance of an instrument on its strap or on a knee: where its weights balance, and how hard the hand under the neck holds
 * it up (neck dive). Immutable.
 *
 * <p>Weights w at stations x from the nut, positive toward the body; s the place that carries, h the hand's:
 *
 * <pre>
 * balance point   sum w x / sum w
 * at the hand     sum w (s - x) / (s - h)        positive: the head sinks
 * </pre>
 *
 * Exact: moments about the place that carries, all weights level with it. A change is asked with the changed weights alone.
 */
public final class Balance extends ValueAnswer {

    private record Part(String name, double newton, double station) {
        private static final Form<Part> FORM = Form.<Part>of("balance-part")
                .fact("name", Kind.NAME, "of the part", Part::name)
                .fact("weight", Kind.libraryValue(ShopUnit.NEWTON), "of the part", Part::newton)
                .fact("station", Kind.MM, "from the nut, negative in the head", Part::station);
    }

    private static final Form<Balance> FORM = Form.<Balance>of("balance")
            .fact("weight", Kind.libraryValue(ShopUnit.NEWTON), "of all parts", Balance::newton)
            .fact("point", Kind.MM, "balance point, from the nut", Balance::pointMm)
            .fact("parts", Kind.table(Part.FORM), "as given", b -> b.all)
            .finds("balance", "Balance point {point:text} from the nut, {weight:2} in all")
            .each("parts", "{name}", "{weight:2} at {station:brief}", 8, "and {more} more");

    private final List<Part> all;

    private Balance(List<Part> all, LengthStyle style) {
        super(FORM, style);
        this.all = all;
    }

    /**
     * {@return the balance of one part, to be followed by others}
     *
     * @param name of the part
     * @param weight of it, more than 0
     * @param station of its own balance point from the nut, negative in the head
     */
    public static Balance of(String name, Quantity<Force> weight, Quantity<Length> station) {
        return new Balance(List.of(part(name, weight, station)), LengthStyle.of(station));
    }

    /**
     * {@return this balance with one more part}
     *
     * @param name of the part, not yet given
     * @param weight of it, more than 0
     * @param station of its own balance point from the nut, negative in the head
     */
    public Balance with(String name, Quantity<Force> weight, Quantity<Length> station) {
        List<Part> more = new ArrayList<>(all);
        Part added = part(name, weight, station);
        if (all.stream().anyMatch(one -> one.name.equals(added.name))) {
            throw Refusal.of("part", "distinct", "have a name of its own", "\"" + name + "\"");
        }
        more.add(added);
        return new Balance(List.copyOf(more), style());
    }

    private static Part part(String name, Quantity<Force> weight, Quantity<Length> station) {
        return new Part(
                Words.name(name, "a part's name"),
                LibraryUnits.positive(weight, ShopUnit.NEWTON, "weight"),
                LibraryUnits.mm(station, "station"));
    }

    /** {@return the balance point, from the nut} */
    public Amount<Length> point() {
        return style().amount(pointMm());
    }

    /** {@return the weight of all parts} */
    public Amount<Force> weight() {
        return Amount.ofLibrary(newton(), ShopUnit.NEWTON);
    }

    /**
     * {@return what the hand under the neck holds up; positive: the head sinks, negative: the body does}
     *
     * @param carried station of the strap's line or the knee, from the nut
     * @param hand station of the hand, from the nut
     * @throws ArithmeticException if the hand is where the instrument is carried
     */
    public Amount<Force> atHand(Quantity<Length> carried, Quantity<Length> hand) {
        double strap = LibraryUnits.mm(carried, "carried at");
        double arm = strap - LibraryUnits.mm(hand, "hand");
        if (arm == 0) {
            throw NoAnswer.because(
                    "hand", "no-arm", "the hand is where the instrument is carried: it has no lever arm");
        }
        double moment =
                all.stream().mapToDouble(p -> p.newton * (strap - p.station)).sum();
        return Amount.ofLibrary(moment / arm + 0.0, ShopUnit.NEWTON);
    }

    private double newton() {
        return all.stream().mapToDouble(Part::newton).sum();
    }

    private double pointMm() {
        return all.stream().mapToDouble(p -> p.newton * p.station).sum() / newton() + 0.0;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {all};
    }
}
