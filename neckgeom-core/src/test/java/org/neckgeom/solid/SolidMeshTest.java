package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.kernel.Table;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Bars;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Tenon;
import org.neckgeom.shape.Direction;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Mesh;
import org.neckgeom.shape.Plane;
import org.neckgeom.shape.Point;

/** Meshes of the reference necks: closed, outward, and of the volume that solid.py computed with scipy. */
class SolidMeshTest {

    @ParameterizedTest
    @EnumSource(ReferenceNecks.class)
    void meshes_areClosedAndOutward(ReferenceNecks one) {
        List<Mesh> all = NeckSolid.of(one.neck()).meshes(mm(0.05));

        assertThat(all)
                .extracting(Mesh::name)
                .contains("shaft and heel", "fingerboard", "head", "face veneer", "cut: channel");
        all.forEach(SolidMeshTest::isClosed);
    }

    /** Each directed edge once and its opposite once, Euler's number 2, volume positive, no two points as one in 32-bit floats. */
    static void isClosed(Mesh mesh) {
        Map<Long, Integer> edges = new HashMap<>();
        int[] corners = mesh.corners();
        for (int t = 0; t < corners.length; t += 3) {
            for (int k = 0; k < 3; k++) {
                long from = corners[t + k];
                long to = corners[t + (k + 1) % 3];
                edges.merge(from << 32 | to, 1, Integer::sum);
            }
        }
        edges.forEach((edge, count) -> {
            assertThat(count).as("%s: an edge run twice", mesh).isEqualTo(1);
            assertThat(edges).as("%s: an open edge", mesh).containsKey(edge << 32 | edge >>> 32);
        });
        assertThat(mesh.points() - edges.size() / 2 + mesh.triangles())
                .as("%s: Euler", mesh)
                .isEqualTo(2);
        assertThat(mesh.volumeMm3()).as("%s: inside out", mesh).isPositive();
        double[] xyz = mesh.xyzMm();
        long apart = IntStream.range(0, mesh.points())
                .mapToObj(i -> (float) xyz[3 * i] + " " + (float) xyz[3 * i + 1] + " " + (float) xyz[3 * i + 2])
                .distinct()
                .count();
        assertThat(apart).as("%s: points that fall together", mesh).isEqualTo(mesh.points());
    }

    @Test
    void volumes_areThoseOfTheReference() {
        Map<String, Double> all = new HashMap<>();
        for (String[] row : Table.rows("solid/solid-volumes.csv")) {
            String name =
                    String.join(",", List.of(row).subList(0, row.length - 1)).replace("\"", "");
            all.put(name, Double.parseDouble(row[row.length - 1]));
        }
        for (ReferenceNecks one : ReferenceNecks.values()) {
            String name = one.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-') + ",";
            NeckSolid solid = NeckSolid.of(one.neck());
            Map<String, Double> ours = new HashMap<>();
            solid.meshes(mm(0.005)).forEach(m -> ours.put(m.name(), m.volumeMm3()));

            double wood = all.get(name + "shaft and heel wood, x 0 to joint");
            assertThat(ours.get("shaft and heel"))
                    .as(name)
                    .isCloseTo(wood, within(2e-4 * wood))
                    .isLessThan(wood);
            double channel = all.get(name + "channel volume, square ends");
            assertThat(ours.get("cut: channel")).as(name).isCloseTo(channel, within(1e-8 * channel));
        }
        // A square nut and no swing: the outline begins at u = 0 as in the script.
        NeckSolid straight = NeckSolid.of(ReferenceNecks.STRAIGHT.neck());
        double head = all.get("straight,head wood, outline times t, ends square");
        assertThat(straight.head().orElseThrow().outline().areaMm2())
                .isCloseTo(all.get("straight,head outline area in its face"), within(1e-6));
        assertThat(straight.meshes(mm(0.05)).stream()
                        .filter(m -> m.name().equals("head"))
                        .findFirst()
                        .orElseThrow()
                        .volumeMm3())
                .isCloseTo(head, within(1e-6 * head));
    }

