package org.neckgeom.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.neckgeom.shop.Caution;

/**
 * Cautions of the order of work: the lines of the guidance gathered in the project's practice document, section 4. General
 * guidance of HSE, CCOHS, OSHA, IARC, EU-OSHA, NHS and fire services as named there; the rest common practice.
 */
class CautionsOfOperationsTest {

    /** What a source may be: guidance by its name, common practice, geometry, or a formula with a figure from memory. */
    private static final Pattern SOURCE = Pattern.compile(
            "common practice|geometry of the cut|HSE |CCOHS|OSHA|IARC |EU-OSHA |NHS |UK fire services|thread mechanics");

    /** Claims that no source ranks (practice document, 4.3). */
    private static final Pattern UNSOURCED = Pattern.compile(
            "usual accident|accident case|most reported|most common|most accidents|full string tension|percent of|75 to 100");

    private static List<Operation> operations() {
        List<Operation> all = new ArrayList<>(OrderOfWork.forNeck().operations());
        all.addAll(OrderOfWork.forNeck().headSawnOut().operations());
        return all;
    }

    @Test
    void everyOperation_hasItsCautions_eachWithASource() {
        assertThat(operations()).hasSizeGreaterThan(50).allSatisfy(operation -> {
            assertThat(operation.cautions()).as(operation.name()).isNotEmpty().doesNotHaveDuplicates();
            assertThat(operation.cautions())
                    .extracting(Caution::source)
                    .allSatisfy(source -> assertThat(source).containsPattern(SOURCE));
        });
    }

    @Test
    void noCaution_hasAClaimThatNoSourceRanks() {
        assertThat(operations().stream().flatMap(operation -> operation.cautions().stream()))
                .allSatisfy(
                        caution -> assertThat(caution.text() + caution.why()).doesNotContainPattern(UNSOURCED));
    }

    /** Practice document 4.1 and 4.2, operation by operation. */
    @Test
    void operations_haveTheCautionsOfTheirTools() {
        assertThat(codes(Operation.CUT_ROD_CHANNEL))
                .contains(
                        "CLIMB_FEED",
                        "FULL_SLOT",
                        "STOPPED_CUT",
                        "END_OF_CUT",
                        "HANDS",
                        "ISOLATE",
                        "EYES_EARS",
                        "DUST");
        assertThat(codes(Operation.CUT_SCARF)).contains("BAND_SAW", "TABLE_SAW", "SLOPES", "PLANER");
        assertThat(codes(Operation.GLUE_FINGERBOARD)).contains("EPOXY", "HOT_GLUE");
        assertThat(codes(Operation.FRET_THE_FINGERBOARD)).contains("FRETS", "CYANOACRYLATE");
        assertThat(codes(Operation.SET_UP)).containsExactly("ROD_AT_PITCH", "ROD_TORQUE", "STRINGS");
    }

    /** Feed, climb cut and stops as the practice document has them: 4.1, lines 1 to 5 and 7. */
    @Test
    void cautionsOfTheSlot_haveTheRightDirections() {
        assertThat(Caution.known("CLIMB_FEED").text()).contains("anticlockwise", "right to left");
        assertThat(Caution.known("SECOND_PASS").text())
                .contains("only on the wall away from the fence", "turned end for end", "away by twice the offset");
        assertThat(Caution.known("STOPPED_CUT").text())
                .contains("a stop behind and a stop in front", "cuts on its end");
        assertThat(Caution.known("HANDS").text()).contains("100 mm", "300 mm");
        assertThat(Caution.known("ROD_AT_PITCH").text())
                .containsSubsequence("Loosen the rod at pitch", "strings slackened", "an eighth of a turn");
    }

    /** Two places would drift apart: a sentence is the caution's own wherever it is used. */
    @Test
    void cautions_haveEachACodeAndASentenceOfItsOwn() {
        List<Caution> all = operations().stream()
                .flatMap(operation -> operation.cautions().stream())
                .distinct()
                .toList();

        assertThat(all).hasSizeGreaterThan(20).extracting(Caution::code).doesNotHaveDuplicates();
        assertThat(all).extracting(Caution::text).doesNotHaveDuplicates();
        assertThat(all)
                .allSatisfy(caution -> assertThat(Caution.known(caution.code())).isSameAs(caution));
    }

    @Test
    void given_takesACodeOrASentenceOfTheMakers() {
        assertThat(Caution.given("BAND_SAW")).isSameAs(Caution.known("BAND_SAW"));
        assertThat(Caution.given("mind the collet").written()).isEqualTo("mind the collet");
        assertThat(Caution.known("DUST").written()).isEqualTo("DUST");
        assertThatThrownBy(() -> Caution.known("dust"))
                .hasMessage("caution must be a code of a caution, such as STOPPED_CUT, but was \"dust\"");
        assertThatThrownBy(() -> Caution.given(" ")).isInstanceOf(IllegalArgumentException.class);
    }

    private static Stream<String> codes(String operation) {
        return operations().stream()
                .filter(one -> one.name().equals(operation))
                .limit(1)
                .flatMap(one -> one.cautions().stream())
                .map(Caution::code);
    }
}
