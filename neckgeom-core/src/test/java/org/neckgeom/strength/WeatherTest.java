package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.units.ShopUnits.celsius;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.fahrenheit;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.percent;

import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.neckgeom.measure.Interval;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.LengthStyle;

/** Weather against the Wood Handbook (FPL-GTR-190, 2010): Table 4-2, Eq. 13-3, Table 13-5; and common practice. */
class WeatherTest {

    private static final Weather WINTER = Weather.from(percent(45), celsius(21)).to(percent(25), celsius(21));

    @Test
    void moisture_isThatOfTheTable() {
        // Table 4-2 at 70 degrees Fahrenheit, one decimal, from memory: 5.4 at 25 %, 8.5 at 45 %, 12.0 at 65 %.
        assertThat(Climate.of(percent(25), fahrenheit(70)).moisturePercent()).isCloseTo(5.4, within(0.05));
        assertThat(Climate.of(percent(45), fahrenheit(70)).moisturePercent()).isCloseTo(8.5, within(0.05));
        assertThat(Climate.of(percent(65), fahrenheit(70))
                        .moisture()
                        .valueIn(percent(1).unit()))
                .isCloseTo(12.0, within(0.05));
    }

    @Test
    void moisture_agreesWithCommonPractice() {
        // Common practice: 30 % humidity 6 % moisture, 50 % 9, 65 % 12, 80 % 16; rounded to whole percents.
        assertThat(Climate.of(percent(30), celsius(21)).moisturePercent()).isCloseTo(6, within(0.5));
        assertThat(Climate.of(percent(50), celsius(21)).moisturePercent()).isCloseTo(9, within(0.5));
        assertThat(Climate.of(percent(65), celsius(21)).moisturePercent()).isCloseTo(12, within(0.5));
        assertThat(Climate.of(percent(80), celsius(21)).moisturePercent()).isCloseTo(16, within(0.5));
    }

    @Test
    void across_isTheHandbooksChange() {
        // Eq. 13-3 by hand: 46 mm, S = 2.7 % and 5.8 % (Table 4-4, from memory).
        double radial = winterChange(46, 2.7);
        double tangential = winterChange(46, 5.8);
        SizeChange board = WINTER.across(mm(46), Wood.INDIAN_ROSEWOOD);

        assertThat(board.quartersawn().changeMm()).isCloseTo(radial, withinPercentage(1e-9));
        assertThat(board.flatsawn().changeMm()).isCloseTo(tangential, withinPercentage(1e-9));
        assertThat(board.changeMm()).isBetween(tangential, radial);
        assertThat(board.after().libraryValue()).isCloseTo(46 + board.changeMm(), within(1e-12));
    }

    @Test
    void across_isCloseToTheTablesCoefficient() {
        // Inside 6 to 14 % moisture Eq. 13-2 with Table 13-5: sugar maple C_T 0.00353, C_R 0.00165.
        Weather damp = Weather.from(percent(40), celsius(21)).to(percent(60), celsius(21));
        double rise = damp.moistureChange().libraryValue() * 100;
        SizeChange board = damp.across(mm(70), Wood.SUGAR_MAPLE);

        assertThat(board.flatsawn().changeMm()).isCloseTo(70 * 0.00353 * rise, withinPercentage(1.5));
        assertThat(board.quartersawn().changeMm()).isCloseTo(70 * 0.00165 * rise, withinPercentage(1.5));
    }

    @Test
    void ringsAt_liesBetweenFlatsawnAndQuartersawn() {
        SizeChange board = WINTER.across(mm(46), Wood.SUGAR_MAPLE);

        assertThat(board.ringsAt(deg(90))).isEqualTo(board.quartersawn());
        assertThat(board.ringsAt(deg(0))).isEqualTo(board.flatsawn());
        // Half of each: S = (4.8 + 9.9)/2 % in Eq. 13-3.
        assertThat(board.ringsAt(deg(45)).changeMm()).isCloseTo(winterChange(46, 7.35), withinPercentage(1e-9));
        assertThatThrownBy(() -> board.ringsAt(deg(91)))
                .hasMessage("ring angle must be between 0 and 90 deg, but was 91 deg");
    }