    /**
     * Box and cylinders in closed form; a polygon of n corners in a circle of radius r has the area {@code n r^2 sin(2 pi / n) / 2}. All
     * lie past the mating face and on it.
     */
    @Test
    void tenon_isABoxOnTheMatingFaceWithItsHolesAsCuts() {
        SplittableRandom random = new SplittableRandom(64);
        for (int i = 0; i < 40; i++) {
            double high = random.nextDouble(50, 76);
            double length = random.nextDouble(16, 25);
            double wide = random.nextDouble(15, 40);
            double hole = random.nextDouble(6, 12);
            double tolerance = random.nextDouble(0.05, 0.3);
            Tenon tenon = Tenon.of(mm(high), mm(length))
                    .holes(mm(hole), mm(1))
                    .at(mm(18), mm(38))
                    .width(mm(wide));
            Neck neck = ReferenceNecks.STRAIGHT.neck();
            NeckSolid solid = NeckSolid.of(neck.heel(neck.heel().orElseThrow().joint(tenon)));
            Map<String, Mesh> meshes =
                    solid.meshes(mm(tolerance)).stream().collect(Collectors.toMap(Mesh::name, m -> m));
            meshes.values().forEach(SolidMeshTest::isClosed);
            Mesh box = meshes.get("tenon");

            assertThat(box.volumeMm3()).isCloseTo(high * length * wide, within(1e-8));
            Plane face = solid.matingFace();
            double[] depths = {18, 38};
            for (int k = 0; k < 2; k++) {
                Mesh cut = meshes.get("cut: tenon hole " + (k + 1));
                int n = cut.points() / 2;
                assertThat(cut.volumeMm3())
                        .isCloseTo(n * hole * hole / 8 * Math.sin(2 * Math.PI / n) * wide, within(1e-8));
                assertThat(hole / 2 * (1 - Math.cos(Math.PI / n))).isLessThanOrEqualTo(tolerance);
                double[] far = reaches(cut, face);
                // Set back by 1 mm; a corner of the polygon need not lie at either end.
                assertThat(far[0]).isBetween(1 - 1e-9, 1 + tolerance);
                assertThat(far[1]).isBetween(1 + hole - tolerance, 1 + hole + 1e-9);
                Plane down = Plane.through(
                        new Point(solid.bodyJointMm(), 0, 0),
                        new Direction(-face.normal().z(), 0, face.normal().x()));
                double[] deep = reaches(cut, down);
                assertThat((deep[0] + deep[1]) / 2).isCloseTo(-depths[k], within(tolerance));
            }
            double[] ends = reaches(box, face);
            assertThat(ends[0]).isCloseTo(0, within(1e-9));
            assertThat(ends[1]).isCloseTo(length, within(1e-9));
        }
    }

    /** Its channel as a groove: the web of a slotted head covers an adjuster behind the nut. */
    private static Neck withoutRod(Neck neck) {
        return neck.channel(Channel.locatingGroove(mm(100), mm(4)).startingAt(mm(5)));
    }

    /**
     * Slots with round ends: {@code (length - width) width} and a polygon in a circle, all through the head and its veneers; posts: a
     * polygon in a circle of the post.
     */
    @Test
    void slotsAndPosts_areCutsThroughTheHeadAndItsVeneers() {
        SplittableRandom random = new SplittableRandom(65);
        for (int i = 0; i < 20; i++) {
            double wide = random.nextDouble(8, 16);
            double length = random.nextDouble(80, 120);
            Neck neck = RandomNecks.of(random.nextLong()).neck();
            Head head = neck.head().orElseThrow();
            double through = head.thicknessMm() + head.veneerMm() + head.backVeneerMm();
            double tolerance = random.nextDouble(0.1, 0.3);
            Map<String, Mesh> posts = byName(neck, tolerance);
            for (int k = 1; k <= 6; k++) {
                Mesh post = posts.get("cut: post " + k);
                int n = post.points() / 2;
                double r = head.postDiameterMm() / 2;
                isClosed(post);
                assertThat(post.volumeMm3())
                        .isCloseTo(
                                n * r * r / 2 * Math.sin(2 * Math.PI / n) * through, within(1e-8 * post.volumeMm3()));
            }
            Map<String, Mesh> slots = byName(
                    withoutRod(neck).head(head.slots(mm(30), mm(length)).slotWidth(mm(wide), mm(18))), tolerance);
            for (String side : List.of("bass", "treble")) {
                Mesh slot = slots.get("cut: slot " + side);
                isClosed(slot);
                // Both ends together are one circle: its chords and the two straight sides.
                int n = slot.points() / 2 - 2;
                double ends = n * wide * wide / 8 * Math.sin(2 * Math.PI / n);
                assertThat(slot.volumeMm3())
                        .isCloseTo(((length - wide) * wide + ends) * through, within(1e-8 * slot.volumeMm3()));
                double[] box = slot.boxMm();
                assertThat(side.equals("bass") ? box[4] < 8 : box[1] > -8).isTrue();
            }
            assertThat(slots).doesNotContainKey("cut: post 1");
        }
    }

