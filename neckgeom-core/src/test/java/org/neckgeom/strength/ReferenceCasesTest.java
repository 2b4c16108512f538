package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.units.ShopUnits.gramPerMetre;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.neckgeom.kernel.NeckSetKernel;
import org.neckgeom.neck.StringSet;
import org.neckgeom.validation.Rows;

/** Rows of src/test/resources/strength2/strength-cases.csv that the tests of their own answers do not read: cases.py computed them. */
class ReferenceCasesTest {

    private static final String NUMBER = "([\\d.]+)";

    /** Rows of a topic whose given, or that of the row it refers to by "same", has a pattern. */
    private static List<double[]> rows(String topic, String quantity, Pattern given) {
        List<double[]> found = new ArrayList<>();
        String last = "";
        for (Map<String, String> row : Rows.of("/strength2/strength-cases.csv")) {
            last = row.get("given").equals("same") ? last : row.get("given");
            Matcher match = given.matcher(last);
            if (row.get("topic").equals(topic) && row.get("quantity").startsWith(quantity) && match.matches()) {
                double[] figures = new double[match.groupCount() + 1];
                for (int i = 1; i <= match.groupCount(); i++) {
                    figures[i] = Double.parseDouble(match.group(i));
                }
                figures[0] = Rows.number(row, "value");
                found.add(figures);
            }
        }
        return found;
    }

    @Test
    void neckSet_isThatOfUndersides() {
        List<double[]> rows = rows(
                "neck set",
                "neck angle",
                Pattern.compile("S " + NUMBER + ", saddle top " + NUMBER + ", fret plane " + NUMBER + ", underside "
                        + NUMBER + " at nut, " + NUMBER + " at 12, string to saddle " + NUMBER + ", scale " + NUMBER));
        for (double[] row : rows) {
            double string = NeckSetKernel.stringAtSaddle(row[7], row[6] - row[7], row[4], row[5]);
            double angle = NeckSetKernel.angle(row[2] - row[3], row[1], string);
            assertThat(Math.toDegrees(angle)).isCloseTo(row[0], withinPercentage(1e-6));
        }
        assertThat(rows).hasSize(3);
    }

    @Test
    void neckAngle_isOffByTheHalfDiameterOfAStringTakenAtItsTop() {
        List<double[]> rows = rows(
                "heights",
                "neck angle off by",
                Pattern.compile("\\w+ " + NUMBER + ", joint " + NUMBER + ", E " + NUMBER));
        for (double[] row : rows) {
            double reach = row[1] * Math.pow(2, -row[2] / 12);
            double string = NeckSetKernel.stringAtSaddle(row[1], 0, 0.4, 2);
            double turn = NeckSetKernel.angle(8 + row[3], reach, string) - NeckSetKernel.angle(8, reach, string);
            // The reference's is d/S, four digits; a saddle 8 mm over the fret plane turns a little less.
            assertThat(Math.toDegrees(turn)).isCloseTo(row[0], withinPercentage(0.1));
        }
        assertThat(rows).hasSize(2);
    }

    @Test
    void tension_isThatOfScaleMassAndPitch() {
        List<double[]> rows = rows(
                "fan",
                "tension, own scale",
                Pattern.compile("scale " + NUMBER + ", " + NUMBER + " Hz, " + NUMBER + " g/m"));
        for (double[] row : rows) {
            // Pitches are printed to four decimals.
            assertThat(NeckModel.newton(row[3] / 1000, row[1], row[2])).isCloseTo(row[0], withinPercentage(2e-4));
        }
        assertThat(rows).hasSize(6);
        List<double[]> longer = rows(
                "string",
                "tension over",
                Pattern.compile(NUMBER + " steel, " + NUMBER + ", G3, speaking length \\d+ \\+ " + NUMBER));
        for (double[] row : longer) {
            assertThat(NeckModel.newton(0.001, row[2] + row[3], 196) / NeckModel.newton(0.001, row[2], 196))
                    .isCloseTo(row[0], within(1e-8));
        }
        assertThat(longer).hasSize(1);
    }

    @Test
    void massOverSolidSteel_isThatOfTheReference() {
        List<double[]> rows =
                rows("wound", "mass over solid", Pattern.compile("told: " + NUMBER + " mm, " + NUMBER + " g/m"));
        int possible = 0;
        for (double[] row : rows) {
            // 1.18 is refused, as StringTensionsTest has it; our steel has 7850 kg/m3 as the reference's.
            if (row[0] < 1.14) {
                StringSet one = StringSet.of(pitch("E1")).diameters(mm(row[1])).linearDensities(gramPerMetre(row[2]));
                assertThat(StringTensions.of(Necks.mandolin().strings(one)).overSolidSteel(0))
                        .isCloseTo(row[0], withinPercentage(1e-3));
                possible++;
            }
        }
        assertThat(possible).isEqualTo(4);
    }

    @Test
    void spread_isThatOfTheVariation() {
        List<double[]> rows = rows("combine", "sigma of ln E", Pattern.compile("variation " + NUMBER + " %"));

        assertThat(rows).hasSize(1);
        assertThat(ModulusSpread.of(rows.get(0)[1] / 100, 0.1).back()).isCloseTo(rows.get(0)[0], within(1e-10));
    }

    @Test
    void knowledge_afterOneReadingIsThatOfTheReference() {
        List<double[]> left =
                rows("combine", "spread left", Pattern.compile("prior " + NUMBER + ", readings \\[" + NUMBER + "\\]"));
        for (double[] row : left) {
            double[] effect = new double[Cause.COUNT];
            effect[0] = row[1];
            assertThat(CauseState.prior()
                            .after(new CauseState.Row(effect, 0.1, row[2]))
                            .deviation(effect))
                    .isCloseTo(row[0], within(1e-9));
        }
        assertThat(left).hasSize(3);
        List<double[]> middle = rows(
                "combine",
                "median of s",
                Pattern.compile(
                        "prior ln s ~ N\\(-0.18\\^2/2, " + NUMBER + "\\), reading s = " + NUMBER + " with " + NUMBER));
        for (double[] row : middle) {
            double[] effect = new double[Cause.COUNT];
            effect[0] = row[1];
            double half = row[1] * row[1] / 2;
            CauseState state = CauseState.prior().after(new CauseState.Row(effect, Math.log(row[2]) + half, row[3]));
            assertThat(Math.exp(state.mean(effect) - half)).isCloseTo(row[0], within(1e-8));
        }
        assertThat(middle).hasSize(2);
    }
}
