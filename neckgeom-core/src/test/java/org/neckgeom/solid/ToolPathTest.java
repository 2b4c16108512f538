package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.neckgeom.channel.Passes;
import org.neckgeom.channel.RodSlot;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.Settled;
import org.neckgeom.fault.Refusal;
import org.neckgeom.kernel.Table;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.End;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Spot;
import org.neckgeom.shop.Cutter;
import org.neckgeom.units.LengthStyle;

/** Tool paths against solid-toolpath.csv, computed by solid.py, and against the channel they cut. */
class ToolPathTest {

    private static final Passes THREE = Passes.noDeeperThan(mm(3));

    private static Channel channel(double width, double depth) {
        return Channel.forRod(TrussRod.twoWay(mm(400)).section(mm(width), mm(depth)))
                .startingAt(mm(5));
    }

    @Test
    void path_isThatOfTheReference() {
        List<String[]> rows = Table.rows("solid/solid-toolpath.csv");
        int at = 0;
        for (ReferenceNecks one : ReferenceNecks.values()) {
            Channel channel = one.neck().channel().orElseThrow();
            for (ToolPass pass : ToolPath.of(channel, Cutter.straight(mm(channel.widthMm())), THREE)
                    .passes()) {
                for (Point point : pass.points()) {
                    String[] row = rows.get(at);
                    assertThat(ReferenceNecks.named(row[0])).isEqualTo(one);
                    assertThat(pass.number()).isEqualTo(Integer.parseInt(row[1]));
                    // The file has nine digits.
                    assertThat(point.distanceMm(new Point(
                                    Double.parseDouble(row[2]),
                                    Double.parseDouble(row[3]),
                                    Double.parseDouble(row[4]))))
                            .as("row %d", at)
                            .isLessThan(1e-6);
                    at++;
                }
            }
        }
        assertThat(at).isEqualTo(rows.size());
    }

    /** What a flat cutter has taken at a station of the centreline: the deepest of its places no farther off than its radius. */
    private static double taken(List<Point> path, double radius, double x) {
        double deepest = 0;
        for (int i = 0; i + 1 < path.size(); i++) {
            Point a = path.get(i);
            Point b = path.get(i + 1);
            double from = Math.max(Math.min(a.xMm(), b.xMm()), x - radius - 1e-10);
            double to = Math.min(Math.max(a.xMm(), b.xMm()), x + radius + 1e-10);
            for (double at : new double[] {from, to}) {
                if (from <= to) {
                    double share = b.xMm() == a.xMm() ? 0 : (at - a.xMm()) / (b.xMm() - a.xMm());
                    deepest = Math.max(deepest, -(a.zMm() + share * (b.zMm() - a.zMm())));
                }
            }
        }
        return deepest;
    }

    /** The floor's circle in its own words: through both ends and the middle, no share of the code. */
    private static double floor(Channel channel, double arch, double x) {
        double half = channel.lengthMm() / 2;
        double radius = (half * half + arch * arch) / (2 * Math.abs(arch));
        double u = x - channel.startMm() - half;
        return channel.depthMm() + arch - Math.copySign(radius - Math.sqrt(radius * radius - u * u), arch);
    }

