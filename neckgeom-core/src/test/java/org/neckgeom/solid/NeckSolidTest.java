package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.StringOverhang;
import org.neckgeom.board.StringSpacing;
import org.neckgeom.heel.HeelBlocks;
import org.neckgeom.kernel.Table;
import org.neckgeom.neck.Neck;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Spot;

/**
 * The one shape against solid/*.csv, figures of three invented necks computed with numpy and scipy by a script that shares
 * no code with this library.
 */
class NeckSolidTest {

    private static final double CLOSED = 1e-6;
    private static final double SOUGHT = 1e-5;

    private static double figure(String text) {
        return Double.parseDouble(text);
    }

    @Test
    void sections_haveWidthDepthAndAreaOfTheReference() {
        for (String[] row : Table.rows("solid/solid-stations.csv")) {
            NeckSolid solid = NeckSolid.of(ReferenceNecks.named(row[0]).neck());
            double x = figure(row[1]);
            BackSection section = solid.back().sectionMm(x);

            assertThat(2 * section.halfWidth())
                    .as("%s width at %s", row[0], x)
                    .isCloseTo(figure(row[2]), within(CLOSED));
            assertThat(section.depth())
                    .as("%s depth at %s", row[0], x)
                    .isCloseTo(
                            figure(row[3]), within(CLOSED * (1 + solid.depth().slopeAt(x))));
            assertThat(section.halfWidthAt(section.depth() / 2, false))
                    .as("%s bass at %s", row[0], x)
                    .isCloseTo(figure(row[4]), within(CLOSED));
            assertThat(section.halfWidthAt(section.depth() / 2, true))
                    .as("%s treble at %s", row[0], x)
                    .isCloseTo(figure(row[5]), within(CLOSED));
            assertThat(section.area())
                    .as("%s area at %s", row[0], x)
                    .isCloseTo(figure(row[6]), within(1e-6 * figure(row[6])));
            assertThat(section.heel())
                    .as("%s share of the heel at %s", row[0], x)
                    .isCloseTo(figure(row[7]), within(2e-8));
        }
    }

    @Test
    void volumes_areThoseOfTheReference() {
        Map<String, Double> all = new HashMap<>();
        Table.rows("solid/solid-volumes.csv")
                .forEach(row -> all.put(row[0] + ": " + name(row), figure(row[row.length - 1])));
        for (ReferenceNecks one : ReferenceNecks.values()) {
            NeckSolid solid = NeckSolid.of(one.neck());
            String name = one.name().toLowerCase(Locale.ROOT).replace('_', '-') + ": ";
            double wood = all.get(name + "shaft and heel wood, x 0 to joint");
            double before = all.get(name + "of it before the heel turn");

            assertThat(solid.woodMm3()).as(name).isCloseTo(wood, within(1e-8 * wood));
            assertThat(solid.woodMm3(0, solid.back().heelStartMm().orElseThrow()))
                    .as(name)
                    .isCloseTo(before, within(1e-8 * before));
        }
    }

    @Test
    void fretLines_endOnTheEdgesAsInTheReference() {
        for (String[] row : Table.rows("solid/solid-frets.csv")) {
            FretLine fret = NeckSolid.of(ReferenceNecks.named(row[0]).neck()).fret((int) figure(row[1]));
            double[] ours = {
                fret.crossing().libraryValue(),
                Math.toDegrees(fret.slant().libraryValue()),
                fret.bass().uMm(),
                fret.bass().vMm(),
                fret.treble().uMm(),
                fret.treble().vMm(),
                fret.length().libraryValue()
            };
            for (int i = 0; i < ours.length; i++) {
                assertThat(ours[i])
                        .as("%s fret %s, %d", row[0], row[1], i)
                        .isCloseTo(figure(row[i + 2]), within(CLOSED));
            }
        }
    }

