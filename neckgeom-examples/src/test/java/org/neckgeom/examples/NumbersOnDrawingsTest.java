package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.Job;
import org.neckgeom.solid.NeckStation;
import org.neckgeom.template.Template;
import org.neckgeom.template.TemplatePart;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnits;

/**
 * Every number that a drawing of a page or a template prints is read back and held against the tables: the stations, the frets'
 * file, the scarf, for every shipped neck in every style. Expected: the table's own full figure, within half of the last digit
 * printed.
 */
class NumbersOnDrawingsTest {

    private static final Pattern FIGURE = Pattern.compile("<figure>(.*?)</figure>", Pattern.DOTALL);
    private static final Pattern LABEL =
            Pattern.compile("<text class=\"number\"[^>]*>([^<]*)</text>\\s*<text class=\"words\"[^>]*>([^<]*)</text>");
    private static final Pattern CAPTION = Pattern.compile("</strong>\\. (.*) from the nut\\.</figcaption>");

    static Stream<Arguments> necks() {
        return ShippedNecks.names().stream()
                .flatMap(name -> Stream.of(LengthStyle.values()).map(style -> Arguments.of(name, style)));
    }

    @ParameterizedTest
    @MethodSource("necks")
    void sectionsOfThePage_printTheTablesFigures(String name, LengthStyle style) {
        Job job = NeckFile.read(name).printIn(style);
        int sections = 0;
        for (String figure : figures(job)) {
            String title = title(figure);
            if (!title.startsWith("Section at ")) {
                continue;
            }
            sections++;
            double x = station(job, title.substring("Section at ".length()));
            NeckStation row = job.plan()
                    .solid()
                    .asMade(job.plan().floorThickness())
                    .stations(List.of(ShopUnits.mm(x)))
                    .rows()
                    .get(0);
            Map<String, String> labels = labels(figure);

            assertThat(labels.keySet()).contains("wide", "wood deep", cut(job) + " deep", "wood left", "board thick");
            holds(job, labels.get("wide"), row.width().libraryValue());
            holds(job, labels.get("wood deep"), row.depth().libraryValue());
            holds(
                    job,
                    labels.get(cut(job) + " deep"),
                    row.channelDepth().orElseThrow().libraryValue());
            holds(job, labels.get("wood left"), row.wood().orElseThrow().woodMm());
            holds(job, labels.get("board thick"), job.neck().boardThicknessAtMm(x));
            holds(job, group(CAPTION, figure), x);
        }
        assertThat(sections).isEqualTo(4);
    }

    @ParameterizedTest
    @MethodSource("necks")
    void planOfThePage_printsTheFiguresOfFretsAndStations(String name, LengthStyle style) {
        Job job = NeckFile.read(name).printIn(style);
        Map<String, String> labels = labels(figure(job, "Plan"));
        Map<String, Double> bass = bassEnds(job);

        List<String> frets = labels.keySet().stream()
                .filter(label -> label.equals("nut") || label.matches("fret \\d+"))
                .toList();
        assertThat(frets).hasSizeGreaterThan(6);
        for (String fret : frets) {
            // The column's head names the unit, so its numbers have none.
            double drawn = Double.parseDouble(labels.get(fret));
            assertThat(drawn)
                    .as("%s %s", name, fret)
                    .isCloseTo(bass.get(fret), within((style == LengthStyle.MILLIMETRES ? 0.005 : 0.0005) + 1e-9));
        }
        holds(job, labels.get("wide at nut"), widthAt(job, 0));
        holds(job, labels.get("at fret 12"), widthAt(job, job.neck().scale().fretMm(12)));
        String body = "body, fret " + job.neck().bodyAtFret();
        if (labels.containsKey(body)) {
            holds(job, labels.get(body), widthAt(job, job.neck().bodyJointMm()));
        }
    }

    @ParameterizedTest
    @MethodSource("necks")
    void sideOfThePage_printsTheFiguresOfStationsChannelAndScarf(String name, LengthStyle style) {
        Job job = NeckFile.read(name).printIn(style);
        Map<String, String> labels = labels(figure(job, "Side view"));

        holds(job, labels.get("fret 1"), depthAt(job, job.neck().scale().fretMm(1)));
        holds(
                job,
                labels.get("body, fret " + job.neck().bodyAtFret()),
                job.neck().bodyJointMm());
        List<NeckStation> rows = job.plan().solid().stations().rows();
        holds(job, labels.get(cut(job) + " from"), named(rows, "channel from").fromNutMm());
        holds(job, labels.get(cut(job) + " to"), named(rows, "channel to").fromNutMm());
        job.plan().scarf().ifPresent(joint -> {
            if (labels.containsKey("scarf on front")) {
                holds(job, labels.get("scarf on front"), joint.frontLineMm());
            }
            holds(job, labels.get("scarf on back"), joint.backLineMm());
        });
    }

