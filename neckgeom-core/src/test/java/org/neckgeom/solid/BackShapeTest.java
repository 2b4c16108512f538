package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.HeelTransition;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.Volute;
import org.neckgeom.shape.Curve;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;

class BackShapeTest {

    private static final Scale SCALE = Scale.of(mm(560));

    @Test
    void at_runsStraightBetweenTheTwoFrets() {
        BackShape back = BackShape.of(neck());
        double first = SCALE.fretMm(1);
        double twelfth = SCALE.fretMm(12);

        assertThat(back.at(mm(first)).depth().libraryValue()).isCloseTo(14.5, offset(1e-12));
        assertThat(back.at(mm(twelfth)).depth().libraryValue()).isCloseTo(16.5, offset(1e-12));
        assertThat(back.at(mm((first + twelfth) / 2)).depth().libraryValue()).isCloseTo(15.5, offset(1e-12));
        assertThat(back.at(mm(0)).width()).isEqualTo(mm(34));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.5, 2, 2.5, 3.5, 12})
    void template_liesOnTheCurve(double power) {
        BackShape back = BackShape.of(BackProfile.between(mm(15), mm(15)).power(power), SCALE, Curve.level(20));
        BackCurve curve = back.at(mm(100));

        List<Spot> spots = curve.outline(mm(0.005)).spots();

        assertThat(spots.get(0)).isEqualTo(new Spot(-20, 0));
        assertThat(spots).contains(new Spot(0, -15));
        assertThat(spots.get(spots.size() - 1)).isEqualTo(new Spot(20, 0));
        for (Spot spot : spots) {
            double sum = Math.pow(Math.abs(spot.uMm()) / 20, power) + Math.pow(-spot.vMm() / 15, power);
            assertThat(sum).as("power %s at %s", power, spot).isCloseTo(1, offset(1e-12));
        }
        for (int i = 0; i + 1 < spots.size(); i++) {
            Line chord = new Line(inPlane(spots.get(i)), inPlane(spots.get(i + 1)));
            for (double share = 0.05; share < 1; share += 0.05) {
                double y = chord.at(share).yMm();
                double sag =
                        Math.abs(chord.at(share).zMm() + curve.depthAt(mm(y)).libraryValue());
                assertThat(Math.min(
                                sag,
                                chord.distanceMm(
                                        new Point(0, y, -curve.depthAt(mm(y)).libraryValue()))))
                        .as("power %s between %s and %s", power, spots.get(i), spots.get(i + 1))
                        .isLessThan(0.0055);
            }
        }
    }

    private static Point inPlane(Spot spot) {
        return new Point(0, spot.uMm(), spot.vMm());
    }

    @Test
    void template_ofAHalfEllipseHoldsItsArea() {
        BackCurve curve = BackShape.of(BackProfile.between(mm(15), mm(15)), SCALE, Curve.level(20))
                .at(mm(100));

        // Source: area of half an ellipse, pi a b / 2.
        assertThat(curve.areaMm2()).isCloseTo(Math.PI * 20 * 15 / 2, offset(1e-9));
        assertThat(Polyline.closed(curve.outline(mm(0.0001)).spots()).areaMm2())
                .isCloseTo(Math.PI * 20 * 15 / 2, offset(0.006));
    }

    @Test
    void asymmetric_hasAFullerSide() {
        BackCurve curve = BackShape.of(BackProfile.between(mm(15), mm(15)).asymmetric(2.5, 1.5), SCALE, Curve.level(20))
                .at(mm(100));

        assertThat(curve.depthAt(mm(-10)).libraryValue())
                .isGreaterThan(curve.depthAt(mm(10)).libraryValue());
        assertThat(curve.bassAt(mm(8)).libraryValue())
                .isGreaterThan(curve.trebleAt(mm(8)).libraryValue());
        assertThat(curve.bassAt(mm(0)).libraryValue()).isEqualTo(20);
        assertThat(curve.trebleAt(mm(16)).libraryValue()).isZero();
        assertThat(curve.depthAt(mm(0)).libraryValue()).isEqualTo(15);
    }

    @Test
    void transitions_areSmoothWhereTheyStart() {
        BackShape back = BackShape.of(turned(3, 40));
        double step = 1e-4;

        // The slope does not jump where volute or heel begins.
        for (double x : new double[] {30, 270}) {
            double before = (depth(back, x) - depth(back, x - step)) / step;
            double after = (depth(back, x + step) - depth(back, x)) / step;
            assertThat(after - before).as("at %s", x).isCloseTo(0, offset(1e-4));
        }
        // An arc of radius 40 tangent to a slope k leaves it by (40 - sqrt(40^2 - s^2)) square to it, s along it.
        double slope = (16.5 - 14.5) / (SCALE.fretMm(12) - SCALE.fretMm(1));
        double tilt = Math.atan(slope);
        double centre = 270 - 40 * Math.sin(tilt);
        double onArc = depth(back, 270) + 40 * Math.cos(tilt) - Math.sqrt(40 * 40 - (290 - centre) * (290 - centre));
        assertThat(depth(back, 290)).isCloseTo(onArc, offset(1e-9));
        assertThat(back).isEqualTo(BackShape.of(turned(3, 40)));
        assertThat(back.toString()).contains("volute 3 mm").contains("heel from 270 mm");
    }

    @Test
    void powers_rejectsAHollowBack() {
        assertThatThrownBy(() -> BackCurve.of(mm(40), mm(15)).powers(2, 0.9))
                .hasMessage("exponent of the back must be from 1 to 20, but was 0.9");
        assertThat(BackCurve.of(mm(40), mm(15)).powers(1, 1).depthAt(mm(10)).libraryValue())
                .isCloseTo(7.5, offset(1e-12));
    }

    @Test
    void at_saysSoWhereThereIsNoSection() {
        assertThatThrownBy(() -> BackShape.of(neck()).at(mm(-3000)))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageStartingWith("the neck has no section at -3000 mm from the nut");
        assertThatThrownBy(() -> BackShape.of(neck()).at(mm(100)).outline(mm(11)))
                .hasMessage("tolerance must be from 0.0001 to 10 mm, but was 11 mm");
    }

    private static double depth(BackShape back, double x) {
        return back.at(mm(x)).depth().libraryValue();
    }

    private static Neck neck() {
        return Neck.named("octave mandolin")
                .scale(SCALE)
                .fingerboard(Fingerboard.tapered(mm(34), mm(46)))
                .back(BackProfile.between(mm(14.5), mm(16.5)))
                .bodyAtFret(14);
    }

    private static Neck turned(double volute, double radius) {
        return neck().back(neck().back()
                .volute(Volute.of(mm(volute), mm(30)))
                .heelTransition(HeelTransition.from(mm(270), mm(radius))));
    }

    @Test
    void parts_areHandedBackAsTold() {
        BackShape told = BackShape.of(turned(2, 25));

        assertThat(told.heelStartMm()).hasValue(270);
        assertThat(BackShape.of(neck()).heelStartMm()).isEmpty();
        assertThat(told)
                .hasToString(BackShape.of(neck())
                        + ", volute 2 mm run out 30 mm from the nut, heel from 270 mm with radius 25 mm");
    }

    /**
     * By hand: 1 mm and 3 mm deeper than drawn, so 2 mm half way, 0.2 at 20 on the way from nothing at the nut; with neither
     * heel nor joint the last stays. 1 mm thin at 100 is 0.3 thin at 30.
     */
    @Test
    void carved_runsStraightBetweenTheStationsRead() {
        BackShape drawn = BackShape.of(BackProfile.between(mm(15), mm(15)), SCALE, Curve.level(20));
        BackShape carved = drawn.carved(mm(100), mm(16)).carved(mm(200), mm(18));

        assertThat(carved.at(mm(100)).depth().libraryValue()).isCloseTo(16, offset(1e-12));
        assertThat(carved.at(mm(150)).depth().libraryValue()).isCloseTo(17, offset(1e-12));
        assertThat(carved.at(mm(175)).depth().libraryValue()).isCloseTo(17.5, offset(1e-12));
        assertThat(carved.at(mm(200)).depth().libraryValue()).isCloseTo(18, offset(1e-12));
        assertThat(carved.at(mm(20)).depth().libraryValue()).isCloseTo(15.2, offset(1e-12));
        assertThat(carved.at(mm(250)).depth().libraryValue()).isCloseTo(18, offset(1e-12));
        assertThat(drawn.carved(mm(100), mm(14)).at(mm(30)).depth().libraryValue())
                .isCloseTo(14.7, offset(1e-12));
        assertThat(carved.toString()).endsWith(", carved depth read at 2 stations");
        assertThat(drawn.carved(mm(100), mm(14)).toString()).endsWith(", carved depth read at 1 station");
        assertThat(carved).isNotEqualTo(drawn);
    }

    /** By hand: 4 mm thin at 135, half way to where the heel begins at 270: 2 thin at 67.5 and at 202.5, none from 270 on. */
    @Test
    void thinPlace_isAThinPlace() {
        BackShape drawn = BackShape.of(turned(2, 25));
        BackShape thin = drawn.carved(mm(135), mm(drawn.depthAtMm(135) - 4));

        for (double[] one : new double[][] {{0, 0}, {67.5, 2}, {135, 4}, {202.5, 2}, {270, 0}, {300, 0}, {-20, 0}}) {
            assertThat(drawn.depthAtMm(one[0]) - thin.depthAtMm(one[0])).isCloseTo(one[1], offset(1e-12));
        }
    }

    @Test
    void volute_isWholeAtTheNutHalfAtHalfItsRunAndNoneBeyond() {
        BackShape back = BackShape.of(
                BackProfile.between(mm(15), mm(15)).volute(Volute.of(mm(2), mm(30))), SCALE, Curve.level(20));

        assertThat(back.at(mm(0)).depth().libraryValue()).isCloseTo(17, offset(1e-12));
        assertThat(back.at(mm(15)).depth().libraryValue()).isCloseTo(16, offset(1e-12));
        assertThat(back.at(mm(10)).depth().libraryValue()).isCloseTo(15 + 2 * 0.75, offset(1e-12)); // (1 + cos 60)/2
        assertThat(back.at(mm(30)).depth().libraryValue()).isCloseTo(15, offset(1e-12));
    }

    @Test
    void at_refusesAPlaceWithoutASection() {
        BackShape pointed = BackShape.of(BackProfile.between(mm(15), mm(15)), SCALE, Curve.straight(0, 20, -0.1));

        assertThat(pointed.at(mm(199)).width().libraryValue()).isCloseTo(0.2, offset(1e-9));
        assertThatThrownBy(() -> pointed.at(mm(200)))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("the neck has no section at 200 mm from the nut: half-width 0 mm, depth 15 mm");
    }
}
