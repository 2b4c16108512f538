package org.neckgeom.board;

import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.StringSet;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * String spacing: strings or courses (pairs) across a width, such as six between edges 44.5 mm apart, 3 mm in from
 * each.
 *
 * <p>The span reaches from the bass string's outer edge to the treble string's outer edge, half of it to each side of
 * the centreline. A course of two counts as one string as wide as its pair. Immutable.
 */
public final class StringSpacing extends ValueAnswer {

    private static final Form<StringSpacing> FORM = Form.<StringSpacing>of("string-spacing")
            .fact("count", Kind.WHOLE, "of single strings or courses", spacing -> spacing.diameters.length)
            .fact("pairSpacing", Kind.MM, "centre to centre in a course; 0 for single strings", spacing -> spacing.pair)
            .fact("span", Kind.MM, "between the outer strings' outer edges", spacing -> spacing.span)
            .finds("single", s -> s.pair == 0, "{count} strings across {span:brief}, outer edge to outer edge")
            .finds(
                    "courses",
                    "{count} courses of 2, {pairSpacing:brief} in a pair across {span:brief}, outer edge to outer edge");

    private final double[] diameters;
    private final double pair;
    private final double span;

    private StringSpacing(double[] diameters, double pair, double span, LengthStyle style) {
        super(FORM, style);
        this.diameters = diameters;
        this.pair = pair;
        this.span = span;
    }

    /**
     * {@return a neck's strings across the nut; the places, or nothing where it was not given how the strings are
     * spread}
     *
     * @param neck its strings and its fingerboard are used
     */
    public static Optional<StringPlaces> atNut(Neck neck) {
        return ofNeck(
                neck,
                (strings, across) ->
                        strings.inside(neck.style().amount(neck.fingerboard().nutWidthMm()), across.edgeMargin()));
    }

    /**
     * {@return a neck's strings across the saddle; the places, or nothing where it was not given how the strings are
     * spread}
     *
     * @param neck its strings are used
     */
    public static Optional<StringPlaces> atSaddle(Neck neck) {
        return ofNeck(neck, (strings, across) -> strings.across(across.spanAtSaddle()));
    }

    private static Optional<StringPlaces> ofNeck(
            Neck neck, BiFunction<StringSpacing.Wanted, Across, StringSpacing> span) {
        return Objects.requireNonNull(neck, "neck")
                .strings()
                .flatMap(strings -> strings.across().map(across -> {
                    Amount<Length> pair = across.inPair().orElse(neck.style().amount(0));
                    StringSpacing spacing = span.apply(of(strings, pair), across);
                    return switch (across.spacing()) {
                        case EQUAL_CENTRES -> spacing.equalCentres();
                        case EQUAL_GAPS -> spacing.equalGaps();
                        case GRADUATED -> spacing.graduated(across.growth().orElseThrow());
                    };
                }));
    }

    /**
     * {@return single strings of given diameters}
     *
     * @param diameters from bass to treble, one or more, each more than 0
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read
    public static Wanted diameters(Quantity<Length>... diameters) {
        if (Objects.requireNonNull(diameters, "diameters").length == 0) {
            throw Refusal.of("strings", "at-least", "be 1 or more", "there were none", "");
        }
        double[] mm = Arrays.stream(diameters)
                .mapToDouble(d -> LibraryUnits.mmPositive(d, "string diameter"))
                .toArray();
        return new Wanted(mm, 0);
    }

    /**
     * {@return a set's strings; to be given their span}
     *
     * @param strings with their diameters
     * @param inPair centre to centre of the two strings of a course, more than their diameter; without meaning for
     *     single strings
     */
    public static Wanted of(StringSet strings, Quantity<Length> inPair) {
        double[] mm = Objects.requireNonNull(strings, "strings").diametersMm();
        if (mm.length == 0) {
            throw Refusal.because(
                    "diameters",
                    "missing",
                    "strings need their diameters for this, but have none: add .diameters(...)");
        }
        return new Wanted(mm, strings.inCourse() == 1 ? 0 : LibraryUnits.mmPositive(inPair, "spacing in a pair"));
    }

