package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.units.ShopUnits.gigapascal;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.percent;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.StringHeights;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.stock.Wood;

/** Relief of whole necks against a finite-difference neck solved by Hipparchus, and what must hold for any neck. */
class ReliefTest {

    @Tag("long")
    @Test
    void underStrings_agreesWithAFiniteDifferenceNeck() {
        for (Neck neck : List.of(Necks.mandolin(), SampleNecks.guitar(), SampleNecks.shortScaleBass())) {
            FiniteDifferenceNeck other = new FiniteDifferenceNeck(neck);
            double from = neck.scale().fretMm(1);
            double to = neck.bodyJointMm();
            Straightedge plain = StrungNeck.usual(neck).bench().bare();

            assertThat(plain.bow(0)).as(neck.name()).isCloseTo(other.bow(from, to, 0), withinPercentage(0.1));
            assertThat(plain.under(0).clampedAtEnd().riseAt(0))
                    .as(neck.name())
                    .isCloseTo(other.lift(), withinPercentage(0.1));
            for (double force : new double[] {400, 1500, 3000}) {
                assertThat(plain.bow(force))
                        .as("%s at %s N", neck.name(), force)
                        .isCloseTo(other.bow(from, to, force), within(0.0005));
            }
        }
    }

    @Test
    void underStrings_isOfTheSizeMakersSee() {
        // Common practice, order of magnitude of the bow of the wood alone: mandolin 0.2 to 0.4, electric 0.25 to 0.4
        // mm;
        // greatest near the 6th or 7th fret.
        Bow mandolin = Relief.of(Necks.mandolin()).underStrings();
        Bow guitar = Relief.of(SampleNecks.guitar()).underStrings();

        assertThat(mandolin.relief().libraryValue()).isBetween(0.2, 0.45);
        assertThat(guitar.relief().libraryValue()).isBetween(0.15, 0.45);
        assertThat(Relief.of(SampleNecks.shortScaleBass())
                        .underStrings()
                        .relief()
                        .libraryValue())
                .isBetween(0.3, 1.0);
        assertThat(guitar.place().libraryValue())
                .isBetween(
                        SampleNecks.guitar().scale().fretMm(5.5),
                        SampleNecks.guitar().scale().fretMm(8.5));
    }

    @Test
    void underStrings_countsThePullOnTheBentNeck() {
        // Strings of next to no pull bow the neck in proportion; the real ones a little more than that, the longer the
        // neck
        // the more: 3 % for a pinned column of 450 mm under 700 N (M/P (sec u - 1) against M L^2/(8 E I)).
        for (Neck neck : List.of(
                Necks.mandolin(),
                SampleNecks.guitar()
                        .strings(SampleNecks.guitar().strings().orElseThrow().tensions(newton(75))))) {
            double real = Relief.of(neck).underStrings().relief().libraryValue();
            double told = neck.strings().orElseThrow().tensionsN()[0];
            Neck slack = neck.strings(neck.strings().orElseThrow().tensions(newton(told / 1e5)));

            double more = real / (1e5 * Relief.of(slack).underStrings().relief().libraryValue()) - 1;
            assertThat(more).as(neck.name()).isBetween(0.01, 0.10);
        }
    }

    @Test
    void liftInterval_holdsTheLift() {
        Bow bow = Relief.of(SampleNecks.guitar()).underStrings();

        assertThat(bow.liftInterval().contains(bow.lift())).isTrue();
        assertThat(bow.liftInterval().libraryLow()).isPositive();
    }

    @Test
    void interval_followsTheModulus() {
        // The board of no stiffness to speak of: relief goes as 1/E but for the pull on the bent neck. What 5 % of wood
        // adds to
        // the log-normal interval of a wood all but known is that of 1/E, give or take a quarter; the model's part is
        // in both.
        Bow bow = bowOfWalnut(5);
        double with = width(bow);
        double without = width(bowOfWalnut(0.1));

        assertThat(Math.sqrt(with * with - without * without)).isBetween(2 * 1.96 * 0.05, 2 * 1.96 * 0.05 * 1.25);
        assertThat(bow.interval().contains(bow.relief())).isTrue();
    }

    private static Bow bowOfWalnut(double variation) {
        Wood soft = Wood.named("felt").modulus(gigapascal(0.001));
        Neck neck = Necks.mandolin()
                .wood(Wood.BLACK_WALNUT.modulusVariation(percent(variation)))
                .fingerboard(Fingerboard.tapered(mm(34), mm(46))
                        .thickness(mm(6))
                        .radius(mm(400))
                        .wood(soft));
        return Relief.of(neck).underStrings();
    }

    private static double width(Bow bow) {
        return Math.log(bow.interval().libraryHigh() / bow.interval().libraryLow());
    }

    @Test
    void underStrings_isTheSameInInchesAndMillimetres() {
        Neck inches = SampleNecks.guitar();
        Neck metric = inches.scale(mm(647.7))
                .fingerboard(Fingerboard.tapered(mm(42.8625), mm(55.88))
                        .thickness(mm(6.35))
                        .radius(mm(241.3), mm(304.8))
                        .wood(Wood.SUGAR_MAPLE))
                .back(BackProfile.between(mm(14.732), mm(16.51)).full());

        assertThat(Relief.of(metric).underStrings().relief().libraryValue())
                .isCloseTo(Relief.of(inches).underStrings().relief().libraryValue(), withinPercentage(1e-9));
        assertThat(Relief.of(inches).underStrings().toString()).contains("thou");
        assertThat(Relief.of(metric).underStrings().toString()).contains(" mm");
    }

