package org.neckgeom.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.neckgeom.channel.JigPlay;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.RandomPlans;
import org.neckgeom.drawing.Settled;
import org.neckgeom.drawing.Shown;
import org.neckgeom.drawing.Xml;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.neck.HeelJoint;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Tenon;
import org.neckgeom.page.Necks;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.MeasuredNeck;
import org.neckgeom.plan.NeckFeature;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;
import org.neckgeom.solid.ChannelJig;
import org.neckgeom.solid.JigCut;
import org.neckgeom.solid.NeckSolid;
import org.neckgeom.testing.Approved;
import org.neckgeom.text.Numbers;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Templates parsed back and measured: what a rule on the print would read. */
class TemplateTest {

    private static final double READ = 0.01;

    private static final Template OCTAVE = Template.of(Necks.octavePlan());
    private static final Template BASS = Template.of(Necks.bass());

    @Test
    void toSvg_isTheApprovedOne() {
        Approved.hold(
                "template",
                Map.of(
                        "octave-template.svg",
                        Template.of(SampleNecks.octaveMandolin()).toSvg(),
                        "bass-template.svg",
                        BASS.toSvg()));
    }

    @Test
    void toDxf_isTheApprovedOne() {
        Approved.hold(
                "template",
                Map.of(
                        "octave-template.dxf",
                        Template.of(SampleNecks.octaveMandolin()).toDxf()));
    }

    @Test
    void toSvg_isAsLargeInMillimetresAsItsUnitsSay() {
        for (Template template : List.of(OCTAVE, BASS)) {
            Element svg = Xml.parsed(template.toSvg()).getDocumentElement();
            String[] box = svg.getAttribute("viewBox").split(" ");

            assertEquals(box[2] + "mm", svg.getAttribute("width"));
            assertEquals(box[3] + "mm", svg.getAttribute("height"));
        }
    }

    @Test
    void toSvg_hasBarsOfHundredMillimetresAndFourInches() {
        for (Template template : List.of(OCTAVE, BASS)) {
            List<Double> level = new ArrayList<>();
            List<Double> upright = new ArrayList<>();
            for (Element line : lines(Xml.parsed(template.toSvg()), "scale")) {
                double du = Xml.number(line, "x2") - Xml.number(line, "x1");
                double dv = Xml.number(line, "y2") - Xml.number(line, "y1");
                if (dv == 0) {
                    level.add(Math.abs(du));
                } else {
                    upright.add(Math.abs(dv));
                }
            }
            int parts = template.parts().size();

            assertEquals(
                    parts, level.stream().filter(l -> Math.abs(l - 100) < 1e-4).count());
            // 4 in is 101.6 mm: the international inch, 25.4 mm exactly (1959).
            assertEquals(
                    parts,
                    level.stream().filter(l -> Math.abs(l - 101.6) < 1e-4).count());
            assertEquals(
                    1, upright.stream().filter(l -> Math.abs(l - 100) < 1e-4).count());
        }
    }

    /** Sections are of the neck as it is: under its back as carved the channel as cut, 11.5 deep at every one of them. */
    @Test
    void toDxf_sectionsHaveTheChannelThatWasCut() {
        Job read = Necks.octavePlan()
                .measured(MeasuredNeck.none().read(NeckFeature.CHANNEL_DEPTH, Estimate.of(mm(11.5), mm(0.02))));
        List<Double> walls = new DxfFile(
                        Template.of(read).only(TemplatePart.SECTIONS).toDxf())
                .lines(Layer.CHANNEL).stream()
                        .filter(line -> !line.isHorizontal())
                        .map(DxfFile.Edge::length)
                        .toList();

        assertFalse(walls.isEmpty());
        walls.forEach(wall -> assertEquals(11.5, wall, 1e-6));
    }

    @Test
    void toDxf_hasBarsOfHundredMillimetresAndFourInches() {
        DxfFile dxf = new DxfFile(OCTAVE.toDxf());
        List<Double> level = dxf.lines(Layer.SCALE).stream()
                .filter(DxfFile.Edge::isHorizontal)
                .map(DxfFile.Edge::length)
                .toList();

        int parts = OCTAVE.parts().size();
        assertEquals(parts, level.stream().filter(l -> Math.abs(l - 100) < 1e-6).count());
        assertEquals(
                parts, level.stream().filter(l -> Math.abs(l - 101.6) < 1e-6).count());
    }

