package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Point;

/** The section at a station against layers summed by brute force. */
class NeckBeamTest {

    /** An invented octave mandolin: walnut under a rosewood board, a 6 mm channel. */
    static NeckBeam mandolin(double length) {
        Superellipse half = Superellipse.of(2);
        return new NeckBeam(
                length,
                new NeckBeam.Board(Taper.through(0, 34, 385, 46), new Taper(6, 0), new Taper(400, 0), 12_300),
                new NeckBeam.Back(
                        Taper.through(0, 17, 385, 23), Taper.through(31, 14.5, 280, 16.5), half, half, 11_600),
                Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)))
                        .startingAt(mm(3))
                        .depthClearance(mm(0.2)),
                0,
                List.of());
    }

    /** Neutral axis and EI from 3,000 layers, each with its breadth taken from the outline: nothing but sums. */
    static double[] layers(NeckBeam beam, double x) {
        double ea = 0;
        double eq = 0;
        double ej = 0;
        double depth = beam.back().depth().at(x);
        double half = beam.back().halfWidth().at(x);
        double top = beam.board().thickness().at(x);
        double radius = beam.board().radius().at(x);
        double edge = beam.board().width().at(x) / 2;
        int count = 3000;
        for (int i = 0; i < count; i++) {
            double dz = (depth + top) / count;
            double z = -depth + (i + 0.5) * dz;
            double e;
            if (z < 0) {
                double breadth = 2 * half * Math.sqrt(1 - z * z / (depth * depth));
                boolean slot = x > beam.channel().startMm()
                        && x < beam.channel().endMm()
                        && -z < beam.channel().depthAtMm(x);
                e = beam.back().modulus() * (breadth - (slot ? beam.channel().widthMm() : 0));
            } else {
                double below = radius - (top - z); // height of this layer over the crown's centre
                e = beam.board().modulus() * 2 * Math.min(edge, Math.sqrt(radius * radius - below * below));
            }
            ea += e * dz;
            eq += e * dz * z;
            ej += e * dz * (z * z + dz * dz / 12);
        }
        return new double[] {eq / ea, ej - eq * eq / ea};
    }

    @Test
    void section_isTheSumOfItsLayers() {
        NeckBeam beam = mandolin(339);
        SectionMoments section = new SectionMoments();
        for (double x : new double[] {1, 60, 171, 300, 320}) {
            beam.section(x, section);

            double[] summed = layers(beam, x);
            assertThat(section.neutralAxis()).as("at %s mm", x).isCloseTo(summed[0], withinPercentage(0.01));
            assertThat(section.bendingStiffness()).as("at %s mm", x).isCloseTo(summed[1], withinPercentage(0.01));
        }
    }

    @Test
    void breaks_areWhereTheSectionJumps() {
        NeckBeam beam = mandolin(339).withBars(List.of(new BondedBar(9, 20, 380, 3, 0, 9, 130_000)));

        assertThat(beam.breaks(3, 290)).containsExactly(0, 3, 20, 290, 303, 339);
    }

    @Test
    void section_takesEachSidesShape() {
        NeckBeam beam = mandolin(339);
        NeckBeam.Back even = beam.back();
        double[] ei = new double[3];
        SectionMoments section = new SectionMoments();
        double[][] powers = {{2, 2}, {2, 3}, {3, 3}};
        for (int i = 0; i < 3; i++) {
            NeckBeam.Back back = new NeckBeam.Back(
                    even.halfWidth(),
                    even.depth(),
                    Superellipse.of(powers[i][0]),
                    Superellipse.of(powers[i][1]),
                    even.modulus());
            new NeckBeam(339, beam.board(), back, null, 0, List.of()).section(100, section);
            ei[i] = section.stretchStiffness();
        }

        assertThat(ei[1]).isCloseTo((ei[0] + ei[2]) / 2, withinPercentage(1e-10));
    }

    @Test
    void section_countsStripPocketAndBondedBar() {
        NeckBeam plain = mandolin(339);
        Channel bare = Channel.forBar(Bar.carbon(mm(300)).section(mm(6), mm(9))).startingAt(mm(3));
        double open = stretch(plain, bare, 0, 100);

        // Areas by hand: channel 6 mm x 9 mm, strip 6 mm x 1.5 mm, bar 6 mm x 9 mm, pocket 10 mm x 10 mm; E 11600 MPa.
        Channel covered = bare.fillet(mm(1.5));
        assertThat(stretch(plain, covered, 0, 100) - open).isCloseTo(0, within(1e-6));
        assertThat(stretch(plain, bare.depthClearance(mm(1)), 0, 100) - open).isCloseTo(-6 * 11_600, within(1e-6));
        assertThat(stretch(plain, bare, 130_000, 100) - open).isCloseTo(54 * 130_000.0, within(1e-6));
        Channel pocket = Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)))
                .startingAt(mm(3))
                .adjusterPocket(mm(20))
                .section(mm(10), mm(10));
        assertThat(stretch(plain, pocket, 0, 22.9) - stretch(plain, bare, 0, 22.9))
                .isCloseTo(-46 * 11_600, within(1e-6));
        assertThat(stretch(plain, pocket, 0, 23.1) - stretch(plain, bare, 0, 23.1))
                .isCloseTo(0, within(1e-6));
    }

    private static double stretch(NeckBeam plain, Channel channel, double filling, double x) {
        SectionMoments section = new SectionMoments();
        new NeckBeam(339, plain.board(), plain.back(), channel, filling, List.of()).section(x, section);
        return section.stretchStiffness();
    }

    @Test
    void plus_isTheLeverOfTheStringOverTheSection() {
        // The pull's lever about the neutral axis is the perpendicular from it to the string's line.
        StringPull pull = StringPull.NONE.plus(100, new Line(new Point(0, 0, 8), new Point(600, 0, 18)));
        double along = Math.hypot(600, 10);
        double x = 250;
        double axis = -3;

        double lever = ((8 - axis) * 600 + x * 10) / along;
        assertThat(pull.moment(x, axis)).isCloseTo(100 * lever, withinPercentage(1e-11));
    }
}
