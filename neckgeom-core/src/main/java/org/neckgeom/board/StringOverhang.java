package org.neckgeom.board;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.Amount;

/**
 * The {@index "edge margin"} (overhang): the fingerboard's width outside the outermost strings at any fret.
 *
 * <p>Strings run straight from their places at the nut to those at the end of the scale; compensation sets a saddle back along
 * its string. The margin is measured across the neck
 * from a string's outer edge to the board's edge: {@code half-width(x) - |outer edge(x)|}. Exact. Negative when the
 * string lies beyond the board. Immutable.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class StringOverhang extends ValueAnswer {

    private static final Form<AtFret> AT_FRET = Form.<AtFret>of("overhang-at-fret")
            .fact("fret", Kind.WHOLE, "0 for the nut", AtFret::fret)
            .fact("bass", Kind.MM, "below 0: beyond the board", AtFret::bass)
            .fact("treble", Kind.MM, "below 0: beyond the board", AtFret::treble)
            .phrase("place", at -> at.fret == 0, "nut")
            .phrase("place", "fret {fret}");

    private static final Form<StringOverhang> FORM = Form.<StringOverhang>of("string-overhang")
            .fact("leastOverhang", Kind.AMOUNT, "of either side; below 0: beyond the board", StringOverhang::least)
            .fact("frets", Kind.table(AT_FRET), "the nut, the body joint and the last", StringOverhang::atFrets)
            .finds("overhang", "Overhang: least {leastOverhang:text}")
            .each("frets", "{place}", "bass {bass:text}, treble {treble:text}")
            .note("edges", "from the string's outer edge to the board's edge");

    private record AtFret(int fret, double bass, double treble) {}

    private final Neck neck;
    private final StringPlaces nut;
    private final StringPlaces saddle;
    private final @Nullable FannedFrets fan;

    private StringOverhang(Neck neck, StringPlaces nut, StringPlaces saddle, @Nullable FannedFrets fan) {
        super(FORM, neck.style());
        this.neck = neck;
        this.nut = nut;
        this.saddle = saddle;
        this.fan = fan;
    }

    /**
     * {@return the overhang of a design, the saddle at the end of its scale}
     *
     * @param neck with scale and fingerboard
     * @param nut the strings' places at the nut
     * @param saddle the strings' places at the saddle, as many
     */
    public static StringOverhang of(Neck neck, StringPlaces nut, StringPlaces saddle) {
        Objects.requireNonNull(neck, "neck").fingerboard();
        if (Objects.requireNonNull(nut, "nut").count()
                != Objects.requireNonNull(saddle, "saddle").count()) {
            throw Refusal.of(
                    "nut and saddle", "as-many", "have as many strings", "had", nut.count() + " and " + saddle.count());
        }
        return new StringOverhang(neck, nut, saddle, null);
    }

    /**
     * {@return a copy between a slanted nut and a slanted saddle: each string runs from its place on the one line to
     * its place on the other, and a fret is where its own line meets the board's edge}
     *
     * @param frets fanned about the neck's scale
     */
    public StringOverhang between(FannedFrets frets) {
        return new StringOverhang(neck, nut, saddle, Objects.requireNonNull(frets, "fanned frets"));
    }

    /**
     * {@return the overhang on the bass side; negative when the string lies beyond the board}
     *
     * @param fret 0 (the nut) or more
     */
    public Amount<Length> bass(int fret) {
        return style().amount(atMm(fret, false));
    }

    /**
     * {@return the overhang on the treble side; negative when the string lies beyond the board}
     *
     * @param fret 0 (the nut) or more
     */
    public Amount<Length> treble(int fret) {
        return style().amount(atMm(fret, true));
    }

    /**
     * {@return the least overhang of either side; both edges are straight, so it lies at the nut or at the last fret;
     * negative when a string lies beyond the board}
     */
    public Amount<Length> least() {
        int last = neck.frets();
        double atNut = Math.min(atMm(0, false), atMm(0, true));
        return style().amount(Math.min(atNut, Math.min(atMm(last, false), atMm(last, true))));
    }

    private double atMm(int fret, boolean onTreble) {
        double x = stationMm(fret, onTreble);
        double from = slanted(fan == null ? 0 : fan.slant(0).libraryValue(), nut, onTreble);
        double to = neck.scale().lengthMm()
                + slanted(fan == null ? 0 : fan.saddleSlant().libraryValue(), saddle, onTreble);
        double atNut = nut.outerEdgeMm(onTreble);
        double edge = atNut + (saddle.outerEdgeMm(onTreble) - atNut) * (x - from) / (to - from);
        return neck.halfWidthAtMm(x) - edge;
    }

    private List<AtFret> atFrets() {
        return Stream.of(0, neck.bodyAtFret(), neck.frets())
                .map(fret -> new AtFret(fret, atMm(fret, false), atMm(fret, true)))
                .toList();
    }

    private double stationMm(int fret, boolean onTreble) {
        if (fan == null) {
            return neck.scale().fretMm(fret);
        }
        return (onTreble ? fan.onTrebleEdge(fret, neck) : fan.onBassEdge(fret, neck)).libraryValue();
    }

    /** Distance of the outermost string behind the middle of a slanted line. */
    private static double slanted(double slantRad, StringPlaces places, boolean onTreble) {
        return StrictMath.tan(slantRad) * places.centreMm(onTreble ? places.count() - 1 : 0);
    }

    @Override
    protected @Nullable Object[] parts() {
        return new Object[] {neck, nut, saddle, fan};
    }
}
