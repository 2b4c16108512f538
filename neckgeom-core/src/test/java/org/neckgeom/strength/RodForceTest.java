package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.units.ShopUnits.gigapascal;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.stock.Wood;
import org.neckgeom.strength.RodForce.Reach;

/** The rod's force put back into the neck and into a finite-difference neck; what a rod cannot do. */
class RodForceTest {

    @Tag("long")
    @Test
    void force_leavesTheWantedReliefInAFiniteDifferenceNeck() {
        for (Neck neck : List.of(Necks.mandolin(), SampleNecks.guitar(), SampleNecks.shortScaleBass())) {
            FiniteDifferenceNeck other = new FiniteDifferenceNeck(neck);
            double from = neck.scale().fretMm(1);
            for (double wanted : new double[] {0.15, 0.05, 0, -0.05}) {
                double force = StrungNeck.usual(neck).bench().bare().forceFor(wanted);

                assertThat(other.bow(from, neck.bodyJointMm(), force))
                        .as("%s, %s mm", neck.name(), wanted)
                        .isCloseTo(wanted, within(0.0005));
            }
        }
    }

    @Test
    void force_putBackGivesTheRelief() {
        Relief relief = Relief.of(Necks.mandolin());
        RodForce rod = relief.rodForceFor(mm(0.2));

        assertThat(relief.withRodAt(rod.force().orElseThrow()).relief().libraryValue())
                .isCloseTo(0.2, within(1e-9));
        assertThat(rod.reach()).isEqualTo(Reach.CAN);
        assertThat(rod.obstacle()).isEmpty();
        assertThat(rod.slackRelief()).isEqualTo(relief.underStrings().relief());
        assertThat(rod.interval().orElseThrow().contains(rod.force().orElseThrow()))
                .isTrue();
    }

    /**
     * By hand, as R6 of practice-2-figures.csv with a board on: half an ellipse 50 x 21 of 11,500 MPa is pi 25^3 21/8 =
     * 128,855 mm4 sideways, a board 50 x 6 of 15,000 MPa 62,500: 2.4193e9 N mm2 together; {@code F e L^2/(8 E I)} over a rod 400
     * long.
     */
    @Test
    void sidewaysBow_isThatOfARodBesideTheMiddle() {
        Neck neck = Neck.named("Even")
                .scale(mm(648))
                .fingerboard(Fingerboard.tapered(mm(50), mm(50))
                        .thickness(mm(6))
                        .wood(Wood.SUGAR_MAPLE.withName("board").modulus(gigapascal(15))))
                .back(BackProfile.between(mm(21), mm(21)).rounded())
                .frets(20)
                .bodyAtFret(14)
                .wood(Wood.SUGAR_MAPLE.withName("shaft").modulus(gigapascal(11.5)))
                .channel(Channel.forRod(TrussRod.singleAction(mm(400), mm(5)))
                        .startingAt(mm(5))
                        .arch(mm(6)))
                .strings(StringSet.of(pitch("E2"), pitch("A2"), pitch("D3"), pitch("G3"), pitch("B3"), pitch("E4"))
                        .tensions(newton(90)));
        RodForce rod = Relief.of(neck).rodForceFor(mm(0.1));
        double force = rod.force().orElseThrow().libraryValue();

        assertThat(force).isPositive();
        assertThat(rod.sidewaysBow(mm(0.71)).libraryValue())
                .isCloseTo(force * 0.71 * 400 * 400 / (8 * 2.4193e9), withinPercentage(0.01));
        assertThat(rod.sidewaysBow(mm(0)).libraryValue()).isZero();
        assertThat(Relief.of(Necks.mandolin())
                        .rodForceFor(mm(0.1))
                        .sidewaysBow(mm(0.71))
                        .libraryValue())
                .isZero();
    }

    @Test
    void force_ofATwoWayRodIsNegativeForMoreRelief() {
        RodForce rod = Relief.of(Necks.mandolin()).rodForceFor(mm(0.8));

        assertThat(rod.force().orElseThrow().libraryValue()).isNegative();
        assertThat(rod.reach()).isNotEqualTo(Reach.CANNOT);
    }

