package org.neckgeom.head;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import org.junit.jupiter.api.Test;
import org.neckgeom.board.StringPlaces;
import org.neckgeom.board.StringSpacing;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.TunerPost;

class HeadLayoutTest {

    private static final Head HEAD = Head.angled(deg(13))
            .length(mm(185))
            .width(mm(76))
            .thickness(mm(14))
            .veneer(mm(2), mm(0))
            .backVeneer(mm(0.6));
    private static final StringPlaces NUT =
            StringSpacing.diameters(mm(1), mm(1), mm(1), mm(1)).across(mm(28)).equalCentres();

    @Test
    void ears_makeUpHalfTheDifferenceEachSide() {
        assertThat(HeadLayout.of(HEAD).wings(mm(61))).isEqualTo(mm(7.5));
        assertThat(HeadLayout.of(HEAD).wings(mm(80)).libraryValue()).isZero();
        assertThat(HeadLayout.of(HEAD.tapered(mm(60), mm(66))).wings(mm(61)).libraryValue())
                .isCloseTo(2.5, offset(1e-12));
    }

    @Test
    void woodFor_leavesTheVeneersOut() {
        HeadLayout head = HeadLayout.of(HEAD);

        assertThat(head.thickness().libraryValue()).isCloseTo(16.6, offset(1e-12));
        Limits<javax.measure.quantity.Length> wood = head.woodFor(Limits.between(mm(13), mm(17)));
        assertThat(wood.libraryLower()).isCloseTo(10.4, offset(1e-12));
        assertThat(wood.libraryUpper()).isCloseTo(14.4, offset(1e-12));
        assertThatThrownBy(() -> head.woodFor(Limits.between(mm(1), mm(2)))).hasMessageContaining("veneers");
    }

    @Test
    void outline_isTheHeadsOwnOnceTaperOrPostsAreTold() {
        HeadLayout plain = HeadLayout.of(HEAD);
        double wide = HEAD.widthMm();

        assertThat(plain.hasOutline()).isFalse();
        assertThat(plain.hasPosts()).isFalse();
        assertThat(plain.posts()).isEmpty();
        assertThat(HeadLayout.of(HEAD.tapered(mm(wide), mm(wide))).hasOutline()).isFalse();
        assertThat(HeadLayout.of(HEAD.tapered(mm(wide - 1), mm(wide))).hasOutline())
                .isTrue();
        assertThat(HeadLayout.of(HEAD.tapered(mm(wide), mm(wide - 1))).hasOutline())
                .isTrue();
        TunerPost post = TunerPost.at(mm(60));
        assertThat(HeadLayout.of(HEAD.posts(post)).hasOutline()).isTrue();
        assertThat(HeadLayout.of(HEAD.posts(post)).hasPosts()).isTrue();
        assertThat(HeadLayout.of(HEAD.posts(post)).posts()).containsExactly(post);
        assertThatThrownBy(() -> HEAD.posts(TunerPost.at(mm(HEAD.lengthMm()))))
                .hasMessageStartingWith("posts.along must be less than the head's length");
        assertThatThrownBy(() -> HEAD.posts(post).length(mm(60)))
                .hasMessageStartingWith("posts.along must be less than the head's length");
    }
}
