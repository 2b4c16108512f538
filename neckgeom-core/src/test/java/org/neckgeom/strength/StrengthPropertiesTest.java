package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.units.ShopUnits.celsius;
import static org.neckgeom.units.ShopUnits.gigapascal;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.percent;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.StringHeights;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** Laws that stiffness, load and weather keep, each at 1,000 places or more. */
@Tag("long")
class StrengthPropertiesTest {

    private static final long SEED = 20_261_130;
    private static final int CASES = 1_000;

    private final SplittableRandom random = new SplittableRandom(SEED);

    private static String at(int i) {
        return "seed " + SEED + ", case " + i;
    }

    /** A neck k times as large, its woods of one modulus each, its strings pulling with t newton. */
    private static Neck neck(double k, double depth, double gigapascal, double t, double slot, boolean inches) {
        return Neck.named("random")
                .scale(inUnit(k * 620, inches))
                .fingerboard(Fingerboard.tapered(inUnit(k * 42, inches), inUnit(k * 54, inches))
                        .thickness(inUnit(k * 6, inches))
                        .radius(inUnit(k * 300, inches))
                        .wood(Wood.named("board").modulus(gigapascal(gigapascal * 1.2))))
                .back(BackProfile.between(inUnit(k * depth, inches), inUnit(k * (depth + 2), inches)))
                .frets(20)
                .bodyAtFret(14)
                .wood(Wood.named("neck").modulus(gigapascal(gigapascal)))
                .trussRod(TrussRod.twoWay(inUnit(k * 300, inches))
                        .section(inUnit(k * 6, inches), inUnit(k * slot, inches)))
                .strings(StringSet.of(pitch("D3"), pitch("A3"), pitch("E4")).tensions(newton(t)));
    }

    private static Neck flat(Neck neck, double k) {
        return neck.fingerboard(Fingerboard.tapered(mm(k * 42), mm(k * 54))
                .thickness(mm(k * 6))
                .wood(neck.fingerboard().wood().orElseThrow()));
    }

    private static Amount<Length> inUnit(double millimetres, boolean inches) {
        return inches ? mm(millimetres).in(ShopUnit.INCH) : mm(millimetres);
    }

    private static Relief relief(Neck neck, double k) {
        return Relief.of(neck.fingerboard(neck.fingerboard().fretHeight(mm(k * 1))))
                .heights(StringHeights.of(mm(k * 0.4), mm(k * 2)));
    }

    /** On the plain beam: what it leaves out has sizes of its own, which do not scale. */
    private static double plain(Neck neck, double k) {
        Neck set = neck.fingerboard(neck.fingerboard().fretHeight(mm(k)))
                .neckSet(NeckSet.saddle(mm(15)).atNut(mm(k * 0.4)).action(mm(k * 2)));
        return StrungNeck.usual(set).bench().bare().bow(0);
    }

    /** A neck given in inches bends as one given in millimetres. */
    @Test
    void relief_doesNotCareForUnits() {
        for (int i = 0; i < CASES; i++) {
            double depth = random.nextDouble(13, 18);
            double t = random.nextDouble(40, 150);

            double metric = relief(neck(1, depth, 11, t, 9, false), 1)
                    .underStrings()
                    .relief()
                    .libraryValue();

            assertThat(relief(neck(1, depth, 11, t, 9, true), 1)
                            .underStrings()
                            .relief()
                            .libraryValue())
                    .as(at(i))
                    .isCloseTo(metric, withinPercentage(1e-8));
        }
    }

    /**
     * k times as large under k squared times the pull, a neck bends k times as far: strains are the same. Its board is
     * flat, as strings lie a fixed 3 mm inside the edges and so not at k times the place on a crown.
     */
    @Test
    void relief_scales() {
        for (int i = 0; i < CASES; i++) {
            double depth = random.nextDouble(13, 18);
            double t = random.nextDouble(40, 150);
            double k = random.nextDouble(0.6, 1.5);

            double one = plain(flat(neck(1, depth, 11, t, 9, false), 1), 1);

            assertThat(plain(flat(neck(k, depth, 11, k * k * t, 9, false), k), k))
                    .as(at(i))
                    .isCloseTo(k * one, withinPercentage(1e-6));
        }
    }

