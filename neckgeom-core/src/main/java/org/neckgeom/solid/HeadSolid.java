package org.neckgeom.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.HeadPlanes;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.OutlinePoint;
import org.neckgeom.neck.TunerPost;
import org.neckgeom.shape.Curve;
import org.neckgeom.shape.Frame;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Plane;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The head (headstock) in space: its planes, its outline, its posts, its deepest and its farthest corner. Immutable.
 *
 * <p>Its frame has the origin in the nut line's middle, the first axis along the head toward the body, the second across
 * toward the treble side, the third out of the face. The outline is closed and runs counter-clockwise seen from the
 * face; it begins at the nut line. The swing is measured in plan. Exact. Corners are those of the wood, veneers not
 * counted.
 */
public final class HeadSolid extends ValueAnswer {

    private static final Form<HeadSolid> FORM = Form.<HeadSolid>of("head-solid")
            .fact("deepest", Kind.MM, "below the glue face", h -> h.deepest().libraryValue())
            .fact(
                    "farthest",
                    Kind.MM,
                    "before the nut line, along the centreline",
                    h -> h.farthest().libraryValue())
            .fact("bassEdge", Kind.MM, "from the centreline, of the farthest corner", h -> h.reachMm(-1))
            .fact("trebleEdge", Kind.MM, "from the centreline, of the farthest corner", h -> h.reachMm(1))
            .fact("area", Kind.RATIO, "of the outline in mm2", h -> h.outline.areaMm2())
            .finds("head", "Head in space: {deepest:brief} deep, {farthest:brief} before the nut line")
            .line("edges", "edges at most", "bass {bassEdge:text}, treble {trebleEdge:text} from the centreline");

    private static final double TOP_OVER_STRING_MM = 3;

    private final Head head;
    private final HeadPlanes planes;
    private final Polyline outline;

    /** The planes of a head of this neck, behind its nut. */
    static HeadPlanes planes(Neck neck, Head head) {
        return HeadPlanes.of(
                head.angleRad(), FannedFrets.nutSlant(neck).libraryValue(), head.swingRad(), head.thicknessMm());
    }

    HeadSolid(Head head, HeadPlanes planes) {
        super(FORM, head.style());
        this.head = head;
        this.planes = planes;
        this.outline = Polyline.closed(Stream.concat(edge(1).stream(), edge(-1).stream())
                .map(s -> new Spot(-s.uMm(), s.vMm()))
                .toList());
    }

    /**
     * {@return a head behind a square nut}
     *
     * @param head the head
     */
    public static HeadSolid of(Head head) {
        return of(head, Amount.ofLibrary(0, ShopUnit.DEGREE));
    }

    /**
     * {@return a head behind a slanted nut, as fanned frets have it: it turns back about the slanted line, its head angle that
     * along the centreline}
     *
     * @param head the head
     * @param nutSlant from square, 60 deg or less either way; positive when the nut's treble end lies nearer the body
     */
    public static HeadSolid of(Head head, Quantity<Angle> nutSlant) {
        double slant = LibraryUnits.radBetween(nutSlant, -60, 60, "nut slant");
        Objects.requireNonNull(head, "head");
        return new HeadSolid(head, HeadPlanes.of(head.angleRad(), slant, head.swingRad(), head.thicknessMm()));
    }

    /**
     * One edge in (along, across): the treble edge from the nut line to the tip, or the bass edge back. The first stretch is
     * carried on to the nut line, or cut by it.
     */
    private List<Spot> edge(int side) {
        List<OutlinePoint> places = head.outline();
        List<Spot> all = places.stream()
                .map(p -> new Spot(p.alongMm(), side < 0 ? -p.bassMm() : p.trebleMm()))
                .toList();
        // The nut line in these axes; HeadPlanes counts its first axis toward the body.
        double slope = -planes.nutLine();
        int first = 0;
        while (first + 2 < all.size()
                && all.get(first + 1).uMm() <= slope * all.get(first + 1).vMm()) {
            first++;
        }
        Spot a = all.get(first);
        Spot b = all.get(first + 1);
        double gapA = a.uMm() - slope * a.vMm();
        double gapB = b.uMm() - slope * b.vMm();
        double share = gapA / (gapA - gapB);
        List<Spot> edge = new ArrayList<>();
        edge.add(a.plus(share * (b.uMm() - a.uMm()), share * (b.vMm() - a.vMm())));
        edge.addAll(all.subList(first + 1, all.size()));
        if (side < 0) {
            Collections.reverse(edge);
        }
        return edge;
    }