    @Test
    void interval_narrowsWhenTheRingsAreKnown() {
        SizeChange board = WINTER.across(mm(46), Wood.SUGAR_MAPLE);
        double unknown = board.interval().libraryHigh() - board.interval().libraryLow();
        double known = board.quartersawn().interval().libraryHigh()
                - board.quartersawn().interval().libraryLow();

        assertThat(known).isLessThan(unknown);
        assertThat(board.interval().contains(board.flatsawn().change())).isTrue();
        assertThat(board.interval().contains(board.quartersawn().change())).isTrue();
        // Radial shrinkage 4.8 %, 1.96 x 15 % of it to either side.
        assertThat(board.quartersawn().interval().libraryHigh())
                .isCloseTo(winterChange(46, 4.8 * (1 - 1.959964 * 0.15)), withinPercentage(1e-4));
        assertThat(board.quartersawn().interval().libraryLow())
                .isCloseTo(winterChange(46, 4.8 * (1 + 1.959964 * 0.15)), withinPercentage(1e-4));
    }

    /** Eq. 13-3: {@code D (M2 - M1)/(3000/S - 30 + M1)}. */
    private static double winterChange(double size, double shrinkagePercent) {
        double before = WINTER.before().moisturePercent();
        double after = WINTER.after().moisturePercent();
        return size * (after - before) / (3000 / shrinkagePercent - 30 + before);
    }

