package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.kernel.Vec;
import org.neckgeom.neck.Head;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.LengthStyle;

/** A head sawn from the blank, held to the four corners of its side view turned about the nut line. */
class OnePieceHeadTest {

    /** By hand: 185 sin 13 deg = 41.6159, 15 cos 13 deg = 14.6156; 185 cos 13 deg = 180.2585. */
    @Test
    void thickness_holdsTheTiltedHead() {
        OnePieceHead head = OnePieceHead.of(HeadSolid.of(mandolin()));

        assertThat(head.thicknessMm()).isCloseTo(56.2315, offset(1e-4));
        assertThat(head.lengthMm()).isCloseTo(180.2585, offset(1e-4));
        assertThat(head.faceDrop().libraryValue()).isCloseTo(41.6159, offset(1e-4));
        assertThat(head.fits(Blank.ofLength(mm(640)).section(mm(61), mm(56.3)))).isTrue();
        assertThat(head.fits(Blank.ofLength(mm(640)).section(mm(61), mm(56.2)))).isFalse();
    }

    /** The corners of the head lying flat before the nut line, turned by Rodrigues' formula and not by ours. */
    @Test
    void corners_agreeWithARotationAboutTheNutLine() {
        long seed = 20261125;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 2000; i++) {
            double pitch = random.nextDouble(0.1, 44);
            double length = random.nextDouble(50, 300);
            double thick = random.nextDouble(8, 25);
            OnePieceHead head = OnePieceHead.of(
                    HeadSolid.of(Head.angled(deg(pitch)).length(mm(length)).thickness(mm(thick))));
            // x runs toward the body and z up, so a turn about +y by a negative angle takes the tip down.
            List<Vec> corners = List.of(
                            new Vec(0, 0, 0),
                            new Vec(-length, 0, 0),
                            new Vec(0, 0, -thick),
                            new Vec(-length, 0, -thick))
                    .stream()
                    .map(corner -> corner.turned(Vec.Y, -Math.toRadians(pitch)))
                    .toList();
            double deepest = -corners.stream().mapToDouble(Vec::z).min().orElseThrow();
            double farthest = -corners.stream().mapToDouble(Vec::x).min().orElseThrow();

            String where = "seed " + seed + ", head " + i;
            assertThat(head.thicknessMm()).as(where).isCloseTo(deepest, offset(1e-9));
            assertThat(head.lengthMm()).as(where).isCloseTo(farthest, offset(1e-9));
            // The back's line runs through two of the turned corners; the shaft's back is level.
            double shaft = random.nextDouble(10, 30);
            Vec along = corners.get(3).minus(corners.get(2));
            double x = corners.get(2).x() + along.x() * (-shaft - corners.get(2).z()) / along.z();
            assertThat(head.backMeets(mm(shaft)).libraryValue())
                    .as(where)
                    .isCloseTo(x, offset(1e-8 * (1 + Math.abs(x))));
        }
    }

    @Test
    void flat_needsItsOwnThicknessAndLength() {
        OnePieceHead head =
                OnePieceHead.of(HeadSolid.of(Head.flat().length(mm(190)).thickness(mm(14))));

        assertThat(head.thicknessMm()).isEqualTo(14);
        assertThat(head.lengthMm()).isEqualTo(190);
        assertThat(head.faceDrop()).isEqualTo(mm(0));
        assertThat(head.toString())
                .isEqualTo("One-piece head, flat: blank 14 mm thick or more\n  tip  190 mm before the nut line");
        assertThatThrownBy(() -> head.backMeets(mm(20)))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("level");
    }

    @Test
    void toString_marksBothCornersOfTheTip() {
        assertThat(OnePieceHead.of(HeadSolid.of(mandolin()))).hasToString("""
                One-piece head, angled 13 deg: blank 56.231 mm thick or more
                  face at the tip  41.616 mm deep, 180.258 mm before the nut line
                  back at the tip  56.231 mm deep, 176.884 mm before the nut line
                  marked on the blank's side, depths from the glue face; the face line starts at the nut line""");
        assertThat(OnePieceHead.of(HeadSolid.of(mandolin())).text(LengthStyle.DECIMAL_INCHES))
                .startsWith("One-piece head, angled 13 deg: blank 2.2138 in thick or more");
    }

    private static Head mandolin() {
        return Head.angled(deg(13)).length(mm(185)).thickness(mm(15));
    }
}