    /**
     * A taper jig measured on its drawing: the octave mandolin is 34 mm wide at the nut, 46 at the body joint; bush 16 about a cutter of
     * 12 lies 2 mm inside, so the edges are 30 and 42 apart (square to the taper 0.0004 more), the pins 260 apart.
     */
    @Test
    void toDxf_taperJigIsThatFarInsideTheSides() {
        ChannelJig jig = ChannelJig.of(JigCut.TAPER, NeckSolid.of(SampleNecks.octaveMandolin()))
                .guided(mm(16), mm(12))
                .located(JigPlay.at(mm(20), mm(280)).play(mm(0.05)));
        Template template = Template.of(jig);
        DxfFile dxf = new DxfFile(template.toDxf());
        List<DxfFile.Edge> edges = dxf.lines(Layer.OUTLINE);

        assertEquals(List.of(TemplatePart.JIG), template.parts());
        assertEquals(2, edges.size());
        assertEquals(
                30, Math.abs(edges.get(0).from().vMm() - edges.get(1).from().vMm()), 2e-3);
        assertEquals(42, Math.abs(edges.get(0).to().vMm() - edges.get(1).to().vMm()), 2e-3);
        assertThrows(IllegalArgumentException.class, () -> OCTAVE.only(TemplatePart.JIG));
        assertThrows(IllegalArgumentException.class, () -> template.only(TemplatePart.SAW_MARKS));
    }

    /** A dovetail measured on the drawing: 36 and 28 mm across at the glue face, 15 mm apart. */
    @Test
    void toDxf_dovetailIsAsWideAsToldOnBothViews() {
        Dovetail seat =
                Dovetail.tapered(deg(3)).length(mm(15)).widths(mm(36), mm(28)).height(mm(66));
        Job plan = joined(seat);
        assertEquals(
                Arrays.stream(TemplatePart.values())
                        .filter(part -> part != TemplatePart.JIG)
                        .toList(),
                Template.of(plan).parts());

        List<DxfFile.Edge> lines =
                new DxfFile(Template.of(plan).only(TemplatePart.JOINT).toDxf()).lines(Layer.OUTLINE);

        // The end face from above, and the sides as they are sawn on the glue face: 4 mm of flare over 15 mm.
        // From above, and its upper edge from the end.
        assertEquals(2, lines.stream().filter(l -> near(l.length(), 36)).count());
        assertEquals(
                2,
                lines.stream().filter(l -> near(l.length(), Math.hypot(15, 4))).count());
        // From the end: 66 tan 3 deg sqrt(1 + (4/15)^2) in on each side of the end's 36 mm.
        double in = 66 * Math.tan(Math.toRadians(3)) * Math.sqrt(1 + 16 / 225.0);
        assertEquals(
                1, lines.stream().filter(l -> near(l.length(), 36 - 2 * in)).count());
        assertEquals(
                2,
                lines.stream().filter(l -> near(l.length(), Math.hypot(66, in))).count());
    }

    @Test
    void toDxf_tenonHasItsHolesWhereTold() {
        Tenon tenon = Tenon.of(mm(76), mm(20)).holes(mm(10), mm(0.8)).at(mm(28.5), mm(57.5));
        Job plan = joined(tenon);

        DxfFile dxf = new DxfFile(Template.of(plan).only(TemplatePart.JOINT).toDxf());

        List<Polyline> holes = dxf.closed(Layer.OUTLINE).stream()
                .filter(outline -> outline.areaMm2() < 0)
                .toList();
        assertEquals(2, holes.size(), "two circles, clockwise as holes run");
        List<DxfFile.Edge> arcs = dxf.arcs(Layer.OUTLINE);
        assertEquals(4, arcs.size(), "two halves each");
        double top = arcs.stream().mapToDouble(a -> a.centre().vMm()).max().orElseThrow();
        double low = arcs.stream().mapToDouble(a -> a.centre().vMm()).min().orElseThrow();
        assertEquals(29, top - low, READ, "57.5 - 28.5");
        assertTrue(arcs.stream().allMatch(a -> near(a.radius(), 5)), "radius");
    }

