package org.neckgeom.board;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.NeckSetKernel;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;

/**
 * The fingerboard along the neck: width, thickness and crown at any station or fret. Immutable.
 *
 * <p>Width and thickness run straight from the nut to the board's second place and beyond; so does the radius of a
 * cylinder or a cone. A board with equal edges instead keeps its edge as thick as at the nut: with s the drop left
 * there, {@code R = (w^2/4 + s^2) / (2 s)}, which grows nearly with the square of the width. Exact.
 */
public final class BoardShape extends ValueAnswer {

    private static final Form<AtFret> AT_FRET = Form.<AtFret>of("board-at-fret")
            .fact("fret", Kind.WHOLE, "0 for the nut", AtFret::fret)
            .fact("width", Kind.MM, "of the board", at -> at.section.width().libraryValue())
            .fact(
                    "middleThickness",
                    Kind.MM,
                    "on the centreline",
                    at -> at.section.middle().libraryValue())
            .fact("edgeThickness", Kind.MM, "at the edges", at -> at.section.edgeMm())
            .fact("radius", Kind.MM, "of the crown; not there where the board is flat", at -> at.section.radiusMm())
            .phrase("place", at -> at.fret == 0, "nut")
            .phrase("place", "fret {fret}")
            .phrase("crown", "radius {radius:brief}")
            .phrase("crown", "flat");

    private static final Form<BoardShape> FORM = Form.<BoardShape>of("board-shape")
            .fact("equalEdges", Kind.FLAG, "whether the edges are as thick all along as at the nut", s -> s.equalEdges)
            .fact("sections", Kind.table(AT_FRET), "at the nut, at the body and at the last fret", BoardShape::sections)
            .finds("equal-edges", shape -> shape.equalEdges, "Fingerboard with equal edges")
            .finds("fingerboard", "Fingerboard")
            .each(
                    "sections",
                    "{place}",
                    "{width:text} wide, {middleThickness:text} thick, {edgeThickness:text} at the edges, {crown}");

    private record AtFret(int fret, BoardSection section) {}

    private final Neck neck;
    private final boolean equalEdges;

    private BoardShape(Neck neck, boolean equalEdges) {
        super(FORM, neck.style());
        this.neck = neck;
        this.equalEdges = equalEdges;
    }

    /**
     * {@return the shape of a design's fingerboard}
     *
     * @param neck with scale and fingerboard told
     */
    public static BoardShape of(Neck neck) {
        Objects.requireNonNull(neck, "neck").fingerboard();
        neck.scale();
        return new BoardShape(neck, false);
    }

    /** {@return a copy whose edges are as thick all along as at the nut; its crown must not be flat there} */
    public BoardShape withEqualEdges() {
        if (Double.isInfinite(neck.crownRadiusAtMm(0))) {
            throw Refusal.of("crown at the nut", "flat", "have a radius for equal edges", "flat");
        }
        return new BoardShape(neck, true);
    }

    /**
     * {@return the section at a station}
     *
     * @param station from the nut, 0 or more
     */
    public BoardSection at(Quantity<Length> station) {
        return atMm(LibraryUnits.mmNotNegative(station, "station"));
    }

    /**
     * {@return the section at a fret}
     *
     * @param fret 0 (the nut) or more
     */
    public BoardSection atFret(int fret) {
        return atMm(neck.scale().fretMm(fret));
    }

    /**
     * {@return the radius the crown reaches when it runs on to the saddle}
     *
     * @param saddle distance of the saddle from the nut, more than 0
     * @throws ArithmeticException for a flat board
     */
    public Amount<Length> radiusAtSaddle(Quantity<Length> saddle) {
        double x = LibraryUnits.mmPositive(saddle, "saddle");
        double radius = neck.crownRadiusAtMm(x);
        if (Double.isInfinite(radius)) {
            throw NoAnswer.because("radius at the saddle", "flat", "a flat fingerboard has no radius at the saddle");
        }
        return style().amount(radius);
    }

    /**
     * {@return the radius at the saddle for which straight strings run along a true cone: the radius at the nut times
     * {@code spread at the saddle / spread at the nut}}
     *
     * @param strings spread of the outer strings
     * @throws ArithmeticException for a flat board
     */
    public Amount<Length> coneFor(OuterStrings strings) {
        double radius = neck.crownRadiusAtMm(0);
        if (Double.isInfinite(radius)) {
            throw NoAnswer.because("radius at the nut", "flat", "a flat fingerboard has no radius at the nut");
        }
        return style().amount(
                        radius * Objects.requireNonNull(strings, "strings").atSaddleMm() / strings.atNutMm());
    }

    private BoardSection atMm(double x) {
        double width = 2 * neck.halfWidthAtMm(x);
        double middle = neck.boardThicknessAtMm(x);
        return BoardSection.ofMm(x, width, middle, radius(x, width, middle), style());
    }

    private List<AtFret> sections() {
        return Stream.of(0, neck.bodyAtFret(), neck.frets())
                .map(fret -> new AtFret(fret, atFret(fret)))
                .toList();
    }

    private double radius(double x, double width, double middle) {
        if (!equalEdges) {
            return neck.crownRadiusAtMm(x);
        }
        double edge = neck.boardThicknessAtMm(0) - NeckSetKernel.drop(neck.crownRadiusAtMm(0), neck.halfWidthAtMm(0));
        double drop = middle - edge;
        if (!(drop > 0)) {
            throw NoAnswer.because(
                    "equal edges",
                    "too-thin",
                    "the board at " + style().brief(x) + " from the nut is thinner than its edge of "
                            + style().brief(edge) + " at the nut");
        }
        return (width * width / 4 + drop * drop) / (2 * drop);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {neck, equalEdges};
    }
}
