package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import org.junit.jupiter.api.Test;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.stock.Blank;

/** Least blank and cutting list. */
class StockNeedsTest {

    @Test
    void needs_addTheirSparesOnBothSides() {
        ScarfBoard board = ScarfJoint.inTheHead(
                        Scarf.of(deg(13), mm(20), mm(15)).kerf(mm(1.8)))
                .board(mm(420), mm(185));

        BlankNeeds needs = BlankNeeds.of(Blank.ofLength(board.length())
                .section(mm(61), board.thickness())
                .endAllowance(mm(25))
                .edgeAllowance(mm(2))
                .planing(mm(0.5)));

        assertThat(needs.length().libraryValue()).isCloseTo(board.length().libraryValue() + 50, offset(1e-12));
        assertThat(needs.width()).isEqualTo(mm(65));
        assertThat(needs.thickness()).isEqualTo(mm(21));
        assertThat(needs.fits(Blank.ofLength(mm(700)).section(mm(65), mm(21)))).isTrue();
        assertThat(needs.fits(Blank.ofLength(mm(700)).section(mm(64.9), mm(21))))
                .isFalse();
        assertThat(needs.fits(Blank.ofLength(mm(600)).section(mm(65), mm(21)))).isFalse();
        assertThat(needs.toString()).startsWith("Least blank: ");
    }

    @Test
    void cuttingList_countsAKerfBetweenPiecesAndOneBeforeTheRest() {
        CuttingList list = CuttingList.from(Blank.ofLength(mm(900)).section(mm(70), mm(20)))
                .kerf(mm(2))
                .trimmed(mm(10))
                .piece("shaft and head", mm(620))
                .pieces(3, "heel block", mm(75));

        // By hand: 10 + 620 + 3 x 75 + 3 kerfs of 2 = 861; one more kerf frees the 37 mm left.
        assertThat(list.fits()).isTrue();
        assertThat(list.leftOver().libraryValue()).isCloseTo(37, offset(1e-12));
        assertThat(list.starts()).containsExactly(mm(10), mm(632), mm(709), mm(786));
        assertThat(list.toString()).startsWith("Cutting list: 4 pieces from 900 mm, fits");
    }

    @Test
    void cuttingList_aLastPieceToTheEndNeedsNoCut() {
        CuttingList exact = CuttingList.from(Blank.ofLength(mm(302)).section(mm(70), mm(20)))
                .kerf(mm(2))
                .pieces(2, "block", mm(150));

        assertThat(exact.fits()).isTrue();
        assertThat(exact.leftOver().libraryValue()).isZero();
        assertThat(exact.piece("one more", mm(10)).fits()).isFalse();
        assertThat(exact.piece("one more", mm(10)).missing().libraryValue()).isCloseTo(12, offset(1e-12));
        assertThat(exact.piece("one more", mm(10)).toString()).contains("12 mm too short");
    }

    @Test
    void pieces_rejectsNone() {
        assertThatThrownBy(() -> CuttingList.from(Blank.ofLength(mm(302)).section(mm(70), mm(20)))
                        .pieces(0, "block", mm(150)))
                .hasMessage("count of pieces must be 1 to 1000, but was 0");
    }
}
