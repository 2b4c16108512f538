package org.neckgeom.head;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.kernel.Vec;

class SlantedScarfTest {

    private static final long SEED = 631;

    @Test
    void bladeOnEdge_isTheCutsLeanFromSquareToTheEdge() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 200; i++) {
            double pitch = 5 + 12 * random.nextDouble();
            double slant = -10 + 20 * random.nextDouble();
            SlantedScarf scarf = SlantedScarf.of(deg(pitch), deg(slant));
            // The cut holds the nut line and the head's centreline.
            Vec nutLine = Vec.Y.turned(Vec.Z, -Math.toRadians(slant));
            Vec axis = new Vec(-1, 0, 0).turned(Vec.Y, -Math.toRadians(pitch));
            Vec cut = axis.cross(nutLine).unit();
            cut = cut.z() < 0 ? cut.times(-1) : cut;

            String at = "seed " + SEED + " case " + i;
            assertThat(scarf.bladeOnEdge().libraryValue()).as(at).isCloseTo(Math.asin(cut.y()), offset(1e-12));
            assertThat(Math.signum(scarf.roll().libraryValue())).as(at).isEqualTo(Math.signum(slant));
        }
    }

    @Test
    void headPiece_hasTheOtherHandSoTheOffcutDoesNotFit() {
        // Normal of the slope each piece needs, in its own frame: x toward the tip reversed, z out of its face.
        double pitch = Math.toRadians(13);
        double slant = Math.toRadians(8);
        Vec nutLine = Vec.Y.turned(Vec.Z, -slant);
        Vec axis = new Vec(-1, 0, 0).turned(Vec.Y, -pitch);
        Vec face = axis.cross(nutLine).unit();
        face = face.z() < 0 ? face.times(-1) : face;
        Vec bodyward = axis.times(-1);
        Vec crosswise = face.cross(bodyward);
        // In the shaft: the head piece's slope lies in the glue face, whose outward normal is z.
        Vec needed = new Vec(Vec.Z.dot(bodyward), Vec.Z.dot(crosswise), Vec.Z.dot(face));
        // What the cut leaves on the offcut, turned over about its length.
        Vec offcut = face.times(-1).turned(Vec.X, Math.PI);

        assertThat(needed.y() * offcut.y()).isNegative();
        assertThat(needed.z()).isCloseTo(offcut.z(), offset(1e-12));
        // The mitre in the head piece's own face.
        SlantedScarf scarf = SlantedScarf.of(deg(13), deg(8));
        assertThat(scarf.headMitre().libraryValue()).isCloseTo(Math.atan2(-needed.y(), needed.x()), offset(1e-12));
    }

    @Test
    void of_aSquareNutIsThePlainScarf() {
        SlantedScarf scarf = SlantedScarf.of(deg(13), deg(0));

        assertThat(scarf.bladeFromFace().libraryValue()).isCloseTo(Math.toRadians(13), offset(1e-15));
        assertThat(scarf.roll()).isEqualTo(deg(0));
        assertThat(scarf.swingIfCutAlike()).isEqualTo(deg(0));
        assertThat(scarf.toString().length()).isLessThan(1000);
    }

    @Test
    void swingIfCutAlike_goesToTheBassForANutWhoseTrebleEndLiesNearerTheBody() {
        SlantedScarf scarf = SlantedScarf.of(deg(13), deg(8));
        Vec nutLine = Vec.Y.turned(Vec.Z, -Math.toRadians(8));
        Vec folded = new Vec(-1, 0, 0).turned(nutLine, -scarf.bladeFromFace().libraryValue());

        assertThat(folded.y()).isNegative();
        assertThat(scarf.swingIfCutAlike().libraryValue())
                .isCloseTo(Math.atan2(folded.y(), -folded.x()), offset(1e-12));
    }
}
