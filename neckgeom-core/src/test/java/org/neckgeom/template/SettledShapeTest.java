package org.neckgeom.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.OuterStrings;
import org.neckgeom.drawing.Xml;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.Fan;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.TunerPost;
import org.neckgeom.neck.Volute;
import org.neckgeom.page.Necks;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.Job;
import org.neckgeom.stock.Blank;
import org.w3c.dom.Document;

/** Strings, fanned frets, posts and the head's outline, measured on the templates and the page. */
class SettledShapeTest {

    private static final double READ = 0.01;
    private static final double SCALE = 560;

    /**
     * By hand: 3 mm in from the edges of a board of 34 mm, strings of 1 mm and 0.3 mm outermost reach from -13.5 mm to
     * 13.85 mm; 44 mm across at the saddle, from -21.5 mm to 21.85 mm; equal centres share both out in thirds.
     */
    private static final double[] NUT = {-13.5, -13.5 + 27.35 / 3, -13.5 + 2 * 27.35 / 3, 13.85};

    private static final double[] AT_SADDLE = {-21.5, -7.05, 7.4, 21.85};

    /** The plan's neck set puts the saddle 2.2 mm behind the scale of 560 mm. */
    private static final Job PLAN = Job.of(
            SampleNecks.octaveMandolin()
                    .head(SampleNecks.octaveMandolin()
                            .head()
                            .orElseThrow()
                            .tapered(mm(60), mm(76))
                            .posts(post(40, -22), post(75, -20), post(75, 20), post(40, 22)))
                    .fingerboard(SampleNecks.octaveMandolin().fingerboard().fretHeight(mm(1)))
                    .neckSet(Necks.octaveSet())
                    .strings(StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"), pitch("E4"))
                            .tensions(newton(95))
                            .diameters(mm(1), mm(0.8), mm(0.5), mm(0.3))
                            .across(Across.of(mm(3), mm(44)).equalCentres())),
            Necks.octavePlan().blank(),
            Necks.octavePlan().shop());

    private static final FannedFrets FAN =
            FannedFrets.of(Scale.of(mm(580)), Scale.of(mm(540)), OuterStrings.of(mm(26.5), mm(43)), 7);

    private static TunerPost post(double along, double aside) {
        return TunerPost.at(mm(along)).aside(mm(aside));
    }

    /** The same neck with frets fanned; strings even about the middle, so that the outer ones carry the two scales. */
    private static Job fanned() {
        return Job.of(withFan(SampleNecks.octaveMandolin().scale(FAN.centrelineScale())), PLAN.blank(), PLAN.shop());
    }

    /** Strings of 1 mm reach from -13.25 mm to 13.25 mm at the nut, from -21.5 mm to 21.5 mm at the saddle. */
    private static Neck withFan(Neck square) {
        return square.strings(StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"))
                        .tensions(newton(95))
                        .diameters(mm(1))
                        .across(Across.of(mm(3.25), mm(44))))
                .fannedFrets(Fan.between(mm(580), mm(540)).perpendicularAt(7));
    }

    @Test
    void plan_stringsRunFromTheirPlacesAtTheNutTowardThoseAtTheSaddle() {
        DxfFile dxf = new DxfFile(Template.of(PLAN).only(TemplatePart.PLAN).toDxf());
        List<DxfFile.Edge> strings = upwards(dxf.lines(Layer.STRINGS));
        Coordinate nut = middle(nut(dxf));
        double boardEnd = 560 * (1 - Math.pow(2, -21 / 12.0));

        assertEquals(4, strings.size());
        for (int i = 0; i < 4; i++) {
            DxfFile.Edge string = strings.get(i);
            double slope = (AT_SADDLE[i] - NUT[i]) / SCALE;
            assertEquals(0, string.number(10) - nut.x, READ);
            assertEquals(NUT[i], string.number(20) - nut.y, READ, "string " + i + " at the nut");
            assertEquals(boardEnd, string.number(11) - nut.x, READ);
            assertEquals(NUT[i] + slope * boardEnd, string.number(21) - nut.y, READ, "string " + i + " at the end");
        }
    }