    /** {@return the head it is made from} */
    public Head head() {
        return head;
    }

    /** {@return what the nut line's u grows by per v in this frame; 0 behind a square nut without swing} */
    public double nutLine() {
        return planes.nutLine();
    }

    /** {@return what the nut line's x grows by per y in plan; positive when its treble end lies nearer the body} */
    public double nutSlope() {
        return StrictMath.tan(planes.slant());
    }

    /**
     * {@return the neck's own axis in the face, toward the tip, in the head's coordinates: u along the head's axis toward the
     * tip, v across toward the treble side; (1, 0) without swing}
     */
    public Spot neckAxis() {
        return planes.neckAxis();
    }

    /** {@return where it lies: the first axis along the head toward the body, the third out of its face} */
    public Frame frame() {
        return planes.frame();
    }

    /** {@return the face of its wood, veneer not counted} */
    public Plane face() {
        return planes.face();
    }

    /** {@return the depth of its back below the glue face on the centreline over x, in mm, veneer not counted} */
    public Curve backDepth() {
        return planes.backDepth();
    }

    /** {@return the back of its wood, veneer not counted} */
    public Plane back() {
        return planes.back();
    }

    /** {@return the outline in its frame, closed, from the nut line's treble end by the tip to its bass end} */
    public Polyline outline() {
        return outline;
    }

    /**
     * {@return a point of the head}
     *
     * @param spot in the head's frame: u along the head, negative toward the tip
     * @param aboveMm over the face of the wood in mm, negative inside it
     */
    public Point at(Spot spot, double aboveMm) {
        Objects.requireNonNull(spot, "spot");
        return planes.frame().toNeck(new Point(spot.uMm(), spot.vMm(), aboveMm));
    }

    /** {@return how deep its deepest corner lies below the glue face; more than 0} */
    public Amount<Length> deepest() {
        return style().amount(-deepestCorner().zMm());
    }

    /** {@return its deepest corner} */
    public Point deepestCorner() {
        return corners().min(Comparator.comparingDouble(Point::zMm)).orElseThrow();
    }

    /** {@return how far before the nut line its farthest corner lies, along the centreline; more than 0} */
    public Amount<Length> farthest() {
        return style().amount(-farthestCorner().xMm());
    }

    /** {@return its corner that lies farthest before the nut line} */
    public Point farthestCorner() {
        return corners().min(Comparator.comparingDouble(Point::xMm)).orElseThrow();
    }

    /**
     * {@return its corner that lies farthest to one side, face and back counted}
     *
     * @param onTreble the treble side; else the bass side
     */
    public Point sideCorner(boolean onTreble) {
        Comparator<Point> across = Comparator.comparingDouble(Point::yMm);
        return (onTreble ? corners().max(across) : corners().min(across)).orElseThrow();
    }

    /**
     * {@return how far the outline reaches from the nut line along the neck's own axis in the head's face; the head's length,
     * and a little more at a corner of a swung head}
     */
    public Amount<Length> reach() {
        Spot axis = planes.neckAxis();
        return style().amount(outline.spots().stream()
                .mapToDouble(s -> -s.uMm() * axis.uMm() + s.vMm() * axis.vMm())
                .max()
                .orElseThrow());
    }