    @ParameterizedTest
    @MethodSource("necks")
    void templates_printTheFiguresOfTheTablesBesideWhatTheyDraw(String name, LengthStyle style) {
        Job job = NeckFile.read(name).printIn(style);
        List<String> plan = texts(Template.of(job).only(TemplatePart.PLAN).toDxf());

        holds(job, after(plan, "Body joint, "), job.neck().bodyJointMm());
        holds(job, after(plan, "nut, "), widthAt(job, 0));
        assertThat(plan.stream().filter(text -> text.matches("\\d+")).toList())
                .as("every fret by its number")
                .hasSize(job.neck().frets());

        List<String> sections =
                texts(Template.of(job).only(TemplatePart.SECTIONS).toDxf());
        int named = 0;
        for (int i = 0; i + 1 < sections.size(); i++) {
            String next = sections.get(i + 1);
            if (next.startsWith("x ") && next.endsWith(" from the nut")) {
                named++;
                holds(job, next.substring(2, next.length() - " from the nut".length()), station(job, sections.get(i)));
            }
        }
        assertThat(named).isEqualTo(4);

        List<String> side = texts(Template.of(job).only(TemplatePart.SIDE).toDxf());
        job.neck()
                .heel()
                .filter(heel -> has(side, "heel face "))
                .ifPresent(heel -> holds(job, after(side, "heel face "), heel.heightMm()));
    }

    /** What drawings call the channel of a neck. */
    private static String cut(Job job) {
        return job.neck().channel().orElseThrow().isLocatingGroove() ? "groove" : "channel";
    }

    private static void holds(Job job, String printed, double tableMm) {
        LengthStyle style = job.style();
        // The last digit printed: a hundredth of a mm, a thou, a tenth of a thou beside a fraction.
        double half = style == LengthStyle.MILLIMETRES ? 0.005 : 25.4 * (printed.endsWith(" thou") ? 5e-5 : 5e-4);
        Amount<?> read = ShopUnits.length(printed);
        assertThat(read.libraryValue())
                .as("%s in %s: %s", job.neck().name(), style, printed)
                .isCloseTo(tableMm, within(half + 1e-6));
    }

    private static double station(Job job, String where) {
        return where.equals("the thinnest place")
                ? job.plan().floorThickness().least().stationMm()
                : job.neck().scale().fretMm(Integer.parseInt(where.substring("fret ".length())));
    }

    private static NeckStation named(List<NeckStation> rows, String name) {
        return rows.stream()
                .filter(row -> row.name().filter(its -> its.startsWith(name)).isPresent())
                .findFirst()
                .orElseThrow();
    }

    private static NeckStation row(Job job, double x) {
        return job.plan().solid().stations(List.of(ShopUnits.mm(x))).rows().get(0);
    }

    private static double widthAt(Job job, double x) {
        return row(job, x).width().libraryValue();
    }

    private static double depthAt(Job job, double x) {
        return row(job, x).depth().libraryValue();
    }

    /** Where each fret meets the board's bass edge, in the style's unit: the frets' own file. */
    private static Map<String, Double> bassEnds(Job job) {
        String[] lines = Sheet.of(job).fretCsv().split("\n");
        List<String> heads = List.of(lines[0].split(","));
        int at = heads.stream()
                .filter(head -> head.startsWith("bass"))
                .map(heads::indexOf)
                .findFirst()
                .orElseThrow();
        Map<String, Double> ends = new LinkedHashMap<>();
        for (int n = 1; n < lines.length; n++) {
            String[] cells = lines[n].split(",");
            ends.put(cells[0].equals("0") ? "nut" : "fret " + cells[0], Double.parseDouble(cells[at]));
        }
        return ends;
    }

    private static List<String> figures(Job job) {
        return FIGURE.matcher(Sheet.of(job).toHtml())
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    private static String figure(Job job, String title) {
        return figures(job).stream()
                .filter(figure -> title(figure).equals(title))
                .findFirst()
                .orElseThrow();
    }

    private static String title(String figure) {
        return group(Pattern.compile("<title[^>]*>([^<]*)</title>"), figure);
    }

    private static String group(Pattern pattern, String text) {
        Matcher found = pattern.matcher(text);
        assertThat(found.find()).as("%s in %s", pattern, text).isTrue();
        return found.group(1);
    }

    /** The numbers of a figure by the words under them. */
    private static Map<String, String> labels(String figure) {
        Map<String, String> all = new LinkedHashMap<>();
        Matcher found = LABEL.matcher(figure);
        while (found.find()) {
            all.put(found.group(2), found.group(1));
        }
        return all;
    }

    private static boolean has(List<String> texts, String start) {
        return texts.stream().anyMatch(text -> text.startsWith(start));
    }

    private static String after(List<String> texts, String start) {
        return texts.stream()
                .filter(text -> text.startsWith(start))
                .map(text -> text.substring(start.length()))
                .findFirst()
                .orElseThrow();
    }

    /** Group code 1 of the TEXT entities (release 12, from memory). */
    private static List<String> texts(String dxf) {
        String[] lines = dxf.split("\r\n");
        List<String> all = new ArrayList<>();
        String entity = "";
        for (int i = 0; i + 1 < lines.length; i += 2) {
            String code = lines[i].strip();
            if (code.equals("0")) {
                entity = lines[i + 1];
            } else if (code.equals("1") && entity.equals("TEXT")) {
                all.add(lines[i + 1]);
            }
        }
        return all;
    }
}
