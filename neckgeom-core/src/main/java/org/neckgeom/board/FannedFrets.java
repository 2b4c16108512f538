package org.neckgeom.board;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.FretKernel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Scale;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/**
 * Fanned frets ({@index multi-scale}): frets between a longer bass scale and a shorter treble scale, perpendicular to the
 * centreline at one fret, the perpendicular fret ({@index "neutral fret"}).
 *
 * <p>Each outer string has its own scale, measured along that string from its nut point to its saddle point. Fret n
 * cuts both at the share {@code 1 - 2^(-n/d)} and is straight between them, so that every string between, from a point
 * of the nut to the same share across of the saddle, is cut at that share too. Exact. Here x = 0 is where the nut line
 * crosses the centreline; y is positive toward the treble side; a slant is positive when the treble end lies nearer the
 * body. Immutable.
 */
public final class FannedFrets extends ValueAnswer {

    private static final Form<FannedFrets> FORM = Form.<FannedFrets>of("fanned-frets")
            .fact("bassScale", Kind.MM, "along the outermost bass string", frets -> frets.bass)
            .fact("trebleScale", Kind.MM, "along the outermost treble string", frets -> frets.treble)
            .finds("fan", "Fanned frets {bassScale:brief} to {trebleScale:brief}")
            .row(
                    "perpendicularFret",
                    "perpendicular fret",
                    Kind.RATIO,
                    "need not be whole",
                    FannedFrets::perpendicularFret)
            .fact("nutSlant", Kind.RAD, "positive: treble end nearer the body", fan -> fan.slantRad(0))
            .line("nutSlant", "nut slants", "{nutSlant:2}")
            .fact("octaveSlant", Kind.RAD, "positive: treble end nearer the body", fan -> fan.slantRad(fan.divisions))
            .line("octaveSlant", "octave slants", "{octaveSlant:2}")
            .fact("saddleSlant", Kind.AMOUNT, "positive: treble end nearer the tail", FannedFrets::saddleSlant)
            .line("saddleSlant", "saddle slants", "{saddleSlant:2}")
            .note("signs", "positive: the treble end lies nearer the body; x = 0 where the nut crosses the centreline");

    private final double bass;
    private final double treble;
    private final int divisions;
    private final double atNut;
    private final double atSaddle;
    private final double straight;
    private final double bassNutX;
    private final double trebleNutX;
    private final double bassRun;
    private final double trebleRun;

    private FannedFrets(double[] p, int divisions, LengthStyle style) {
        super(FORM, style);
        this.bass = p[0];
        this.treble = p[1];
        this.atNut = p[2];
        this.atSaddle = p[3];
        this.straight = p[4];
        this.divisions = divisions;
        double aside = (atSaddle - atNut) / 2;
        this.bassRun = StrictMath.sqrt((bass - aside) * (bass + aside));
        this.trebleRun = StrictMath.sqrt((treble - aside) * (treble + aside));
        double share = FretKernel.share(straight, divisions);
        // The perpendicular fret has one x on both strings; the nut's two ends lie symmetrically about the origin.
        double lag = share * (bassRun - trebleRun);
        this.bassNutX = -lag / 2;
        this.trebleNutX = lag / 2;
    }

    /**
     * {@return the frets of a neck, fanned between the scales of its two outermost strings; the frets, or nothing where
     * they are square to the centreline}
     *
     * @param neck its fan, its fingerboard and its strings are used
     * @throws IllegalArgumentException if it was not given how the strings are spread
     */
    public static Optional<FannedFrets> of(Neck neck) {
        return Objects.requireNonNull(neck, "neck").fannedFrets().map(fan -> {
            int divisions = neck.scale().divisions();
            return of(
                    Scale.of(fan.bassScale()).divisions(divisions),
                    Scale.of(fan.trebleScale()).divisions(divisions),
                    OuterStrings.of(
                            StringSpacing.atNut(neck).orElseThrow().spread(),
                            StringSpacing.atSaddle(neck).orElseThrow().spread()),
                    fan.perpendicularFret());
        });
    }