    /** What a rule along the outer strings would read: the shares of equal temperament, of the longer and shorter scale. */
    @Test
    void plan_fannedFretsCutTheOuterStringsWhereTheRootOfTwoPutsThem() {
        DxfFile dxf = new DxfFile(Template.of(fanned()).only(TemplatePart.PLAN).toDxf());
        List<DxfFile.Edge> strings = upwards(dxf.lines(Layer.STRINGS));
        List<DxfFile.Edge> frets = dxf.lines(Layer.FRETS).stream()
                .sorted(Comparator.comparingDouble(e -> e.number(10) + e.number(11)))
                .toList();

        assertEquals(20, frets.size());
        double[] scales = {580, FAN.centrelineScale().libraryValue(), 540};
        for (int s = 0; s < 3; s++) {
            LineSegment string = segment(strings.get(s));
            for (int n = 1; n <= 20; n++) {
                Coordinate cut = string.lineIntersection(segment(frets.get(n - 1)));
                double sounding = scales[s] * Math.pow(2, -n / 12.0);
                assertEquals(scales[s] - sounding, cut.distance(string.p0), READ, "string " + s + ", fret " + n);
            }
        }
        // Fret 7 stands square, the nut's bass end lies toward the head and fret 20 leans the other way.
        assertEquals(0, frets.get(6).number(11) - frets.get(6).number(10), READ);
        LineSegment nut = segment(nut(dxf));
        assertTrue(nut.p0.x < nut.p1.x, "bass end of the nut");
        assertTrue(frets.get(19).number(10) > frets.get(19).number(11), "fret 20");
    }

    /** The board's straight edges: 34 mm at the nut's middle, 46 mm at the joint. */
    @Test
    void plan_fannedFretsEndOnTheBoardsEdges() {
        Job plan = fanned();
        DxfFile dxf = new DxfFile(Template.of(plan).only(TemplatePart.PLAN).toDxf());
        double joint = plan.neck().scale().lengthMm() * (1 - Math.pow(2, -14 / 12.0));
        LineSegment nut = segment(nut(dxf));
        Coordinate zero =
                nut.lineIntersection(segment(upwards(dxf.lines(Layer.STRINGS)).get(1)));

        for (DxfFile.Edge fret : dxf.lines(Layer.FRETS)) {
            for (int end : new int[] {10, 11}) {
                double x = fret.number(end) - zero.x;
                double y = fret.number(end + 10) - zero.y;
                assertEquals((34 + 12 * x / joint) / 2, Math.abs(y), READ, "at " + x);
            }
        }
    }

    @Test
    void head_isSawnToItsOutlineWhereItIsTold() {
        DxfFile dxf = new DxfFile(Template.of(PLAN).only(TemplatePart.HEAD).toDxf());
        List<Double> lengths =
                dxf.lines(Layer.OUTLINE).stream().map(DxfFile.Edge::length).toList();

        assertTrue(has(lengths, 76), "tip " + lengths);
        assertTrue(has(lengths, 60), "break line " + lengths);
        // 8 mm wider on either side over 185 mm.
        assertEquals(
                2, lengths.stream().filter(l -> near(l, Math.hypot(185, 8))).count(), lengths.toString());
        assertEquals(
                List.of(), envelope(dxf).stream().filter(e -> e.length() > 180).toList());
        DxfFile room = new DxfFile(
                Template.of(Necks.octavePlan()).only(TemplatePart.HEAD).toDxf());
        Coordinate nut = middle(nut(room));
        List<Double> edges = envelope(room).stream()
                .filter(DxfFile.Edge::isHorizontal)
                .map(e -> Math.abs(e.number(20) - nut.y))
                .sorted()
                .toList();
        // The seams of the wings on the blank of 61 mm, then the room of 76 mm.
        assertEquals(4, edges.size(), edges.toString());
        for (int i = 0; i < 4; i++) {
            assertEquals(i < 2 ? 30.5 : 38, edges.get(i), READ);
        }
    }

    @Test
    void head_stringsRunFromTheNutToTheirPosts() {
        DxfFile dxf = new DxfFile(Template.of(PLAN).only(TemplatePart.HEAD).toDxf());
        Coordinate nut = middle(nut(dxf));
        double[][] posts = {{40, -22}, {75, -20}, {75, 20}, {40, 22}};
        List<DxfFile.Edge> strings = dxf.lines(Layer.STRINGS);

        assertEquals(4, strings.size());
        for (int i = 0; i < 4; i++) {
            assertEquals(-posts[i][0], strings.get(i).number(10) - nut.x, READ);
            assertEquals(posts[i][1], strings.get(i).number(20) - nut.y, READ);
            assertEquals(0, strings.get(i).number(11) - nut.x, READ);
            assertEquals(NUT[i], strings.get(i).number(21) - nut.y, READ);
        }
    }

    /** A blank 61 mm wide reaches 0.5 mm past the break line's 60 mm: 185 (61 - 60)/(76 - 60) = 11.5625 mm along the head. */
    @Test
    void head_earsBeginWhereTheOutlineIsWiderThanTheBlank() {
        DxfFile dxf = new DxfFile(Template.of(PLAN).only(TemplatePart.HEAD).toDxf());
        Coordinate nut = middle(nut(dxf));
        List<DxfFile.Edge> seams =
                envelope(dxf).stream().filter(DxfFile.Edge::isHorizontal).toList();

        assertEquals(2, seams.size());
        for (DxfFile.Edge seam : seams) {
            assertEquals(30.5, Math.abs(seam.number(20) - nut.y), READ);
            assertEquals(-11.5625, seam.number(10) - nut.x, READ);
            assertEquals(-185, seam.number(11) - nut.x, READ);
        }
        Blank wide = Blank.ofLength(mm(640)).section(mm(80), mm(20));
        Job without = Job.of(PLAN.neck(), wide, PLAN.shop());
        assertEquals(
                List.of(),
                envelope(
                        new DxfFile(Template.of(without).only(TemplatePart.HEAD).toDxf())));
    }