    /** By hand: two boxes of the channel's section over its length, fanned or not, and a box under the anchor. */
    @Test
    void bars_andAnchorAreTheirBoxes() {
        Bars bars =
                Bars.of(Bar.carbon(mm(380)).section(mm(3.2), mm(9.5)), mm(10)).fanned(mm(12));
        Neck neck = ChannelJigTest.plain().bars(bars).stringAnchor(mm(25));
        Map<String, Mesh> meshes = byName(neck, 0.05);
        double box = bars.channel().lengthMm()
                * bars.channel().widthMm()
                * bars.channel().depthMm();

        for (String side : List.of("bass", "treble")) {
            Mesh bar = meshes.get("cut: channel of " + side + " bar");
            isClosed(bar);
            assertThat(bar.volumeMm3()).isCloseTo(box, within(1e-6 * box));
            assertThat(Math.signum(bar.boxMm()[1])).isEqualTo(side.equals("bass") ? -1 : 1);
        }
        Mesh anchor = meshes.get("wood under the string anchor");
        isClosed(anchor);
        assertThat(anchor.volumeMm3())
                .isCloseTo(25 * 43 * NeckSolid.of(neck).depth().valueAt(0), within(1e-6));
    }

    private static Map<String, Mesh> byName(Neck neck, double tolerance) {
        return NeckSolid.of(neck).meshes(mm(tolerance)).stream().collect(Collectors.toMap(Mesh::name, m -> m));
    }

