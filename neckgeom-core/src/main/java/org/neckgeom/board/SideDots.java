package org.neckgeom.board;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.NeckSetKernel;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.Amount;

/**
 * The {@index "side dots"} (position markers) in the bass edge of the fingerboard: where each hole is drilled. Immutable.
 *
 * <p>The dot of fret n is half-way between frets n - 1 and n along the edge, {@code (x_(n-1) + x_n)/2}, and half the edge's
 * thickness over the glue face. Exact. Which frets, one or two dots and the hole's size are common practice.
 */
public final class SideDots extends ValueAnswer {

    private static final int OCTAVE = 12;
    private static final List<Integer> IN_AN_OCTAVE = List.of(3, 5, 7, 9);
    private static final double LEAST_HOLE_MM = 2.0;
    private static final double GREATEST_HOLE_MM = 2.4;
    private static final double LEAST_DEPTH_MM = 4;
    private static final double GREATEST_DEPTH_MM = 6;

    /** The dot of a fret. */
    private record Dot(int fret, double fromNut, double height, boolean isDouble) {
        private static final Form<Dot> FORM = Form.<Dot>of("side-dot")
                .fact("fret", Kind.WHOLE, "1 or more", Dot::fret)
                .fact("fromNut", Kind.MM, "station of the dot on the bass edge", Dot::fromNut)
                .fact("height", Kind.MM, "of its middle over the glue face", Dot::height)
                .fact("isDouble", Kind.FLAG, "whether two dots are common there", Dot::isDouble)
                .phrase("two", Dot::isDouble, ", two dots");
    }

    private static final Form<SideDots> FORM = Form.<SideDots>of("side-dots")
            .fact("count", Kind.WHOLE, "frets with a dot", d -> d.frets.size())
            .fact("dots", Kind.table(Dot.FORM), "from the nut on", SideDots::dots)
            .fact("leastHole", Kind.MM, "diameter, common practice", d -> LEAST_HOLE_MM)
            .fact("greatestHole", Kind.MM, "diameter, common practice", d -> GREATEST_HOLE_MM)
            .fact("leastDepth", Kind.MM, "of the hole, common practice", d -> LEAST_DEPTH_MM)
            .fact("greatestDepth", Kind.MM, "of the hole, common practice", d -> GREATEST_DEPTH_MM)
            .finds("side-dots", "Side dots at {count:of fret/frets}, from the nut along the bass edge")
            .each("dots", "fret {fret}", "{fromNut:text}, {height:text} over the glue face{two}", 30, "and {more} more")
            .note(
                    "hole",
                    "common practice: hole {leastHole:brief} to {greatestHole:brief} wide, {leastDepth:brief} to"
                            + " {greatestDepth:brief} deep");

    private final Neck neck;
    private final List<Integer> frets;

    private SideDots(Neck neck, List<Integer> frets) {
        super(FORM, neck.style());
        this.neck = neck;
        this.frets = frets;
    }

    /**
     * {@return the dots of a neck at the usual frets: 3, 5, 7, 9 and 12 of each octave; the octaves alone where it has not
     * twelve frets to the octave}
     *
     * @param neck with scale, frets and fingerboard
     */
    public static SideDots of(Neck neck) {
        Objects.requireNonNull(neck, "neck").fingerboard();
        int octave = neck.scale().divisions();
        return new SideDots(
                neck,
                IntStream.rangeClosed(1, neck.frets())
                        .filter(n -> n % octave == 0 || (octave == OCTAVE && IN_AN_OCTAVE.contains(n % octave)))
                        .boxed()
                        .toList());
    }

    /**
     * {@return a copy with dots at other frets}
     *
     * @param numbers of the frets, each from 1 to the last fret; no two the same
     */
    public SideDots at(int... numbers) {
        for (int fret : Objects.requireNonNull(numbers, "frets")) {
            checked(fret);
        }
        List<Integer> sorted = IntStream.of(numbers).sorted().distinct().boxed().toList();
        if (sorted.size() != numbers.length) {
            throw Refusal.of(
                    "frets",
                    "distinct",
                    "be given once each",
                    "were",
                    IntStream.of(numbers).boxed().toList().toString());
        }
        return new SideDots(neck, sorted);
    }

    private int checked(int fret) {
        if (fret < 1 || fret > neck.frets()) {
            throw Refusal.of("fret", "range", "be from 1 to " + neck.frets(), fret);
        }
        return fret;
    }

    /** {@return the frets with a dot, in order} */
    public List<Integer> frets() {
        return frets;
    }

    /**
     * {@return the station of a fret's dot on the bass edge, from the nut line}
     *
     * @param fret from 1 to the last fret
     */
    public Amount<Length> fromNut(int fret) {
        return style().amount(stationMm(checked(fret)));
    }

    /**
     * {@return how high a fret's dot lies over the glue face: half the thickness of the board's edge there}
     *
     * @param fret from 1 to the last fret
     */
    public Amount<Length> height(int fret) {
        return style().amount(heightMm(checked(fret)));
    }

    private double stationMm(int fret) {
        Optional<FannedFrets> fan = FannedFrets.of(neck);
        return (edgeMm(fan, fret - 1) + edgeMm(fan, fret)) / 2;
    }

    private double edgeMm(Optional<FannedFrets> fan, int fret) {
        return fan.map(f -> f.onBassEdge(fret, neck).libraryValue())
                .orElseGet(() -> neck.scale().fretMm(fret));
    }

    private double heightMm(int fret) {
        double x = stationMm(fret);
        return (neck.boardThicknessAtMm(x) - NeckSetKernel.drop(neck.crownRadiusAtMm(x), neck.halfWidthAtMm(x))) / 2;
    }

    private List<Dot> dots() {
        return frets.stream()
                .map(n -> new Dot(n, stationMm(n), heightMm(n), n % neck.scale().divisions() == 0))
                .toList();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {neck, frets};
    }
}
