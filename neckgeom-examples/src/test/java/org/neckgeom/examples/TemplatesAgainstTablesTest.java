package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.TunerPost;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.Job;
import org.neckgeom.shape.Plane;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;
import org.neckgeom.solid.NeckStation;
import org.neckgeom.template.Template;
import org.neckgeom.template.TemplatePart;
import org.neckgeom.units.LengthStyle;

/**
 * The templates read back from their DXF, and the page's side view from its picture, measured against the tables at every printed
 * station, for every shipped neck in every style.
 */
class TemplatesAgainstTablesTest {

    /** Chords along the neck leave its curve by 0.02 mm at most; nine decimals are written. */
    private static final double CHORD = 0.02 + 1e-6;

    /** What nine decimals of the drawing and twelve figures of the table leave. */
    private static final double WRITTEN = 1e-6;

    static Stream<Arguments> necks() {
        return ShippedNecks.names().stream()
                .flatMap(name -> Stream.of(LengthStyle.values()).map(style -> Arguments.of(name, style)));
    }

    @ParameterizedTest
    @MethodSource("necks")
    void sideView_isAsDeepAsTheTableAtEveryStation(String name, LengthStyle style) {
        Job job = NeckFile.read(name).printIn(style);
        String dxf = Template.of(job).only(TemplatePart.SIDE).toDxf();
        // The glue face is drawn first, from the nut line on.
        Spot nut = polylines(dxf, "OUTLINE").get(0).spots().get(0);
        Polyline back = polylines(dxf, "BACK").get(0);

        List<NeckStation> rows = job.plan().solid().stations().rows().stream()
                .filter(row ->
                        row.fromNutMm() >= 0 && row.fromNutMm() <= job.neck().bodyJointMm())
                .toList();

        assertThat(rows).hasSizeGreaterThan(8);
        for (NeckStation row : rows) {
            double drawn = nut.vMm() - heightAt(back, nut.uMm() + row.fromNutMm());
            assertThat(drawn)
                    .as("%s in %s at %s", name, style, row.fromNutMm())
                    .isCloseTo(row.depth().libraryValue(), within(CHORD));
        }
    }

    @ParameterizedTest
    @MethodSource("necks")
    void sections_areAsWideAndDeepAsTheTable(String name, LengthStyle style) {
        Job job = NeckFile.read(name).printIn(style);
        List<Polyline> backs =
                polylines(Template.of(job).only(TemplatePart.SECTIONS).toDxf(), "BACK");

        assertThat(backs).hasSize(4);
        for (Polyline back : backs) {
            double[] box = back.extentsMm();
            double width = box[2] - box[0];
            double depth = box[3] - box[1];
            // The station from the width, which runs straight along the neck.
            double half = job.neck().halfWidthAtMm(0);
            double growth = (job.neck().halfWidthAtMm(100) - half) / 100;
            double x = (width / 2 - half) / growth;
            assertThat(depth)
                    .as("%s in %s at %s", name, style, x)
                    .isCloseTo(job.plan().floorThickness().back().depthAtMm(x), within(1e-4));
        }
    }

    @ParameterizedTest
    @MethodSource("necks")
    void plan_isAsWideAsTheTableAtEveryStation(String name, LengthStyle style) {
        Job job = NeckFile.read(name).printIn(style);
        String dxf = Template.of(job).only(TemplatePart.PLAN).toDxf();
        Spot nut = nutOfThePlan(dxf);
        // The board: its bass edge toward the body, its treble edge back.
        List<Spot> board = polylines(dxf, "OUTLINE").get(0).spots();
        List<Map<String, Double>> rows = table(Sheet.of(job).stationCsv());

        assertThat(board).hasSize(4);
        assertThat(rows).hasSizeGreaterThan(8);
        for (Map<String, Double> row : rows) {
            double u = nut.uMm() + row.get("fromNut");
            double bass = onLine(board.get(0), board.get(1), u);
            double treble = onLine(board.get(3), board.get(2), u);
            assertThat(treble - bass)
                    .as("%s in %s at %s", name, style, row.get("fromNut"))
                    .isCloseTo(row.get("width"), within(WRITTEN));
            assertThat((treble + bass) / 2).isCloseTo(nut.vMm(), within(WRITTEN));
        }
    }