    @Test
    void page_drawsEachStringAndPost() {
        Document page = Xml.parsed(Sheet.of(PLAN).toHtml());
        Document plain = Xml.parsed(Sheet.of(Necks.octavePlan()).toHtml());

        assertEquals(8, Xml.all(page, "polyline", "string").size(), "four over the board, four over the head");
        assertEquals(8, Xml.all(page, "circle", "post").size(), "four in the neck, four in the plan");
        assertEquals(0, Xml.all(plain, "polyline", "string").size(), "none where none are given");
    }

    @Test
    void page_listsBothEndsOfFannedFrets() {
        String text = Sheet.of(fanned()).toText();

        assertTrue(text.contains("Fanned frets, from the nut's middle"), text);
        assertTrue(text.contains("treble edge"), text);
    }

    @Test
    void design_takesItsScaleFromTheFan_andRefusesAnother() {
        // Half of both runs: sqrt(580^2 - 8.25^2) and sqrt(540^2 - 8.25^2), where the spread grows by 16.5 mm.
        double runs = (Math.sqrt(580 * 580 - 8.25 * 8.25) + Math.sqrt(540 * 540 - 8.25 * 8.25)) / 2;

        assertEquals(runs, FAN.centrelineScale().libraryValue(), 1e-9);
        assertEquals(runs, fanned().neck().scale().lengthMm(), 1e-9);
        assertEquals(
                "scale must be 559.939 mm, that of the fanned frets on the centreline, but was 560 mm",
                assertThrows(IllegalArgumentException.class, () -> withFan(SampleNecks.octaveMandolin()))
                        .getMessage());
    }

    /** By hand: 14.5 mm at fret 1 and 16.5 mm at fret 12 run on to 14.37 mm at the nut; 3 mm more with a volute. */
    @Test
    void side_showsTheVoluteAtTheNut() {
        Neck plain = SampleNecks.octaveMandolin();
        Neck voluted = plain.back(plain.back().volute(Volute.of(mm(3), mm(30))));
        double first = 560 * (1 - Math.pow(2, -1 / 12.0));
        double atNut = 14.5 - 2 * first / (280 - first);

        assertEquals(atNut, deepestAtNut(plain), READ);
        assertEquals(atNut + 3, deepestAtNut(voluted), READ);
    }

    /** How far the back's outline lies below the glue face at the nut. */
    private static double deepestAtNut(Neck design) {
        DxfFile dxf = new DxfFile(Template.of(design).only(TemplatePart.SIDE).toDxf());
        List<DxfFile.Edge> centre = dxf.lines(Layer.CENTRE).stream()
                .filter(line -> Math.abs(line.number(10) - line.number(11)) < READ)
                .sorted(Comparator.comparingDouble(line -> line.number(10)))
                .toList();
        DxfFile.Edge nut = centre.get(0);
        double span = Math.abs(nut.number(20) - nut.number(21));
        return span - design.boardThicknessAtMm(0) - 2 * 6; // the line runs 6 mm on
    }

    private static boolean has(List<Double> lengths, double wanted) {
        return lengths.stream().anyMatch(length -> near(length, wanted));
    }

    private static boolean near(double length, double wanted) {
        return Math.abs(length - wanted) < READ;
    }

    private static List<DxfFile.Edge> envelope(DxfFile dxf) {
        return dxf.lines(Layer.ENVELOPE);
    }

    /** The nut, bass end first: of the outline's lines across the neck the one 34 mm long, or a little more where it is slanted. */
    private static DxfFile.Edge nut(DxfFile dxf) {
        return dxf.lines(Layer.OUTLINE).stream()
                .filter(line -> Math.abs(line.number(21) - line.number(20)) > 30
                        && Math.abs(line.number(21) - line.number(20)) < 36)
                .map(line -> line.number(20) < line.number(21) ? line : new DxfFile.Edge(line.to(), line.from(), 0))
                .findFirst()
                .orElseThrow();
    }

    private static Coordinate middle(DxfFile.Edge line) {
        return segment(line).midPoint();
    }

    private static LineSegment segment(DxfFile.Edge line) {
        return new LineSegment(line.number(10), line.number(20), line.number(11), line.number(21));
    }

    /** From bass to treble: the templates have the bass side below. */
    private static List<DxfFile.Edge> upwards(List<DxfFile.Edge> lines) {
        return lines.stream()
                .sorted(Comparator.comparingDouble(line -> line.number(20)))
                .toList();
    }
}
