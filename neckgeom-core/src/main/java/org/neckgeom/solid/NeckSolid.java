package org.neckgeom.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.BackSet;
import org.neckgeom.kernel.TenPoints;
import org.neckgeom.neck.Bars;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.End;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.JointPlace;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.StringHeights;
import org.neckgeom.shape.Curve;
import org.neckgeom.shape.Direction;
import org.neckgeom.shape.Frame;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Mesh;
import org.neckgeom.shape.Plane;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;

/**
 * The one shape of a neck: its back with volute and heel, its head in space, its fret lines, its strings. Tables,
 * drawings, templates, checks, blanks and meshes all ask it. Immutable.
 *
 * <p>Lengths are those of the finished wood. Exact: closed forms in double precision; nothing is sampled but meshes and
 * drawings, each within a tolerance that its own method takes.
 */
public final class NeckSolid extends ValueAnswer {

    private static final Form<NeckSolid> FORM = Form.<NeckSolid>of("neck-solid")
            .fact("neck", Kind.NAME, "its name", s -> s.neck.name())
            .fact(
                    "wood",
                    Kind.RATIO,
                    "of shaft and heel from the nut to the body joint, in cm3",
                    s -> s.woodMm3() / 1000)
            .fact(
                    "deepest",
                    Kind.MM,
                    "of the back up to the body joint",
                    s -> s.depth().valueAt(s.deepestStation()))
            .fact("deepestAt", Kind.MM, "from the nut", NeckSolid::deepestStation)
            .factIfAny("head", Kind.ANSWER, "in space", NeckSolid::head)
            .fact("frets", Kind.WHOLE, "how many", s -> s.neck.frets())
            .finds("solid", "Shape of {neck}")
            .line("wood", "shaft and heel", "{wood:1} cm3 of wood, nut to body joint")
            .line("deepest", "deepest", "{deepest:brief} at {deepestAt:brief} from the nut")
            .line("head", "head", s -> s.head().isPresent(), "{head}");

    private static final double FINEST_MM = 1e-3;
    private static final double COARSEST_MM = 10;
    private static final int HALVINGS = 200;
    private static final int PANELS = 8;
    private static final int MOST_STATIONS = 100_000;

    private final Neck neck;
    private final BackShape back;
    private final @Nullable HeadSolid head;
    private final Optional<FannedFrets> fan;
    private final Optional<FloorThickness> wood;
    private final double stock;
    private final double cutter;
    private final OpenEnds open;
    private final StringRuns strings;

    private NeckSolid(
            Neck neck,
            BackShape back,
            @Nullable HeadSolid head,
            Optional<FannedFrets> fan,
            Optional<FloorThickness> wood,
            double stock,
            double cutter,
            OpenEnds open) {
        super(FORM, neck.style());
        this.neck = neck;
        this.back = back;
        this.head = head;
        this.fan = fan;
        this.wood = wood;
        this.stock = stock;
        this.cutter = cutter;
        this.open = open;
        this.strings = new StringRuns(neck, fan);
    }

    /**
     * {@return the shape of a neck}
     *
     * @param neck with scale, fingerboard and back; every other part it has is part of the shape
     * @throws IllegalArgumentException if its back cannot reach its heel
     */
    public static NeckSolid of(Neck neck) {
        HeadSolid head = Objects.requireNonNull(neck, "neck")
                .head()
                .map(h -> new HeadSolid(h, HeadSolid.planes(neck, h)))
                .orElse(null);
        BackShape back = BackShape.of(neck);
        return new NeckSolid(
                neck,
                back,
                head,
                FannedFrets.of(neck),
                neck.channel().map(channel -> FloorThickness.under(channel, back)),
                Double.POSITIVE_INFINITY,
                0,
                OpenEnds.NONE);
    }

    /**
     * {@return a copy sawn from stock of a width: what the head is wider are pieces of their own, its wings} Default: wide enough.
     *
     * @param width of the shaft's stock, its middle on the centreline, more than 0
     */
    public NeckSolid stock(Quantity<Length> width) {
        return new NeckSolid(
                neck, back, head, fan, wood, LibraryUnits.mmPositive(width, "width of the stock"), cutter, open);
    }