    /** From end to end, the round ends counted: no deeper than the floor, and no shallower than the tolerance and a flat tip leave. */
    @Test
    void archedFloor_isTakenWithinTheTolerance_andNeedsNoMoreChords() {
        SplittableRandom random = new SplittableRandom(21);
        for (int trial = 0; trial < 200; trial++) {
            double arch = random.nextDouble(0.05, 5) * (random.nextBoolean() ? 1 : -1);
            double tolerance = random.nextDouble(0.001, 0.1);
            Channel channel = channel(6, 9).arch(mm(arch));
            List<ToolPass> passes = ToolPath.of(channel, Cutter.straight(mm(6)), THREE)
                    .tolerance(mm(tolerance))
                    .passes();
            List<Point> last = passes.get(passes.size() - 1).points();
            double half = channel.lengthMm() / 2;
            double radius = (half * half + arch * arch) / (2 * Math.abs(arch));
            double flat = 3 * 3 / (2 * radius) * 1.01;
            String at = "arch " + arch + ", tolerance " + tolerance;

            double worst = 0;
            for (int k = 0; k <= 2000; k++) {
                double x = channel.startMm() + channel.lengthMm() * k / 2000;
                double depth = taken(last, 3, x);
                double wanted = floor(channel, arch, x);
                boolean isEnd = Math.min(x - channel.startMm(), channel.endMm() - x) < 6;
                assertThat(depth - wanted).as(at).isLessThanOrEqualTo(arch < 0 ? tolerance : 1e-9);
                if (arch > 0 || !isEnd) {
                    assertThat(wanted - depth).as(at).isLessThanOrEqualTo((arch > 0 ? tolerance : 0) + flat);
                } else {
                    // Wood stays where the tip cannot go without its other edge cutting too deep.
                    assertThat(wanted - depth)
                            .as(at)
                            .isLessThanOrEqualTo(wanted - floor(channel, arch, channel.startMm() + 6) + 1e-9);
                }
                worst = Math.max(worst, Math.abs(depth - wanted) - (arch > 0 ? flat : 0));
            }
            // One chord less a side would leave the arc by more: the sagitta grows with the square of its chord.
            double chords = Math.floor((last.size() - 1) / 2.0);
            double run = half - (arch > 0 ? 3 : 6);
            double sagitta = square(run / Math.max(1, chords - 1)) / (8 * radius);
            assertThat(chords == 1 || sagitta > 0.98 * tolerance)
                    .as("%s chords for %s", chords, at)
                    .isTrue();
        }
    }

    /** Path, drawing, mesh and wood left have one depth at both ends of an arched floor. */
    @Test
    void archedFloorsEnds_areAsDeepInPathDrawingMeshAndWoodLeft() {
        SplittableRandom random = new SplittableRandom(22);
        for (int trial = 0; trial < 50; trial++) {
            double arch = random.nextDouble(0.05, 3);
            Neck neck = RandomNecks.of(random.nextLong()).neck();
            Channel channel = neck.channel().orElseThrow().arch(mm(arch));
            NeckSolid solid = NeckSolid.of(neck.channel(channel)).cutter(mm(channel.widthMm()));
            FloorThickness wood = solid.floorThickness().orElseThrow();
            double r = channel.widthMm() / 2;
            List<ToolPass> passes = ToolPath.of(channel, Cutter.straight(mm(channel.widthMm())), THREE)
                    .passes();
            List<Point> path = passes.get(passes.size() - 1).points();
            List<Spot> drawn = new NeckShape(neck.channel(channel), Settled.nothing())
                    .channelSide(channel)
                    .spots();
            double[] mesh = solid.meshes(mm(0.01)).stream()
                    .filter(m -> m.name().equals("cut: channel"))
                    .findFirst()
                    .orElseThrow()
                    .xyzMm();
            for (double end : new double[] {channel.startMm(), channel.endMm()}) {
                double depth = floor(channel, arch, end);
                assertThat(taken(path, r, end)).as("seed 22 case %s", trial).isCloseTo(depth, within(1e-9));
                assertThat(drawn)
                        .anySatisfy(spot -> assertThat(spot.distanceMm(new Spot(end, -depth)))
                                .isLessThan(1e-9));
                assertThat(lowestAt(mesh, end)).isCloseTo(-depth, within(1e-9));
                BackSection section = solid.back().sectionMm(end);
                assertThat(wood.inSection(end, 0, 0))
                        .isEqualTo(Math.min(
                                section.distance(r, channel.depthAtMm(end)),
                                section.distance(-r, channel.depthAtMm(end))));
                assertThat(channel.depthAtMm(end)).isCloseTo(depth, within(1e-9));
            }
        }
    }

    private static double lowestAt(double[] mesh, double x) {
        return IntStream.range(0, mesh.length / 3)
                .filter(i -> Math.abs(mesh[3 * i] - x) < 1e-9)
                .mapToDouble(i -> mesh[3 * i + 2])
                .min()
                .orElseThrow();
    }

