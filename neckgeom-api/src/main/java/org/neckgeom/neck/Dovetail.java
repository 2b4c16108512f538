package org.neckgeom.neck;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Unfinished;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/**
 * A dovetail joint of the heel: two sides that come together by a taper, such as 3 deg a side: 0.1 mm of shim lifts it 1.9
 * mm. Immutable.
 *
 * <p>Shims are measured square to the sides, equal on both. The taper (draft) is the angle of each side from the insertion
 * direction. {@code rise = shim / sin(taper)}. Exact. Wood planed off a side lowers the seat by as much.
 *
 * <p>Optional: length past the shoulder, widths at the glue face (wider at the end than at the shoulder, by the flare that
 * holds it in), and height. With flare f on each side, {@code tan f = (end - shoulder) / 2 / length}, the sides close in on
 * the end face by {@code tan(taper) / cos f} of the height.
 */
public final class Dovetail extends Noun<Dovetail> implements HeelJoint {

    /** Its keys. */
    public static final Table<Dovetail> TABLE =
            Table.of("dovetail", "a dovetail", Dovetail::new).printedBy(Dovetail::sentences);

    private static final Key<Dovetail, Amount<Angle>> TAPER = TABLE.needed(
            "taper",
            Types.ANGLE.moreThan(ShopUnits.deg(0)).atMost(ShopUnits.deg(30)),
            "draft angle of each side from the insertion direction");
    private static final Key<Dovetail, Amount<Length>> LENGTH = TABLE.optional(
            "length",
            Types.SIZE,
            "length of the dovetail past the shoulder, into the body. Default: not counted in the blank");
    private static final Key<Dovetail, Amount<Length>> AT_END = TABLE.optional(
                    "width at end",
                    Types.SIZE,
                    "width of the far end at the glue face. Default: no template of the dovetail")
            .called("dovetail width at its end");
    private static final Key<Dovetail, Amount<Length>> AT_SHOULDER = TABLE.optional(
                    "width at shoulder",
                    Types.SIZE,
                    "width at the shoulder at the glue face, where the dovetail is narrower")
            .called("dovetail width at the shoulder");
    private static final Key<Dovetail, Amount<Length>> HEIGHT =
            TABLE.optional("height", Types.SIZE, "height from the glue face to the lower end of the dovetail");

    static {
        TABLE.together(AT_END, AT_SHOULDER, HEIGHT);
    }

    private static final Amount<Length> METRIC_SHIM = Amount.of(0.1, ShopUnit.MILLIMETRE);
    private static final Amount<Length> INCH_SHIM = Amount.of(4, ShopUnit.THOU);

    private Dovetail(Values<Dovetail> values) {
        super(values);
        if (values.has(HEIGHT)) {
            refuseSize();
        }
    }

    private void refuseSize() {
        if (!values().has(LENGTH)) {
            throw Refusal.because(
                    LENGTH.name(), "missing", "the dovetail's widths are given, but not its length; give both");
        }
        double narrow = values().libraryValue(AT_SHOULDER);
        if (!(values().libraryValue(AT_END) > narrow)) {
            throw values().refused(
                            AT_END,
                            "more-than",
                            "be more than the " + style().brief(narrow) + " at the shoulder",
                            values().at(AT_END));
        }
        double closesIn = closesInMm();
        if (!(closesIn * 2 < narrow)) {
            double meet = values().libraryValue(HEIGHT) * narrow / (2 * closesIn);
            throw values().refused(
                            HEIGHT,
                            "less-than",
                            "be less than " + style().brief(meet) + ", where its sides meet at the shoulder",
                            values().at(HEIGHT));
        }
    }

    /**
     * {@return a dovetail of which only the taper is known}
     *
     * @param perSide taper of each side, more than 0, up to 30 deg
     */
    public static Dovetail tapered(Quantity<Angle> perSide) {
        return new Dovetail(TABLE.values().amount(TAPER, perSide));
    }

    /**
     * {@return this dovetail with its length}
     *
     * @param pastTheShoulder how far it reaches into the body, more than 0
     */
    public Dovetail length(Quantity<Length> pastTheShoulder) {
        return new Dovetail(values().amount(LENGTH, pastTheShoulder));
    }

    /**
     * Begins this dovetail's size with its widths at the glue face.
     *
     * @param end width of its far end
     * @param shoulder width at the shoulder, more than 0 and less than the end's: it could be drawn out else
     * @return the widths, to be followed by {@code height}
     */
    public NeedsHeight widths(Quantity<Length> end, Quantity<Length> shoulder) {
        return new NeedsHeight(values().amount(AT_END, end).amount(AT_SHOULDER, shoulder));
    }

