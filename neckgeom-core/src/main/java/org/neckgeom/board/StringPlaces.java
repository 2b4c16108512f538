package org.neckgeom.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * Where the strings lie across the nut or the saddle, such as six from -18.2 mm to 18.3 mm. Immutable.
 *
 * <p>Each place is that of a string's centre, measured from the centreline, positive toward the treble side; the order
 * is from bass to treble, the strings of a course one after the other.
 */
public final class StringPlaces extends ValueAnswer {

    private static final Form<StringPlaces> FORM = Form.<StringPlaces>of("string-places")
            .fact("count", Kind.WHOLE, "how many strings", StringPlaces::count)
            .fact("spread", Kind.AMOUNT, "between the outermost strings' centres", StringPlaces::spread)
            .fact(
                    "centres",
                    Kind.list(Kind.MM),
                    "from the centreline, positive toward the treble side; from bass to treble",
                    places -> libraryValue(places.centres()))
            .fact("gaps", Kind.list(Kind.MM), "clear, between neighbours", places -> libraryValue(places.gaps()))
            .finds("strings", "{count} strings across {spread:text}, centre to centre")
            .line("centres", "centres", "{centres:3|4 first 12 once}")
            .line("gaps", "gaps", places -> places.count() > 1, "{gaps:3|4 first 12 once}");

    private final double[] centres;
    private final double[] diameters;

    private StringPlaces(double[] centres, double[] diameters, LengthStyle style) {
        super(FORM, style);
        this.centres = centres;
        this.diameters = diameters;
    }

    /**
     * {@return strings as they were laid out or measured}
     *
     * @param centres from the centreline, positive toward the treble side, from bass to treble; one or more
     * @param diameters of the strings, as many, each 0 or more
     * @throws IllegalArgumentException if two strings overlap or are out of order
     */
    public static StringPlaces of(
            List<? extends Quantity<Length>> centres, List<? extends Quantity<Length>> diameters) {
        if (Objects.requireNonNull(centres, "centres").isEmpty()
                || centres.size()
                        != Objects.requireNonNull(diameters, "diameters").size()) {
            throw Refusal.of(
                    "strings",
                    "at-least",
                    "be 1 or more with a diameter each",
                    "",
                    "there were " + centres.size() + " centres and " + diameters.size() + " diameters");
        }
        return ofMm(
                centres.stream()
                        .mapToDouble(y -> LibraryUnits.mm(y, "string centre"))
                        .toArray(),
                diameters.stream()
                        .mapToDouble(d -> LibraryUnits.mmNotNegative(d, "string diameter"))
                        .toArray(),
                LengthStyle.of(centres.get(0)));
    }

    static StringPlaces ofMm(double[] centres, double[] diameters, LengthStyle style) {
        for (int i = 1; i < centres.length; i++) {
            double gap = centres[i] - centres[i - 1] - (diameters[i] + diameters[i - 1]) / 2;
            if (!(gap > 0)) {
                throw Refusal.of(
                        "strings",
                        "overlap",
                        "fit side by side",
                        "",
                        "strings " + i + " and " + (i + 1) + " overlap by " + style.brief(-gap));
            }
        }
        return new StringPlaces(centres.clone(), diameters.clone(), style);
    }

    /** {@return the centres, from bass to treble} */
    public List<Amount<Length>> centres() {
        return amounts(centres);
    }

    /** {@return the centres in mm, from bass to treble} */
    public double[] centresMm() {
        return centres.clone();
    }

    /** {@return the strings' diameters, from bass to treble} */
    public List<Amount<Length>> diameters() {
        return amounts(diameters);
    }

    /** {@return the clear gaps between neighbours, wall to wall; one fewer than the strings, from bass to treble} */
    public List<Amount<Length>> gaps() {
        double[] gaps = new double[centres.length - 1];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = centres[i + 1] - centres[i] - (diameters[i] + diameters[i + 1]) / 2;
        }
        return amounts(gaps);
    }

    /** {@return the distance between the outermost strings' centres; 0 or more} */
    public Amount<Length> spread() {
        return style().amount(centres[centres.length - 1] - centres[0]);
    }

    int count() {
        return centres.length;
    }

    /** How far across from the bass to the treble string a string lies, 0 to 1. */
    double shareAcross(int i) {
        return (centres[i] - centres[0]) / (centres[centres.length - 1] - centres[0]);
    }

    double centreMm(int i) {
        return centres[i];
    }

    /** The outer edge of the outermost string of a side, from the centreline, positive outward. */
    double outerEdgeMm(boolean onTreble) {
        int last = centres.length - 1;
        return onTreble ? centres[last] + diameters[last] / 2 : -centres[0] + diameters[0] / 2;
    }

    private static List<Double> libraryValue(List<Amount<Length>> amounts) {
        return amounts.stream().map(Amount::libraryValue).toList();
    }

    private List<Amount<Length>> amounts(double[] mm) {
        List<Amount<Length>> all = new ArrayList<>(mm.length);
        for (double one : mm) {
            all.add(style().amount(one));
        }
        return List.copyOf(all);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {centres, diameters};
    }
}