    @Test
    void force_goesAsTheArmOfATwoWayRod() {
        Relief relief = Relief.of(Necks.mandolin());
        double usual = relief.rodForceFor(mm(0.1)).force().orElseThrow().libraryValue();

        assertThat(relief.rodArm(mm(9))
                        .rodForceFor(mm(0.1))
                        .force()
                        .orElseThrow()
                        .libraryValue())
                .isCloseTo(usual / 2, withinPercentage(1e-7));
    }

    @Test
    void reach_isCannotWhenASingleRodWouldHaveToPush() {
        RodForce rod = Relief.of(SampleNecks.guitar()).rodForceFor(mm(1.5));

        assertThat(rod.reach()).isEqualTo(Reach.CANNOT);
        assertThat(rod.obstacle().orElseThrow())
                .contains("the strings leave", "single-action rod can only take relief away");
        assertThat(rod.toString()).contains("cannot").doesNotContain("N (95 %");
    }

    @Test
    void reach_isCannotBeyondWhatTheRodStands() {
        RodForce rod = Relief.of(Necks.mandolin()).rodStands(newton(50)).rodForceFor(mm(-0.3));

        assertThat(rod.reach()).isEqualTo(Reach.CANNOT);
        assertThat(rod.obstacle()).contains("the rod's limit is 50 N");
    }

    @Test
    void reach_isMayWhenItDependsOnTheWood() {
        Relief relief = Relief.of(Necks.mandolin());
        double force = relief.rodForceFor(mm(0.1)).force().orElseThrow().libraryValue();

        RodForce rod = relief.rodStands(newton(force)).rodForceFor(mm(0.1));

        assertThat(rod.reach()).isEqualTo(Reach.MAY);
        assertThat(rod.obstacle()).isPresent();
    }

    @Test
    void reach_isCannotWithoutARod() {
        Neck barred = Necks.mandolin().bar(Bar.steel(mm(300)).section(mm(3.2), mm(9)));
        RodForce rod = Relief.of(barred).rodForceFor(mm(0.1));

        assertThat(rod.reach()).isEqualTo(Reach.CANNOT);
        assertThat(rod.force()).isEmpty();
        assertThat(rod.interval()).isEmpty();
        assertThat(rod.obstacle()).contains("the neck has no adjustable rod");
        assertThatThrownBy(() -> Relief.of(barred).rodTravel()).hasMessageContaining("must have an adjustable rod");
    }

    @Test
    void reach_isCannotWhenTheRodLiesOverTheNeutralAxis() {
        // A shallow channel under a deep back: the rod's pull bows the neck forward.
        Neck shallow = Necks.mandolin()
                .back(BackProfile.between(mm(24), mm(26)).full())
                .trussRod(TrussRod.singleAction(mm(300), mm(4)));
        RodForce rod = Relief.of(shallow).rodForceFor(mm(0.01));

        assertThat(rod.reach()).isEqualTo(Reach.CANNOT);
        assertThat(rod.obstacle().orElseThrow()).contains("wrong side of the neutral axis");
    }

    @Test
    void hump_isWhatRodAndStringsLeave() {
        // Common practice: a rod and strings never add to a straight line, there is a slight S.
        RodForce straight = Relief.of(SampleNecks.guitar()).rodForceFor(mm(0));

        assertThat(straight.hump().libraryValue()).isPositive().isLessThan(0.1);
        assertThat(straight.toString()).contains("the neck is an S");
    }

    @Test
    void toString_speaksTheUnitsOfTheQuestion() {
        assertThat(Relief.of(SampleNecks.guitar()).rodForceFor(inch(0.004)).toString())
                .contains("thou");
        assertThat(Relief.of(SampleNecks.guitar()).rodForceFor(mm(0.1)).toString())
                .doesNotContain("thou");
    }

    @Test
    void rodTravel_endsWhereTheRodGivesOut() {
        Relief relief = Relief.of(Necks.mandolin()).rodStands(newton(1200));
        RodTravel travel = relief.rodTravel();

        assertThat(travel.least()).isEqualTo(relief.withRodAt(newton(1200)).relief());
        assertThat(travel.most()).isEqualTo(relief.withRodAt(newton(-1200)).relief());
        assertThat(travel.least().libraryValue())
                .isLessThan(relief.underStrings().relief().libraryValue())
                .isLessThan(travel.most().libraryValue());
        assertThat(Relief.of(SampleNecks.guitar()).rodTravel().most())
                .isEqualTo(Relief.of(SampleNecks.guitar()).underStrings().relief());
    }
}