    /** The board's marks in the drawing are those of the board: at each edge, straight between. */
    @Test
    void sawMarks_lieWhereTheBoardHasThem() {
        Job job = Necks.octavePlan();
        ScarfBoard board = job.plan().scarfBoard().orElseThrow();
        DxfFile dxf = new DxfFile(Template.of(job).only(TemplatePart.SAW_MARKS).toDxf());
        double half = job.blank().widthMm() / 2;
        DxfFile.Edge face = dxf.lines(Layer.CUT).get(0);
        DxfFile.Edge back = dxf.lines(Layer.ENVELOPE).get(0);

        assertEquals(1, dxf.lines(Layer.CUT).size());
        assertEquals(2 * half, face.length(), 1e-6);
        // The shaft's end lies to the right, so the back's mark is farther left.
        assertEquals(
                board.shaftCut().backMark().libraryValue()
                        - board.shaftCut().faceMark().libraryValue(),
                face.number(10) - back.number(10),
                1e-6);
        assertEquals(
                List.of(
                        "1 saw, face: "
                                + new Shown(job.style())
                                        .length(board.shaftCut().faceMark().libraryValue()) + " from the shaft's end",
                        "2 saw, back: "
                                + new Shown(job.style())
                                        .length(board.shaftCut().backMark().libraryValue()) + " from the shaft's end"),
                dxf.words(Layer.TEXT).stream()
                        .filter(text -> text.contains("from the shaft's end"))
                        .toList());
    }

    /** The head's back is its face in a mirror: the same area, and each post as far on the other side of the neck's axis. */
    @Test
    void headBack_isTheMirrorImageOfItsFace() {
        Template face = OCTAVE.only(TemplatePart.HEAD);
        Template back = OCTAVE.only(TemplatePart.HEAD_BACK);

        assertEquals(area(new DxfFile(face.toDxf())), area(new DxfFile(back.toDxf())), 1e-4);
        assertEquals(
                List.of("BACK, bass side", "BACK, treble side"),
                new DxfFile(back.toDxf())
                        .words(Layer.TEXT).stream()
                                .filter(text -> text.startsWith("BACK"))
                                .toList());
    }

    private static double area(DxfFile dxf) {
        return dxf.outlines.stream()
                .filter(outline -> outline.line().isClosed())
                .mapToDouble(outline -> outline.line().areaMm2())
                .max()
                .orElseThrow();
    }

    @Test
    void only_refusesAJointThatIsNotTold() {
        Template template = Template.of(Necks.octavePlan());

        assertFalse(template.parts().contains(TemplatePart.JOINT));
        assertThrows(IllegalArgumentException.class, () -> template.only(TemplatePart.JOINT));
    }