    /**
     * {@return a copy whose channel is cut by a round cutter, which leaves its ends round} Default: square ends.
     *
     * @param diameter more than 0; of a cutter wider than the channel the ends are half circles
     */
    public NeckSolid cutter(Quantity<Length> diameter) {
        return new NeckSolid(
                neck, back, head, fan, wood, stock, LibraryUnits.mmPositive(diameter, "cutter's diameter"), open);
    }

    /**
     * {@return a copy whose channel runs out of the wood, where a round cutter leaves no round end} Default: at no end.
     *
     * @param ends that are open, such as {@code stops.openEnds()}
     */
    public NeckSolid openAt(Set<End> ends) {
        return new NeckSolid(neck, back, head, fan, wood, stock, cutter, new OpenEnds(ends));
    }

    /**
     * {@return a copy as the neck is now: its back as carved, its channel as cut and where it lies}
     *
     * @param now the wood under the channel, of a back and a channel of this neck
     */
    public NeckSolid asMade(FloorThickness now) {
        BackShape carved = Objects.requireNonNull(now, "wood under the channel").back();
        return new NeckSolid(neck, carved, head, fan, Optional.of(now), stock, cutter, open);
    }

    /** {@return the neck it is the shape of} */
    public Neck neck() {
        return neck;
    }

    /** {@return its back} */
    public BackShape back() {
        return back;
    }

    /** {@return the wood under its channel, in the middle unless as made; nothing without a channel} */
    public Optional<FloorThickness> floorThickness() {
        return wood;
    }

    /** {@return the depth of the wood on the centreline over x, in mm, with volute, heel and cap} */
    public Curve depth() {
        return back.depth();
    }

    /** {@return its head in space; nothing for a neck without one} */
    public Optional<HeadSolid> head() {
        return Optional.ofNullable(head);
    }

    /** {@return the station of its body joint in mm; more than 0} */
    public double bodyJointMm() {
        return neck.bodyJointMm();
    }

    /**
     * {@return the volume of shaft and heel from the nut to the body joint, in mm3; the channel not taken out}
     */
    public double woodMm3() {
        return woodMm3(0, bodyJointMm());
    }

    /**
     * {@return the volume of shaft and heel between two stations, in mm3}
     *
     * @param fromMm the first station
     * @param toMm the second station, no less than the first
     */
    public double woodMm3(double fromMm, double toMm) {
        double[] ends = DoubleStream.concat(
                        DoubleStream.of(LibraryUnits.stationMm(fromMm), LibraryUnits.stationMm(toMm)),
                        DoubleStream.of(depth().knotsIn(fromMm, toMm)))
                .sorted()
                .toArray();
        double sum = 0;
        for (int i = 0; i + 1 < ends.length; i++) {
            sum += volume(ends[i], ends[i + 1]);
        }
        return sum;
    }

    private double volume(double from, double to) {
        return TenPoints.integral(x -> back.sectionMm(x).area(), from, to, PANELS);
    }

    /** {@return the station at which the back is deepest between the nut and the body joint, in mm} */
    public double deepestStation() {
        return depth().greatestIn(0, bodyJointMm());
    }

    /**
     * {@return the height of the fingerboard's top over the glue face, frets not counted, in mm}
     *
     * @param xMm station
     * @param yMm from the centreline
     */
    public double boardTopMm(double xMm, double yMm) {
        return strings.boardTopMm(LibraryUnits.stationMm(xMm), yMm);
    }

    /**
     * {@return the line of a fret from edge to edge}
     *
     * @param fret 0 for the nut line; one more than there are frets is the usual end of the board
     */
    public FretLine fret(int fret) {
        double crossing = fan.map(f -> f.onCentreline(fret).libraryValue())
                .orElseGet(() -> neck.scale().fretMm(fret));
        double bass = fan.map(f -> f.onBassEdge(fret, neck).libraryValue()).orElse(crossing);
        double treble = fan.map(f -> f.onTrebleEdge(fret, neck).libraryValue()).orElse(crossing);
        return new FretLine(
                fret,
                crossing,
                new Spot(bass, -neck.halfWidthAtMm(bass)),
                new Spot(treble, neck.halfWidthAtMm(treble)),
                style());
    }