    /** Strings without their span yet. Immutable. */
    public static final class Wanted {

        private final double[] diameters;
        private final double pair;

        private Wanted(double[] diameters, double pair) {
            this.diameters = diameters;
            this.pair = pair;
        }

        /**
         * Adds the span between the outer strings' outer edges.
         *
         * @param span more than 0
         * @return the spacing
         */
        public StringSpacing across(Quantity<Length> span) {
            return new StringSpacing(
                    diameters, pair, LibraryUnits.mmPositive(span, "span of the strings"), LengthStyle.of(span));
        }

        /**
         * Adds a width and how far in from its edges the outer strings' outer edges lie.
         *
         * @param width of nut or board, more than twice the edge
         * @param edge distance from each end to the string's outer edge, 0 or more
         * @return the spacing
         */
        public StringSpacing inside(Quantity<Length> width, Quantity<Length> edge) {
            double w = LibraryUnits.mmPositive(width, "width");
            double e = LibraryUnits.mmNotNegative(edge, "edge margin");
            if (!(w > 2 * e)) {
                throw LibraryUnits.refused(
                        "edge margin",
                        "less-than",
                        "less than half the width of " + LengthStyle.of(width).brief(w),
                        edge);
            }
            return new StringSpacing(diameters, pair, w - 2 * e, LengthStyle.of(width));
        }

        /** Returns the strings in words. */
        @Override
        public String toString() {
            return diameters.length + " strings, span not given yet";
        }
    }

    /**
     * {@return the strings at equal distances centre to centre: {@code (span - half of each outer string) / (n - 1)}}
     */
    public StringPlaces equalCentres() {
        return graduatedMm(0);
    }

    /**
     * {@return the strings at equal distances centre to centre but for a step: each space is wider than the next one
     * toward the treble by it}
     *
     * @param step growth from space to space toward the bass; negative toward the treble
     */
    public StringPlaces graduated(Quantity<Length> step) {
        return graduatedMm(LibraryUnits.mm(step, "growth of the spaces"));
    }

    /** {@return the strings with equal clear gaps: {@code gap = (span - sum of diameters) / (n - 1)}} */
    public StringPlaces equalGaps() {
        int n = diameters.length;
        double filled = 0;
        for (int i = 0; i < n; i++) {
            filled += widthMm(i);
        }
        double gap = n == 1 ? 0 : (span - filled) / (n - 1);
        double[] middles = new double[n];
        double edge = -span / 2;
        for (int i = 0; i < n; i++) {
            middles[i] = edge + widthMm(i) / 2;
            edge += widthMm(i) + gap;
        }
        return places(n == 1 ? new double[] {0} : middles);
    }

    private StringPlaces graduatedMm(double step) {
        int n = diameters.length;
        if (n == 1) {
            return places(new double[] {0});
        }
        double first = -span / 2 + widthMm(0) / 2;
        double last = span / 2 - widthMm(n - 1) / 2;
        // Spaces c + (n - 2) step, ..., c + step, c from bass to treble; together they fill first to last.
        double narrowest = ((last - first) - step * (n - 1) * (n - 2) / 2) / (n - 1);
        double[] middles = new double[n];
        middles[0] = first;
        for (int i = 1; i < n; i++) {
            middles[i] = i == n - 1 ? last : middles[i - 1] + narrowest + step * (n - 1 - i);
        }
        return places(middles);
    }

    private StringPlaces places(double[] middles) {
        if (pair == 0) {
            return StringPlaces.ofMm(middles, diameters, style());
        }
        double[] centres = new double[2 * middles.length];
        double[] each = new double[centres.length];
        for (int i = 0; i < middles.length; i++) {
            centres[2 * i] = middles[i] - pair / 2;
            centres[2 * i + 1] = middles[i] + pair / 2;
            each[2 * i] = diameters[i];
            each[2 * i + 1] = diameters[i];
        }
        return StringPlaces.ofMm(centres, each, style());
    }

    private double widthMm(int course) {
        return diameters[course] + pair;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {diameters, pair, span};
    }
}
