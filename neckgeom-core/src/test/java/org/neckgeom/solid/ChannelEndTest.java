package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.neck.End;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.Tenon;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.shape.Curve;
import org.neckgeom.shape.Direction;
import org.neckgeom.shape.Plane;
import org.neckgeom.shape.Point;

/**
 * A channel's body end beside dovetail and tenon. The distances to the dovetail's side were found by a search over points of that
 * side with scipy, which knows no plane; those to a hole by Pythagoras.
 */
class ChannelEndTest {

    private static final Offset<Double> CLOSE = offset(1e-9);
    private static final double JOINT = 330;
    private static final Dovetail DOVETAIL =
            Dovetail.tapered(deg(3)).length(mm(20)).widths(mm(30), mm(24)).height(mm(50));
    private static final Tenon TENON =
            Tenon.of(mm(60), mm(20)).holes(mm(8), mm(6)).at(mm(20), mm(40));

    /** A channel 6 wide and 8 deep that ends so far past the joint. */
    private static FloorThickness past(double mm) {
        return under(TrussRod.twoWay(mm(JOINT + mm)).section(mm(6), mm(8)));
    }

    private static FloorThickness under(TrussRod rod) {
        BackShape back = BackShape.of(
                BackProfile.between(mm(20), mm(22)).rounded(), Scale.of(mm(600)), Curve.straight(0, 22, 0.02));
        return FloorThickness.under(Channel.forRod(rod), back);
    }

    /** The mating face, the wood's angle between shaft and face given. */
    private static Plane face(double wood) {
        double w = Math.toRadians(wood);
        return Plane.through(new Point(JOINT, 0, 0), new Direction(Math.sin(w), 0, -Math.cos(w)));
    }

    private static ChannelEnd atDovetail(FloorThickness under) {
        return ChannelEnd.of(under, face(90), JOINT, Optional.of(DOVETAIL), Optional.empty());
    }

    private static ChannelEnd atTenon(FloorThickness under, double wood) {
        return ChannelEnd.of(under, face(wood), JOINT, Optional.empty(), Optional.of(TENON));
    }

    private static double wood(ChannelEnd end) {
        return end.wood().orElseThrow().libraryValue();
    }

    @Test
    void dovetail_sideIsNearestAtTheShoulder() {
        ChannelEnd end = atDovetail(past(10));

        assertThat(wood(end)).isCloseTo(8.469541799757225, CLOSE);
        assertThat(end.place()).contains(ChannelEnd.Place.SIDE);
        assertThat(end.pastFace().libraryValue()).isCloseTo(10, CLOSE);
        // Half a millimetre off the middle, either way.
        assertThat(wood(atDovetail(past(10).offCentre(mm(0.5))))).isCloseTo(7.975751274773849, CLOSE);
        assertThat(wood(atDovetail(past(10).offCentre(mm(-0.5))))).isCloseTo(7.975751274773849, CLOSE);
    }

    @Test
    void dovetail_farEndIsNearestToALongChannelAndNegativeBeyondIt() {
        assertThat(atDovetail(past(15)).place()).contains(ChannelEnd.Place.FAR_END);
        assertThat(wood(atDovetail(past(15)))).isCloseTo(5, CLOSE);
        assertThat(wood(atDovetail(past(21)))).isCloseTo(-1, CLOSE);
        // Before the shoulder there is no side of the dovetail beside it.
        assertThat(wood(atDovetail(past(-1)))).isCloseTo(21, CLOSE);
    }

    @Test
    void farEnd_mayLieOpenForAnAdjusterAtTheHeel() {
        TrussRod rod = TrussRod.twoWay(mm(JOINT + 25)).section(mm(6), mm(8)).adjuster(End.HEEL);

        assertThat(atDovetail(under(rod)).place()).contains(ChannelEnd.Place.SIDE);
    }

    @Test
    void dovetail_lowerEndIsUnderADeepChannel() {
        Dovetail low =
                Dovetail.tapered(deg(3)).length(mm(40)).widths(mm(60), mm(50)).height(mm(10));
        ChannelEnd end = ChannelEnd.of(past(10), face(90), JOINT, Optional.of(low), Optional.empty());

        assertThat(end.place()).contains(ChannelEnd.Place.LOWER_END);
        assertThat(wood(end)).isCloseTo(2, CLOSE);
    }

    /** The hole's middle lies 6 + 4 behind the shoulder and 20 down: from (-5, -8) that is 15 and 12. */
    @Test
    void tenon_holeIsNearestByItsWall() {
        ChannelEnd end = atTenon(past(-5), 90);

        assertThat(end.place()).contains(ChannelEnd.Place.HOLE);
        assertThat(wood(end)).isCloseTo(Math.hypot(15, 12) - 4, CLOSE);
        // Over the hole it is straight down; past it too.
        assertThat(wood(atTenon(past(11), 90))).isCloseTo(20 - 8 - 4, CLOSE);
        assertThat(wood(atTenon(past(14), 90))).isCloseTo(6, CLOSE);
    }

    /** Down a face that leans by 1.5 deg the hole's middle is 9.47303428 behind and 20.25491598 down. */
    @Test
    void tenon_holesAndFaceLeanWithTheMatingFace() {
        ChannelEnd end = atTenon(past(-5), 88.5);

        assertThat(wood(end)).isCloseTo(14.96448488924872, CLOSE);
        assertThat(end.pastFace().libraryValue()).isCloseTo(-4.790512627446505, CLOSE);
        assertThat(end.toString())
                .isEqualTo("Channel ends 4.8 mm before the mating face, 15.0 mm to a hole of the tenon");
    }

    @Test
    void flatJoint_hasNothingToRunInto() {
        ChannelEnd end = ChannelEnd.of(past(-5), face(90), JOINT, Optional.empty(), Optional.empty());

        assertThat(end.wood()).isEmpty();
        assertThat(end.toString()).isEqualTo("Channel ends 5.0 mm before the mating face");
    }
}