    @ParameterizedTest
    @MethodSource("necks")
    void plan_hasEveryFretWhereItsTableHasIt(String name, LengthStyle style) {
        Job job = NeckFile.read(name).printIn(style);
        String dxf = Template.of(job).only(TemplatePart.PLAN).toDxf();
        Spot nut = nutOfThePlan(dxf);
        List<Polyline> frets = polylines(dxf, "FRETS");
        List<Map<String, Double>> rows = table(Sheet.of(job).fretCsv());

        assertThat(frets).hasSize(job.neck().frets());
        assertThat(rows).hasSize(frets.size() + 1);
        for (int n = 1; n <= frets.size(); n++) {
            List<Spot> ends = frets.get(n - 1).spots();
            Map<String, Double> row = rows.get(n);
            assertThat(ends.get(0).uMm() - nut.uMm()).isCloseTo(row.get("bass x"), within(WRITTEN));
            assertThat(ends.get(0).vMm() - nut.vMm()).isCloseTo(row.get("bass y"), within(WRITTEN));
            assertThat(ends.get(1).uMm() - nut.uMm()).isCloseTo(row.get("treble x"), within(WRITTEN));
            assertThat(ends.get(1).vMm() - nut.vMm()).isCloseTo(row.get("treble y"), within(WRITTEN));
            assertThat(onLine(transposed(ends.get(0)), transposed(ends.get(1)), nut.vMm()) - nut.uMm())
                    .as("%s in %s, fret %s on the centreline", name, style, n)
                    .isCloseTo(row.get("from nut"), within(WRITTEN));
        }
    }

    /** The channel's two ends are rows of the table; its width and those of the pocket are given. */
    @ParameterizedTest
    @MethodSource("necks")
    void plan_hasTheChannelBetweenItsTwoStations(String name, LengthStyle style) {
        Job job = NeckFile.read(name).printIn(style);
        String dxf = Template.of(job).only(TemplatePart.PLAN).toDxf();
        Spot nut = nutOfThePlan(dxf);
        double[] box = polylines(dxf, "CHANNEL").get(0).extentsMm();
        String csv = Sheet.of(job).stationCsv();
        List<String> names = csv.lines().skip(1).map(line -> line.split(",")[0]).toList();
        List<Map<String, Double>> rows = table(csv);
        Channel channel = job.neck().channel().orElseThrow();

        assertThat(box[0] - nut.uMm())
                .as("%s in %s", name, style)
                .isCloseTo(rows.get(names.indexOf("channel from")).get("fromNut"), within(WRITTEN));
        assertThat(box[2] - nut.uMm())
                .isCloseTo(rows.get(names.indexOf("channel to")).get("fromNut"), within(WRITTEN));
        assertThat(box[3] - box[1])
                .isCloseTo(
                        Math.max(channel.widthMm(), channel.hasAdjusterPocket() ? channel.adjusterPocketWidthMm() : 0),
                        within(WRITTEN));
    }

    /** The head as its rows print it: so long, so wide at break line and tip and straight between, its posts at their places. */
    @ParameterizedTest
    @MethodSource("necks")
    void head_isAsLongAndWideAsPrinted_andHasItsPosts(String name, LengthStyle style) {
        Job job = NeckFile.read(name).printIn(style);
        Head head = job.neck().head().orElseThrow();
        assertThat(head.swingRad()).as("none of these is swung").isZero();
        String dxf = Template.of(job).only(TemplatePart.HEAD).toDxf();
        // The nut's middle: where both centre lines begin.
        Spot nut = polylines(dxf, "CENTRE").get(0).spots().get(0);
        List<Polyline> closed = closed(dxf);
        assertThat(closed).as("the outline, and two slots of a slotted head").hasSize(head.hasSlots() ? 3 : 1);
        Polyline outline = closed.get(0);
        List<Spot> spots = outline.spots();
        double tip = spots.stream().mapToDouble(Spot::uMm).min().orElseThrow();

        assertThat(nut.uMm() - tip).as("%s in %s", name, style).isCloseTo(head.lengthMm(), within(WRITTEN));
        double first = head.widthAtBreakLineMm();
        double last = head.widthAtTipMm();
        for (double along = 0.1; along <= 0.99; along += 0.05) {
            double u = nut.uMm() - along * head.lengthMm();
            double half = (first + (last - first) * along) / 2;
            for (int side : new int[] {-1, 1}) {
                if (along * head.lengthMm() < half) {
                    continue; // the slanted nut line cuts the edge off there
                }
                assertThat(outline.distanceMm(new Spot(u, nut.vMm() + side * half)))
                        .as("%s in %s, %s along", name, style, along)
                        .isLessThan(WRITTEN);
            }
        }
        List<Polyline> crosses = polylines(dxf, "POSTS");
        List<TunerPost> posts = head.posts();
        assertThat(crosses).hasSize(2 * posts.size());
        for (int i = 0; i < posts.size(); i++) {
            double[] across = crosses.get(2 * i).extentsMm();
            assertThat(nut.uMm() - (across[0] + across[2]) / 2)
                    .isCloseTo(posts.get(i).alongMm(), within(WRITTEN));
            assertThat((across[1] + across[3]) / 2 - nut.vMm())
                    .isCloseTo(posts.get(i).asideMm(), within(WRITTEN));
        }
    }