    private static double square(double x) {
        return x * x;
    }

    private static double[] stations(ToolPath path, boolean inPocket) {
        return path.passes().stream()
                .filter(pass -> pass.isInPocket() == inPocket)
                .flatMap(pass -> pass.points().stream())
                .mapToDouble(Point::xMm)
                .toArray();
    }

    /** By hand: a channel from 5 to 405 by a cutter of 6: from 5 + 3 to 405 - 3 closed, 3 past an end that is open. */
    @Test
    void openEnd_isRunPastByTheRadius() {
        ToolPath closed = ToolPath.of(channel(6, 9), Cutter.straight(mm(6)), THREE);

        assertThat(stations(closed, false)).startsWith(8, 402).containsOnly(8, 402);
        assertThat(stations(closed.openAt(Set.of(End.HEAD)), false)).containsOnly(2, 402);
        assertThat(stations(closed.openAt(Set.of(End.HEEL)), false)).containsOnly(8, 408);
        assertThat(stations(closed.openAt(Set.of(End.HEAD, End.HEEL)), false)).containsOnly(2, 408);
        assertThat(closed.openAt(Set.of(End.HEAD)).toString())
                .contains("head end open: the middle runs 3 mm past it", "the other round, radius 3 mm");
        assertThat(closed.openAt(Set.of(End.HEAD, End.HEEL)).toString())
                .contains("heel end open: the middle runs 3 mm past it")
                .doesNotContain("round");
    }

    /** A pocket of 40 at the heel end runs from 365 to 405: its inner end stays closed. */
    @Test
    void pocketAtAnOpenEnd_isRunPastThereAlone() {
        Channel channel = Channel.forRod(
                        TrussRod.twoWay(mm(400)).section(mm(6), mm(9)).adjuster(End.HEEL))
                .startingAt(mm(5))
                .adjusterPocket(mm(40))
                .section(mm(11), mm(12));
        ToolPath path = ToolPath.of(channel, Cutter.straight(mm(6)), THREE);

        assertThat(stations(path.openAt(Set.of(End.HEEL)), true)).containsOnly(368, 408);
        assertThat(stations(path.openAt(Set.of(End.HEAD)), true)).containsOnly(368, 402);
    }

    /** A cutter of 5 with 0.2 of runout cuts 5.2: 2.6 inside each end, (6 - 5.2)/2 = 0.4 either side of the middle. */
    @Test
    void runout_countsInWidthAndLength() {
        ToolPath path = ToolPath.of(channel(6, 9), Cutter.straight(mm(5)).runout(mm(0.2)), THREE);

        assertThat(path.points()).allSatisfy(p -> {
            assertThat(Math.abs(p.yMm())).isCloseTo(0.4, within(1e-9));
            assertThat(Math.min(Math.abs(p.xMm() - 7.6), Math.abs(p.xMm() - 402.4)))
                    .isLessThan(1e-9);
        });
    }

    /** At an open end an arched floor is cut over its whole width: down to the circle, no deeper, and the middle runs past it. */
    @Test
    void archedFloorsOpenEnds_areCutToTheEnd() {
        SplittableRandom random = new SplittableRandom(23);
        for (int trial = 0; trial < 100; trial++) {
            double arch = random.nextDouble(0.05, 5) * (random.nextBoolean() ? 1 : -1);
            Set<End> open =
                    random.nextBoolean() ? Set.of(random.nextBoolean() ? End.HEAD : End.HEEL) : Set.of(End.values());
            Channel channel = channel(6, 9).arch(mm(arch));
            List<ToolPass> passes = ToolPath.of(channel, Cutter.straight(mm(6)), THREE)
                    .openAt(open)
                    .passes();
            List<Point> last = passes.get(passes.size() - 1).points();
            double half = channel.lengthMm() / 2;
            double flat = 3 * 3 * Math.abs(arch) / (half * half + arch * arch) * 1.01;
            String at = "arch " + arch + ", open " + open;
            for (End end : End.values()) {
                double x = end == End.HEAD ? channel.startMm() : channel.endMm();
                double past = last.stream()
                        .mapToDouble(p -> end == End.HEAD ? x - p.xMm() : p.xMm() - x)
                        .max()
                        .orElseThrow();
                assertThat(past).as(at).isCloseTo(open.contains(end) ? 3 : -3, within(1e-9));
                for (int k = 0; open.contains(end) && k <= 40; k++) {
                    double there = end == End.HEAD ? x + k / 4.0 : x - k / 4.0;
                    double off = taken(last, 3, there) - floor(channel, arch, there);
                    assertThat(off).as(at).isLessThanOrEqualTo(arch < 0 ? 0.02 : 1e-9);
                    assertThat(-off).as(at).isLessThanOrEqualTo(0.02 + flat);
                }
            }
        }
    }

