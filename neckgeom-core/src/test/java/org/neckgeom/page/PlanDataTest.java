package org.neckgeom.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.gramPerMetre;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.kgPerM3;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.percent;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.OuterStrings;
import org.neckgeom.form.Json;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Fan;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.StringSet;
import org.neckgeom.plan.Job;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.validation.Rows;

class PlanDataTest {

    private static final Job OCTAVE = Necks.octavePlan();
    private static final Job BASS = plan(Necks.bass());

    private static Job plan(Neck design) {
        return Job.of(
                design,
                Blank.ofLength(inch(45)).section(inch(3), inch(1)).nutAt(inch(1)),
                Shop.with(Cutter.straight(inch(0.25)).flutes(2, inch(1)).stickOut(inch(1.25))));
    }

    private static Neck rich() {
        return Neck.named("\u00e9\u2033 \"all\" \\ parts <told>")
                .scale(Scale.of(inch(25.5)).divisions(19))
                .fingerboard(Fingerboard.tapered(mm(43.1), inch(2.25))
                        .farWidthAtFret(19)
                        .thickness(mm(5.9), mm(6.3))
                        .radius(inch(9.5), inch(14))
                        .wood(Wood.named("bog oak")
                                .density(kgPerM3(930.7))
                                .modulus(Amount.of(14321, ShopUnit.MEGAPASCAL))
                                .modulusVariation(percent(17.3))
                                .shrinkage(percent(4.4), percent(8.8))))
                .back(BackProfile.between(mm(20.1), mm(22.7)).atFrets(2, 17).asymmetric(1.9, 2.6))
                .frets(31)
                .bodyAtFret(22)
                .wood(Wood.SUGAR_MAPLE)
                .channel(Channel.forBar(Bar.carbon(mm(381.7)).section(mm(6.4), mm(9.53)))
                        .startingAt(mm(-7.3))
                        .endClearance(mm(0.7))
                        .sideClearance(mm(0.2))
                        .fillet(mm(1.1))
                        .depthClearance(mm(0.05))
                        .arch(mm(-0.4)))
                .head(Head.angled(deg(9.7))
                        .length(inch(7.3))
                        .width(mm(81))
                        .thickness(mm(14.4))
                        .swung(deg(-1.3))
                        .veneer(mm(0.6), mm(4))
                        .backVeneer(mm(1.2)))
                .heel(Heel.of(mm(96), mm(55)).blocks(mm(19)))
                .strings(StringSet.of(pitch("E2"), pitch("A2"), pitch("D3"))
                        .linearDensities(gramPerMetre(6.79), gramPerMetre(3.86), gramPerMetre(2.1)));
    }

    /** Strings of 1 mm that spread 41.5 mm at the nut of 49 mm and 63 mm at the saddle, as the reference has them. */
    private static final Neck REFERENCE_FAN = plain(640, 49, 62)
            .scale(FannedFrets.of(Scale.of(mm(686)), Scale.of(mm(648)), OuterStrings.of(mm(41.5), mm(63)), 9)
                    .centrelineScale())
            .strings(StringSet.of(
                            pitch("B1"), pitch("E2"), pitch("A2"), pitch("D3"), pitch("G3"), pitch("B3"), pitch("E4"))
                    .tensions(newton(80))
                    .diameters(mm(1))
                    .across(Across.of(mm(3.25), mm(64))))
            .fannedFrets(Fan.between(mm(686), mm(648)).perpendicularAt(9));

    @Test
    void designFrom_givesTheDesignBack() {
        assertEquals(
                OCTAVE.neck(), Document.PLAN.read(Document.PLAN.json(OCTAVE)).neckAsGiven());
        assertEquals(BASS.neck(), Document.PLAN.read(Document.PLAN.json(BASS)).neckAsGiven());
    }

    @Test
    void designFrom_givesEveryPartBack_withItsUnits() {
        Neck rich = rich();
        String json = Document.PLAN.json(plan(rich));
        Neck read = Document.PLAN.read(json).neckAsGiven();

        assertEquals(rich.scale(), read.scale());
        assertEquals(
                rich.fingerboard().wood().orElseThrow().figures(),
                read.fingerboard().wood().orElseThrow().figures());
        assertEquals(rich.fingerboard(), read.fingerboard());
        assertEquals(rich.back(), read.back());
        assertEquals(rich.channel(), read.channel());
        assertEquals(rich.head(), read.head());
        assertEquals(rich.heel(), read.heel());
        assertEquals(rich.strings(), read.strings());
        assertEquals(rich.toString(), read.toString());
        assertEquals(rich, read);
        assertEquals(json, Document.PLAN.json(plan(read)), "written again it is the same text");
    }

    @Test
    void toJson_hasEveryCheckCautionAndSectionOfThePlan() {
        Map<?, ?> whole = (Map<?, ?>) Json.read(Document.PLAN.json(OCTAVE)).plain();
        Map<?, ?> data = (Map<?, ?>) whole.get("answers");

        assertEquals(
                OCTAVE.plan().checks().stream()
                        .map(check -> check.code().code())
                        .toList(),
                column(data, "checks", "answer"));
        assertEquals(
                OCTAVE.plan().checks().stream()
                        .map(check -> check.outcome().toString())
                        .toList(),
                column(data, "checks", "outcome"));
        assertEquals(
                OCTAVE.plan().cautions().stream().map(caution -> caution.code()).toList(),
                column(data, "cautions", "code"));
        assertEquals(
                OCTAVE.plan().sections().stream().map(section -> section.code()).toList(),
                column(data, "sections", "answer"));
        assertEquals(5, ((List<?>) data.get("budgets")).size());
        assertEquals("neckgeom plan", whole.get("format"));
    }

