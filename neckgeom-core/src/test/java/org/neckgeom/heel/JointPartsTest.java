package org.neckgeom.heel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.kernel.Vec;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.neck.Tenon;
import org.neckgeom.units.LengthStyle;

/** Dovetail and bolted tenon. */
class JointPartsTest {

    /** A side as a plane in space: through the glue face's slant, tilted until it makes the taper with the way home. */
    @Test
    void sized_closesInByThePlaneOfItsSides() {
        long seed = 20261126;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 2000; i++) {
            double taper = random.nextDouble(0.5, 6);
            double length = random.nextDouble(12, 30);
            double shoulder = random.nextDouble(25, 40);
            double end = shoulder + random.nextDouble(1, 15);
            double height = random.nextDouble(40, 90);
            Dovetail seat = Dovetail.tapered(deg(taper))
                    .length(mm(length))
                    .widths(mm(end), mm(shoulder))
                    .height(mm(height));

            // The side's line on the glue face runs from shoulder to end; the side is level ground turned down about
            // it.
            Vec line = new Vec(length, (end - shoulder) / 2, 0).unit();
            Vec outward = new Vec(line.y(), -line.x(), 0).times(-1);
            Vec down = Vec.Z
                    .times(-1)
                    .times(Math.cos(Math.toRadians(taper)))
                    .plus(outward.times(-Math.sin(Math.toRadians(taper))));
            // Down the side to the lower end, then along it back to the end face's x.
            Vec low = down.times(height / -down.z());
            Vec there = low.minus(line.times(low.x() / line.x()));

            assertThat(seat.closesIn().orElseThrow().libraryValue())
                    .as("seed " + seed + ", dovetail " + i)
                    .isCloseTo(-there.y(), offset(1e-9));
        }
    }

    @Test
    void sized_rejectsWhatDoesNotHold() {
        Dovetail seat = Dovetail.tapered(deg(3));

        assertThatThrownBy(() -> seat.widths(mm(40), mm(30)).height(mm(60)))
                .hasMessage("the dovetail's widths are given, but not its length; give both");
        assertThatThrownBy(() -> seat.length(mm(20)).widths(mm(30), mm(30)).height(mm(60)))
                .hasMessage("width at end must be more than the 30 mm at the shoulder, but was 30 mm");
        assertThatThrownBy(() -> Dovetail.tapered(deg(20))
                        .length(mm(20))
                        .widths(mm(40), mm(30))
                        .height(mm(60)))
                .hasMessageStartingWith("height must be less than ")
                .hasMessageEndingWith(", where its sides meet at the shoulder, but was 60 mm");
        assertThat(seat.pastShoulder()).isEmpty();
        assertThat(seat.length(mm(20)).pastShoulder()).contains(mm(20));
        assertThat(seat.length(mm(20)).below()).isEmpty();
        assertThat(seat.length(mm(20)).closesIn()).isEmpty();
    }

    @Test
    void sized_saysBothEnds() {
        // By hand: flare 5/19 a side, 70 tan 3 deg sqrt(1 + 25/361) = 3.7935 in on each side.
        assertThat(Dovetail.tapered(deg(3))
                        .length(mm(19))
                        .widths(mm(40), mm(30))
                        .height(mm(70)))
                .hasToString("""
                        Dovetail, 3.00 deg a side, 19 mm long
                          at the glue face  40 mm wide at its end, 30 mm at the shoulder
                          70 mm below it    32.413 mm wide at its end, 22.413 mm at the shoulder
                          0.1 mm each side  lifts the neck 1.911 mm""");
    }

    @Test
    void riseFrom_isWhereTheShimmedSideMeetsItsSocketAgain() {
        // A side tapered by 4 deg, moved out by a shim along its normal, then up until it lies on its old line.
        double taper = Math.toRadians(4);
        Vec side = new Vec(Math.sin(taper), 0, Math.cos(taper));
        Vec normal = new Vec(Math.cos(taper), 0, -Math.sin(taper));
        double rise = 0.3 / -normal.z();

        assertThat(Dovetail.tapered(deg(4)).riseFrom(mm(0.3)).libraryValue()).isCloseTo(rise, offset(1e-12));
        assertThat(normal.dot(side)).isCloseTo(0, offset(1e-15));
        assertThat(Dovetail.tapered(deg(4)).shimFor(mm(rise)).libraryValue()).isCloseTo(0.3, offset(1e-12));
        assertThat(Dovetail.tapered(deg(4)).riseFrom(mm(-0.3)).libraryValue()).isNegative();
    }

    /** 0.1 mm / sin 3 deg = 1.9107 mm; 0.004 in / sin 3 deg = 0.0764 in. */
    @Test
    void toString_keepsTheStyleAskedFor() {
        Dovetail seat = Dovetail.tapered(deg(3));

        assertThat(seat.toString()).contains("0.1 mm each side", "lifts the neck 1.911 mm");
        assertThat(seat.text(LengthStyle.DECIMAL_INCHES)).contains("4 thou each side", "lifts the neck 76.4 thou");
    }

    @Test
    void tapered_rejectsParallelSides() {
        assertThatThrownBy(() -> Dovetail.tapered(deg(0)))
                .hasMessageStartingWith("dovetail taper must be ")
                .hasMessageEndingWith(", but was 0 deg");
    }

    @Test
    void leastWood_isTheNearestOfEdgesShoulderEndAndNeighbour() {
        // Common practice: 10 mm barrels 28.5 and 57.5 mm down, the hole's front 0.8 mm back of the shoulder.
        Tenon tenon = Tenon.of(mm(78), mm(20)).holes(mm(10), mm(0.8)).at(mm(57.5), mm(28.5));

        assertThat(tenon.leastWood()).isEqualTo(mm(0.8));
        assertThat(tenon.centreFromShoulder().libraryValue()).isCloseTo(5.8, offset(1e-12));
        assertThat(tenon.depths()).containsExactly(mm(28.5), mm(57.5));
        assertThat(Tenon.of(mm(60), mm(25))
                        .holes(mm(10), mm(8))
                        .at(mm(57))
                        .leastWood()
                        .libraryValue())
                .isCloseTo(-2, offset(1e-12));
        assertThat(Tenon.of(mm(90), mm(40))
                        .holes(mm(10), mm(12))
                        .at(mm(30), mm(43))
                        .leastWood()
                        .libraryValue())
                .isCloseTo(3, offset(1e-12));
        assertThat(tenon.toString()).contains("28.500 mm below the glue face");
    }

    /** Holes whose walls touch are one slot; a hair of wood between is left to the check of the least wood. */
    @Test
    void holes_thatMeetAreRefused_inAnyOrder() {
        assertThatThrownBy(() -> Tenon.of(mm(78), mm(20)).holes(mm(10), mm(0.8)).at(mm(38), mm(28)))
                .hasMessage("holes at must be more than 10 mm apart, the diameter of a hole, but was 28 mm and 38 mm");
        assertThatThrownBy(() -> Tenon.of(mm(78), mm(20)).holes(mm(10), mm(0.8)).at(mm(20), mm(50), mm(25)))
                .hasMessageEndingWith("but was 20 mm and 25 mm");
        assertThat(Tenon.of(mm(78), mm(20))
                        .holes(mm(10), mm(0.8))
                        .at(mm(28), mm(38.1))
                        .depths())
                .hasSize(2);
    }

    @Test
    void holes_rejectsOneThatRunsOutOfTheTenon() {
        assertThatThrownBy(() -> Tenon.of(mm(78), mm(20)).holes(mm(15), mm(6)).at(mm(30)))
                .hasMessage("hole diameter must be less than the 14 mm of tenon behind its set-back, but was 15 mm");
        assertThatThrownBy(() -> Tenon.of(mm(78), mm(20)).holes(mm(10), mm(1)).at())
                .hasMessageStartingWith("hole depth must be a list of 1 to 6 items");
    }
}