    /**
     * {@return the slant of a neck's nut: that of its fan at fret 0, positive when the nut's treble end lies nearer the
     * body; 0 for frets square to the centreline}
     *
     * @param neck its fan and its strings are used
     */
    public static Amount<Angle> nutSlant(Neck neck) {
        return of(neck).map(fan -> fan.slant(0)).orElse(ShopUnits.deg(0));
    }

    /**
     * {@return the frets of two scales}
     *
     * @param bass scale along the outermost bass string, with its divisions
     * @param treble scale along the outermost treble string, with the same divisions
     * @param spread of the outer strings' centres at nut and saddle
     * @param straightFret the fret that is perpendicular to the centreline, 0 (the nut) or more; need not be whole
     */
    public static FannedFrets of(Scale bass, Scale treble, OuterStrings spread, double straightFret) {
        if (Objects.requireNonNull(bass, "bass").divisions()
                != Objects.requireNonNull(treble, "treble").divisions()) {
            throw Refusal.of(
                    "both scales",
                    "same-divisions",
                    "have the same divisions of the octave",
                    "had",
                    bass.divisions() + " and " + treble.divisions());
        }
        if (!(straightFret >= 0 && straightFret <= 200)) {
            throw Refusal.of("square fret", "range", "be from 0 to 200", straightFret);
        }
        double shorter = Math.min(bass.lengthMm(), treble.lengthMm());
        if (!(Math.abs(Objects.requireNonNull(spread, "spread").atSaddleMm() - spread.atNutMm()) < shorter)) {
            throw Refusal.of("string spread", "less-than", "grow by less than the scale", "did not", "");
        }
        return new FannedFrets(
                new double[] {bass.lengthMm(), treble.lengthMm(), spread.atNutMm(), spread.atSaddleMm(), straightFret},
                bass.divisions(),
                bass.style());
    }

    /** {@return the scale along the outermost bass string, with its divisions} */
    public Scale bassScale() {
        return Scale.of(style().amount(bass)).divisions(divisions);
    }

    /** {@return the scale along the outermost treble string, with its divisions} */
    public Scale trebleScale() {
        return Scale.of(style().amount(treble)).divisions(divisions);
    }

    /** {@return the fret that is perpendicular to the centreline; 0 (the nut) or more, need not be whole} */
    public double perpendicularFret() {
        return straight;
    }

    /**
     * {@return the scale on the centreline: half of both outer strings' runs along it, on which frets cross it as they
     * do a straight scale of this length; more than 0, a little less than the mean of both scales}
     */
    public Amount<Length> centrelineScale() {
        return style().amount((bassRun + trebleRun) / 2);
    }

    /**
     * {@return the scale along each of some strings: the outermost have those of the fan, one between has its own; from
     * bass to treble}
     *
     * @param nut the strings at the nut, two or more
     * @param saddle the same strings at the saddle
     */
    public List<Amount<Length>> scales(StringPlaces nut, StringPlaces saddle) {
        Objects.requireNonNull(saddle, "saddle");
        return IntStream.range(0, Objects.requireNonNull(nut, "nut").count())
                .mapToObj(i -> style().amount(scaleMm(nut.shareAcross(i), saddle.shareAcross(i))))
                .toList();
    }

    /** Between a point of the nut's line and one of the saddle's, each a share from the bass to the treble string. */
    private double scaleMm(double onNut, double onSaddle) {
        double fromX = bassNutX + onNut * (trebleNutX - bassNutX);
        double toX = bassNutX + bassRun + onSaddle * (trebleNutX + trebleRun - bassNutX - bassRun);
        double aside = atSaddle * (onSaddle - 0.5) - atNut * (onNut - 0.5);
        return StrictMath.hypot(toX - fromX, aside);
    }

