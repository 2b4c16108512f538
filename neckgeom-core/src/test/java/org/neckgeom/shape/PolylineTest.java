package org.neckgeom.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.dfp.Dfp;
import org.hipparchus.dfp.DfpMath;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.neckgeom.validation.Numerics;

/** Outlines with arcs against rings of many chords in JTS (plane geometry), and against 40-digit arithmetic. */
class PolylineTest {

    private static final GeometryFactory PLANE = new GeometryFactory();
    private static final int CHORDS = 2000;

    /** A chord over an angle A / 2000 leaves an arc by r (A / 2000)^2 / 8, r and A here under 300 mm and 6. */
    private static final double CHORD_MM = 3.4e-4;

    private static Polyline random(SplittableRandom random, boolean closed) {
        int n = random.nextInt(closed ? 3 : 2, 8);
        List<Spot> spots = new ArrayList<>();
        double[] bulges = new double[n];
        for (int i = 0; i < n; i++) {
            spots.add(new Spot(random.nextDouble(-80, 80), random.nextDouble(-80, 80)));
            bulges[i] = random.nextInt(3) == 0 ? 0 : random.nextDouble(-2.5, 2.5);
        }
        return (closed ? Polyline.closed(spots) : Polyline.open(spots)).bulged(bulges);
    }

    /** Many chords by centre, radius and angles: another way than the polyline's own. */
    private static Coordinate[] chords(Polyline line) {
        List<Coordinate> all = new ArrayList<>();
        List<Spot> spots = line.spots();
        int n = spots.size();
        for (int i = 0; i < (line.isClosed() ? n : n - 1); i++) {
            Spot a = spots.get(i);
            Spot b = spots.get((i + 1) % n);
            double bulge = line.bulges()[i];
            all.add(new Coordinate(a.uMm(), a.vMm()));
            if (bulge != 0) {
                double whole = 4 * Math.atan(bulge);
                double chord = Math.hypot(b.uMm() - a.uMm(), b.vMm() - a.vMm());
                double r = chord / 2 / Math.sin(Math.abs(whole) / 2);
                double off = Math.sqrt(Math.max(0, r * r - chord * chord / 4)) * (Math.abs(bulge) > 1 ? -1 : 1);
                double left = Math.signum(bulge) * off / chord;
                double cu = (a.uMm() + b.uMm()) / 2 - left * (b.vMm() - a.vMm());
                double cv = (a.vMm() + b.vMm()) / 2 + left * (b.uMm() - a.uMm());
                double start = Math.atan2(a.vMm() - cv, a.uMm() - cu);
                for (int k = 1; k < CHORDS; k++) {
                    double at = start + whole * k / CHORDS;
                    all.add(new Coordinate(cu + r * Math.cos(at), cv + r * Math.sin(at)));
                }
            }
        }
        Spot last = line.isClosed() ? spots.get(0) : spots.get(n - 1);
        all.add(new Coordinate(last.uMm(), last.vMm()));
        return all.toArray(Coordinate[]::new);
    }

