package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.units.ShopUnits.gramPerMetre;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.List;
import java.util.Locale;
import javax.measure.quantity.Force;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Fan;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.StringHeights;
import org.neckgeom.neck.StringMaterial;
import org.neckgeom.neck.StringSet;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Point;
import org.neckgeom.solid.StringLine;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.validation.Rows;

/** Loads of the strings against src/test/resources/strength2, computed by another beam model (neck.py, cases.py). */
class StringLoadsTest {

    private static double figure(String topic, String given, String quantity) {
        return Rows.of("/strength2/strength-cases.csv").stream()
                .filter(row -> row.get("topic").equals(topic)
                        && row.get("given").equals(given)
                        && row.get("quantity").equals(quantity))
                .mapToDouble(row -> Rows.number(row, "value"))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(ReferenceNecks.class)
    void relief_isThatOfTheReferenceAtUndersideAndAtCentre(ReferenceNecks one) {
        String name = one.name().toLowerCase(Locale.ROOT);
        Neck neck = one.neck();
        Neck thin =
                neck.strings(neck.strings().orElseThrow().diameters(mm(1e-9)).materials(StringMaterial.NYLON));

        // Four digits are printed; the reference lets strings run parallel, which makes up to 1.2e-4 on the bass.
        assertThat(StrungNeck.usual(neck).bench().bare().bow(0))
                .isCloseTo(figure("heights", name, "relief, load at the centre"), withinPercentage(0.035));
        assertThat(StrungNeck.usual(thin).bench().bare().bow(0))
                .isCloseTo(figure("heights", name, "relief, load at the underside"), withinPercentage(0.035));
    }

    @ParameterizedTest
    @EnumSource(ReferenceNecks.class)
    void moment_growsByTheHalfDiameters(ReferenceNecks one) {
        Neck neck = one.neck();
        Neck thin =
                neck.strings(neck.strings().orElseThrow().diameters(mm(1e-9)).materials(StringMaterial.NYLON));

        double more = StringLoad.of(neck).momentAtFret(5).valueIn(ShopUnit.NEWTON_METRE)
                - StringLoad.of(thin).momentAtFret(5).valueIn(ShopUnit.NEWTON_METRE);

        // The strings' slope and their way outward take up to 2e-4 of their tension along the neck.
        assertThat(more)
                .isCloseTo(
                        figure("heights", one.name().toLowerCase(Locale.ROOT), "moment added by the half diameters"),
                        withinPercentage(0.03));
    }

    @Test
    void withoutDiameters_theAnswerStatesWhereTheLoadActs() {
        assertThat(StringLoad.of(Necks.mandolin()).toString()).contains("No diameters given");
        assertThat(StringLoad.of(ReferenceNecks.GUITAR.neck()).toString()).doesNotContain("No diameters given");
    }

    @Test
    void tension_followsEachStringsOwnScaleAndCompensation() {
        // strength-cases.csv, fan 699 / 673 with mass per length and pitch of each string; each string's scale is
        // printed to 0.1 mm, those between follow from the places: strings at equal centres, 0.2 %.
        String[] given = {
            "scale 699, 61.7354 Hz, 17.5 g/m",
            "scale 693.8, 82.4069 Hz, 10.5 g/m",
            "scale 688.6, 110.0000 Hz, 6 g/m",
            "scale 683.4, 146.8324 Hz, 3.3 g/m",
            "scale 678.2, 184.9972 Hz, 1.9 g/m",
            "scale 673, 246.9417 Hz, 1.12 g/m"
        };
        StringSet strings = StringSet.of(pitch("B1"), pitch("E2"), pitch("A2"), pitch("D3"), pitch("F#3"), pitch("B3"))
                .linearDensities(
                        gramPerMetre(17.5),
                        gramPerMetre(10.5),
                        gramPerMetre(6),
                        gramPerMetre(3.3),
                        gramPerMetre(1.9),
                        gramPerMetre(1.12))
                .diameters(mm(1.78), mm(1.37), mm(1.07), mm(0.81), mm(0.56), mm(0.43))
                .across(Across.of(mm(3), mm(58)).equalCentres());
        Neck neck = Neck.named("fan")
                .fannedFrets(Fan.between(mm(699), mm(673)).perpendicularAt(7), strings)
                .fingerboard(Fingerboard.tapered(mm(46), mm(58.5)))
                .back(BackProfile.between(mm(16), mm(18)));

        List<Amount<Force>> ours = StringLoad.of(neck).tensions();
        for (int i = 0; i < given.length; i++) {
            double tension = figure("fan", given[i], "tension, own scale");
            assertThat(ours.get(i).libraryValue())
                    .as(given[i])
                    .isCloseTo(tension, withinPercentage(i == 0 || i == 5 ? 1e-4 : 0.2));
        }
        Neck set =
                neck.neckSet(NeckSet.saddle(mm(12)).atNut(mm(0.5)).action(mm(2)).compensation(mm(2.5)));
        assertThat(StringLoad.of(set).tensions().get(0).libraryValue())
                .isCloseTo(ours.get(0).libraryValue() * Math.pow(701.5 / 699, 2), withinPercentage(1e-9));
    }

    @Test
    void lateString_loadsTheNeckFromItsOwnNutPoint() {
        StringPull pull = StringPull.NONE
                .plus(100, new Line(new Point(0, -10, 8), new Point(600, -20, 14)))
                .plus(50, new Line(new Point(12, 10, 8), new Point(590, 20, 14)));

        // By hand: T cos times the height over an axis at -3 mm, before and past the second string's nut point.
        double first = 100 * 600 / Math.sqrt(600 * 600 + 100 + 36);
        double second = 50 * 578 / Math.sqrt(578.0 * 578 + 100 + 36);
        assertThat(pull.moment(6, -3)).isCloseTo(first * (8 + 6 * 6 / 600.0 + 3), withinPercentage(1e-9));
        assertThat(pull.moment(100, -3))
                .isCloseTo(
                        first * (8 + 6 * 100 / 600.0 + 3) + second * (8 + 6 * 88 / 578.0 + 3), withinPercentage(1e-9));
        assertThat(pull.starts()).containsExactly(12);
    }

    @Test
    void trebleSide_liesLowerInALine() {
        Neck neck = ReferenceNecks.GUITAR.neck();
        List<StringLine> level = StringLine.overBoard(neck, StringHeights.of(mm(0.4), mm(2)));
        List<StringLine> sloped =
                StringLine.overBoard(neck, StringHeights.of(mm(0.4), mm(2)).treble(mm(0.2), mm(1.5)));

        for (int i = 0; i < 6; i++) {
            assertThat(level.get(i).underside().from().zMm()
                            - sloped.get(i).underside().from().zMm())
                    .isCloseTo(0.2 * i / 5, within(1e-12));
            // The action's half millimetre is one at the saddle, less what the nut lies lower.
            assertThat(level.get(i).underside().to().zMm()
                            - sloped.get(i).underside().to().zMm())
                    .isCloseTo((2 * 0.5 - 0.2) * i / 5, within(1e-9));
        }
    }
}