    /**
     * {@return where a fret crosses the centreline; x}
     *
     * @param fret 0 (the nut) or more
     */
    public Amount<Length> onCentreline(double fret) {
        return style().amount((bassX(fret) + trebleX(fret)) / 2);
    }

    /**
     * {@return where a fret meets the bass string; x}
     *
     * @param fret 0 (the nut) or more
     */
    public Amount<Length> onBass(double fret) {
        return style().amount(bassX(fret));
    }

    /**
     * {@return where a fret meets the treble string; x}
     *
     * @param fret 0 (the nut) or more
     */
    public Amount<Length> onTreble(double fret) {
        return style().amount(trebleX(fret));
    }

    /**
     * {@return where a fret's line lies at a distance from the centreline; x}
     *
     * @param fret 0 (the nut) or more
     * @param y from the centreline, positive toward the treble side
     */
    public Amount<Length> at(double fret, Quantity<Length> y) {
        double aside = LibraryUnits.mm(y, "distance from the centreline");
        double middle = (bassX(fret) + trebleX(fret)) / 2;
        return style().amount(middle + (trebleX(fret) - bassX(fret)) * aside / spread(fret));
    }

    /**
     * {@return where a fret's line meets the board's edge on the bass side; x}
     *
     * @param fret 0 (the nut) or more
     * @param neck with scale and fingerboard
     */
    public Amount<Length> onBassEdge(double fret, Neck neck) {
        return style().amount(edgeX(fret, neck, -1));
    }

    /**
     * {@return where a fret's line meets the board's edge on the treble side; x}
     *
     * @param fret 0 (the nut) or more
     * @param neck with scale and fingerboard
     */
    public Amount<Length> onTrebleEdge(double fret, Neck neck) {
        return style().amount(edgeX(fret, neck, 1));
    }

    /** Fret line {@code x = m + k y} on the edge {@code y = side (a + b x)}: {@code x = (m + k side a)/(1 - k side b)}. */
    private double edgeX(double fret, Neck neck, int side) {
        double middle = (bassX(fret) + trebleX(fret)) / 2;
        double slope = side * (trebleX(fret) - bassX(fret)) / spread(fret);
        double atNutLine = Objects.requireNonNull(neck, "neck").halfWidthAtMm(0);
        double growth = (neck.halfWidthAtMm(bass) - atNutLine) / bass;
        return (middle + slope * atNutLine) / (1 - slope * growth);
    }

    /**
     * {@return a fret's angle from square to the centreline, positive when its treble end lies nearer the body}
     *
     * @param fret 0 (the nut) or more; 0 gives the slant for the scarf
     */
    public Amount<Angle> slant(double fret) {
        return Amount.ofLibrary(slantRad(fret), ShopUnit.DEGREE);
    }

    /**
     * {@return the saddle line's angle from square, without compensation, positive when its treble end lies nearer the
     * tail}
     */
    public Amount<Angle> saddleSlant() {
        double lag = trebleNutX + trebleRun - (bassNutX + bassRun);
        return Amount.ofLibrary(StrictMath.atan2(lag, atSaddle) + 0.0, ShopUnit.DEGREE);
    }

    private double slantRad(double fret) {
        return StrictMath.atan2(trebleX(fret) - bassX(fret), spread(fret)) + 0.0;
    }

    private double spread(double fret) {
        return atNut + (atSaddle - atNut) * share(fret);
    }

    private double bassX(double fret) {
        return bassNutX + share(fret) * bassRun;
    }

    private double trebleX(double fret) {
        return trebleNutX + share(fret) * trebleRun;
    }

    private double share(double fret) {
        if (!(fret >= 0) || Double.isInfinite(fret)) {
            throw Refusal.of("fret", "at-least", "be 0 or more", fret);
        }
        return FretKernel.share(fret, divisions);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {bass, treble, divisions, atNut, atSaddle, straight};
    }
}