    /** Stiffer wood or a deeper back never bends more, more pull never less. */
    @Test
    void relief_isMonotone() {
        for (int i = 0; i < CASES; i++) {
            double depth = random.nextDouble(13, 18);
            double modulus = random.nextDouble(8, 14);
            double t = random.nextDouble(40, 150);
            double more = random.nextDouble(1, 1.2);

            double one = relief(neck(1, depth, modulus, t, 9, false), 1)
                    .underStrings()
                    .relief()
                    .libraryValue();

            assertThat(relief(neck(1, depth, modulus * more, t, 9, false), 1)
                            .underStrings()
                            .relief()
                            .libraryValue())
                    .as(at(i))
                    .isLessThanOrEqualTo(one * (1 + 1e-12));
            assertThat(relief(neck(1, depth * more, modulus, t, 9, false), 1)
                            .underStrings()
                            .relief()
                            .libraryValue())
                    .as(at(i))
                    .isLessThanOrEqualTo(one * (1 + 1e-12));
            assertThat(relief(neck(1, depth, modulus, t * more, 9, false), 1)
                            .underStrings()
                            .relief()
                            .libraryValue())
                    .as(at(i))
                    .isGreaterThanOrEqualTo(one * (1 - 1e-12));
        }
    }

    /** A section k times as large is k to the fourth as stiff; a deeper slot never makes it stiffer. */
    @Test
    void stiffness_scalesAndFallsWithTheSlot() {
        for (int i = 0; i < CASES; i++) {
            double depth = random.nextDouble(14, 18);
            double k = random.nextDouble(0.5, 2);
            double slot = random.nextDouble(5, 9);
            double x = random.nextDouble(1, 290);

            double one = stiffness(neck(1, depth, 11, 80, slot, false), x);

            assertThat(stiffness(neck(k, depth, 11, 80, slot, false), k * x))
                    .as(at(i))
                    .isCloseTo(one * k * k * k * k, withinPercentage(1e-8));
            assertThat(stiffness(neck(1, depth, 11, 80, slot + random.nextDouble(0, 3), false), x))
                    .as(at(i))
                    .isLessThanOrEqualTo(one * (1 + 1e-12));
        }
    }

    private static double stiffness(Neck neck, double x) {
        return Sections.of(neck).at(mm(x)).stiffnessNm2();
    }

    /** The rod force for a relief leaves that relief. */
    @Test
    void rodForce_isTheInverseOfRelief() {
        int asked = 0;
        for (int i = 0; i < CASES; i++) {
            Relief relief = relief(neck(1, random.nextDouble(13, 18), 11, random.nextDouble(60, 150), 9, false), 1);
            double wanted = relief.underStrings().relief().libraryValue() * random.nextDouble(0.3, 0.95);
            RodForce rod = relief.rodForceFor(mm(wanted));
            if (rod.force().isPresent() && rod.force().get().libraryValue() >= 0) {
                assertThat(relief.withRodAt(rod.force().get()).relief().libraryValue())
                        .as(at(i))
                        .isCloseTo(wanted, within(2e-4));
                asked++;
            }
        }
        assertThat(asked).as("seed %d: necks whose rod has an answer", SEED).isGreaterThan(CASES / 2);
    }

    /** A string's pull goes with the square of scale and pitch, and its pitch is found again from its pull. */
    @Test
    void tension_goesWithTheSquare() {
        for (int i = 0; i < CASES; i++) {
            double mass = random.nextDouble(2e-4, 2e-2);
            double scale = random.nextDouble(300, 900);
            double hertz = random.nextDouble(30, 700);
            double k = random.nextDouble(0.5, 2);

            double pull = NeckModel.newton(mass, scale, hertz);

            assertThat(NeckModel.newton(mass, k * scale, hertz))
                    .as(at(i))
                    .isCloseTo(k * k * pull, withinPercentage(1e-10));
            assertThat(Math.sqrt(pull / mass) / (2 * scale / 1000)).as(at(i)).isCloseTo(hertz, withinPercentage(1e-10));
        }
    }

    /** Damper air never leaves wood drier, a board twice as wide moves twice as far, and comes back with the weather. */
    @Test
    void weather_isMonotoneScalesAndComesBack() {
        for (int i = 0; i < CASES; i++) {
            double humidity = random.nextDouble(10, 80);
            double degrees = random.nextDouble(5, 35);
            Climate dry = Climate.of(percent(humidity), celsius(degrees));
            Climate damp = Climate.of(percent(humidity + random.nextDouble(0, 15)), celsius(degrees));
            Weather weather = Weather.between(dry, damp);
            double width = random.nextDouble(10, 80);

            double change = weather.across(mm(width), Wood.SUGAR_MAPLE).changeMm();

            assertThat(damp.moisturePercent()).as(at(i)).isGreaterThanOrEqualTo(dry.moisturePercent());
            assertThat(weather.across(mm(2 * width), Wood.SUGAR_MAPLE).changeMm())
                    .as(at(i))
                    .isCloseTo(2 * change, within(1e-12));
            assertThat(Weather.between(damp, dry)
                            .across(mm(width + change), Wood.SUGAR_MAPLE)
                            .changeMm())
                    .as(at(i))
                    .isCloseTo(-change, within(1e-12));
        }
    }
}