    /** {@return the lines of the nut and every fret, from edge to edge} */
    public List<FretLine> frets() {
        return IntStream.rangeClosed(0, neck.frets()).mapToObj(this::fret).toList();
    }

    /**
     * {@return the strings in space, from bass to treble; empty where their places across were not given} A fret height or a
     * neck set that was not given counts as 0.
     */
    public List<StringLine> strings() {
        if (!strings.arePlaced()) {
            return List.of();
        }
        double frets = neck.fingerboard().fretHeight().map(Amount::libraryValue).orElse(0.0);
        Optional<StringHeights> heights = neck.neckSet().map(NeckSet::heights);
        return IntStream.range(0, strings.count())
                .mapToObj(i -> string(strings.run(i, frets, heights), strings.gaugeMm(i)))
                .toList();
    }

    /**
     * {@return the line the strings bear on at the nut, from the outer string on the bass side to that on the treble side; nothing
     * without their places across}
     */
    public Optional<Line> nut() {
        return bearing(string -> string.underside().from());
    }

    /**
     * {@return the line the strings bear on at the saddle, compensation counted, from the outer string on the bass side to that on
     * the treble side; nothing without their places across} Behind a crowned board the strings between them bear higher.
     */
    public Optional<Line> saddle() {
        return bearing(string -> string.underside().to());
    }

    private Optional<Line> bearing(Function<StringLine, Point> end) {
        List<StringLine> all = strings();
        return all.size() < 2
                ? Optional.empty()
                : Optional.of(new Line(end.apply(all.get(0)), end.apply(all.get(all.size() - 1))));
    }

    /** A string with its way over the head. */
    StringLine string(StringRuns.Run run, double gauge) {
        return new StringLine(run, gauge, overHead(run.index(), run.underside().from(), gauge), style());
    }

    /**
     * {@return what the strings press on the nut with, square to the glue face; nothing without posts} Estimate: no friction in
     * the slots.
     *
     * @param tensions of each single string, one for all or one to a string from bass to treble, each 0 or more
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read
    public final Optional<NutForces> nutForces(Quantity<Force>... tensions) {
        List<StringLine> over =
                strings().stream().filter(s -> s.overHead().isPresent()).toList();
        if (Objects.requireNonNull(tensions, "tensions").length != 1 && tensions.length != over.size()) {
            throw Refusal.of(
                    "tensions",
                    "as-many",
                    "be one value or one per string (" + over.size() + ")",
                    "were",
                    Integer.toString(tensions.length));
        }
        double[] forces = new double[over.size()];
        for (int i = 0; i < forces.length; i++) {
            forces[i] =
                    over.get(i).nutForce(tensions[tensions.length == 1 ? 0 : i]).libraryValue();
        }
        return over.isEmpty() ? Optional.empty() : Optional.of(NutForces.ofNewton(forces));
    }

    /** {@return the body end of its channel beside the heel's joint; nothing without a channel or a heel} */
    public Optional<ChannelEnd> channelEnd() {
        return wood.flatMap(under -> neck.heel()
                .map(heel -> ChannelEnd.of(under, matingFace(), bodyJointMm(), heel.dovetail(), heel.tenon())));
    }

    /** {@return what is free on the head round its posts and between its strings; nothing without posts} */
    public Optional<HeadClearances> clearances() {
        return head().filter(there -> !there.posts().isEmpty()).map(there -> HeadClearances.of(there, strings()));
    }

    private @Nullable Line overHead(int index, Point nut, double gauge) {
        HeadSolid there = head;
        if (there == null || index >= there.posts().size()) {
            return null;
        }
        Head drawn = there.head();
        Spot middle = there.posts().get(index);
        double above = drawn.veneerMm() + drawn.posts().get(index).aboveMm();
        return StringLine.toPost(
                nut.plus(Direction.UP, gauge / 2),
                there.frame(),
                new Point(middle.uMm(), middle.vMm(), above),
                drawn.postDiameterMm() / 2);
    }

    /**
     * {@return the face that meets the body: through the body joint on the glue face, leaning by the neck angle; square to the
     * glue face without a neck set, and where no angle brings the strings to the saddle} Wood past the joint is bounded by it.
     */
    public Plane matingFace() {
        double wood = neck.neckSet().map(set -> heelAngleRad()).orElse(StrictMath.PI / 2);
        // The face runs down along (-cos, 0, -sin) of the wood's angle; its normal points to the body.
        return Plane.through(
                new Point(bodyJointMm(), 0, 0), new Direction(StrictMath.sin(wood), 0, -StrictMath.cos(wood)));
    }

