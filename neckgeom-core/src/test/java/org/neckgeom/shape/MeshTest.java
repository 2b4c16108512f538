package org.neckgeom.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A tetrahedron with corners worked by hand, read back from both files by the rules of their formats (from memory). */
class MeshTest {

    /** Volume 2 x 3 x 4 / 6 = 4. */
    private static final Mesh CORNER =
            Mesh.of("heel block", new double[] {0, 0, 0, 2, 0, 0, 0, 3, 0, 0, 0, 4}, new int[] {
                0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3
            });

    @Test
    void volume_isThatOfTheTetrahedron() {
        assertThat(CORNER.volumeMm3()).isCloseTo(4, within(1e-12));
        int[] inside = CORNER.corners();
        for (int t = 0; t < inside.length; t += 3) {
            int keep = inside[t];
            inside[t] = inside[t + 1];
            inside[t + 1] = keep;
        }
        assertThat(Mesh.of("inside out", CORNER.xyzMm(), inside).volumeMm3()).isCloseTo(-4, within(1e-12));
    }

    @Test
    void stl_isReadBack() {
        ByteBuffer stl = ByteBuffer.wrap(CORNER.toStl()).order(ByteOrder.LITTLE_ENDIAN);
        byte[] header = new byte[80];
        stl.get(header);

        assertThat(stl.limit()).isEqualTo(84 + 50 * 4);
        assertThat(new String(header, StandardCharsets.US_ASCII)).doesNotStartWith("solid");
        assertThat(stl.getInt()).isEqualTo(4);
        double six = 0;
        for (int t = 0; t < 4; t++) {
            double[] f = new double[12];
            for (int i = 0; i < 12; i++) {
                f[i] = stl.getFloat();
            }
            assertThat(stl.getShort()).isZero();
            assertThat(Math.hypot(Math.hypot(f[0], f[1]), f[2])).isCloseTo(1, within(1e-6));
            // The normal points away from the corner's inside, (0.4, 0.5, 0.6).
            assertThat(f[0] * (f[3] - 0.4) + f[1] * (f[4] - 0.5) + f[2] * (f[5] - 0.6))
                    .isGreaterThan(0);
            six += f[3] * (f[7] * f[11] - f[8] * f[10])
                    + f[4] * (f[8] * f[9] - f[6] * f[11])
                    + f[5] * (f[6] * f[10] - f[7] * f[9]);
        }
        assertThat(six / 6).isCloseTo(4, within(1e-6));
    }

    @Test
    void obj_isReadBack() {
        List<String> lines = CORNER.toObj().lines().toList();

        assertThat(lines).contains("v 0 3 0", "g heel_block", "f 2 3 4");
        assertThat(lines.stream().filter(line -> line.startsWith("v "))).hasSize(4);
        assertThat(lines.stream().filter(line -> line.startsWith("f "))).hasSize(4);
    }

    @Test
    void gate_refusesWhatIsNoMesh() {
        assertThatThrownBy(() -> Mesh.of("m", new double[4], new int[3])).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Mesh.of("m", new double[3], new int[] {0, 0, 1}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(CORNER).isEqualTo(Mesh.of("heel block", CORNER.xyzMm(), CORNER.corners()));
        assertThat(CORNER).hasToString("mesh of heel block: 4 points, 4 triangles");
    }

    @Test
    void tolerance_isStatedInBothFiles() {
        Mesh near = CORNER.within(mm(0.05));

        assertThat(near.toleranceMm()).isEqualTo(0.05);
        assertThat(near).isNotEqualTo(CORNER);
        assertThat(new String(near.toStl(), 0, 80, StandardCharsets.US_ASCII))
                .startsWith("mm, chords within 0.05, heel block");
        assertThat(near.toObj()).startsWith("# mm, chords within 0.05\n");
        assertThat(CORNER.toObj()).startsWith("# mm\n");
    }

    /** Each group's triangles use its own points alone, counted from 1 on through the file. */
    @Test
    void obj_ofTwoPieces_hasAGroupEach() {
        List<String> lines = Mesh.obj(List.of(CORNER, CORNER)).lines().toList();

        assertThat(lines).filteredOn(line -> line.equals("g heel_block")).hasSize(2);
        assertThat(lines).filteredOn(line -> line.startsWith("v ")).hasSize(8);
        assertThat(lines).contains("f 1 3 2", "f 5 7 6").doesNotContain("f 0 2 1");
    }

    @Test
    void of_refusesWhatIsNoMesh() {
        assertThatThrownBy(() -> Mesh.of("no", new double[] {0, 0, Double.NaN}, new int[0]))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Mesh.of("no", new double[] {0, 0, 0}, new int[] {0, 0, 1}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("corner must be the index of one of 1 points, but was 1");
    }
}