    private static List<Object> column(Map<?, ?> data, String list, String key) {
        List<Object> values = new ArrayList<>();
        for (Object row : (List<?>) data.get(list)) {
            values.add(((Map<?, ?>) row).get(key));
        }
        return values;
    }

    /** Equal temperament: the string left is a twelfth root of 2 shorter at each fret. */
    @Test
    void toJson_fretsLieWhereTheRootOfTwoPutsThem() {
        Map<?, ?> whole = (Map<?, ?>) Json.read(Document.PLAN.json(OCTAVE)).plain();
        Map<?, ?> data = (Map<?, ?>) whole.get("answers");
        List<?> rows = (List<?>) data.get("fretTable");

        assertEquals(21, rows.size());
        for (int n = 0; n <= 20; n++) {
            Map<?, ?> place = (Map<?, ?>) ((Map<?, ?>) rows.get(n)).get("fromNut");
            assertEquals("mm", place.get("unit"));
            assertEquals(560 * (1 - Math.pow(2, -n / 12.0)), (Double) place.get("value"), 1e-9);
        }
    }

    @Test
    void fretCsv_isATableInThePlansUnit() {
        String[] lines = Sheet.of(BASS).fretCsv().split("\n");

        assertEquals(
                "fret,from nut in,from last in,length in,slant deg,bass x in,bass y in,treble x in,treble y in",
                lines[0]);
        assertEquals(26, lines.length);
        String[] octave = lines[13].split(",");
        assertEquals("12", octave[0]);
        assertEquals(17, Double.parseDouble(octave[1]), 1e-9, "half of 34 in");
        assertEquals("0,0,0,1.5,0,0,-0.75,0,0.75", lines[1]);
    }

    /**
     * Three invented necks by a script of its own (solid.py): crossings, slants, both ends, lengths. It measures scales
     * along the outer strings, which move 9 and 7.5 mm outward to the saddle.
     */
    @Test
    void fretCsv_hasTheEndsOfTheReference() {
        Map<String, Neck> necks = Map.of(
                "straight",
                plain(Math.sqrt(640 * 640 - 9 * 9), 44, 55),
                "fanned",
                REFERENCE_FAN,
                "one-piece",
                plain(Math.sqrt(655 * 655 - 7.5 * 7.5), 52, 62));
        int rows = 0;
        for (Map<String, String> row : Rows.of("/solid/solid-frets.csv")) {
            Neck neck = necks.get(row.get("neck"));
            String[] ours = Sheet.of(Job.of(neck, Blank.ofLength(mm(900)).section(mm(80), mm(24)), OCTAVE.shop()))
                    .fretCsv()
                    .split("\n")[1 + Integer.parseInt(row.get("fret"))]
                    .split(",");
            String[] columns = {
                "fret", "x_centre", "", "length", "slant_deg", "bass_x", "bass_y", "treble_x", "treble_y"
            };
            for (int i = 0; i < columns.length; i++) {
                if (!columns[i].isEmpty()) {
                    assertEquals(
                            Rows.number(row, columns[i]), Double.parseDouble(ours[i]), 1e-6, row + " " + columns[i]);
                }
            }
            rows++;
        }
        assertEquals(10, rows);
    }

    private static Neck plain(double scale, double atNut, double atTwelve) {
        return Neck.named("reference")
                .scale(mm(scale))
                .fingerboard(Fingerboard.tapered(mm(atNut), mm(atTwelve)).farWidthAtFret(12))
                .back(BackProfile.between(mm(15.5), mm(17.5)))
                .frets(22)
                .channel(Necks.octavePlan().neck().channel().orElseThrow())
                .wood(Wood.BLACK_WALNUT);
    }

    @Test
    void stationCsv_leavesTheChannelEmptyWhereItDoesNotReach() {
        List<String[]> rows = new ArrayList<>();
        Sheet.of(OCTAVE).stationCsv().lines().forEach(line -> rows.add(line.split(",", -1)));

        assertEquals(
                List.of("name", "fromNut (mm)", "width (mm)", "woodDepth (mm)"),
                List.of(rows.get(0)).subList(0, 4));
        assertEquals("woodLeft (mm)", rows.get(0)[10]);
        String[] nut = rows.get(1);
        assertEquals(List.of("nut", "0", "34"), List.of(nut).subList(0, 3));
        assertTrue(nut[9].isEmpty() && nut[10].isEmpty(), "the channel starts 3 mm behind the nut");
        String[] body = rows.get(rows.size() - 1);
        // The name holds a comma, so it stands in quotes and splits in two here.
        assertEquals("\"body", body[0]);
        assertEquals(310.548358921, Double.parseDouble(body[2]), 1e-9);
        assertTrue(rows.stream().skip(1).anyMatch(row -> row[9].equals("9.2")), "channel depth");
    }
}