    @Test
    void across_comesBackWithTheWeather() {
        long seed = 20260415;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 500; i++) {
            Climate one = Climate.of(percent(random.nextDouble(5, 90)), celsius(random.nextDouble(5, 35)));
            Climate two = Climate.of(percent(random.nextDouble(5, 90)), celsius(random.nextDouble(5, 35)));
            double size = random.nextDouble(1, 100);
            SizeChange there = Weather.between(one, two).across(mm(size), Wood.BLACK_WALNUT);
            SizeChange back = Weather.between(two, one).across(there.after(), Wood.BLACK_WALNUT);

            assertThat(there.changeMm() + back.changeMm())
                    .as("seed %s, trial %s", seed, i)
                    .isCloseTo(0, within(1e-12));
        }
    }

    @Test
    void across_takesOwnCoefficients() {
        Wood own = Wood.named("own").changePerPercent(0.0017, 0.0029);
        Weather damp = Weather.from(percent(40), celsius(21)).to(percent(60), celsius(21));

        assertThat(damp.across(mm(50), own).flatsawn().changeMm())
                .isCloseTo(50 * 0.0029 * damp.moistureChange().libraryValue() * 100, withinPercentage(1.5));
        Wood mended = Wood.SUGAR_MAPLE.changePerPercent(0.0017, 0.0029);
        assertThat(damp.across(mm(50), mended).flatsawn().changeMm())
                .isEqualTo(damp.across(mm(50), own).flatsawn().changeMm());
        assertThatThrownBy(() -> damp.across(mm(50), Wood.named("nothing known")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("shrinkage, radial of nothing known is not known");
    }

    @Test
    void fretEnds_standProudByHalfTheShrinkage() {
        FretSprout ends = WINTER.fretEnds(mm(56), Wood.INDIAN_ROSEWOOD).flatsawn();

        assertThat(ends.proud().libraryValue())
                .isCloseTo(-ends.board().changeMm() / 2, within(1e-15))
                .isPositive();
        assertThat(ends.interval().contains(ends.proud())).isTrue();
        Weather summer = Weather.from(percent(45), celsius(21)).to(percent(70), celsius(21));
        assertThat(summer.fretEnds(mm(56), Wood.INDIAN_ROSEWOOD).proud().libraryValue())
                .isNegative();
        assertThat(summer.fretEnds(mm(56), Wood.INDIAN_ROSEWOOD).toString()).contains("sink in", "sunk in");
    }

    @Test
    void slotFit_losesPlayInDryAir() {
        // Common practice: a 6.35 mm channel for a 6.24 mm rod is a good fit.
        SlotFit fit = WINTER.slotFit(mm(6.35), mm(6.24), Wood.BLACK_WALNUT);

        assertThat(fit.clearanceBefore().libraryValue()).isCloseTo(0.11, within(1e-12));
        assertThat(fit.clearanceAfter().libraryValue())
                .isCloseTo(0.11 + WINTER.across(mm(6.35), Wood.BLACK_WALNUT).changeMm(), within(1e-12));
        assertThat(fit.fit()).isEqualTo(SlotFit.Fit.FREE);
        assertThat(WINTER.slotFit(mm(6.26), mm(6.24), Wood.BLACK_WALNUT).fit()).isEqualTo(SlotFit.Fit.BINDS);
        assertThat(WINTER.slotFit(mm(6.29), mm(6.24), Wood.BLACK_WALNUT).fit()).isEqualTo(SlotFit.Fit.MAY_BIND);
    }

    @Test
    void readOnDifferentDays_isHalfTheChangeOfWidth() {
        // Common practice: a 70 mm blank moves 0.17 mm for 1 % of moisture (4 % of moisture is about 1 % of width).
        Weather damp = Weather.from(percent(40), celsius(21)).to(percent(46), celsius(21));
        ReadingDrift drift = damp.readOnDifferentDays(mm(70), Wood.SUGAR_MAPLE);

        assertThat(drift.offset().libraryValue())
                .isCloseTo(-drift.width().changeMm() / 2, within(1e-15))
                .isNegative();
        assertThat(drift.width().changeMm() / (damp.moistureChange().libraryValue() * 100))
                .isCloseTo(0.17, within(0.03));
        assertThat(drift.quartersawn().offset().libraryValue())
                .isGreaterThan(drift.flatsawn().offset().libraryValue());
        assertThat(drift.toString()).contains("too near the fence");
    }

    @Test
    void on_answersForAWholeNeck() {
        NeckWeather neck = WINTER.on(Necks.mandolin());

        assertThat(neck.fretEndsAtNut().board().before().libraryValue()).isCloseTo(34, within(1e-9));
        assertThat(neck.fretEndsAtLastFret().proud().libraryValue())
                .isGreaterThan(neck.fretEndsAtNut().proud().libraryValue());
        assertThat(neck.neckAtBody().before().libraryValue()).isCloseTo(46, within(1e-9));
        assertThat(neck.slotFit()).isPresent();
        assertThat(neck.toString()).contains("fret ends", "rod clearance", "Estimate");
    }

    @Test
    void days_giveEachPartItsOwnShare() {
        Neck neck = Necks.mandolin();
        NeckWeather week = WINTER.days(7).on(neck);
        NeckWeather end = WINTER.on(neck);
        AirInWood board = AirInWood.of(mm(6), 7).gluedOnOneFace();

        assertThat(week.fretEndsAtNut().board())
                .isEqualTo(WINTER.across(mm(34), Wood.INDIAN_ROSEWOOD).after(board));
        assertThat(week.fretEndsAtNut().proud().libraryValue()
                        / end.fretEndsAtNut().proud().libraryValue())
                .isCloseTo(board.shareDone(), within(0.02));
        // The neck is thick and has done less.
        assertThat(week.neckAtBody().changeMm() / end.neckAtBody().changeMm()).isLessThan(board.shareDone() - 0.3);
        assertThat(week.toString())
                .contains("so far             7 days: 87 % of it in the fingerboard, 38 % in the neck");
        assertThat(end.toString()).doesNotContain("so far").contains("balance before and after");
        assertThat(WINTER.days(7).days()).hasValue(7);
        assertThat(WINTER.days()).isEmpty();
        assertThat(WINTER.days(7).toString()).contains("days    7 in it");
        assertThatThrownBy(() -> WINTER.days(-1)).hasMessageContaining("days must be a number from 0 to 36525");
    }

    /** In the weeks before both arrive, the answer for those days and the one about the way there are the same. */
    @Test
    void relief_ofTheDaysIsTheOneOnTheWay() {
        Neck neck = Necks.mandolin();
        double most = 0;
        for (int day = 1; day <= 60; day++) {
            most = Math.max(
                    most, WINTER.days(day).on(neck).relief().orElseThrow().libraryValue());
        }

        assertThat(WINTER.on(neck).toString()).contains("relief on the way  0.052 mm more after 8 days");
        assertThat(most).isCloseTo(0.052, within(0.0006));
        assertThat(WINTER.days(30_000).on(neck).relief().orElseThrow().libraryValue())
                .isCloseTo(0, within(1e-9));
        Weather damp = Weather.from(percent(45), celsius(21)).to(percent(70), celsius(21));
        assertThat(damp.days(8).on(neck).relief().orElseThrow().libraryValue()).isNegative();
        assertThat(damp.on(neck).toString()).contains("mm less after");
    }

    /** strength-2.md, 5: with both at balance, 1.5e-5 of difference, one standard deviation, for each percent. */
    @Test
    void relief_atBalanceIsOpenInItsSign() {
        Neck guitar = ReferenceNecks.GUITAR.neck();
        Wood maple = Wood.SUGAR_MAPLE;
        Neck dressed = guitar.wood(maple).fingerboard(guitar.fingerboard().wood(maple));
        NeckWeather end = WINTER.on(dressed);
        double change = -WINTER.moistureChange().libraryValue() * 100;

        assertThat(end.relief().orElseThrow().libraryValue()).isCloseTo(0, within(1e-12));
        // 0.0119 mm for each percent, and what the strings' pull on the bent neck adds.
        assertThat(end.reliefInterval().orElseThrow().libraryHigh() / 1.96 / change)
                .isBetween(0.0115, 0.0130);
    }

    @Test
    void readings_narrowWhatTheAirDoesToRelief() {
        NeckWeather week = WINTER.days(7).on(Necks.mandolin());
        StiffnessReadings read = StiffnessReadings.none()
                .neckBlank(BlankBent.over(mm(600)).section(mm(70), mm(22)).fall(newton(49), mm(0.31)))
                .boardBlank(BlankBent.over(mm(400)).section(mm(60), mm(7)).fall(newton(19.6133), mm(1.24)));
        NeckWeather known = week.knowing(read);

        Interval<Length> before = week.reliefInterval().orElseThrow();
        Interval<Length> after = known.reliefInterval().orElseThrow();
        assertThat(after.libraryHigh() - after.libraryLow()).isLessThan(before.libraryHigh() - before.libraryLow());
        assertThat(known.relief().orElseThrow().libraryValue())
                .isCloseTo(week.relief().orElseThrow().libraryValue(), within(0.005));
    }

    @Test
    void relief_isLeftOutWhereNoBeamIs() {
        Neck deep = Necks.mandolin().trussRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(20)));

        assertThat(WINTER.on(deep).relief()).isEmpty();
        assertThat(WINTER.on(deep).toString()).doesNotContain("relief").contains("fret ends");
    }

    @Test
    void of_refusesClimatesThatAreNone() {
        assertThatThrownBy(() -> Climate.of(percent(100), celsius(21)))
                .hasMessage("humidity must be 0 % or more and less than 100 %, but was 100 %");
        assertThatThrownBy(() -> Climate.of(percent(-1), celsius(21))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Climate.of(percent(50), celsius(101))).hasMessageStartingWith("temperature must be");
        assertThatThrownBy(() -> Climate.of(percent(50), celsius(-21))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void across_answersInTheUnitsAsked() {
        SizeChange board = WINTER.across(inch(2.2), Wood.INDIAN_ROSEWOOD);

        assertThat(board.toString()).contains("thou");
        assertThat(board.text(LengthStyle.MILLIMETRES)).doesNotContain("thou").contains(" mm");
    }
}