    static List<StringLine> strings(ReferenceNecks one) {
        NeckSolid solid = NeckSolid.of(one.neck());
        StringRuns runs = new StringRuns(one.neck(), FannedFrets.of(one.neck()));
        int n = one.gauges().length;
        List<StringLine> drawn = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double share = (double) i / (n - 1) - 0.5;
            double nut = share * one.spreadAtNut();
            double saddle = share * one.spreadAtSaddle();
            StringRuns.Run run = runs.run(
                    i,
                    runs.nutSpot(nut),
                    runs.saddleSpot(saddle),
                    new StringRuns.Heights(one.fretHeight(), one.atNut(), one.actions()[i], one.compensations()[i]));
            drawn.add(solid.string(run, one.gauges()[i]));
        }
        return drawn;
    }

    /** Action is over the fret plane, as the neck set has it: a board that falls away before half the scale moves no string. */
    @Test
    void strings_areWhereTheyAreWithoutAFallAway() {
        Neck plain = ReferenceNecks.STRAIGHT.neck().bodyAtFret(9);
        Neck falling = plain.fingerboard(plain.fingerboard().fallAway(mm(0.4)));
        StringRuns.Heights heights = new StringRuns.Heights(1, 0.5, 2, 2);
        Spot nut = new Spot(0, 0);
        Spot saddle = new Spot(plain.scale().lengthMm(), 0);

        Line string = new StringRuns(falling, FannedFrets.of(falling))
                .run(0, nut, saddle, heights)
                .underside();

        assertThat(string)
                .isEqualTo(new StringRuns(plain, FannedFrets.of(plain))
                        .run(0, nut, saddle, heights)
                        .underside());
        // At half the scale 2 mm over frets of 1 mm on the board as it is at the nut.
        double half = plain.scale().lengthMm() / 2;
        double share = half / string.to().xMm();
        assertThat(string.from().zMm()
                        + share * (string.to().zMm() - string.from().zMm()))
                .isCloseTo(plain.boardThicknessAtMm(half) + 3, within(1e-9));
    }

    @Test
    void strings_runAsInTheReference() {
        for (String[] row : Table.rows("solid/solid-strings.csv")) {
            StringLine string = strings(ReferenceNecks.named(row[0])).get((int) figure(row[1]) - 1);
            Point takeOff = string.overHead().map(Line::to).orElseThrow();
            double[] ours = {
                string.underside().from().xMm(),
                string.underside().from().yMm(),
                string.underside().from().zMm(),
                string.underside().to().xMm(),
                string.underside().to().yMm(),
                string.underside().to().zMm(),
                string.scale().libraryValue(),
                string.speakingLength().libraryValue(),
                string.gauge().libraryValue(),
                takeOff.xMm(),
                takeOff.yMm(),
                takeOff.zMm(),
                Math.toDegrees(string.breakAngle().orElseThrow().libraryValue()),
                Math.toDegrees(string.sideAngle().orElseThrow().libraryValue()),
                Math.toDegrees(string.turn().orElseThrow().libraryValue())
            };
            for (int i = 0; i < ours.length; i++) {
                assertThat(ours[i])
                        .as("%s string %s, %d", row[0], row[1], i)
                        .isCloseTo(figure(row[i + 2]), within(CLOSED));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(ReferenceNecks.class)
    void heads_lieAsInTheReference(ReferenceNecks one) {
        Map<String, Double> all = clearances(one);
        NeckSolid solid = NeckSolid.of(one.neck());
        HeadSolid head = solid.head().orElseThrow();

        assertThat(head.deepest().libraryValue()).isCloseTo(all.get("deepest corner of the head wood"), within(CLOSED));
        assertThat(head.farthest().libraryValue())
                .isCloseTo(all.get("farthest corner of the head before the nut"), within(CLOSED));
        assertThat(-head.sideCorner(false).yMm() - one.nut / 2)
                .isCloseTo(all.get("head proud of a bass-side fence at y = -nut width/2"), within(CLOSED));
        assertThat(head.sideCorner(true).yMm() - one.nut / 2)
                .isCloseTo(all.get("head proud of a treble-side fence"), within(CLOSED));
        assertThat(Math.toDegrees(HeadSolid.planes(one.neck(), one.head()).swingInFace()))
                .isCloseTo(all.get("the same in the head face, deg"), within(CLOSED));
        assertThat(solid.back().heelStartMm().orElseThrow()).isCloseTo(all.get("heel turn begins"), within(CLOSED));
        for (double block : new double[] {45, 60, 90}) {
            double deep = solid.depth().valueAt(solid.depth().greatestIn(0, solid.bodyJointMm() - block));
            assertThat(deep)
                    .isCloseTo(
                            all.get("deepest wood, x from 0 to where heel blocks %.0f long begin".formatted(block)),
                            within(SOUGHT));
        }
    }

    @ParameterizedTest
    @EnumSource(ReferenceNecks.class)
    void clearances_onTheHeadAreThoseOfTheReference(ReferenceNecks one) {
        Map<String, Double> all = clearances(one);
        HeadSolid head = NeckSolid.of(one.neck()).head().orElseThrow();
        HeadClearances ours = HeadClearances.of(head, strings(one));

        assertThat(ours.edge().orElseThrow().libraryValue())
                .isCloseTo(all.get("least wood round a post beyond a washer of radius 7.5"), within(CLOSED));
        assertThat(ours.washers().orElseThrow().libraryValue())
                .isCloseTo(all.get("posts apart, washer to washer"), within(CLOSED));
        assertThat(ours.stringPastPost().orElseThrow().libraryValue())
                .isCloseTo(named(all, "(radius 3)"), within(SOUGHT));
        assertThat(ours.strings().orElseThrow().libraryValue())
                .isCloseTo(named(all, "apart on the head, least"), within(SOUGHT));
        assertThat((double) ours.crossings()).isEqualTo(all.get("pairs of strings that cross over the head"));
    }

    @ParameterizedTest
    @EnumSource(ReferenceNecks.class)
    void wood_underTheChannelIsThatOfTheReference(ReferenceNecks one) {
        Map<String, Double> all = clearances(one);
        FloorThickness wood = FloorThickness.under(one.neck());
        double station = all.get("at x");

        WoodAt least = wood.least();

        // The script seeks the least in the section; in space none is larger.
        assertThat(least.woodMm()).isCloseTo(all.get("wood left in space from that station"), within(SOUGHT));
        assertThat(least.stationMm()).isCloseTo(station, within(0.05));
        assertThat(wood.at(mm(station)).woodMm())
                .isCloseTo(all.get("wood left in space from that station"), within(1e-6));
        if (all.containsKey("wood left in space from x=20")) {
            assertThat(wood.at(mm(20)).woodMm()).isCloseTo(all.get("wood left in space from x=20"), within(1e-6));
        }
    }

    /** The overhang is one thing: of a string in space, of the fingerboard's own answer, and of the reference. */
    @Test
    void overhang_ofAStringIsThatOfTheBoardAndOfTheReference() {
        for (String[] row : Table.rows("solid/solid-strings.csv")) {
            ReferenceNecks one = ReferenceNecks.named(row[0]);
            NeckSolid solid = NeckSolid.of(one.neck());
            StringLine string = strings(one).get((int) figure(row[1]) - 1);
            double x = solid.fret(12).crossing().libraryValue();
            Point nut = string.underside().from();
            Point saddle = string.underside().to();
            double y = nut.yMm() + (saddle.yMm() - nut.yMm()) * (x - nut.xMm()) / (saddle.xMm() - nut.xMm());
            double inside = solid.neck().halfWidthAtMm(x) - Math.abs(y);

            assertThat(inside - string.gauge().libraryValue() / 2).isCloseTo(figure(row[17]), within(CLOSED));
            if (!one.isFanned() && string.number() == 1) {
                StringOverhang board = StringOverhang.of(
                        solid.neck(),
                        StringSpacing.atNut(solid.neck()).orElseThrow(),
                        StringSpacing.atSaddle(solid.neck()).orElseThrow());
                // The noun's strings are 1 mm thick.
                assertThat(board.bass(12).libraryValue()).isCloseTo(inside - 0.5, within(1e-9));
            }
        }
    }

    /** Where a blank of a thickness no longer holds the turn into the heel, the first block must begin. */
    @ParameterizedTest
    @EnumSource(ReferenceNecks.class)
    void blocks_areAsLongAtLeastAsInTheReference(ReferenceNecks one) {
        NeckSolid solid = NeckSolid.of(one.neck());
        int seen = 0;
        for (Map.Entry<String, Double> row : clearances(one).entrySet()) {
            if (row.getKey().startsWith("least block length")) {
                double thick = figure(row.getKey().replaceAll(".* ([0-9.]+) thick", "$1"));
                double from = solid.back().heelStartMm().orElseThrow();
                double begins = solid.depth().risesTo(thick, from, solid.bodyJointMm());
                assertThat(solid.bodyJointMm() - begins).as(row.getKey()).isCloseTo(row.getValue(), within(CLOSED));
                seen++;
            }
        }
        assertThat(seen).isEqualTo(2);
    }

    /** The crown is a cone: under a string the board leaves a straight line by no more than the script found. */
    @ParameterizedTest
    @EnumSource(value = ReferenceNecks.class, names = "ONE_PIECE", mode = EnumSource.Mode.EXCLUDE)
    void board_underAStringIsAsStraightAsInTheReference(ReferenceNecks one) {
        NeckSolid solid = NeckSolid.of(one.neck());
        Line string = strings(one).get(0).underside();
        double scale = strings(one).get(0).scale().libraryValue();
        double share = (1 - Math.pow(2, -one.frets / 12.0)) * scale / (scale + one.compensations()[0]);
        double from = top(solid, string.at(0));
        double to = top(solid, string.at(share));
        double most = 0;
        for (int i = 0; i <= 4000; i++) {
            double off = top(solid, string.at(share * i / 4000)) - from - (to - from) * i / 4000;
            most = Math.abs(off) > Math.abs(most) ? off : most;
        }

        assertThat(most).isCloseTo(named(clearances(one), "nut to last fret, signed"), within(1e-9));
    }

    private static double top(NeckSolid solid, Point at) {
        return solid.boardTopMm(at.xMm(), at.yMm());
    }

    @ParameterizedTest
    @EnumSource(ReferenceNecks.class)
    void heelHeight_squareToTheGlueFaceIsThatOfTheReference(ReferenceNecks one) {
        double angle = one == ReferenceNecks.STRAIGHT ? 1.4 : one == ReferenceNecks.FANNED ? 1.2 : 0;
        double lean = one == ReferenceNecks.FANNED ? 1 : 0;
        double high = one.neck().heel().orElseThrow().heightMm();

        double ours = HeelBlocks.of(mm(high), mm(20))
                .at(deg(angle))
                .leaning(deg(lean))
                .height()
                .libraryValue();

        assertThat(ours).isCloseTo(named(clearances(one), "D+o=H"), within(CLOSED));
    }

    /** Simpson's rule over the board's top, from the nut to the last fret on the centreline, ends square as in the script. */
    @ParameterizedTest
    @EnumSource(ReferenceNecks.class)
    void fingerboard_holdsTheVolumeOfTheReference(ReferenceNecks one) {
        NeckSolid solid = NeckSolid.of(one.neck());
        String name = one.name().toLowerCase(Locale.ROOT).replace('_', '-') + ": ";
        Map<String, Double> all = new HashMap<>();
        Table.rows("solid/solid-volumes.csv")
                .forEach(row -> all.put(row[0] + ": " + name(row), figure(row[row.length - 1])));
        double area = all.get(name + "fingerboard section area at the nut");
        double volume = all.get(name + "fingerboard volume, centreline nut to last fret, ends square");

        assertThat(boardArea(solid, 0)).isCloseTo(area, within(1e-8 * area));
        double end = solid.fret(one.frets).crossing().libraryValue();
        assertThat(simpson(x -> boardArea(solid, x), 0, end)).isCloseTo(volume, within(1e-8 * volume));
    }

    private static double boardArea(NeckSolid solid, double x) {
        double half = solid.back().sectionMm(x).halfWidth();
        return 2 * simpson(y -> solid.boardTopMm(x, y), 0, half);
    }

    private static double simpson(DoubleUnaryOperator f, double from, double to) {
        int n = 40;
        double sum = f.applyAsDouble(from) + f.applyAsDouble(to);
        for (int i = 1; i < n; i++) {
            sum += (i % 2 == 0 ? 2 : 4) * f.applyAsDouble(from + (to - from) * i / n);
        }
        return sum * (to - from) / n / 3;
    }

    private static double named(Map<String, Double> all, String end) {
        return all.entrySet().stream()
                .filter(e -> e.getKey().endsWith(end))
                .findFirst()
                .orElseThrow()
                .getValue();
    }

    static Map<String, Double> clearances(ReferenceNecks one) {
        Map<String, Double> all = new HashMap<>();
        for (String[] row : Table.rows("solid/solid-clearances.csv")) {
            if (ReferenceNecks.named(row[0]) == one) {
                // a name may hold commas; the figure comes last
                all.put(
                        String.join(",", List.of(row).subList(1, row.length - 1))
                                .replace("\"", ""),
                        figure(row[row.length - 1]));
            }
        }
        return all;
    }

    /** A name may hold commas; the figure comes last. */
    private static String name(String[] row) {
        return String.join(",", List.of(row).subList(1, row.length - 1)).replace("\"", "");
    }
}
