package org.neckgeom.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.kernel.FretKernel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Scale;
import org.neckgeom.units.LibraryUnits;

/**
 * {@index "Fret positions"} ({@index "fret spacing"}): the distance of each fret from the nut, for a scale length.
 *
 * <p>Fret n is at {@code L (1 - 2^(-n/d))} from the nut; L is the scale length, d the equal divisions of the octave
 * (EDO, TET; 12 by default). Exact for equal temperament, to {@link #ACCURACY} relative. The nut line, the fingerboard
 * side of the nut, is fret 0 at 0 mm; distances are positive toward the body. Compensation moves the saddle, not the
 * frets.
 *
 * <p>Errors: a number of frets or a fret outside its range throws {@link org.neckgeom.fault.Refusal} (an {@code
 * IllegalArgumentException}). Immutable.
 *
 * <p>{@code FretTable.of(Scale.of(mm(560)), 20).fret(12)} is at 280 mm.
 *
 * @see FannedFrets
 */
public final class FretTable extends LeanAnswer {

    /** Greatest error of a place, relative to the scale; the tests hold the table to it. */
    public static final double ACCURACY = 4e-16;

    private static final int MOST_FRETS = 200;
    private static final int SHOWN = 24;

    private final Scale scale;
    private final List<Fret> frets;

    private FretTable(Scale scale, List<Fret> frets) {
        super(scale.style());
        this.scale = scale;
        this.frets = frets;
    }

    /**
     * {@return the table of a scale}
     *
     * @param scale the scale and its divisions
     * @param frets how many, from 1 to 200
     */
    public static FretTable of(Scale scale, int frets) {
        Objects.requireNonNull(scale, "scale");
        if (frets < 1 || frets > MOST_FRETS) {
            throw Refusal.of("frets", "range", "be from 1 to " + MOST_FRETS, "were", frets);
        }
        double length = scale.lengthMm();
        List<Fret> places = new ArrayList<>(frets + 1);
        double last = 0;
        for (int n = 0; n <= frets; n++) {
            double x = length * FretKernel.share(n, scale.divisions());
            places.add(Fret.ofMm(n, x, x - last, length - x, scale.style()));
            last = x;
        }
        return new FretTable(scale, List.copyOf(places));
    }

    /**
     * {@return the table of a design's scale and frets}
     *
     * @param neck with a scale
     */
    public static FretTable of(Neck neck) {
        return of(Objects.requireNonNull(neck, "neck").scale(), neck.frets());
    }

    /**
     * {@return a fret's place}
     *
     * @param number from 0, the nut, to the last fret
     */
    public Fret fret(int number) {
        if (number < 0 || number >= frets.size()) {
            throw Refusal.of("fret", "range", "be from 0 to " + (frets.size() - 1), number);
        }
        return frets.get(number);
    }

    /** {@return the nut and all frets in order; the nut first} */
    public List<Fret> frets() {
        return frets;
    }

    /**
     * {@return the greatest error in cents when every fret may be off its place by as much: that of the last fret,
     * whose string is shortest; 0 or more}
     *
     * @param error 0 or more, either way
     */
    public double worstCents(Quantity<Length> error) {
        LibraryUnits.mmNotNegative(error, "fret error");
        return frets.get(frets.size() - 1).centsFrom(error);
    }

    /** {@return the whole table, one line a fret: number, place from the nut, distance from the fret before} */
    public String table() {
        return Sentences.FORM.whole(this, style());
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    private static final class Sentences {
        private static final Form<FretTable> FORM = Form.<FretTable>of("fret-table")
                .fact("scale", Kind.ANSWER, "with its divisions of the octave", table -> table.scale)
                .fact(
                        "frets",
                        Kind.table(Fret.Sentences.FORM),
                        "from the first on, without the nut",
                        table -> table.frets.subList(1, table.frets.size()))
                .finds("frets", "Frets on a {scale}, from the nut")
                .each(
                        "frets",
                        "{number}",
                        "{fromNut:table text}  + {fromLast:table text}",
                        SHOWN,
                        "and {more} more: see table()");
    }

    @Override
    protected Object[] parts() {
        return new Object[] {scale, frets};
    }

    @Override
    public Form<FretTable> form() {
        return Sentences.FORM;
    }
}