    private double heelAngleRad() {
        try {
            return BackSet.of(neck).heelFace().angle().libraryValue();
        } catch (NoAnswer noAngle) {
            return StrictMath.PI / 2;
        }
    }

    /**
     * {@return where the shaft's back, carried on, meets the head's back on the centreline, in mm: the crease behind the nut;
     * negative in the head; nothing without a head, or where they do not meet}
     */
    public OptionalDouble creaseMm() {
        if (head == null || !(head.head().angleRad() > 0)) {
            return OptionalDouble.empty();
        }
        Curve shaft = back.carriedOn();
        Curve itsBack = head.backDepth();
        double lo = -head.head().lengthMm();
        double hi = bodyJointMm();
        if (!(itsBack.valueAt(lo) > shaft.valueAt(lo)) || !(itsBack.valueAt(hi) < shaft.valueAt(hi))) {
            return OptionalDouble.empty();
        }
        for (int i = 0; i < HALVINGS && hi - lo > Math.ulp(lo); i++) {
            double middle = (lo + hi) / 2;
            if (itsBack.valueAt(middle) > shaft.valueAt(middle)) {
                lo = middle;
            } else {
                hi = middle;
            }
        }
        return OptionalDouble.of((lo + hi) / 2);
    }

    /**
     * {@return the line of a scarf's glued face on the centreline: its end on the front, then its end on the back}
     *
     * @param joint of this neck's head
     */
    public Line glueLine(ScarfJoint joint) {
        HeadSolid there = head().orElseThrow(() -> Refusal.because(
                "head", "missing", "\"" + neck.name() + "\" has no head to be scarfed on: add .head(...)"));
        double shaft = Objects.requireNonNull(joint, "joint").shaftThickness().libraryValue();
        double fall = StrictMath.tan(there.head().angleRad());
        double thick = there.backDepth().valueAt(0);
        Point atBack = new Point((thick - shaft) / fall, 0, -shaft);
        return joint.place() == JointPlace.IN_THE_HEAD
                ? new Line(new Point(-shaft / fall, 0, -shaft), atBack)
                : new Line(new Point(thick / fall, 0, 0), atBack);
    }

    /**
     * {@return the least thickness of wood the neck comes from in one piece up to a station: the greatest depth before it, and
     * the deepest corner of the head}
     *
     * @param blocksFrom station at which heel blocks carry the depth on, from the nut
     */
    public LeastThickness leastThickness(Quantity<Length> blocksFrom) {
        double end = LibraryUnits.mmNotNegative(blocksFrom, "station of the heel blocks");
        double station = depth().greatestIn(0, end);
        double deep = depth().valueAt(station);
        double inHead = head == null || head.head().scarf().isPresent()
                ? 0
                : -head.deepestCorner().zMm();
        return new LeastThickness(station, deep, inHead, style());
    }

    /** {@return the wood past the nut line under a string anchor in plan, as wide as the neck at the nut; nothing without one} */
    public Optional<Polyline> anchor() {
        double half = neck.halfWidthAtMm(0);
        return neck.stringAnchor()
                .map(Amount::libraryValue)
                .map(past -> Polyline.closed(
                        List.of(new Spot(-past, -half), new Spot(0, -half), new Spot(0, half), new Spot(-past, half))));
    }

    /** {@return the channels of the bars beside the middle in plan, the bass side's first; none without bars} */
    public List<Polyline> barChannels() {
        return neck.bars().map(this::barChannels).orElse(List.of());
    }

    private List<Polyline> barChannels(Bars bars) {
        Channel cut = bars.channel();
        double half = cut.widthMm() / 2;
        double near = bars.asideMm(cut.startMm(), bodyJointMm());
        double far = bars.asideMm(cut.endMm(), bodyJointMm());
        return Stream.of(-1, 1)
                .map(side -> Polyline.closed(List.of(
                        new Spot(cut.startMm(), side * near - half),
                        new Spot(cut.endMm(), side * far - half),
                        new Spot(cut.endMm(), side * far + half),
                        new Spot(cut.startMm(), side * near + half))))
                .toList();
    }