    @Test
    void passes_followTheArchByTheirShare_noneDeeperThanAsked() {
        Channel channel = channel(6, 9).arch(mm(2));
        List<ToolPass> passes =
                ToolPath.of(channel, Cutter.straight(mm(6)), THREE).passes();

        assertThat(passes).hasSize(4);
        // A flat tip of radius r stays off the deepest place of a circle of radius R by r^2 / (2 R) and a little.
        double half = channel.lengthMm() / 2;
        double radius = (half * half + 4) / 4;
        double deepest = 11 - (radius - Math.sqrt(radius * radius - 9));
        assertThat(passes.get(0).depth().libraryValue()).isCloseTo(deepest / 4, within(1e-9));
        assertThat(passes.get(3).depth().libraryValue()).isCloseTo(deepest, within(1e-9));
        for (int i = 0; i + 1 < passes.size(); i++) {
            List<Point> here = passes.get(i).points();
            List<Point> next = passes.get(i + 1).points();
            Point end = here.get(here.size() - 1);
            assertThat(next.get(0).xMm()).as("to and fro").isEqualTo(end.xMm());
            assertThat(end.zMm() - next.get(0).zMm()).isPositive().isLessThanOrEqualTo(3);
        }
    }

    /** A fine grid of the pocket's floor: each point a cutter of this radius can reach lies under one of its places. */
    @Test
    void pocket_isCleanedOverItsWholeWidth() {
        Channel channel = channel(6, 9).adjusterPocket(mm(40)).section(mm(17), mm(13));
        double start = channel.adjusterPocketStartMm();
        for (double cutter : new double[] {6, 5, 3.1}) {
            for (double step : new double[] {cutter / 2, cutter}) {
                List<ToolPass> pocket =
                        ToolPath.of(channel, Cutter.straight(mm(cutter)), THREE).stepOver(mm(step)).passes().stream()
                                .filter(ToolPass::isInPocket)
                                .toList();
                assertThat(pocket).hasSize(5);
                List<Point> last = pocket.get(4).points();
                assertThat(last).allSatisfy(p -> assertThat(p.zMm()).isEqualTo(-13));
                assertThat(cut(last, cutter / 2, start, 40, 17)).isEqualTo(reachable(cutter / 2, 40, 17));
            }
        }
    }

    private static final double GRID = 0.23;

    /** Places of a grid that lie under the cutter along the path. */
    private static List<String> cut(List<Point> path, double radius, double start, double length, double width) {
        List<String> all = new ArrayList<>();
        double z = path.get(0).zMm();
        for (double u = GRID / 2; u < length; u += GRID) {
            for (double y = -width / 2 + GRID / 2; y < width / 2; y += GRID) {
                double least = Double.POSITIVE_INFINITY;
                for (int i = 0; i + 1 < path.size(); i++) {
                    least = Math.min(
                            least, new Line(path.get(i), path.get(i + 1)).distanceMm(new Point(start + u, y, z)));
                }
                if (least <= radius + 1e-9) {
                    all.add(u + " " + y);
                }
            }
        }
        return all;
    }

