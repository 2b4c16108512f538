package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;

class FacetsTest {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    @Test
    void first_onAHalfCircleAtHalfARightAngleIsTheOctagon() {
        Facets facets = BackShape.of(neck(2, 40, 20)).at(mm(0)).facets(true);

        // Common geometry: a regular octagon about a circle of radius r has its corners at r tan 22.5 deg.
        double mark = 20 * Math.tan(Math.PI / 8);
        assertThat(facets.first().innerFromMiddle().libraryValue()).isCloseTo(mark, offset(1e-12));
        assertThat(facets.first().innerBelowFace().libraryValue()).isCloseTo(20, offset(1e-12));
        assertThat(facets.first().outerFromMiddle().libraryValue()).isCloseTo(20, offset(1e-12));
        assertThat(facets.first().outerBelowFace().libraryValue()).isCloseTo(mark, offset(1e-12));
        assertThat(facets.first().slope().libraryValue()).isCloseTo(Math.PI / 4, offset(1e-15));
        // The second set makes sixteen sides: r tan(11.25 deg) from where each touches.
        FacetLine inner = facets.second().get(0);
        assertThat(inner.innerFromMiddle().libraryValue()).isCloseTo(20 * Math.tan(Math.PI / 16), offset(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.3, 1.5, 2, 2.5, 3.5, 6})
    void flats_touchTheCurveAndNeverCutIt(double power) {
        Facets facets = BackShape.of(neck(power, 46, 17)).at(mm(0)).facets(true).firstAt(deg(40));
        Coordinate[] points = new Coordinate[8001];
        for (int i = 0; i < points.length; i++) {
            double t = Math.PI / 2 * i / (points.length - 1);
            points[i] = new Coordinate(23 * Math.pow(Math.cos(t), 2 / power), 17 * Math.pow(Math.sin(t), 2 / power));
        }
        LineString curve = FACTORY.createLineString(points);

        for (FacetLine flat :
                List.of(facets.first(), facets.second().get(0), facets.second().get(1))) {
            LineString line = FACTORY.createLineString(new Coordinate[] {
                new Coordinate(
                        flat.innerFromMiddle().libraryValue(),
                        flat.innerBelowFace().libraryValue()),
                new Coordinate(
                        flat.outerFromMiddle().libraryValue(),
                        flat.outerBelowFace().libraryValue())
            });
            assertThat(line.distance(curve)).as("power %s, %s", power, flat).isLessThan(2e-4);
            double phi = Math.PI / 2 - flat.slope().libraryValue();
            double h = flat.innerFromMiddle().libraryValue() * Math.cos(phi)
                    + flat.innerBelowFace().libraryValue() * Math.sin(phi);
            for (Coordinate point : points) {
                assertThat(point.x * Math.cos(phi) + point.y * Math.sin(phi)).isLessThan(h + 1e-9);
            }
        }
    }

    @Test
    void second_startsWhereTheFirstFlatsLinesAre() {
        Facets facets = BackShape.of(neck(2.5, 46, 17)).at(mm(0)).facets(true);

        assertThat(facets.second().get(0).innerBelowFace().libraryValue()).isCloseTo(17, offset(1e-12));
        assertThat(facets.second().get(1).outerFromMiddle().libraryValue()).isCloseTo(23, offset(1e-12));
        assertThat(facets.first().slope().libraryValue()).isCloseTo(Math.atan2(17, 23), offset(1e-12));
        assertThat(facets.toString().length()).isLessThan(1000);
    }

    private static Neck neck(double power, double width, double depth) {
        return Neck.named("test")
                .scale(mm(648))
                .fingerboard(Fingerboard.tapered(mm(width), mm(width)))
                .back(BackProfile.between(mm(depth), mm(depth)).power(power));
    }
}