    private List<Mesh> barMeshes(double tolerance) {
        List<Mesh> all = new ArrayList<>();
        for (Polyline bar : barChannels()) {
            double deep = neck.bars().orElseThrow().channel().depthMm();
            String name = "cut: channel of " + (all.isEmpty() ? "bass" : "treble") + " bar";
            all.add(SolidMesh.ofPrism(name, Frame.NECK, bar, -deep, 0, tolerance));
        }
        return all;
    }

    /**
     * {@return a closed mesh of each piece: shaft with heel up to the mating face, fingerboard, head, its wings, its veneers, the
     * wood under a string anchor, a dovetail or a tenon; and named as cuts, of the channel and its pocket, the bars' channels, the
     * tenon's holes, the head's slots or its posts where their diameter was given}
     *
     * @param tolerance greatest distance of a chord from its curve, 0.001 to 10 mm
     */
    public List<Mesh> meshes(Quantity<Length> tolerance) {
        double mm = LibraryUnits.mmPositive(tolerance, "tolerance");
        if (!(mm >= FINEST_MM && mm <= COARSEST_MM)) {
            throw LibraryUnits.refused("tolerance", "range", "from 0.001 to 10 mm", tolerance);
        }
        List<Mesh> all = new ArrayList<>();
        all.add(SolidMesh.ofShaft("shaft and heel", back, 0, bodyJointMm(), lean(), mm));
        all.add(BoardMesh.of(neck, fret(0), fret(neck.frets() + 1), this::boardTopMm, mm));
        head().ifPresent(there -> headMeshes(there, stock, mm, all));
        neck.heel().map(Heel::joint).ifPresent(seat -> all.addAll(JointMesh.of(seat, matingFace(), bodyJointMm(), mm)));
        anchor().ifPresent(plan -> all.add(
                SolidMesh.ofPrism("wood under the string anchor", Frame.NECK, plan, -depth().valueAt(0), 0, mm)));
        all.addAll(barMeshes(mm));
        wood.ifPresent(under -> all.addAll(ChannelMesh.of(under.channel(), cutter / 2, open, mm)));
        return all.stream().map(mesh -> mesh.within(tolerance)).toList();
    }

    /** Half the stock's width; 0 where none was given. */
    double halfStockMm() {
        return Double.isInfinite(stock) ? 0 : stock / 2;
    }

    /** How far the mating face comes nearer the nut per mm below the glue face. */
    double lean() {
        Direction out = matingFace().normal();
        return out.z() / -out.x() + 0.0;
    }

    private static void headMeshes(HeadSolid there, double stock, double tolerance, List<Mesh> all) {
        Head drawn = there.head();
        double thick = drawn.thicknessMm();
        if (Double.isInfinite(stock)) {
            all.add(SolidMesh.ofPrism("head", there.frame(), there.outline(), -thick, 0, tolerance));
        } else {
            Amount<Length> width = drawn.style().amount(stock);
            prisms("head", there, there.insideStock(width), tolerance, all);
            prisms("wing", there, there.wings(width), tolerance, all);
        }
        if (drawn.veneerMm() > 0) {
            there.outlineFrom(drawn.style().amount(drawn.veneerShortOfNutMm()))
                    .ifPresent(part -> all.add(
                            SolidMesh.ofPrism("face veneer", there.frame(), part, 0, drawn.veneerMm(), tolerance)));
        }
        if (drawn.backVeneerMm() > 0) {
            all.add(SolidMesh.ofPrism(
                    "back veneer", there.frame(), there.outline(), -thick - drawn.backVeneerMm(), -thick, tolerance));
        }
        List<Polyline> slots = there.slots();
        for (int i = 0; i < slots.size(); i++) {
            all.add(headCut("cut: slot " + (i == 0 ? "bass" : "treble"), there, slots.get(i), tolerance));
        }
        // The posts of a slotted head lie across its slots.
        for (int i = 0;
                slots.isEmpty()
                        && drawn.postDiameterMm() > 0
                        && i < there.posts().size();
                i++) {
            Polyline post = Polyline.circle(there.posts().get(i), drawn.postDiameterMm() / 2);
            all.add(headCut("cut: post " + (i + 1), there, post, tolerance));
        }
    }