    /** A dovetail with its widths, without its height yet. Immutable. */
    public static final class NeedsHeight extends Unfinished<Dovetail> {

        private NeedsHeight(Values<Dovetail> values) {
            super(values, "Dovetail, height not given yet");
        }

        /**
         * Adds the height.
         *
         * @param high from the glue face down, so that the end face has some width left at the bottom
         * @return the dovetail
         * @throws IllegalArgumentException if its length was not given before, or the sides would meet
         */
        public Dovetail height(Quantity<Length> high) {
            return new Dovetail(values().amount(HEIGHT, high));
        }
    }

    /**
     * {@return how much higher the neck seats with a shim on each side, with the shim's sign}
     *
     * @param perSide thickness of each shim; negative for wood taken off
     */
    public Amount<Length> riseFrom(Quantity<Length> perSide) {
        return LengthStyle.of(perSide).amount(LibraryUnits.mm(perSide, "shim") / StrictMath.sin(taperRad()));
    }

    /**
     * {@return the shim on each side that lifts the seat by a height; negative for wood to take off}
     *
     * @param rise wanted; negative to let the neck down
     */
    public Amount<Length> shimFor(Quantity<Length> rise) {
        return LengthStyle.of(rise).amount(LibraryUnits.mm(rise, "rise") * StrictMath.sin(taperRad()));
    }

    /** {@return the taper of each side} */
    public Amount<Angle> taper() {
        return values().at(TAPER);
    }

    private double taperRad() {
        return values().libraryValue(TAPER);
    }

    @Override
    public Optional<Amount<Length>> pastShoulder() {
        return values().find(LENGTH);
    }

    /** {@return its width at its end, at the glue face; nothing when its size was not given} */
    public Optional<Amount<Length>> widthAtEnd() {
        return values().find(AT_END);
    }

    /** {@return its width at the shoulder, at the glue face; nothing when its size was not given} */
    public Optional<Amount<Length>> widthAtShoulder() {
        return values().find(AT_SHOULDER);
    }

    @Override
    public Optional<Amount<Length>> below() {
        return values().find(HEIGHT);
    }

    /**
     * {@return how much each side comes in from the glue face to the lower end, across the neck: {@code height
     * tan(taper) / cos f}, f the flare; nothing when its size was not given}
     */
    public Optional<Amount<Length>> closesIn() {
        return below().map(height -> style().amount(closesInMm()));
    }

    private double closesInMm() {
        double flare = (values().libraryValue(AT_END, Double.NaN) - values().libraryValue(AT_SHOULDER, Double.NaN))
                / 2
                / values().libraryValue(LENGTH, Double.NaN);
        // The taper is the angle between side and way home; the end face cuts the side aslant of that by the flare.
        return values().libraryValue(HEIGHT, Double.NaN)
                * StrictMath.tan(taperRad())
                * StrictMath.sqrt(1 + flare * flare);
    }

    private static Form<Dovetail> sentences() {
        return TABLE.facts("dovetail-seat")
                .fact("lowerEndWidth", Kind.MM, "at its lower end", d -> d.below(AT_END))
                .fact("lowerShoulderWidth", Kind.MM, "at its lower end", d -> d.below(AT_SHOULDER))
                .fact("shim", Kind.AMOUNT, "on each side, as an example", (d, style) -> shim(style))
                .fact(
                        "rise",
                        Kind.MM,
                        "of the neck by that shim",
                        (d, style) -> shim(style).libraryValue() / StrictMath.sin(d.taperRad()))
                .phrase("long", ", {length:brief} long")
                .finds("dovetail", "Dovetail, {taper:2} a side{long}")
                .line(
                        "atGlueFace",
                        "at the glue face",
                        "{widthAtEnd:brief} wide at its end, {widthAtShoulder:brief} at the shoulder")
                .line(
                        "atLowerEnd",
                        "{height:brief} below it",
                        "{lowerEndWidth:brief} wide at its end, {lowerShoulderWidth:brief} at the shoulder")
                .line("rise", "{shim:fine} each side", "lifts the neck {rise:text}");
    }

    private double below(Key<Dovetail, Amount<Length>> width) {
        return values().libraryValue(width, Double.NaN) - 2 * closesInMm();
    }

    private static Amount<Length> shim(LengthStyle style) {
        return style == LengthStyle.MILLIMETRES ? METRIC_SHIM : INCH_SHIM;
    }
}
