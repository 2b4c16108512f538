package org.neckgeom.head;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.kernel.Vec;

class ScarfKernelTest {

    private static final long SEED = 1309;
    private static final int CASES = 200;

    @Test
    void slopeAndBackLine_areWhereThePlanesOfTheHeadMeetThoseOfTheShaft() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < CASES; i++) {
            double pitch = Math.toRadians(3 + 17 * random.nextDouble());
            double shaft = 12 + 16 * random.nextDouble();
            double head = 9 + 12 * random.nextDouble();
            // The head's face normal is the shaft's, tipped about y; both faces pass through the origin.
            Vec face = Vec.Z.turned(Vec.Y, -pitch);
            Vec frontInHead = Vec.meet(face, 0, Vec.Z, -shaft);
            Vec frontInShaft = Vec.meet(face, -head, Vec.Z, 0);
            Vec back = Vec.meet(face, -head, Vec.Z, -shaft);

            assertThat(ScarfKernel.slope(shaft, pitch))
                    .as("seed %d", SEED)
                    .isCloseTo(frontInHead.length(), offset(1e-9));
            assertThat(ScarfKernel.slope(head, pitch)).as("seed %d", SEED).isCloseTo(frontInShaft.x(), offset(1e-9));
            assertThat(ScarfKernel.breakLineShift(head, shaft, pitch))
                    .as("seed %d", SEED)
                    .isCloseTo(back.x(), offset(1e-9));
            assertThat(ScarfKernel.slope(head, pitch))
                    .as("glue face in the head, seed %d", SEED)
                    .isCloseTo(back.minus(frontInHead).length(), offset(1e-9));
            assertThat(ScarfKernel.slope(shaft, pitch))
                    .as("glue face in the shaft, seed %d", SEED)
                    .isCloseTo(back.minus(frontInShaft).length(), offset(1e-9));
            assertThat(ScarfKernel.run(shaft, pitch)).as("seed %d", SEED).isCloseTo(-frontInHead.x(), offset(1e-9));
        }
    }

    @Test
    void breakLineShift_isWhereThePlanedFacesMeet() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < CASES; i++) {
            double pitch = Math.toRadians(3 + 17 * random.nextDouble());
            double offHead = -3 + 6 * random.nextDouble();
            double offShaft = -2 + 4 * random.nextDouble();
            Vec meeting = Vec.meet(Vec.Z.turned(Vec.Y, -pitch), -offHead, Vec.Z, -offShaft);

            assertThat(ScarfKernel.breakLineShift(offHead, offShaft, pitch))
                    .as("seed %d case %d", SEED, i)
                    .isCloseTo(meeting.x(), offset(1e-10));
        }
    }

    @Test
    void breakLineShift_agreesWithTheTradesTablePerMillimetre() {
        // Common practice, rounded to 0.1 mm: break line per mm planed off the head's face and off the shaft's face.
        double[][] table = {{10, 5.8, 5.7}, {13, 4.4, 4.3}, {15, 3.9, 3.7}, {17, 3.4, 3.3}};
        for (double[] row : table) {
            double pitch = Math.toRadians(row[0]);

            assertThat(ScarfKernel.breakLineShift(1, 0, pitch)).isCloseTo(row[1], offset(0.051));
            assertThat(ScarfKernel.breakLineShift(0, 1, pitch)).isCloseTo(-row[2], offset(0.051));
        }
    }

    @Test
    void slope_agreesWithTheTradesTable() {
        // Common practice, whole millimetres: glue face for a thickness at 10, 12, 13, 14, 15, 16, 17 degrees.
        double[] degrees = {10, 12, 13, 14, 15, 16, 17};
        double[][] table = {
            {16.0, 92, 77, 71, 66, 62, 58, 55},
            {19.0, 109, 91, 84, 79, 73, 69, 65},
            {20.6, 119, 99, 92, 85, 80, 75, 70},
            {22.2, 128, 107, 99, 92, 86, 81, 76},
            {25.4, 146, 122, 113, 105, 98, 92, 87}
        };
        for (double[] row : table) {
            for (int i = 0; i < degrees.length; i++) {
                assertThat(ScarfKernel.slope(row[0], Math.toRadians(degrees[i])))
                        .as("%s mm at %s deg", row[0], degrees[i])
                        .isCloseTo(row[i + 1], offset(0.6));
            }
        }
    }

    @Test
    void roll_isTheSlopeAcrossOfARampTurnedInPlan() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < CASES; i++) {
            double pitch = Math.toRadians(3 + 17 * random.nextDouble());
            double g = Math.toRadians(-5 + 10 * random.nextDouble());
            // A ramp square across, turned in plan so that its treble end (y > 0) comes nearer the body for g > 0.
            Vec normal = Vec.Z.turned(Vec.Y, -pitch).turned(Vec.Z, -g);
            Vec across = normal.cross(Vec.X).unit();
            Vec along = normal.cross(Vec.Y).unit();

            assertThat(ScarfKernel.roll(pitch, g))
                    .as("seed %d case %d", SEED, i)
                    .isCloseTo(Math.atan(-slopeOf(across, across.y())), offset(1e-12));
            assertThat(ScarfKernel.pitchAlong(pitch, g))
                    .as("seed %d case %d", SEED, i)
                    .isCloseTo(Math.abs(Math.atan(slopeOf(along, along.x()))), offset(1e-12));
        }
    }

    @Test
    void roll_ofTheTurnedOverOffcutIsTheOtherHand() {
        // The offcut of the same cut: turned over about the long axis, then glued by its ramp to the shaft's flat back.
        double pitch = Math.toRadians(13);
        double g = Math.toRadians(0.5);
        Vec shaftRamp = Vec.Z.turned(Vec.Y, -pitch).turned(Vec.Z, -g);
        Vec offcutRamp = shaftRamp.times(-1).turned(Vec.X, Math.PI);
        Vec axis = offcutRamp.cross(Vec.Z);
        double angle = offcutRamp.angleTo(Vec.Z);
        Vec headFace = Vec.Z.turned(axis, angle);

        double onShaft = Math.atan(-shaftRamp.y() / shaftRamp.z());
        double onHead = Math.atan(-headFace.y() / headFace.z());

        assertThat(onShaft).isCloseTo(-ScarfKernel.roll(pitch, g), offset(1e-12));
        assertThat(onHead).isCloseTo(ScarfKernel.roll(pitch, g), offset(1e-12));
    }

    @Test
    void slantedNut_planesMeetOnTheSlantedLineWithTheHeadStraightInPlan() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < CASES; i++) {
            double pitch = Math.toRadians(3 + 17 * random.nextDouble());
            double slant = Math.toRadians(-12 + 24 * random.nextDouble());
            Vec nutLine = Vec.Y.turned(Vec.Z, -slant);
            Vec headAxis = new Vec(-Math.cos(pitch), 0, -Math.sin(pitch));
            Vec normal = nutLine.cross(headAxis).unit();
            normal = normal.z() < 0 ? normal.times(-1) : normal;
            Vec crosswise = normal.cross(headAxis.times(-1)).unit();

            assertThat(ScarfKernel.dihedral(pitch, slant))
                    .as("seed %d case %d", SEED, i)
                    .isCloseTo(normal.angleTo(Vec.Z), offset(1e-12));
            assertThat(Math.abs(ScarfKernel.headMitre(pitch, slant)))
                    .as("seed %d case %d", SEED, i)
                    .isCloseTo(Math.abs(Math.PI / 2 - headAxis.angleTo(nutLine)), offset(1e-12));
            assertThat(Math.abs(ScarfKernel.slantRoll(pitch, slant)))
                    .as("seed %d case %d", SEED, i)
                    .isCloseTo(Math.abs(Math.asin(crosswise.z())), offset(1e-12));

            // Folding the straight head down about the nut line instead swings it in plan.
            double d = ScarfKernel.dihedral(pitch, slant);
            Vec folded = new Vec(-1, 0, 0).turned(nutLine, -d);
            assertThat(folded.z()).as("folds down").isNegative();
            assertThat(ScarfKernel.foldYaw(d, slant))
                    .as("seed %d case %d", SEED, i)
                    .isCloseTo(Math.atan(folded.y() / folded.x()), offset(1e-12));
        }
    }

    @Test
    void acrossHead_isOneForASquareNutBitForBit() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < CASES; i++) {
            double pitch = Math.toRadians(random.nextDouble(1, 45));

            assertThat(ScarfKernel.acrossHead(pitch, 0.0)).isEqualTo(1.0);
            assertThat(ScarfKernel.acrossHead(pitch, Math.toRadians(random.nextDouble(1, 30))))
                    .isGreaterThan(1);
        }
    }

    @Test
    void slope_growsWithoutBoundAsThePitchGoesToNothing() {
        assertThat(ScarfKernel.slope(20, 1e-9)).isCloseTo(20e9, offset(1.0));
        assertThat(ScarfKernel.run(20, Math.PI / 2)).isCloseTo(0, offset(1e-14));
    }

    private static double slopeOf(Vec direction, double horizontal) {
        return direction.z() / horizontal;
    }
}