    @Test
    void underStrings_growsWithPullAndFallsWithStiffness() {
        long seed = 20260311;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 50; i++) {
            Neck neck = anyNeck(random);
            double relief = Relief.of(neck).underStrings().relief().libraryValue();
            Neck stiffer = neck.wood(Wood.named("stiff").modulus(gigapascal(20)));
            Neck deeper = neck.back(BackProfile.between(mm(17), mm(20)));

            assertThat(Relief.of(stiffer).underStrings().relief().libraryValue())
                    .as("seed %s, trial %s", seed, i)
                    .isLessThan(relief);
            assertThat(Relief.of(deeper).underStrings().relief().libraryValue())
                    .as("seed %s, trial %s", seed, i)
                    .isLessThan(relief);
            Neck harder = neck.strings(neck.strings().orElseThrow().tensions(newton(100)));
            assertThat(Relief.of(harder).underStrings().relief().libraryValue())
                    .as("seed %s, trial %s", seed, i)
                    .isGreaterThan(relief);
        }
    }

    private static Neck anyNeck(SplittableRandom random) {
        return Necks.mandolin()
                .scale(mm(random.nextDouble(350, 660)))
                .back(BackProfile.between(mm(random.nextDouble(13, 15)), mm(random.nextDouble(15, 17)))
                        .power(random.nextDouble(1.8, 3.5)))
                .strings(StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"), pitch("E4"))
                        .tensions(newton(random.nextDouble(40, 90))));
    }

    @Test
    void between_measuresLessOverAShorterSpan() {
        Relief relief = Relief.of(Necks.mandolin());
        double whole = relief.underStrings().relief().libraryValue();

        assertThat(relief.between(1, 10).underStrings().relief().libraryValue()).isLessThan(whole);
        assertThat(relief.between(0, 14).underStrings().relief().libraryValue()).isGreaterThan(whole);
        assertThat(relief.between(1, 14)).isEqualTo(relief);
    }

    @Test
    void between_refusesFretsItCannotLieOn() {
        Relief relief = Relief.of(Necks.mandolin());

        assertThatThrownBy(() -> relief.between(3, 3)).hasMessageContaining("ascending");
        assertThatThrownBy(() -> relief.between(1, 15))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("frets of the straightedge must be ascending between 0 and that at the body, 14, but were 1"
                        + " and 15");
        assertThatThrownBy(() -> relief.between(-1, 5)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void gapAtFret_isLessThanTheReliefAndNothingAtTheEnds() {
        Bow bow = Relief.of(Necks.mandolin()).underStrings();

        assertThat(bow.gapAtFret(1).libraryValue()).isCloseTo(0, within(1e-12));
        assertThat(bow.gapAtFret(14).libraryValue()).isCloseTo(0, within(1e-12));
        assertThat(bow.gapAtFret(6).libraryValue())
                .isPositive()
                .isLessThanOrEqualTo(bow.relief().libraryValue());
        assertThatThrownBy(() -> bow.gapAtFret(15)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void heights_makeALongerLever() {
        Relief low = Relief.of(Necks.mandolin());
        Relief high = low.heights(StringHeights.of(mm(0.7), mm(4.3)));

        assertThat(high.underStrings().relief().libraryValue())
                .isGreaterThan(low.underStrings().relief().libraryValue());
    }

    @Test
    void withRodAt_refusesWhatTheRodCannot() {
        assertThatThrownBy(() -> Relief.of(SampleNecks.guitar()).withRodAt(newton(-10)))
                .hasMessage("rod force must be 0 N or more in a single-action rod, but was -10 N");
        Neck barred = Necks.mandolin().bar(Bar.carbon(mm(300)).section(mm(6), mm(9)));
        assertThatThrownBy(() -> Relief.of(barred).withRodAt(newton(10)))
                .hasMessage("rod force must be 0 N in a neck without an adjustable rod, but was 10 N");
        assertThat(Relief.of(barred).withRodAt(newton(0)).relief().libraryValue())
                .isLessThan(Relief.of(Necks.mandolin()).underStrings().relief().libraryValue());
    }

    @Test
    void of_namesThePartThatIsMissing() {
        Neck noWood = Necks.mandolin().fingerboard(Fingerboard.tapered(mm(34), mm(46)));
        assertThatThrownBy(() -> Relief.of(noWood).underStrings())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("needs its fingerboard's wood for this");
        Neck noPull = Necks.mandolin().strings(StringSet.of(pitch("G2"), pitch("D3")));
        assertThatThrownBy(() -> Relief.of(noPull).underStrings())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("needs its string tensions for this");
    }

    @Test
    void of_saysWhereTheChannelBreaksThrough() {
        Neck deep = Necks.mandolin().trussRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(14.5)));

        assertThatThrownBy(() -> Relief.of(deep).underStrings())
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("breaks through the back");
    }

    @Test
    void of_refusesAnImpossibleOutline() {
        Neck noDepth = Necks.mandolin().back(BackProfile.between(mm(1), mm(20)));

        assertThatThrownBy(() -> Relief.of(noDepth).underStrings())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("depth of the back must be more than 0 mm along the neck, but was -");
        Neck thin = Necks.mandolin()
                .fingerboard(Fingerboard.tapered(mm(34), mm(46))
                        .thickness(mm(0.5))
                        .radius(mm(60))
                        .wood(Wood.SAPELE));
        assertThatThrownBy(() -> Relief.of(thin).underStrings())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("fingerboard's thickness at its edge must be more than 0 mm");
    }
}