    /** The page's side view measured as its own board lies on it: depths of the table, and the line of the template. */
    @ParameterizedTest
    @MethodSource("necks")
    void pagesSideView_isAsDeepAsTheTableAndAsTheTemplate(String name, LengthStyle style) {
        Job job = NeckFile.read(name).printIn(style);
        PageSide page = PageSide.of(job);
        List<Map<String, Double>> rows = table(Sheet.of(job).stationCsv());
        double end = page.wood().stream().mapToDouble(Spot::uMm).max().orElseThrow();
        int past = 0;
        for (Map<String, Double> row : rows) {
            double x = row.get("fromNut");
            double depth = row.get("woodDepth");
            if (!(x >= 0 && x <= job.neck().bodyJointMm())) {
                continue;
            }
            if (!page.reaches(x)) {
                // Past the mating face, which leans over the joint's own station.
                past++;
                assertThat(x).isCloseTo(job.neck().bodyJointMm(), within(1e-9));
                continue;
            }
            assertThat(page.depthAt(x)).as("%s in %s at %s", name, style, x).isCloseTo(depth, within(page.readMm()));
        }
        assertThat(past).isLessThanOrEqualTo(1);
        assertThat(end).isGreaterThanOrEqualTo(job.neck().bodyJointMm() - page.readMm());

        String dxf = Template.of(job).only(TemplatePart.SIDE).toDxf();
        Spot nut = polylines(dxf, "OUTLINE").get(0).spots().get(0);
        Polyline back = polylines(dxf, "BACK").get(0);
        for (double x = 0; page.reaches(x) && x < job.neck().bodyJointMm(); x += 2.5) {
            assertThat(page.depthAt(x))
                    .as("%s in %s at %s", name, style, x)
                    .isCloseTo(nut.vMm() - heightAt(back, nut.uMm() + x), within(page.readMm()));
        }
        // The mating face: on the page as on the template, both the solid's plane.
        Plane face = job.plan().solid().matingFace();
        for (Spot spot : page.face()) {
            assertThat(face.heightOfMm(new Point(spot.uMm(), 0, spot.vMm()))).isCloseTo(0, within(page.readMm()));
        }
        assertThat(page.face()).hasSize(job.neck().heel().isPresent() ? 2 : 0);
        for (Spot spot : page.face()) {
            assertThat(polylines(dxf, "OUTLINE"))
                    .anySatisfy(line -> assertThat(line.distanceMm(nut.plus(spot.uMm(), spot.vMm())))
                            .isLessThan(page.readMm()));
        }
    }

    /**
     * The page's side view read back into mm: x along the neck from the nut, z up from the glue face. Its scale along comes from the
     * board, whose two ends are the nut and a fret past the last, by equal temperament; the stretch across from its own words.
     */
    private record PageSide(List<Spot> wood, List<Spot> face, double readMm) {

        private static final Pattern STRETCH = Pattern.compile("Depths are drawn ([0-9.]+) times as large as lengths");

        static PageSide of(Job job) {
            String html = Sheet.of(job).toHtml();
            int at = html.indexOf("aria-labelledby=\"side-title");
            String svg = html.substring(at, html.indexOf("</svg>", at));
            Matcher words = STRETCH.matcher(svg);
            double stretch = words.find() ? Double.parseDouble(words.group(1)) : 1;
            List<Spot> wood = drawn(svg, "polygon class=\"wood\"").get(0);
            List<List<Spot>> boards = drawn(svg, "polygon class=\"board\"");
            List<Spot> board = boards.get(0);
            double nut = board.get(board.size() - 1).vMm();
            double end = board.get(board.size() - 2).vMm();
            int frets = job.neck().frets();
            double last = job.neck().scale().lengthMm() * (1 - Math.pow(2, -(frets + 1) / 12.0));
            double along = (end - nut) / last;
            double glue = board.get(board.size() - 1).uMm();
            Function<Spot, Spot> inMm = p -> new Spot((p.vMm() - nut) / along, (glue - p.uMm()) / (along * stretch));
            List<List<Spot>> faces = drawn(svg, "polyline class=\"face\"");
            // Two decimals are written, half a hundredth at either end, and the board's own two.
            return new PageSide(
                    wood.stream().map(inMm).toList(),
                    faces.stream().flatMap(List::stream).map(inMm).toList(),
                    0.02 + 2 * 0.005 / along + 0.01);
        }