    /** The octave's plan before any reading, its heel held by a joint. */
    private static Job joined(HeelJoint joint) {
        Job octave = Necks.octavePlan();
        return Job.of(
                        octave.neck().heel(octave.neck().heel().orElseThrow().joint(joint)),
                        octave.blank(),
                        octave.shop())
                .trialCut(octave.steps().get(0).cut().orElseThrow());
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) < READ;
    }

    /** Equal temperament (Mersenne, Harmonie universelle, 1636): each fret leaves a twelfth root of 2 of the string. */
    @Test
    void toDxf_fretsLieWhereTheRootOfTwoPutsThem() {
        DxfFile dxf = new DxfFile(OCTAVE.only(TemplatePart.PLAN).toDxf());
        double nut = nutOf(dxf);
        List<DxfFile.Edge> frets = sortedByX(dxf.lines(Layer.FRETS));

        assertEquals(20, frets.size());
        double sounding = 560;
        for (int n = 1; n <= 20; n++) {
            sounding /= Math.pow(2, 1 / 12.0);
            DxfFile.Edge fret = frets.get(n - 1);
            assertEquals(560 - sounding, fret.number(10) - nut, READ, "fret " + n);
            // 34 mm at the nut, 46 mm at the 14th fret, straight between and beyond.
            double joint = 560 * (1 - Math.pow(2, -14 / 12.0));
            double width = 34 + 12 * (560 - sounding) / joint;
            assertEquals(width, fret.length(), READ, "width at fret " + n);
        }
    }

    @Test
    void toSvg_fretsLieWhereTheRootOfTwoPutsThem_inInchesToo() {
        Document svg = Xml.parsed(BASS.only(TemplatePart.PLAN).toSvg());
        List<Element> frets = lines(svg, "frets").stream()
                .sorted(Comparator.comparingDouble(e -> Xml.number(e, "x1")))
                .toList();
        double first = 34 * 25.4 * (1 - Math.pow(2, -1 / 12.0));
        double last = 34 * 25.4 * (1 - Math.pow(2, -24 / 12.0));

        assertEquals(24, frets.size());
        assertEquals(
                last - first,
                Xml.number(frets.get(23), "x1") - Xml.number(frets.get(0), "x1"),
                READ,
                "fret 1 to fret 24");
        double width = Math.abs(Xml.number(frets.get(16), "y1") - Xml.number(frets.get(16), "y2"));
        assertEquals(2.3 * 25.4, width, READ, "width at the body joint, fret 17");
    }

    /** The octave's section is half an ellipse, 34.12 by 14.27 mm and more: each point must satisfy the ellipse's equation. */
    @Test
    void toDxf_sectionsAreTheHalfEllipsesAsked() {
        double joint = 560 * (1 - Math.pow(2, -14 / 12.0));
        double fret1 = 560 * (1 - Math.pow(2, -1 / 12.0));
        double fret12 = 280;
        double fret5 = 560 * (1 - Math.pow(2, -5 / 12.0));
        double a = (34 + 12 * fret5 / joint) / 2;
        double b = 14.5 + 2 * (fret5 - fret1) / (fret12 - fret1);
        DxfFile dxf = new DxfFile(OCTAVE.only(TemplatePart.SECTIONS).toDxf());
        // The second section of the upper row is that of fret 5; its middle is the upper right upright centreline.
        List<DxfFile.Edge> middles = sortedByX(dxf.lines(Layer.CENTRE).stream()
                .sorted(Comparator.comparingDouble(e -> -e.number(20)))
                .limit(2)
                .toList());
        double middle = middles.get(1).number(10);
        double face = middles.get(1).number(20) + b + 3;
        double worst = 0;
        int points = 0;
        for (DxfFile.Edge line : dxf.lines(Layer.BACK)) {
            double y1 = line.number(10) - middle;
            double z1 = line.number(20) - face;
            double y2 = line.number(11) - middle;
            double z2 = line.number(21) - face;
            boolean other = Math.max(Math.abs(y1), Math.abs(y2)) > a + READ
                    || Math.max(z1, z2) > 1e-5
                    || Math.min(z1, z2) < -b - READ;
            boolean glueFace = Math.abs(z1) < 1e-5 && Math.abs(z2) < 1e-5;
            if (other || glueFace) {
                continue;
            }
            points++;
            // Distance from the ellipse to first order: the equation over its gradient, at the chord's end and middle.
            for (double[] p : new double[][] {{y1, z1}, {(y1 + y2) / 2, (z1 + z2) / 2}}) {
                double f = p[0] * p[0] / (a * a) + p[1] * p[1] / (b * b) - 1;
                worst = Math.max(worst, Math.abs(f) / (2 * Math.hypot(p[0] / (a * a), p[1] / (b * b))));
            }
        }

        assertTrue(points > 80, "chords of the back: " + points);
        assertTrue(worst < 0.005, "chords leave the ellipse by " + worst + " mm");
    }

    @Test
    void section_ofEveryExponent_staysWithinFiveMicrometres() {
        for (double power : new double[] {1, 1.5, 2, 2.5, 3.5, 6, 20}) {
            Neck neck = SampleNecks.octaveMandolin()
                    .back(SampleNecks.octaveMandolin().back().power(power));
            NeckShape shape = new NeckShape(neck, Settled.nothing());
            double a = shape.halfWidth(100);
            double b = neck.backDepthAtMm(100);
            List<Spot> points = shape.section(100);
            double worst = 0;
            for (int i = 1; i < points.size(); i++) {
                double y = Math.abs(points.get(i).uMm() + points.get(i - 1).uMm()) / 2 / a;
                double z = Math.abs(points.get(i).vMm() + points.get(i - 1).vMm()) / 2 / b;
                double f = Math.pow(y, power) + Math.pow(z, power) - 1;
                double slope = Math.hypot(power * Math.pow(y, power - 1) / a, power * Math.pow(z, power - 1) / b);
                worst = Math.max(worst, Math.abs(f) / slope);
            }
            assertTrue(worst < 0.005, "exponent " + power + ": " + worst + " mm");
        }
    }

    @Test
    void toDxf_crownsAreArcsOfTheBoardsRadius() {
        DxfFile dxf = new DxfFile(OCTAVE.only(TemplatePart.SECTIONS).toDxf());
        List<DxfFile.Edge> arcs = dxf.arcs(Layer.OUTLINE);

        assertEquals(4, arcs.size());
        for (DxfFile.Edge arc : arcs) {
            assertEquals(400, arc.radius(), 1e-6);
            assertTrue(arc.length() > 34 && arc.length() < 46, "as wide as the board: " + arc.length());
            assertTrue(arc.bulge() > 0 && arc.from().uMm() > arc.to().uMm(), "over the strings' side");
        }
    }

    /** A circle's chord 24 in with a sagitta of 0.04 in has the radius (12^2 + 0.04^2)/(2 0.04) = 1800.02 in. */
    @Test
    void toDxf_archedChannelIsATrueArc() {
        DxfFile dxf = new DxfFile(BASS.only(TemplatePart.SIDE).toDxf());
        List<DxfFile.Edge> arcs = dxf.arcs(Layer.CHANNEL);

        assertEquals(1, arcs.size(), "up to the pocket at the heel end");
        assertEquals(1800.02 * 25.4, arcs.get(0).radius(), 1e-3);
        assertEquals(23, arcs.get(0).angle() * 1800.02, 1e-3, "24 in less the pocket's 1 in");
        assertEquals(1, dxf.closed(Layer.CHANNEL).size(), "one outline, floor and pocket in it");
    }

    /** Scarf in the head, 13 deg: glue face 15/sin 13 deg = 66.681 mm, its front end 20/sin 13 deg from the nut. */
    @Test
    void toDxf_scarfLineIsAsLongAsTheGlueFace() {
        DxfFile side = new DxfFile(OCTAVE.only(TemplatePart.SIDE).toDxf());
        List<DxfFile.Edge> glue = side.lines(Layer.CUT);

        assertEquals(1, glue.size());
        assertEquals(15 / Math.sin(Math.toRadians(13)), glue.get(0).length(), READ);
        DxfFile head = new DxfFile(OCTAVE.only(TemplatePart.HEAD).toDxf());
        double nut = head.lines(Layer.OUTLINE).stream()
                .filter(l -> l.number(10) == l.number(11) && Math.abs(l.length() - 34) < READ)
                .findFirst()
                .orElseThrow()
                .number(10);
        double line = head.lines(Layer.CUT).get(0).number(10);
        assertEquals(20 / Math.sin(Math.toRadians(13)), nut - line, READ);
    }

    @Test
    void toDxf_headIsPitchedAsAsked() {
        DxfFile side = new DxfFile(OCTAVE.only(TemplatePart.SIDE).toDxf());
        DxfFile.Edge face = side.lines(Layer.OUTLINE).stream()
                .filter(l -> Math.abs(l.length() - 185) < READ)
                .findFirst()
                .orElseThrow();
        double pitch = Math.atan2(face.number(20) - face.number(21), face.number(10) - face.number(11));

        assertEquals(13, Math.toDegrees(pitch), 0.001);
    }

    @Test
    void toPages_everyPageIsOfThePaper_andNeighboursOverlap() {
        for (Paper paper : Paper.values()) {
            Document pages = Xml.parsed(OCTAVE.toPages(paper));
            List<Element> windows = Xml.all(pages, "svg");
            assertTrue(windows.size() >= 5, "the map and a page for each part at least");
            for (Element window : windows) {
                double[] box = box(window);
                assertEquals(paper.acrossMm() - 20, box[2], 1e-9);
                assertEquals(paper.downMm() - 20, box[3], 1e-9);
                assertEquals(
                        window.getAttribute("width"),
                        window.getAttribute("viewBox").split(" ")[2] + "mm");
            }
            double[] first = box(windows.get(1));
            double[] second = box(windows.get(2));
            assertEquals(10, first[0] + first[2] - second[0], 1e-9, "overlap");
            assertTrue(sharedCross(windows.get(1), windows.get(2)), "a cross on both pages");
        }
    }

    private static boolean sharedCross(Element one, Element other) {
        double[] a = box(one);
        double[] b = box(other);
        List<String> crosses = crosses(one, a, b);
        crosses.retainAll(crosses(other, a, b));
        return crosses.size() >= 2;
    }

    /** Middles of level strokes of 8 mm on the check layer that lie in both windows. */
    private static List<String> crosses(Element window, double[] a, double[] b) {
        List<String> middles = new ArrayList<>();
        for (Element line : Xml.all(window, "line")) {
            double u1 = Xml.number(line, "x1");
            double u2 = Xml.number(line, "x2");
            double v = Xml.number(line, "y1");
            boolean level = v == Xml.number(line, "y2") && Math.abs(Math.abs(u2 - u1) - 8) < 1e-6;
            if (level && u1 >= b[0] && u2 <= a[0] + a[2] && v >= a[1] && v <= a[1] + a[3]) {
                middles.add((u1 + u2) / 2 + " " + v);
            }
        }
        return middles;
    }

    private static double[] box(Element svg) {
        return Arrays.stream(svg.getAttribute("viewBox").split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    @Test
    void only_refusesNoParts_andAHeadThatIsNotTold() {
        assertEquals(
                "parts of a template must be 1 or more, but there were none",
                assertThrows(IllegalArgumentException.class, OCTAVE::only).getMessage());
        Template headless = Template.of(Neck.named("stick")
                .scale(mm(500))
                .fingerboard(SampleNecks.octaveMandolin().fingerboard())
                .back(SampleNecks.octaveMandolin().back()));
        assertEquals(List.of(TemplatePart.PLAN, TemplatePart.SIDE, TemplatePart.SECTIONS), headless.parts());
        assertEquals(
                "\"stick\" must have a head for this, but has none: add .head(...)",
                assertThrows(IllegalArgumentException.class, () -> headless.only(TemplatePart.HEAD))
                        .getMessage());
    }

    @Test
    void names_areNotMarkup() {
        Document svg = Xml.parsed(BASS.toSvg());

        assertTrue(Xml.all(svg, "text").stream()
                .anyMatch(text -> text.getTextContent().equals("Bass <four> & \"flat\" head")));
        assertTrue(
                new DxfFile(Template.of(SampleNecks.octaveMandolin().frets(12)).toDxf()).outlines.size() > 40);
    }

    @Test
    void equals_isByWhatIsDrawn() {
        assertEquals(Template.of(SampleNecks.octaveMandolin()), Template.of(SampleNecks.octaveMandolin()));
        assertEquals(
                Template.of(SampleNecks.octaveMandolin()).hashCode(),
                Template.of(SampleNecks.octaveMandolin()).hashCode());
        assertNotEquals(Template.of(SampleNecks.octaveMandolin()), OCTAVE);
        assertFalse(OCTAVE.equals(OCTAVE.only(TemplatePart.PLAN)));
        assertTrue(OCTAVE.toString().contains("plan, side, sections, head"), OCTAVE.toString());
    }

    /** The board's end nearest the head. */
    private static double nutOf(DxfFile dxf) {
        return dxf.lines(Layer.OUTLINE).stream()
                .filter(line -> line.number(10) == line.number(11))
                .mapToDouble(line -> line.number(10))
                .min()
                .orElseThrow();
    }

    private static List<DxfFile.Edge> sortedByX(List<DxfFile.Edge> lines) {
        return lines.stream()
                .sorted(Comparator.comparingDouble(e -> e.number(10)))
                .toList();
    }

    private static List<Element> lines(Document svg, String layer) {
        return Xml.all(svg, "g", layer).stream()
                .flatMap(group -> Xml.all(group, "line").stream())
                .toList();
    }

    /** Writes down what is drawn on it. */
    private static final class Record implements TemplateCanvas {
        private final StringBuilder drawn = new StringBuilder();

        @Override
        public void window(double leftMm, double bottomMm, double widthMm, double heightMm) {
            line("window", leftMm, bottomMm, widthMm, heightMm);
        }

        @Override
        public void pen(double widthMm, double... dashesMm) {
            line("pen " + Numbers.trimmed(widthMm, 4), dashesMm);
        }

        @Override
        public void through(double... uvMm) {
            line("through", uvMm);
        }

        @Override
        public void words(double uMm, double vMm, double sizeMm, boolean centred, String text) {
            line((centred ? "centred " : "words ") + text, uMm, vMm, sizeMm);
        }

        private void line(String what, double... figures) {
            drawn.append(what);
            for (double figure : figures) {
                drawn.append(' ').append(Numbers.trimmed(figure, 3));
            }
            drawn.append('\n');
        }
    }

    private static String drawn(TemplatePage page) {
        Record record = new Record();
        page.drawOn(record);
        return record.drawn.toString();
    }

    @Test
    void pages_drawTheApprovedLines() {
        List<TemplatePage> pages = OCTAVE.pages(Paper.A4);
        List<TemplatePage> letter = Template.of(RandomPlans.of(3)).pages(Paper.LETTER);

        Approved.hold(
                "template",
                Map.of(
                        "octave-map-a4.txt", drawn(pages.get(0)),
                        "octave-page-a4.txt", drawn(pages.get(1)),
                        "other-map-letter.txt", drawn(letter.get(0)),
                        "other-pages-letter.txt",
                                letter.stream()
                                        .map(page -> page + ", " + page.left() + ", " + page.bottom() + "\n")
                                        .collect(java.util.stream.Collectors.joining()),
                        "other-template.svg", Template.of(RandomPlans.of(3)).toSvg()));
    }

    /** By hand: the window's corner lies 10 mm into the paper; an arc of 10 mm and a quarter turn is 1 part in 5,000 off. */
    @Test
    void drawOn_movesMarksOntoThePaperAndKeepsToArcs() {
        Mark.Stroke run = Mark.Stroke.through(Layer.SCALE, 100, 50, 120, 55);
        Mark.Stroke arc = new Mark.Stroke(
                Layer.SCALE,
                Polyline.open(List.of(new Spot(120, 60), new Spot(110, 70))).bulged(Math.tan(Math.PI / 8), 0));
        Mark.Words words = new Mark.Words(new Spot(101, 51), 3, true, "mark");
        TemplatePage page = new TemplatePage(Paper.A4, "sheet", List.of(run, arc, words), 100, 50);

        String drawn = drawn(page);

        assertTrue(drawn.startsWith("window 9.8 9.8 277.4 190.4\n"), drawn);
        assertTrue(drawn.contains("through 10 10 30 15\n"), drawn);
        assertTrue(drawn.contains("centred mark 11 11 3\n"), drawn);
        assertTrue(drawn.endsWith("window 0 0 297 210\nwords sheet 10 203.5 2.6\n"), drawn);
        String chords = drawn.lines()
                .filter(line -> line.startsWith("through 30 20"))
                .findFirst()
                .orElseThrow();
        double[] uv = Arrays.stream(chords.substring(8).split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        assertEquals(20, uv[uv.length - 2], 0.001);
        assertEquals(30, uv[uv.length - 1], 0.001);
        for (int i = 0; i < uv.length; i += 2) {
            assertEquals(10, Math.hypot(uv[i] - 20, uv[i + 1] - 20), 0.001);
            if (i > 0) {
                double half = Math.hypot(uv[i] - uv[i - 2], uv[i + 1] - uv[i - 1]) / 2;
                double sagitta = 10 - Math.sqrt(100 - half * half);
                assertTrue(sagitta < 0.0022 && sagitta > 0.0005, "leaves the arc by " + sagitta);
            }
        }
    }

    @Test
    void pages_areEqualForTheSameDrawing() {
        List<TemplatePage> pages = OCTAVE.pages(Paper.A4);
        List<TemplatePage> again = Template.of(Necks.octavePlan()).pages(Paper.A4);

        assertEquals(pages, again);
        assertEquals(pages.get(1).hashCode(), again.get(1).hashCode());
        assertNotEquals(pages.get(1), pages.get(2));
        assertNotEquals(pages.get(1).hashCode(), pages.get(2).hashCode());
        assertNotEquals(pages.get(1), OCTAVE.pages(Paper.LETTER).get(1));
        assertFalse(pages.get(1).equals("page"));
        assertTrue(pages.get(1).toString().endsWith(", on A4"));
    }

    @Test
    void toSvg_ofTheJointsIsTheApprovedOne() {
        Dovetail seat =
                Dovetail.tapered(deg(3)).length(mm(15)).widths(mm(36), mm(28)).height(mm(66));
        Tenon tenon = Tenon.of(mm(76), mm(20)).holes(mm(10), mm(0.8)).at(mm(28.5), mm(57.5));

        Approved.hold(
                "template",
                Map.of(
                        "dovetail-template.svg",
                        Template.of(joined(seat)).toSvg(),
                        "tenon-template.svg",
                        Template.of(joined(tenon)).toSvg()));
    }
}