    /** A cut through the head and its veneers. */
    private static Mesh headCut(String name, HeadSolid there, Polyline seen, double tolerance) {
        Head drawn = there.head();
        return SolidMesh.ofPrism(
                name, there.frame(), seen, -drawn.thicknessMm() - drawn.backVeneerMm(), drawn.veneerMm(), tolerance);
    }

    /** Pieces of the head's thickness, numbered from the bass side where there are several. */
    private static void prisms(String name, HeadSolid there, List<Polyline> parts, double tolerance, List<Mesh> all) {
        for (int i = 0; i < parts.size(); i++) {
            all.add(SolidMesh.ofPrism(
                    parts.size() == 1 ? name : name + " " + (i + 1),
                    there.frame(),
                    parts.get(i),
                    -there.head().thicknessMm(),
                    0,
                    tolerance));
        }
    }

    /**
     * {@return the stations that a table lists: the nut, every other fret up to the body, both ends of the channel, the thinnest
     * place under it, the body joint}
     */
    public NeckStations stations() {
        List<NeckStation> rows = new ArrayList<>();
        rows.add(row("nut", 0));
        for (int n = 1; n < neck.bodyAtFret(); n += 2) {
            rows.add(row("fret " + n, neck.scale().fretMm(n)));
        }
        wood.ifPresent(under -> {
            rows.add(row("channel from", under.channel().startMm()));
            rows.add(row("channel to", under.channel().endMm()));
            rows.add(row("thinnest", under.least().stationMm()));
        });
        rows.add(row("body, fret " + neck.bodyAtFret(), bodyJointMm()));
        return inOrder(rows);
    }

    /** {@return the nut and every fret up to the body joint} */
    public NeckStations stationsAtFrets() {
        List<NeckStation> rows = new ArrayList<>();
        rows.add(row("nut", 0));
        for (int n = 1; n <= Math.min(neck.frets(), neck.bodyAtFret()); n++) {
            rows.add(row("fret " + n, neck.scale().fretMm(n)));
        }
        return inOrder(rows);
    }

    /**
     * {@return stations evenly spaced from the nut on, the body joint last}
     *
     * @param step from one to the next, more than 0; at most 100,000 of them
     */
    public NeckStations stations(Quantity<Length> step) {
        double mm = LibraryUnits.mmPositive(step, "step of the stations");
        if (!(mm >= bodyJointMm() / MOST_STATIONS)) {
            throw LibraryUnits.refused(
                    "step of the stations",
                    "at-least",
                    style().brief(bodyJointMm() / MOST_STATIONS) + " or more",
                    step);
        }
        List<NeckStation> rows = new ArrayList<>();
        for (int i = 0; i * mm < bodyJointMm(); i++) {
            rows.add(row(null, i * mm));
        }
        rows.add(row(null, bodyJointMm()));
        return inOrder(rows);
    }

    /**
     * {@return the stations given}
     *
     * @param stations from the nut, in any order, one or more, none past the body joint
     */
    public NeckStations stations(List<? extends Quantity<Length>> stations) {
        if (Objects.requireNonNull(stations, "stations").isEmpty()) {
            throw Refusal.of("stations", "one", "be one or more", "were", "none");
        }
        return inOrder(stations.stream().map(this::row).toList());
    }

    private NeckStation row(Quantity<Length> station) {
        double x = LibraryUnits.mm(station, "station");
        if (!(x <= bodyJointMm())) {
            throw LibraryUnits.refused(
                    "station", "at-most", "no more than the body joint at " + style().brief(bodyJointMm()), station);
        }
        return row(null, x);
    }

    private NeckStation row(@Nullable String name, double x) {
        return new NeckStation(name, x, neck, back, wood);
    }

    private NeckStations inOrder(List<NeckStation> rows) {
        return new NeckStations(
                rows.stream()
                        .sorted(Comparator.comparingDouble(NeckStation::fromNutMm))
                        .toList(),
                style());
    }

    @Override
    protected Object[] parts() {
        return new Object[] {neck, back, wood, stock, cutter, open};
    }
}