        private static List<List<Spot>> drawn(String svg, String what) {
            List<List<Spot>> all = new ArrayList<>();
            Matcher found = Pattern.compile("<" + what + " points=\"([^\"]*)\"").matcher(svg);
            while (found.find()) {
                all.add(Stream.of(found.group(1).split(" "))
                        .map(pair -> pair.split(","))
                        .map(pair -> new Spot(Double.parseDouble(pair[0]), Double.parseDouble(pair[1])))
                        .toList());
            }
            return all;
        }

        boolean reaches(double x) {
            return IntStream.range(0, wood.size() - 1).anyMatch(i -> isBelow(i, x));
        }

        /** A stretch of the outline under a station, below the glue face. */
        private boolean isBelow(int i, double x) {
            Spot a = wood.get(i);
            Spot b = wood.get(i + 1);
            return a.uMm() <= x + 0.01 && b.uMm() >= x - 0.01 && b.uMm() - a.uMm() > 0.02 && b.vMm() < -1;
        }

        double depthAt(double x) {
            // The shaft's back comes after the head's, and counts from the nut on.
            int i = IntStream.range(0, wood.size() - 1)
                    .filter(k -> isBelow(k, x))
                    .reduce((first, second) -> second)
                    .orElseThrow();
            return -onLine(wood.get(i), wood.get(i + 1), x);
        }
    }

    /** Where a line through two spots is at u. */
    private static double onLine(Spot a, Spot b, double u) {
        return a.vMm() + (b.vMm() - a.vMm()) * (u - a.uMm()) / (b.uMm() - a.uMm());
    }

    private static Spot transposed(Spot spot) {
        return new Spot(spot.vMm(), spot.uMm());
    }

    /** The centre line begins 6 mm before the nut. */
    private static Spot nutOfThePlan(String dxf) {
        return polylines(dxf, "CENTRE").get(0).spots().get(0).plus(6, 0);
    }

    /** The head's outline or the room for it: of both layers the runs that close. */
    private static List<Polyline> closed(String dxf) {
        return Stream.of("OUTLINE", "ENVELOPE")
                .flatMap(layer -> polylines(dxf, layer).stream())
                .filter(line -> line.spots().size() > 3)
                .map(line -> Polyline.closed(line.spots()))
                .toList();
    }

    /** The numbers of a table written as CSV, in mm by the unit that its header names; cells of words left out. */
    private static List<Map<String, Double>> table(String csv) {
        List<String> lines = csv.lines().toList();
        String[] header = lines.get(0).split(",");
        List<Map<String, Double>> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
            Map<String, Double> row = new HashMap<>();
            for (int i = 0; i < header.length; i++) {
                boolean inches = header[i].contains("(in)") || header[i].endsWith(" in");
                String key = header[i].replaceAll(" \\((mm|in)\\)$| (mm|in)$", "");
                if (cells[i].matches("-?[0-9.E-]+")) {
                    row.put(key, Double.parseDouble(cells[i]) * (inches ? 25.4 : 1));
                }
            }
            rows.add(row);
        }
        return rows;
    }

    /** Height of an open run at u, straight between its spots. */
    private static double heightAt(Polyline line, double u) {
        List<Spot> spots = line.spots();
        for (int i = 0; i + 1 < spots.size(); i++) {
            Spot a = spots.get(i);
            Spot b = spots.get(i + 1);
            if (a.uMm() <= u + 1e-6 && b.uMm() >= u - 1e-6 && b.uMm() > a.uMm()) {
                return a.vMm() + (b.vMm() - a.vMm()) * (u - a.uMm()) / (b.uMm() - a.uMm());
            }
        }
        throw new AssertionError("nothing drawn at " + u);
    }

    /** The polylines of a layer: POLYLINE, its VERTEX entities with group codes 10 and 20, SEQEND (release 12, from memory). */
    private static List<Polyline> polylines(String dxf, String layer) {
        String[] lines = dxf.split("\r\n");
        List<Polyline> all = new ArrayList<>();
        List<Spot> spots = new ArrayList<>();
        boolean wanted = false;
        String entity = "";
        double u = 0;
        for (int i = 0; i + 1 < lines.length; i += 2) {
            String code = lines[i].strip();
            String value = lines[i + 1];
            if (code.equals("0")) {
                if (value.equals("SEQEND") && wanted) {
                    all.add(Polyline.open(spots));
                    spots = new ArrayList<>();
                }
                entity = value;
            } else if (code.equals("8") && entity.equals("POLYLINE")) {
                wanted = value.equals(layer);
            } else if (entity.equals("VERTEX") && wanted && code.equals("10")) {
                u = Double.parseDouble(value);
            } else if (entity.equals("VERTEX") && wanted && code.equals("20")) {
                spots.add(new Spot(u, Double.parseDouble(value)));
            }
        }
        return all;
    }
}
