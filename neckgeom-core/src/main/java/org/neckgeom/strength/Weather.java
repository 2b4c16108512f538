package org.neckgeom.strength;

import java.util.Objects;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.neck.Neck;
import org.neckgeom.stock.Wood;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * A change of air and its effect on wood across the grain: {@code Weather.from(percent(45),
 * celsius(21)).to(percent(25), celsius(21)).across(mm(46), Wood.INDIAN_ROSEWOOD)} gives -0.21 mm (95 %: -0.38 to -0.09
 * mm).
 *
 * <p>A change of size is negative when the wood shrinks; {@link #moistureChange} is negative when it dries. Humidity is
 * in percent, temperature in any unit; see {@link Climate} for their ranges.
 *
 * <p>Estimate: bare wood at its equilibrium moisture content before and after, with linear swelling and shrinkage from
 * 0 to 30 % moisture (Wood Handbook, FPL-GTR-190, 2010, Eq. 13-3). A finish slows the change; glue lines and frets
 * restrain it. Errors: a climate outside its range, or a wood without shrinkage, throws {@link
 * org.neckgeom.fault.Refusal} (an {@code IllegalArgumentException}). Immutable.
 *
 * @see SizeChange
 * @see FretSprout
 */
public final class Weather extends Noun<Weather> {

    /** Its keys. */
    public static final Table<Weather> TABLE =
            Table.of("", "a change of weather", Weather::new).printedBy(Weather::sentences);

    private static final Key<Weather, Climate> BEFORE =
            TABLE.needed("shop air", Types.group(Climate.TABLE), "air in the shop");
    private static final Key<Weather, Climate> AFTER =
            TABLE.needed("worst air", Types.group(Climate.TABLE), "air that differs most from the shop air, in use");

    private static final Key<Weather, Double> DAYS = TABLE.optional(
            "days", Types.number(0, 36_525), "days in the worst air. Default: until the wood is in balance with it");

    private Weather(Values<Weather> values) {
        super(values);
    }

    /**
     * {@return the weather that keeps a climate as it is; {@link #to} makes it a change}
     *
     * @param humidity relative humidity, 0 % or more and less than 100 %
     * @param temperature between -20 and 100 degrees Celsius
     */
    public static Weather from(Quantity<Dimensionless> humidity, Quantity<Temperature> temperature) {
        Climate climate = Climate.of(humidity, temperature);
        return between(climate, climate);
    }

    /**
     * {@return the change from this weather's first climate to another}
     *
     * @param humidity relative humidity afterwards, 0 % or more and less than 100 %
     * @param temperature afterwards, between -20 and 100 degrees Celsius
     */
    public Weather to(Quantity<Dimensionless> humidity, Quantity<Temperature> temperature) {
        return between(before(), Climate.of(humidity, temperature));
    }

    /**
     * {@return the change from one climate to another}
     *
     * @param before the climate before
     * @param after the climate after
     */
    public static Weather between(Climate before, Climate after) {
        return new Weather(TABLE.values().with(BEFORE, before).with(AFTER, after));
    }

    /** {@return the climate before} */
    public Climate before() {
        return values().at(BEFORE);
    }

    /** {@return the climate after} */
    public Climate after() {
        return values().at(AFTER);
    }

    /**
     * {@return the same change after some days in the other climate, before the wood is in balance} {@link #on} then takes the
     * share of the change that fingerboard and neck have done; a size alone has no thickness: {@link SizeChange#after}.
     *
     * @param days in the other climate, from 0 to 36,525
     */
    public Weather days(double days) {
        return new Weather(values().with(DAYS, days));
    }

    /** {@return the days in the other climate; nothing where the wood comes to balance} */
    public OptionalDouble days() {
        return values().find(DAYS).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    /** {@return the change of the wood's moisture at balance in percent of the ovendry mass, negative when it dries} */
    public Amount<Dimensionless> moistureChange() {
        return Amount.of(moistures().change(), ShopUnit.PERCENT);
    }

    private Moistures moistures() {
        return new Moistures(before().moisturePercent(), after().moisturePercent());
    }

    /**
     * {@return what happens to a size across the grain; the change of size} The direction of the growth rings is not
     * known until it is given to the answer: {@link SizeChange#quartersawn()}, {@link SizeChange#flatsawn()}, {@link
     * SizeChange#ringsAt(Quantity)}.
     *
     * @param size before, more than 0
     * @param wood a wood with shrinkage, or coefficients of change
     * @throws IllegalArgumentException if the wood has neither
     */
    public SizeChange across(Quantity<Length> size, Wood wood) {
        return SizeChange.of(moistures(), LibraryUnits.mmPositive(size, "size"), wood, LengthStyle.of(size));
    }

    /**
     * {@return the fret ends, which keep their length, against the edges of a fingerboard}
     *
     * @param boardWidth width when the fret ends were dressed flush, more than 0
     * @param wood of the fingerboard
     */
    public FretSprout fretEnds(Quantity<Length> boardWidth, Wood wood) {
        LibraryUnits.mmPositive(boardWidth, "board width");
        return new FretSprout(across(boardWidth, wood));
    }

    /**
     * {@return how the rod fits its channel before and after}
     *
     * @param slot width of the channel before, more than 0
     * @param rod width of the rod, more than 0
     * @param wood of the neck
     */
    public SlotFit slotFit(Quantity<Length> slot, Quantity<Length> rod, Wood wood) {
        LibraryUnits.mmPositive(slot, "slot width");
        return new SlotFit(across(slot, wood), LibraryUnits.mmPositive(rod, "rod width"));
    }

    /**
     * {@return how far a centred slot lies off, the test piece read before and the blank cut after}
     *
     * @param width of test piece and blank before, more than 0
     * @param wood of both
     */
    public ReadingDrift readOnDifferentDays(Quantity<Length> width, Wood wood) {
        LibraryUnits.mmPositive(width, "width");
        return new ReadingDrift(across(width, wood));
    }

    /**
     * {@return its effect on a neck: fret ends, width, rod in its channel, relief}
     *
     * @param neck with scale, fingerboard and its wood, and wood
     */
    public NeckWeather on(Neck neck) {
        return new NeckWeather(moistures(), days(), Objects.requireNonNull(neck, "neck"), StiffnessReadings.none());
    }

    /**
     * {@return its effect on a neck whose effect of another air is known, with the same readings; its bends are worked out once
     * for both}
     *
     * @param other the effect of the other air
     */
    public NeckWeather on(NeckWeather other) {
        return Objects.requireNonNull(other, "other").in(moistures(), days());
    }

    private static Form<Weather> sentences() {
        return TABLE.facts("weather")
                .fact("moistureChange", Kind.AMOUNT, "of the wood; negative: it dries", Weather::moistureChange)
                .finds("dries", weather -> weather.moistures().change() < 0, "Weather: wood dries")
                .finds("takes-up-water", weather -> weather.moistures().change() > 0, "Weather: wood takes up water")
                .finds("no-change", "Weather: wood stays as it is")
                .line("before", "before", "{shopAir}")
                .line("after", "after", "{worstAir}")
                .line("days", "days", "{days:..1} in it")
                .line("moistureChange", "change", "{moistureChange:1} moisture")
                .note("estimate", "Estimate (Wood Handbook 2010, Eq. 4-5): balance before and after, bare wood.");
    }
}