    @Test
    void lengthAreaAndExtents_areThoseOfManyChords() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 300; i++) {
            Polyline line = random(random, i % 3 != 0);
            LineString chords = PLANE.createLineString(chords(line));

            assertThat(line.lengthMm()).isCloseTo(chords.getLength(), within(1e-6 * chords.getLength()));
            double[] box = line.extentsMm();
            assertThat(box[0]).isCloseTo(chords.getEnvelopeInternal().getMinX(), within(CHORD_MM));
            assertThat(box[1]).isCloseTo(chords.getEnvelopeInternal().getMinY(), within(CHORD_MM));
            assertThat(box[2]).isCloseTo(chords.getEnvelopeInternal().getMaxX(), within(CHORD_MM));
            assertThat(box[3]).isCloseTo(chords.getEnvelopeInternal().getMaxY(), within(CHORD_MM));
            if (line.isClosed()) {
                // JTS counts a ring clockwise as positive.
                double area = -Area.ofRingSigned(chords.getCoordinates());
                assertThat(line.areaMm2()).isCloseTo(area, within(CHORD_MM * chords.getLength()));
                assertThat(line.reversed().areaMm2()).isCloseTo(-line.areaMm2(), within(1e-9));
            }
            assertThat(line.reversed().lengthMm()).isCloseTo(line.lengthMm(), within(1e-9));
        }
    }

    /** Stars with many bays cut by a line, against JTS cutting them by half a plane. */
    @Test
    void parts_areThoseOfAnotherLibrary() {
        SplittableRandom random = new SplittableRandom(13);
        int several = 0;
        for (int i = 0; i < 1500; i++) {
            List<Spot> spots = new ArrayList<>();
            int n = random.nextInt(4, 14);
            for (int k = 0; k < n; k++) {
                double r = random.nextDouble(10, 100);
                double at = 2 * Math.PI * (k + random.nextDouble(0.1, 0.9)) / n;
                spots.add(new Spot(r * Math.cos(at), r * Math.sin(at)));
            }
            Polyline star = Polyline.closed(spots);
            double turn = random.nextDouble(0, 2 * Math.PI);
            double off = random.nextDouble(-60, 60);
            double u = Math.cos(turn);
            double v = Math.sin(turn);
            List<Polyline> parts = star.parts(s -> u * s.uMm() + v * s.vMm() - off);

            Coordinate[] half = {
                corner(u, v, off, -1000),
                corner(u, v, off, 1000),
                corner(u, v, off + 1000, 1000),
                corner(u, v, off + 1000, -1000),
                corner(u, v, off, -1000)
            };
            Geometry there = PLANE.createPolygon(chords(star)).intersection(PLANE.createPolygon(half));
            assertThat(parts).as("%d", i).hasSize(there.isEmpty() ? 0 : there.getNumGeometries());
            assertThat(parts.stream().mapToDouble(Polyline::areaMm2).sum()).isCloseTo(there.getArea(), within(1e-8));
            assertThat(parts).allSatisfy(part -> assertThat(part.areaMm2()).isPositive());
            several += parts.size() > 1 ? 1 : 0;
        }
        assertThat(several).as("cut into several").isGreaterThan(20);
    }

    private static Coordinate corner(double u, double v, double off, double along) {
        return new Coordinate(u * off - v * along, v * off + u * along);
    }

    @Test
    void containsAndDistance_areThoseOfManyChords() {
        SplittableRandom random = new SplittableRandom(12);
        int inside = 0;
        for (int i = 0; i < 200; i++) {
            Polyline line = random(random, i % 3 != 0);
            LineString chords = PLANE.createLineString(chords(line));
            for (int k = 0; k < 20; k++) {
                Spot spot = new Spot(random.nextDouble(-150, 150), random.nextDouble(-150, 150));
                Coordinate there = new Coordinate(spot.uMm(), spot.vMm());
                double distance = PLANE.createPoint(there).distance(chords);
                assertThat(line.distanceMm(spot)).isCloseTo(distance, within(CHORD_MM));
                boolean within = line.isClosed() && PointLocation.isInRing(there, chords.getCoordinates());
                if (distance > CHORD_MM) {
                    assertThat(line.contains(spot)).as("%s in %s", spot, line).isEqualTo(within);
                    assertThat(line.insetMm(spot)).isCloseTo(within ? distance : -distance, within(CHORD_MM));
                    inside += within ? 1 : 0;
                }
            }
        }
        assertThat(inside).isGreaterThan(300);
    }

    /** By hand: a circle holds its centre, and the line through its two spots divides nothing. */
    @Test
    void contains_countsSpotsOnTheLinesOfChordsAndCornersOnce() {
        Polyline circle = Polyline.circle(new Spot(3, -2), 5);
        for (double u = -1.9; u < 8; u += 0.1) {
            assertThat(circle.contains(new Spot(u, -2))).as("u %s", u).isTrue();
        }
        assertThat(circle.contains(new Spot(-2.1, -2))).isFalse();
        assertThat(circle.contains(new Spot(8.1, -2))).isFalse();
        // Quarters of a circle, corners on the axes; a rounded slot whose ends share a level with its middle.
        double quarter = Math.tan(Math.PI / 8);
        Polyline wheel = Polyline.closed(
                List.of(new Spot(5, 0), new Spot(0, 5), new Spot(-5, 0), new Spot(0, -5)),
                quarter,
                quarter,
                quarter,
                quarter);
        Polyline slot = Polyline.closed(
                List.of(new Spot(0, -3), new Spot(40, -3), new Spot(40, 3), new Spot(0, 3)), 0, 1, 0, 1);
        for (double at = -4.5; at <= 4.5; at += 0.5) {
            assertThat(wheel.contains(new Spot(at, 0))).isTrue();
            assertThat(wheel.contains(new Spot(0, at))).isTrue();
            if (Math.abs(at) != 3) {
                assertThat(slot.contains(new Spot(40, at))).isEqualTo(Math.abs(at) < 3);
                assertThat(slot.contains(new Spot(0, at))).isEqualTo(Math.abs(at) < 3);
            }
        }
        assertThat(wheel.contains(new Spot(-6, 0))).isFalse();
        assertThat(slot.contains(new Spot(-2.9, 0))).isTrue();
        assertThat(slot.contains(new Spot(-3.1, 0))).isFalse();
        assertThat(slot.insetMm(new Spot(42, 0))).isCloseTo(1, within(1e-12));
    }

    /** Shallow arcs, as a floor 300 mm long arched by a nanometre, have a radius of 1e13 mm. */
    @Test
    void shallowArcs_keepTheirDigits() {
        SplittableRandom random = new SplittableRandom(13);
        for (int i = 0; i < 400; i++) {
            double bulge = Math.pow(10, random.nextDouble(-11.9, 2)) * (random.nextBoolean() ? 1 : -1);
            double chord = random.nextDouble(1, 600);
            Polyline arc = Polyline.closed(List.of(new Spot(0, 0), new Spot(chord, 0)), bulge, 0);
            Dfp b = Numerics.of(bulge);
            Dfp c = Numerics.of(chord);
            Dfp angle = DfpMath.atan(b).multiply(4);
            Dfp r = c.multiply(b.multiply(b).add(1)).divide(b.multiply(4));
            double area = r.multiply(r)
                    .multiply(angle.subtract(DfpMath.sin(angle)))
                    .divide(2)
                    .toDouble();
            assertThat(arc.areaMm2()).isCloseTo(area, within(2e-11 * Math.abs(area)));

            Spot spot = new Spot(random.nextDouble(0, chord), random.nextDouble(-1, 1) * chord);
            Dfp up = c.multiply(Numerics.ONE.subtract(b.multiply(b))).divide(b.multiply(4));
            Dfp du = Numerics.of(spot.uMm()).subtract(c.divide(2));
            Dfp dv = Numerics.of(spot.vMm()).subtract(up);
            double over = du.multiply(du).add(dv.multiply(dv)).sqrt().toDouble();
            double toCircle = du.multiply(du)
                    .add(dv.multiply(dv))
                    .sqrt()
                    .subtract(r.abs())
                    .abs()
                    .toDouble();
            double ours = Polyline.open(arc.spots()).bulged(bulge, 0).distanceMm(spot);
            // Beside the arc its circle is nearest, else an end: the greater of the two bounds from below is not
            // wanted.
            double end = Math.min(spot.distanceMm(new Spot(0, 0)), spot.distanceMm(new Spot(chord, 0)));
            boolean near = Math.abs(ours - toCircle) <= 1e-10 * chord;
            assertThat(near || ours == end)
                    .as("bulge %s, %s from the middle", bulge, over)
                    .isTrue();
            if (Math.abs(bulge) < 1e-3) {
                assertThat(near || spot.uMm() < 2e-3 * chord || spot.uMm() > 0.998 * chord)
                        .isTrue();
            }
            double rise = -bulge * chord / 2;
            double[] box = arc.extentsMm();
            assertThat(bulge > 0 ? box[1] : box[3]).isCloseTo(rise, within(1e-12 * Math.max(chord, Math.abs(rise))));
        }
    }

    @Test
    void straightened_leavesNoArcByMoreThanTheTolerance() {
        SplittableRandom random = new SplittableRandom(14);
        for (int i = 0; i < 200; i++) {
            Polyline line = random(random, i % 2 == 0);
            double tolerance = Math.pow(10, random.nextDouble(-4, 0));
            Polyline chords = line.straightened(tolerance);

            assertThat(Arrays.stream(chords.bulges()).allMatch(b -> b == 0)).isTrue();
            assertThat(chords.isClosed()).isEqualTo(line.isClosed());
            double worst = 0;
            List<Spot> spots = chords.spots();
            for (int k = 0; k < spots.size(); k++) {
                assertThat(line.distanceMm(spots.get(k))).isLessThan(1e-9);
                if (k + 1 < spots.size() || chords.isClosed()) {
                    Spot a = spots.get(k);
                    Spot b = spots.get((k + 1) % spots.size());
                    Spot middle = new Spot((a.uMm() + b.uMm()) / 2, (a.vMm() + b.vMm()) / 2);
                    worst = Math.max(worst, line.distanceMm(middle));
                }
            }
            assertThat(worst).isLessThanOrEqualTo(tolerance * (1 + 1e-9));
        }
        Polyline flat = Polyline.open(List.of(new Spot(0, 0), new Spot(900, 0))).bulged(1e-12, 0);
        assertThat(flat.straightened(1e-6).spots()).hasSize(2);
    }

    @Test
    void movedScaledAndReversed_areTheSameShape() {
        SplittableRandom random = new SplittableRandom(15);
        for (int i = 0; i < 100; i++) {
            Polyline line = random(random, true);
            Spot spot = new Spot(random.nextDouble(-90, 90), random.nextDouble(-90, 90));
            double inset = line.insetMm(spot);

            assertThat(line.plus(7, -3).insetMm(spot.plus(7, -3))).isCloseTo(inset, within(1e-9));
            assertThat(line.scaled(2).insetMm(new Spot(2 * spot.uMm(), 2 * spot.vMm())))
                    .isCloseTo(2 * inset, within(1e-9));
            assertThat(line.reversed().insetMm(spot)).isCloseTo(inset, within(1e-9));
            assertThat(line.reversed().reversed()).isEqualTo(line).hasSameHashCodeAs(line);
        }
        assertThat(Polyline.open(List.of(new Spot(0, 0), new Spot(1, 0), new Spot(1, 5)))
                        .bulged(0.5, 0, 0)
                        .reversed())
                .isEqualTo(Polyline.open(List.of(new Spot(1, 5), new Spot(1, 0), new Spot(0, 0)))
                        .bulged(0, -0.5, 0));
    }

    @Test
    void gate_refusesWhatIsNoOutline() {
        Spot a = new Spot(0, 0);
        Spot b = new Spot(1, 0);
        assertThatThrownBy(() -> Polyline.open(List.of(a)))
                .hasMessage("spots of a polyline must be 2 or more, but were 1");
        assertThatThrownBy(() -> Polyline.closed(List.of(a, b)))
                .hasMessage("spots of a polyline must be 3 or more of a closed one, or 2 with an arc, but were 2");
        assertThatThrownBy(() -> Polyline.open(List.of(a, b)).bulged(1))
                .hasMessage("bulges must be 2, one to a spot, but were 1");
        assertThatThrownBy(() -> Polyline.open(List.of(a, b)).bulged(2e6, 0))
                .hasMessage("bulge must be -1e6 to 1e6, but was 2000000.0");
        assertThatThrownBy(() -> Polyline.open(List.of(a, b)).areaMm2())
                .hasMessage("polyline must be closed to have an area, but was open");
        assertThatThrownBy(() -> Polyline.open(List.of(a, b)).straightened(0))
                .hasMessage("tolerance must be 1e-6 mm or more, but was 0.0 mm");
        assertThatThrownBy(() -> Polyline.circle(a, 0)).hasMessage("radius must be more than 0 mm, but was 0.0 mm");
    }

    /** Four chords or more of a circle, whose area is 2 r^2 or more: be it smaller than the tolerance. */
    @Test
    void straightened_ofACircleWithinTheToleranceIsStillASurface() {
        for (double radius : new double[] {0.001, 0.05, 1}) {
            Polyline chords = Polyline.circle(new Spot(3, 4), radius).straightened(0.1);

            assertThat(chords.spots()).hasSizeGreaterThanOrEqualTo(3);
            assertThat(chords.areaMm2()).isBetween(1.2 * radius * radius, Math.PI * radius * radius);
        }
    }
}