    /** Least and greatest height of a mesh's points over a plane. */
    private static double[] reaches(Mesh mesh, Plane plane) {
        double[] xyz = mesh.xyzMm();
        double[] heights = IntStream.range(0, mesh.points())
                .mapToDouble(i -> plane.heightOfMm(new Point(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2])))
                .sorted()
                .toArray();
        return new double[] {heights[0], heights[heights.length - 1]};
    }

    /** Wood from the nut to the leaning mating face: midpoints of section widths over the piece that the face adds or takes. */
    static double woodToTheFace(NeckSolid solid) {
        Direction out = solid.matingFace().normal();
        double lean = -out.z() / out.x();
        double joint = solid.bodyJointMm();
        double deepest = solid.depth().valueAt(joint);
        double reach = Math.abs(lean) * deepest;
        if (reach == 0) {
            return solid.woodMm3();
        }
        int n = 250;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            // Toward the nut wood is left above the face; toward the body it is added below it.
            double x = lean < 0 ? joint + reach * (i + 0.5) / n : joint - reach * (i + 0.5) / n;
            BackSection section = solid.back().sectionMm(x);
            double meets = Math.min(section.depth(), Math.abs(joint - x) / Math.abs(lean));
            double from = lean < 0 ? meets : 0;
            double to = lean < 0 ? section.depth() : meets;
            for (int k = 0; k < n; k++) {
                double z = from + (to - from) * (k + 0.5) / n;
                sum += (section.halfWidthAt(z, true) + section.halfWidthAt(z, false)) * (to - from) / n * reach / n;
            }
        }
        return (lean < 0 ? solid.woodMm3() : solid.woodMm3(0, joint - reach)) + sum;
    }

    /** A heel 80 high whose face leans by the neck angle: every point of the mesh on the wood's side, its end in the plane. */
    @ParameterizedTest
    @ValueSource(doubles = {6, 15, 30})
    void heel_endsAtTheLeaningMatingFace(double saddle) {
        Neck neck = ReferenceNecks.ONE_PIECE.neck();
        NeckSolid solid = NeckSolid.of(
                neck.neckSet(NeckSet.saddle(mm(saddle)).atNut(mm(0.4)).action(mm(2))));
        Plane face = solid.matingFace();
        Mesh mesh = solid.meshes(mm(0.02)).get(0);
        double[] xyz = mesh.xyzMm();
        int inPlane = 0;
        for (int i = 0; i < xyz.length; i += 3) {
            double height = face.heightOfMm(new Point(xyz[i], xyz[i + 1], xyz[i + 2]));
            assertThat(height).isLessThan(1e-9);
            inPlane += height > -1e-9 ? 1 : 0;
        }

        isClosed(mesh);
        assertThat(Math.abs(face.normal().z())).isGreaterThan(1e-3);
        assertThat(inPlane).isGreaterThan(20);
        double wood = woodToTheFace(solid);
        assertThat(mesh.volumeMm3()).isCloseTo(wood, within(3e-4 * wood));
        assertThat(Math.abs(wood - solid.woodMm3())).isGreaterThan(1e-3 * wood);
    }

    /** A cutter as wide as the channel leaves half circles: (4 - pi) r^2 of its plan less, chords counted. */
    @Test
    void channel_isRoundWhereARoundCutterEndsIt() {
        NeckSolid solid = NeckSolid.of(ReferenceNecks.STRAIGHT.neck());
        Channel channel = solid.floorThickness().orElseThrow().channel();
        double r = channel.widthMm() / 2;
        Mesh square = named(solid, "cut: channel");
        Mesh round = named(solid.cutter(mm(channel.widthMm())), "cut: channel");
        Mesh corners = named(solid.cutter(mm(channel.widthMm() / 2)), "cut: channel");
        double depth = channel.depthMm();
        double arch = Math.abs(channel.archMm());

        isClosed(round);
        isClosed(corners);
        assertThat(square.volumeMm3() - round.volumeMm3())
                .isCloseTo((4 - Math.PI) * r * r * depth, within(r * (0.2 + 4 * arch)));
        assertThat(square.volumeMm3() - corners.volumeMm3())
                .isCloseTo((4 - Math.PI) * r * r / 4 * depth, within(r * (0.2 + 4 * arch)));
        assertThat(solid.cutter(mm(50)).meshes(mm(0.005)).stream().map(Mesh::volumeMm3))
                .contains(round.volumeMm3());
    }

    private static Mesh named(NeckSolid solid, String name) {
        return solid.meshes(mm(0.005)).stream()
                .filter(mesh -> mesh.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Head and wings are the whole head cut apart: their volumes add up, and the head is no wider than its stock. */
    @ParameterizedTest
    @EnumSource(ReferenceNecks.class)
    void wings_andHeadAreTheWholeHead(ReferenceNecks one) {
        NeckSolid solid = NeckSolid.of(one.neck());
        double whole = named(solid, "head").volumeMm3();
        List<Mesh> pieces = solid.stock(mm(60)).meshes(mm(0.05));
        double middle = 0;
        double wings = 0;
        for (Mesh mesh : pieces) {
            isClosed(mesh);
            middle += mesh.name().startsWith("head") ? mesh.volumeMm3() : 0;
            wings += mesh.name().startsWith("wing") ? mesh.volumeMm3() : 0;
        }

        assertThat(wings).isPositive();
        assertThat(middle + wings).isCloseTo(whole, within(1e-6 * whole));
        assertThat(solid.stock(mm(500)).meshes(mm(0.05)))
                .extracting(Mesh::name)
                .contains("head")
                .noneMatch(name -> name.startsWith("wing"));
    }

    /** Chords lie inside a convex section, so a mesh is low, and the miss falls with the square of the count: a theorem, measured. */
    @Test
    void shaft_comesNearerWithTheSquareOfItsCount() {
        BackShape back = NeckSolid.of(ReferenceNecks.STRAIGHT.neck()).back();
        double exact = NeckSolid.of(ReferenceNecks.STRAIGHT.neck()).woodMm3(0, 200);
        double before = 1;
        for (int n = 4; n <= 64; n *= 2) {
            double step = 200.0 / n;
            double[] stations =
                    DoubleStream.iterate(0, x -> x + step).limit(n + 1).toArray();
            double miss = 1 - SolidMesh.ofShaft("shaft", back, stations, n).volumeMm3() / exact;
            if (n > 4) {
                assertThat(before / miss).as("n %d", n).isBetween(3.5, 4.5);
            }
            before = miss;
        }
    }

    @Test
    void nutAndSaddle_areTheLinesTheOuterStringsBearOn() {
        NeckSolid solid = NeckSolid.of(ReferenceNecks.FANNED.neck());
        List<StringLine> strings = solid.strings();

        assertThat(solid.nut().orElseThrow().from())
                .isEqualTo(strings.get(0).underside().from());
        assertThat(solid.nut().orElseThrow().to())
                .isEqualTo(strings.get(strings.size() - 1).underside().from());
        // Behind a square bridge both ends of the saddle lie as far from the nut; a fan's do not.
        Line square = NeckSolid.of(ReferenceNecks.STRAIGHT.neck()).saddle().orElseThrow();
        Line slanted = solid.saddle().orElseThrow();
        assertThat(square.from().xMm()).isCloseTo(square.to().xMm(), within(0.05));
        assertThat(Math.abs(slanted.from().xMm() - slanted.to().xMm())).isGreaterThan(5);
    }

    @Test
    void stl_readsBackAsTheSameTriangles() {
        Mesh mesh = NeckSolid.of(ReferenceNecks.FANNED.neck()).meshes(mm(0.2)).get(0);

        // Source: the binary STL layout, from memory: 80 bytes, uint32, then 50 bytes to a triangle, little-endian.
        byte[] file = mesh.toStl();
        ByteBuffer in = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
        assertThat(new String(Arrays.copyOf(file, 5), java.nio.charset.StandardCharsets.US_ASCII))
                .isNotEqualTo("solid");
        in.position(80);
        assertThat(in.getInt()).isEqualTo(mesh.triangles());
        double six = 0;
        for (int t = 0; t < mesh.triangles(); t++) {
            double[] n = {in.getFloat(), in.getFloat(), in.getFloat()};
            double[][] p = new double[3][];
            for (int k = 0; k < 3; k++) {
                p[k] = new double[] {in.getFloat(), in.getFloat(), in.getFloat()};
            }
            assertThat(in.getShort()).isZero();
            assertThat(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]).isCloseTo(1, within(1e-5));
            six += p[0][0] * (p[1][1] * p[2][2] - p[1][2] * p[2][1])
                    - p[0][1] * (p[1][0] * p[2][2] - p[1][2] * p[2][0])
                    + p[0][2] * (p[1][0] * p[2][1] - p[1][1] * p[2][0]);
        }
        assertThat(in.hasRemaining()).isFalse();
        assertThat(six / 6).isCloseTo(mesh.volumeMm3(), within(1e-6 * mesh.volumeMm3()));
    }

    @Test
    void obj_readsBackAsTheSameVolume() {
        Mesh mesh =
                NeckSolid.of(ReferenceNecks.ONE_PIECE.neck()).meshes(mm(0.2)).get(2);
        List<double[]> points = mesh.toObj()
                .lines()
                .filter(l -> l.startsWith("v "))
                .map(l -> Arrays.stream(l.substring(2).split(" "))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
        int[] corners = mesh.toObj()
                .lines()
                .filter(l -> l.startsWith("f "))
                .flatMapToInt(l -> Arrays.stream(l.substring(2).split(" ")).mapToInt(Integer::parseInt))
                .map(i -> i - 1)
                .toArray();

        Mesh back = Mesh.of(
                mesh.name(), points.stream().flatMapToDouble(Arrays::stream).toArray(), corners);

        assertThat(mesh.toObj()).contains("\ng head\n");
        assertThat(back.volumeMm3()).isCloseTo(mesh.volumeMm3(), within(1e-6 * mesh.volumeMm3()));
    }
}
