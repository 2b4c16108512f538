package org.neckgeom.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The error of a jig across the neck, found by turning it over about the channel (turn-over check): the same for every neck made
 * on it. Immutable.
 *
 * <p>A line is cut or scribed, the jig turned over with its key in the same channel, a second line scribed. The jig is off by half
 * their distance, the true line is midway, {@code u = u_line/sqrt 2}. At one station that is a shift; at two, x1 and x2 with half
 * distances d1 and d2, it is {@code (d1 + d2)/2} midway and turns by {@code (d2 - d1)/(x2 - x1)}: those two are independent.
 * Exact; the play between the two scribings is in the lines' uncertainty.
 *
 * @see NeckErrors#sideTaperOn(JigError, org.neckgeom.channel.JigPlay)
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class JigError extends ValueAnswer {

    /** Standard uncertainty of a scribed line's place, in mm: a default, common practice. */
    public static final double DEFAULT_LINE_MM = 0.05;

    private static final Form<JigError> FORM = Form.<JigError>of("jig-error")
            .fact("name", Kind.NAME, "of the jig", e -> e.name)
            .fact("shift", Kind.MM, "at the station; positive: toward the treble side", e -> e.shift)
            .fact("station", Kind.MM, "midway between the stations that were read", e -> e.station)
            .fact("skew", Kind.RAD, "positive: toward the treble side at the body", e -> e.skew)
            .factIfAny("uncertainty", Kind.AMOUNT, "standard uncertainty of the shift", JigError::ofTheShift)
            .phrase("side", e -> e.shift > 0, " toward the treble side")
            .phrase("side", e -> e.shift < 0, " toward the bass side")
            .finds(
                    "assumed",
                    e -> e.skewSpread == null && !e.isRead,
                    "{name}: not turned over yet, u {uncertainty:small}")
            .finds("off", "{name} off by {shift:size small}{side}, u {uncertainty:small}, at {station:brief}")
            .line("skew", "turned by", e -> e.skewSpread != null, "{skew:3}")
            .note("common", "every neck made on it has this same error: their scatter does not show it");

    private final String name;
    private final boolean isRead;
    private final double shift;
    private final double station;
    private final double skew;
    private final ErrorDistribution<Length> shiftSpread;
    private final @Nullable ErrorDistribution<Angle> skewSpread;

    private JigError(
            String name,
            boolean isRead,
            double shift,
            double station,
            double skew,
            ErrorDistribution<Length> shiftSpread,
            @Nullable ErrorDistribution<Angle> skewSpread,
            LengthStyle style) {
        super(FORM, style);
        this.name = name;
        this.isRead = isRead;
        this.shift = shift + 0.0;
        this.station = station;
        this.skew = skew + 0.0;
        this.shiftSpread = shiftSpread;
        this.skewSpread = skewSpread;
    }

    /**
     * {@return the error of a jig that was not turned over}
     *
     * @param name of the jig
     * @param spread of its error, the same at every station
     */
    public static JigError of(String name, ErrorDistribution<Length> spread) {
        Words.name(name, "a jig's name");
        LengthStyle style =
                LengthStyle.ofUnit(Objects.requireNonNull(spread, "spread").unit());
        return new JigError(name, false, 0, 0, 0, spread, null, style);
    }

    /**
     * {@return the error of a jig that was turned over at one station}
     *
     * @param name of the jig
     * @param station at which both lines were read
     * @param apart distance from the line scribed after turning to that before, positive where the first lies farther toward the
     *     treble side
     */
    public static JigError turnedOver(String name, Quantity<Length> station, Quantity<Length> apart) {
        Words.name(name, "a jig's name");
        double u = DEFAULT_LINE_MM / Math.sqrt(2);
        LengthStyle style = LengthStyle.of(apart);
        double half = LibraryUnits.mm(apart, "distance of the lines") / 2;
        double x = LibraryUnits.mm(station, "station");
        return new JigError(name, true, half, x, 0, ErrorDistribution.normal(style.amount(u)), null, style);
    }

    /**
     * {@return a copy with its lines read better or worse} Default: 0.05 mm.
     *
     * @param ofALine standard uncertainty of the place of each line, more than 0
     * @throws ArithmeticException if the jig was not turned over
     */
    public JigError standardUncertainty(Quantity<Length> ofALine) {
        if (!isRead) {
            throw NoAnswer.because("lines", "not-read", "a jig that was not turned over has no lines: give its spread");
        }
        double times = LibraryUnits.mmPositive(ofALine, "uncertainty of a line")
                / (Math.sqrt(shiftSpread.libraryVariance()) * (skewSpread == null ? Math.sqrt(2) : 2));
        return new JigError(
                name,
                true,
                shift,
                station,
                skew,
                shiftSpread.scaled(times),
                skewSpread == null ? null : skewSpread.scaled(times),
                style());
    }

    /**
     * {@return this error with the lines read at a second station, as well as at the first: shift and skew}
     *
     * @param second another station
     * @param apart distance of the lines there, signed as at the first
     * @throws ArithmeticException if the jig was not turned over at one station before
     */
    public JigError and(Quantity<Length> second, Quantity<Length> apart) {
        if (!isRead || skewSpread != null) {
            throw NoAnswer.because(
                    "station", "second", "a second station follows the first: use turnedOver(...).and(...)");
        }
        double x2 = LibraryUnits.mm(second, "second station");
        double half = LibraryUnits.mm(apart, "distance of the lines") / 2;
        double between = x2 - station;
        if (between == 0) {
            throw LibraryUnits.refused("second station", "other", "another than the first", second);
        }
        double u = Math.sqrt(shiftSpread.libraryVariance());
        double turn = u * Math.sqrt(2) / Math.abs(between);
        return new JigError(
                name,
                true,
                (shift + half) / 2,
                (station + x2) / 2,
                (half - shift) / between,
                ErrorDistribution.normal(style().amount(u / Math.sqrt(2))),
                ErrorDistribution.normal(Amount.ofLibrary(turn, ShopUnit.DEGREE)),
                style());
    }

    /** {@return the name of the jig} */
    public String name() {
        return name;
    }

    /**
     * {@return how far the jig is off at a station, with its standard uncertainty; positive toward the treble side: shift the jig
     * the other way, or subtract it}
     *
     * @param at station from the nut
     */
    public Estimate<Length> at(Quantity<Length> at) {
        double arm = LibraryUnits.mm(at, "station") - station;
        double turn = skewSpread == null ? 0 : skewSpread.libraryVariance() * arm * arm;
        double u = Math.sqrt(shiftSpread.libraryVariance() + turn);
        return Estimate.of(style().amount(shift + skew * arm), style().amount(u));
    }

    private Optional<Amount<Length>> ofTheShift() {
        return Optional.of(style().amount(Math.sqrt(shiftSpread.libraryVariance())));
    }

    /** Common to every neck made on the jig. */
    List<Cause> causes() {
        List<Cause> all = new ArrayList<>();
        all.add(new Cause(name, name, shiftSpread, isRead ? Basis.READINGS : Basis.GIVEN));
        if (skewSpread != null) {
            all.add(new Cause(skewName(), name, skewSpread, Basis.READINGS));
        }
        return all;
    }

    Deviation deviation(double x) {
        double arm = x - station;
        Deviation off = Deviation.of(name).plusMm(shift + skew * arm);
        return skewSpread == null ? off : off.plus(Deviation.of(skewName()).times(arm));
    }

    private String skewName() {
        return name + " turned";
    }

    @Override
    protected @Nullable Object[] parts() {
        return new @Nullable Object[] {name, isRead, shift, station, skew, shiftSpread, skewSpread};
    }
}
