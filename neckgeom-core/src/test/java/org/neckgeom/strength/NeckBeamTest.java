package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The section at a station against layers summed by brute force, and the channel's arc against its circle. */
class NeckBeamTest {

    /** An invented octave mandolin: walnut under a rosewood board, a 6 mm channel. */
    static NeckBeam mandolin(double length) {
        return new NeckBeam(
                length,
                new NeckBeam.Board(Taper.through(0, 34, 385, 46), Taper.constant(6), Taper.constant(400), 12_300),
                new NeckBeam.Back(
                        Taper.through(0, 17, 385, 23), Taper.through(31, 14.5, 280, 16.5), Superellipse.of(2), 11_600),
                RodPath.straight(3, 303, 6, 9.2),
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
                boolean slot = x > beam.channel().start()
                        && x < beam.channel().end()
                        && -z < beam.channel().depthAt(x);
                e = beam.back().modulus() * (breadth - (slot ? beam.channel().width() : 0));
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
    void depthAt_isTheArcOfACircle() {
        RodPath arc = new RodPath(10, 370, 5, 7, 13);
        // Sagitta 6 over 360: R = (360^2/4 + 36)/12 = 2703; the arc's centre lies 13 - 2703 below the glue face.
        for (double x = 10; x <= 370; x += 30) {
            double u = x - 190;
            assertThat(arc.depthAt(x))
                    .as("at %s mm", x)
                    .isCloseTo(13 - 2703 + Math.sqrt(2703 * 2703 - u * u), withinPercentage(1e-10));
        }
        assertThat(arc.depthAt(10)).isCloseTo(7, withinPercentage(1e-12));
        assertThat(arc.depthAt(190)).isEqualTo(13);
    }

    @Test
    void depthAt_humpsWhenTheEndsAreDeeper() {
        RodPath arc = new RodPath(0, 360, 5, 13, 7);

        assertThat(arc.depthAt(0)).isCloseTo(13, withinPercentage(1e-12));
        assertThat(arc.depthAt(180)).isEqualTo(7);
        assertThat(arc.depthAt(90)).isBetween(8.4, 8.6);
    }

    @Test
    void plus_isTheLeverOfTheStringOverTheSection() {
        // The pull's lever about the neutral axis is the perpendicular from it to the string's line.
        StringPull pull = StringPull.NONE.plus(100, 8, 18, 600);
        double along = Math.hypot(600, 10);
        double x = 250;
        double axis = -3;

        double lever = ((8 - axis) * 600 + x * 10) / along;
        assertThat(pull.moment(x, axis)).isCloseTo(100 * lever, withinPercentage(1e-11));
    }
}