    /** All places of the grid but those in the four corners outside the cutter's circle. */
    private static List<String> reachable(double radius, double length, double width) {
        List<String> all = new ArrayList<>();
        for (double u = GRID / 2; u < length; u += GRID) {
            for (double y = -width / 2 + GRID / 2; y < width / 2; y += GRID) {
                double du = Math.max(0, Math.max(radius - u, u - (length - radius)));
                double dy = Math.max(0, Math.abs(y) - (width / 2 - radius));
                if (Math.sqrt(du * du + dy * dy) <= radius + 1e-9) {
                    all.add(u + " " + y);
                }
            }
        }
        return all;
    }

    @Test
    void plannedPasses_areThoseOfThePath() {
        Channel channel = channel(6, 9);
        Passes rule = Passes.noDeeperThan(mm(3)).lastPass(mm(0.5));
        ToolPath path =
                ToolPath.of(channel, Cutter.straight(mm(6)), RodSlot.of(channel).passes(rule));

        assertThat(path.passes())
                .extracting(pass -> pass.depth().libraryValue())
                .containsExactlyElementsOf(RodSlot.of(channel).passes(rule).gaugeBlockSteps().stream()
                        .map(height -> height.libraryValue())
                        .toList());
        assertThat(path).isEqualTo(ToolPath.of(channel, Cutter.straight(mm(6)), rule));
        assertThat(path.safeHeight(mm(8)).safeHeight().libraryValue()).isEqualTo(8);
        assertThat(path.cutter().libraryValue()).isEqualTo(6);
    }

    @Test
    void csv_hasTheSamePointsAsTheList() {
        Channel channel = channel(6, 9).arch(mm(0.3)).adjusterPocket(mm(40)).section(mm(11), mm(12));
        ToolPath path = ToolPath.of(channel, Cutter.straight(mm(6)), THREE);

        List<String> lines = path.csv(LengthStyle.MILLIMETRES).lines().toList();

        assertThat(lines.get(0)).isEqualTo("part,pass,x (mm),y (mm),z (mm),cutter (mm),safeHeight (mm)");
        assertThat(lines).hasSize(1 + path.points().size());
        double[] flat = path.xyzMm();
        for (int i = 0; i < path.points().size(); i++) {
            String[] cells = lines.get(i + 1).split(",");
            for (int k = 0; k < 3; k++) {
                // Data has twelve digits.
                assertThat(Double.parseDouble(cells[2 + k])).isCloseTo(flat[3 * i + k], within(1e-8));
            }
            assertThat(cells[5] + " " + cells[6]).isEqualTo("6 5");
        }
        assertThat(lines.get(1)).startsWith("channel,1,8,0,");
        assertThat(lines.get(lines.size() - 1)).startsWith("adjuster pocket,4,");
        assertThat(path.csv(LengthStyle.DECIMAL_INCHES)).startsWith("part,pass,x (in),");
    }

    @Test
    void text_statesCutterFrameAndSafeHeight() {
        assertThat(ToolPath.of(channel(6, 9), Cutter.straight(mm(6)), THREE).toString())
                .contains("cutter 6 mm", "safe height", "5 mm over the glue face", "round, radius 3 mm")
                .contains("x from the nut line", "z up from the");
    }

    @Test
    void path_rejectsACutterThatDoesNotFit_andPassesOfAnotherDepth() {
        assertThatThrownBy(() -> ToolPath.of(channel(6, 9), Cutter.straight(mm(6.1)), THREE))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("cutter diameter must be no more than 6 mm");
        assertThatThrownBy(() -> ToolPath.of(
                        channel(6, 9),
                        Cutter.straight(mm(6)),
                        RodSlot.of(channel(6, 8)).passes(THREE)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("depth of the passes must be the channel's deepest, 9");
        ToolPath path = ToolPath.of(channel(6, 9), Cutter.straight(mm(6)), THREE);
        assertThatThrownBy(() -> path.stepOver(mm(6.5))).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> path.tolerance(mm(2))).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> path.safeHeight(mm(0))).isInstanceOf(Refusal.class);
    }
}