    /** {@return twice the distance of the outline's farthest corner from the neck's own axis in the head's face} */
    public Amount<Length> across() {
        Spot axis = planes.neckAxis();
        return style().amount(2
                * outline.spots().stream()
                        .mapToDouble(s -> Math.abs(s.vMm() * axis.uMm() + s.uMm() * axis.vMm()))
                        .max()
                        .orElseThrow());
    }

    private double reachMm(int side) {
        return Math.abs(sideCorner(side > 0).yMm());
    }

    /** {@return every corner of its wood: those of the outline on face and back} */
    public Stream<Point> corners() {
        return outline.spots().stream().flatMap(s -> Stream.of(at(s, 0), at(s, -head.thicknessMm())));
    }

    /**
     * {@return the parts of the outline past stock of a width, bass side first, none where it is wide enough: the wings (ears)}
     * Their seam is taken square to the face.
     *
     * @param stock width of the shaft's stock, its middle on the centreline, more than 0
     */
    public List<Polyline> wings(Quantity<Length> stock) {
        double half = LibraryUnits.mmPositive(stock, "width of the stock") / 2;
        return Stream.of(-1, 1)
                .flatMap(side -> outline.parts(s -> side * at(s, 0).yMm() - half).stream())
                .toList();
    }

    /**
     * {@return the parts of the outline inside stock of a width; one for any but an odd outline}
     *
     * @param stock width of the shaft's stock, its middle on the centreline, more than 0
     */
    public List<Polyline> insideStock(Quantity<Length> stock) {
        double half = LibraryUnits.mmPositive(stock, "width of the stock") / 2;
        return outline.parts(s -> half - at(s, 0).yMm()).stream()
                .flatMap(part -> part.parts(s -> half + at(s, 0).yMm()).stream())
                .toList();
    }

    /**
     * {@return the outline past a line so far before the nut line, along the head's axis: where a face veneer begins}
     *
     * @param shortOfNut along the face, 0 or more
     */
    public Optional<Polyline> outlineFrom(Quantity<Length> shortOfNut) {
        double start = LibraryUnits.mmNotNegative(shortOfNut, "distance from the nut line");
        double slope = planes.nutLine();
        return start == 0
                ? Optional.of(outline)
                : outline.parts(s -> slope * s.vMm() - start - s.uMm()).stream().findFirst();
    }

    /** {@return the two slots of a slotted head, seen on its face, the bass side's first; none for another head} */
    public List<Polyline> slots() {
        if (!head.hasSlots()) {
            return List.of();
        }
        return List.of(slot(-head.slotAsideMm()), slot(head.slotAsideMm()));
    }

    /** Counter-clockwise, its ends half circles. */
    private Polyline slot(double aside) {
        double half = head.slotWidthMm() / 2;
        double near = -head.slotFromMm() - half;
        double far = -head.slotFromMm() - head.slotLengthMm() + half;
        if (!(near > far)) {
            return Polyline.circle(new Spot(near, aside), half);
        }
        return Polyline.closed(
                List.of(
                        new Spot(far, aside - half),
                        new Spot(near, aside - half),
                        new Spot(near, aside + half),
                        new Spot(far, aside + half)),
                0,
                1,
                0,
                1);
    }

    /**
     * {@return the posts' middles in its frame, from bass to treble; those of the strings where no diameter was given}
     */
    public List<Spot> posts() {
        return head.posts().stream()
                .map(p -> new Spot(-p.alongMm(), p.asideMm()))
                .toList();
    }

    /**
     * {@return the axes of the posts from bass to treble, each from the visible face to its top, taken 3 mm above where its
     * string leaves (common practice)}
     */
    public List<Line> postAxes() {
        List<Line> axes = new ArrayList<>();
        for (TunerPost post : head.posts()) {
            Spot middle = new Spot(-post.alongMm(), post.asideMm());
            double face = head.veneerMm();
            axes.add(new Line(at(middle, face), at(middle, face + post.aboveMm() + TOP_OVER_STRING_MM)));
        }
        return List.copyOf(axes);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {head, planes};
    }
}
