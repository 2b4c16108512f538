package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.neckgeom.fault.Refusal;
import org.neckgeom.kernel.Table;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** The stations of a neck against solid-stations.csv, computed by solid.py, and against the parts that they are read from. */
class NeckStationsTest {

    @ParameterizedTest
    @EnumSource(ReferenceNecks.class)
    void rows_areThoseOfTheReference(ReferenceNecks one) {
        NeckSolid solid = NeckSolid.of(one.neck());
        List<String[]> rows = Table.rows("solid/solid-stations.csv").stream()
                .filter(row -> ReferenceNecks.named(row[0]) == one)
                .toList();
        // The file's last station is the body joint to its nine digits.
        List<Amount<Length>> places = rows.stream()
                .map(row -> mm(Math.min(Double.parseDouble(row[1]), solid.bodyJointMm())))
                .toList();
        List<NeckStation> ours = solid.stations(places).rows();

        assertThat(ours).hasSameSizeAs(rows);
        for (int i = 0; i < rows.size(); i++) {
            String[] row = rows.get(i);
            double slope = solid.depth().slopeAt(ours.get(i).fromNutMm());
            assertThat(ours.get(i).width().libraryValue()).isCloseTo(Double.parseDouble(row[2]), within(1e-6));
            assertThat(ours.get(i).depth().libraryValue())
                    .isCloseTo(Double.parseDouble(row[3]), within(1e-6 * (1 + slope)));
            assertThat(ours.get(i).areaMm2()).isCloseTo(Double.parseDouble(row[6]), within(2e-6 * 4300));
        }
    }

    @ParameterizedTest
    @EnumSource(ReferenceNecks.class)
    void rows_areWhatBackAndChannelHaveThere(ReferenceNecks one) {
        Neck neck = one.neck();
        NeckSolid solid = NeckSolid.of(neck);
        FloorThickness wood = FloorThickness.under(neck);
        Channel channel = neck.channel().orElseThrow();
        List<NeckStation> rows = new ArrayList<>(solid.stations(mm(7.5)).rows());
        rows.addAll(solid.stations().rows());
        rows.addAll(solid.stationsAtFrets().rows());

        for (NeckStation row : rows) {
            double x = row.fromNutMm();
            BackCurve curve = BackShape.of(neck).at(mm(x));
            assertThat(row.width()).isEqualTo(curve.width());
            assertThat(row.depth()).isEqualTo(curve.depth());
            assertThat(row.areaMm2()).isEqualTo(curve.areaMm2());
            boolean under = x >= channel.startMm() && x <= channel.endMm();
            assertThat(row.channelDepth().map(Amount::libraryValue).orElse(0.0)).isEqualTo(channel.depthAtMm(x));
            assertThat(row.wood().isPresent()).isEqualTo(under);
            row.wood().ifPresent(there -> assertThat(there).isEqualTo(wood.at(mm(x))));
        }
    }

    @Test
    void stations_areTheNutTheFretsTheStepsAndTheBodyJoint() {
        NeckSolid solid = NeckSolid.of(ReferenceNecks.STRAIGHT.neck());

        assertThat(solid.stationsAtFrets().rows()).hasSize(15);
        assertThat(solid.stationsAtFrets().rows().get(5).name()).contains("fret 5");
        assertThat(solid.stationsAtFrets().rows().get(5).fromNutMm())
                .isEqualTo(solid.neck().scale().fretMm(5));
        List<NeckStation> steps = solid.stations(mm(100)).rows();
        assertThat(steps)
                .extracting(NeckStation::fromNutMm)
                .containsExactly(0.0, 100.0, 200.0, 300.0, solid.bodyJointMm());
        assertThat(solid.stations().rows())
                .extracting(row -> row.name().orElseThrow())
                .contains("nut", "fret 1", "fret 13", "channel from", "channel to", "thinnest", "body, fret 14");
        assertThat(solid.stations(List.of(mm(90), mm(-10), mm(20))).rows())
                .extracting(NeckStation::fromNutMm)
                .containsExactly(-10.0, 20.0, 90.0);
    }

    @Test
    void csv_hasTheFiguresOfTheRows() {
        NeckStations stations = NeckSolid.of(ReferenceNecks.FANNED.neck()).stations();

        List<String> lines = stations.csv(LengthStyle.MILLIMETRES).lines().toList();

        assertThat(lines.get(0))
                .isEqualTo(
                        "name,fromNut (mm),width (mm),woodDepth (mm),area,bassExponent,trebleExponent,crownRadius (mm),"
                                + "boardThickness (mm),channelDepth (mm),woodLeft (mm)");
        for (int i = 0; i < stations.rows().size(); i++) {
            NeckStation row = stations.rows().get(i);
            String[] cells = lines.get(i + 1).replace("\"body, ", "body ").split(",", -1);
            assertThat(Double.parseDouble(cells[1])).isCloseTo(row.fromNutMm(), within(1e-8));
            assertThat(Double.parseDouble(cells[2])).isCloseTo(row.width().libraryValue(), within(1e-8));
            assertThat(Double.parseDouble(cells[3])).isCloseTo(row.depth().libraryValue(), within(1e-8));
            assertThat(Double.parseDouble(cells[4])).isCloseTo(row.areaMm2(), within(1e-6));
            assertThat(cells[5] + " " + cells[6]).isEqualTo("2.6 1.9");
            // solid.py: radius 350 at the nut, 500 at the last fret, straight between them.
            double last = ReferenceNecks.FANNED.neck().scale().fretMm(ReferenceNecks.FANNED.frets);
            assertThat(Double.parseDouble(cells[7])).isCloseTo(350 + 150 * row.fromNutMm() / last, within(1e-8));
            assertThat(Double.parseDouble(cells[8])).isCloseTo(6.4, within(1e-9));
            assertThat(cells[10].isEmpty()).isEqualTo(row.wood().isEmpty());
            row.wood()
                    .ifPresent(
                            wood -> assertThat(Double.parseDouble(cells[10])).isCloseTo(wood.woodMm(), within(1e-8)));
        }
        assertThat(stations.table()).contains("wide");
    }

    @Test
    void stations_ofTheNeckAsMade_haveItsDepthAndWood() {
        Neck neck = ReferenceNecks.STRAIGHT.neck();
        NeckSolid drawn = NeckSolid.of(neck);
        BackShape carved = drawn.back().carved(mm(100), mm(14));
        NeckSolid made = drawn.asMade(
                FloorThickness.under(neck.channel().orElseThrow(), carved).offCentre(mm(0.4)));

        NeckStation there = made.stations(List.of(mm(100))).rows().get(0);

        assertThat(there.depth().libraryValue()).isCloseTo(14, within(1e-12));
        assertThat(there.wood().orElseThrow().woodMm())
                .isLessThan(drawn.stations(List.of(mm(100)))
                                .rows()
                                .get(0)
                                .wood()
                                .orElseThrow()
                                .woodMm()
                        - 1);
        assertThat(made).isNotEqualTo(drawn);
        assertThat(drawn.asMade(drawn.floorThickness().orElseThrow())).isEqualTo(drawn);
    }

    @Test
    void stations_refuseWhatIsNoStation() {
        NeckSolid solid = NeckSolid.of(ReferenceNecks.STRAIGHT.neck());

        assertThatThrownBy(() -> solid.stations(List.of(mm(400))))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("station must be no more than the body joint at 354.877 mm");
        assertThatThrownBy(() -> solid.stations(List.of())).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> solid.stations(mm(1e-3)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("step of the stations");
    }
}
