package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.plan.Job;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;
import org.neckgeom.solid.NeckStation;
import org.neckgeom.template.Template;
import org.neckgeom.template.TemplatePart;
import org.neckgeom.units.LengthStyle;

/** The templates read back from their DXF and measured against the table of stations, for every shipped neck in every style. */
class TemplatesAgainstTablesTest {

    /** Chords along the neck leave its curve by 0.02 mm at most; nine decimals are written. */
    private static final double CHORD = 0.02 + 1e-6;

    static Stream<Arguments> necks() {
        return ShippedNecks.names().stream()
                .flatMap(name -> Stream.of(LengthStyle.values()).map(style -> Arguments.of(name, style)));
    }

    @ParameterizedTest
    @MethodSource("necks")
    void sideView_isAsDeepAsTheTableAtEveryStation(String name, LengthStyle style) {
        Job job = NeckFile.read(name).printIn(style);
        String dxf = Template.of(job).only(TemplatePart.SIDE).toDxf();
        // The glue face is drawn first, from the nut line on.
        Spot nut = polylines(dxf, "OUTLINE").get(0).spots().get(0);
        Polyline back = polylines(dxf, "BACK").get(0);

        List<NeckStation> rows = job.plan().solid().stations().rows().stream()
                .filter(row ->
                        row.fromNutMm() >= 0 && row.fromNutMm() <= job.neck().bodyJointMm())
                .toList();

        assertThat(rows).hasSizeGreaterThan(8);
        for (NeckStation row : rows) {
            double drawn = nut.vMm() - heightAt(back, nut.uMm() + row.fromNutMm());
            assertThat(drawn)
                    .as("%s in %s at %s", name, style, row.fromNutMm())
                    .isCloseTo(row.depth().libraryValue(), within(CHORD));
        }
    }

    @ParameterizedTest
    @MethodSource("necks")
    void sections_areAsWideAndDeepAsTheTable(String name, LengthStyle style) {
        Job job = NeckFile.read(name).printIn(style);
        List<Polyline> backs =
                polylines(Template.of(job).only(TemplatePart.SECTIONS).toDxf(), "BACK");

        assertThat(backs).hasSize(4);
        for (Polyline back : backs) {
            double[] box = back.extentsMm();
            double width = box[2] - box[0];
            double depth = box[3] - box[1];
            // The station from the width, which runs straight along the neck.
            double half = job.neck().halfWidthAtMm(0);
            double growth = (job.neck().halfWidthAtMm(100) - half) / 100;
            double x = (width / 2 - half) / growth;
            assertThat(depth)
                    .as("%s in %s at %s", name, style, x)
                    .isCloseTo(job.plan().floorThickness().back().depthAtMm(x), within(1e-4));
        }
    }

    /** Height of an open run at u, straight between its spots. */
    private static double heightAt(Polyline line, double u) {
        List<Spot> spots = line.spots();
        for (int i = 0; i + 1 < spots.size(); i++) {
            Spot a = spots.get(i);
            Spot b = spots.get(i + 1);
            if (a.uMm() <= u + 1e-6 && b.uMm() >= u - 1e-6 && b.uMm() > a.uMm()) {
                return a.vMm() + (b.vMm() - a.vMm()) * (u - a.uMm()) / (b.uMm() - a.uMm());
            }
        }
        throw new AssertionError("nothing drawn at " + u);
    }

    /** The polylines of a layer: POLYLINE, its VERTEX entities with group codes 10 and 20, SEQEND (release 12, from memory). */
    private static List<Polyline> polylines(String dxf, String layer) {
        String[] lines = dxf.split("\r\n");
        List<Polyline> all = new ArrayList<>();
        List<Spot> spots = new ArrayList<>();
        boolean wanted = false;
        String entity = "";
        double u = 0;
        for (int i = 0; i + 1 < lines.length; i += 2) {
            String code = lines[i].strip();
            String value = lines[i + 1];
            if (code.equals("0")) {
                if (value.equals("SEQEND") && wanted) {
                    all.add(Polyline.open(spots));
                    spots = new ArrayList<>();
                }
                entity = value;
            } else if (code.equals("8") && entity.equals("POLYLINE")) {
                wanted = value.equals(layer);
            } else if (entity.equals("VERTEX") && wanted && code.equals("10")) {
                u = Double.parseDouble(value);
            } else if (entity.equals("VERTEX") && wanted && code.equals("20")) {
                spots.add(new Spot(u, Double.parseDouble(value)));
            }
        }
        return all;
    }
}
