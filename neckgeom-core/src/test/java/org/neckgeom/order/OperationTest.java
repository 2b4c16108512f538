package org.neckgeom.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.neckgeom.units.ShopUnits.mm;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.form.Json;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.order.AddedError.Way;
import org.neckgeom.shop.Caution;

/** Operations, their conditions and remedies as values. */
class OperationTest {

    private static Operation slot() {
        return Operation.named("slot")
                .needs(Condition.FLAT_FACE)
                .blockedBy(Condition.WINGS)
                .takesAway(Condition.RESTED_STOCK)
                .puts(Condition.ROD_CHANNEL);
    }

    @Test
    void chain_leavesTheEarlierOperationAsItWas() {
        Operation before = slot();

        Operation after = before.needs(Condition.MARKED_LINES).caution("mind the collet");

        assertThat(before).isEqualTo(slot()).hasSameHashCodeAs(slot());
        assertThat(after.needs()).containsExactly(Condition.FLAT_FACE, Condition.MARKED_LINES);
        assertThat(after.cautions()).extracting(Caution::text).containsExactly("mind the collet");
        assertThat(before.caution("BAND_SAW").cautions()).containsExactly(Caution.known("BAND_SAW"));
        assertThat(after).isNotEqualTo(before);
    }

    @Test
    void toString_saysWhatItNeedsAndLeaves() {
        assertThat(slot().toString()).isEqualTo("""
                slot
                  needs       flat face
                  blocked by  wings
                  takes away  rested stock
                  leaves      rod channel""");
    }

    @Test
    void operation_refusesAConditionTwoWays() {
        assertThatThrownBy(() -> slot().blockedBy(Condition.FLAT_FACE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("operation \"slot\" must not have \"flat face\" both needed and in the way");
        assertThatThrownBy(() -> slot().puts(Condition.RESTED_STOCK))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("both put and taken away");
        assertThatThrownBy(() -> slot().despite(Condition.NUT, Remedy.shim()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("condition must be one that \"slot\" needs or is blocked by, but was \"nut\"");
        assertThatThrownBy(() -> slot().because(Condition.NUT, "so it is"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> slot().caution(" ")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> slot().needs(null)).isInstanceOf(NullPointerException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "two\nlines", "a name that goes on and on until it is past fifty characters"})
    void named_refusesNamesThatCannotBePrinted(String name) {
        assertThatThrownBy(() -> Operation.named(name))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("an operation's name must be 1 to 50 characters on one line, but was \"");
        assertThatThrownBy(() -> Condition.named(name)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Remedy.named(name)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void codes_ofTheUsualNeckAreItsNamesAndDiffer() {
        assertThat(OrderOfWork.forNeck().operations())
                .extracting(Operation::code)
                .contains("cut-rod-channel", "rest-and-flatten-again")
                .doesNotHaveDuplicates()
                .allMatch(code -> code.matches("[a-z]+(-[a-z]+)*"));
        assertThat(Condition.BOARD_EDGES.code()).isEqualTo("fingerboards-parallel-edges");
        assertThat(Json.of(Operation.alongFence("Cut bar slots"))).contains("\"code\": \"cut-bar-slots\"");
    }

    @Test
    void condition_isEqualByName() {
        assertThat(Condition.named(" wings ")).isEqualTo(Condition.WINGS).hasSameHashCodeAs(Condition.WINGS);
        assertThat(Condition.named("wings on")).isNotEqualTo(Condition.WINGS);
        assertThat(Condition.WINGS.toString()).isEqualTo("wings");
    }

    @Test
    void alongFence_hasRemediesForAllButFaceAndBoard() {
        Operation bars = Operation.alongFence("cut bar slots");

        for (Condition blocker : bars.blockers()) {
            assertThat(bars.remedies(blocker).isEmpty())
                    .as(blocker.name())
                    .isEqualTo(blocker.equals(Condition.FINGERBOARD));
        }
        assertThat(bars.needs()).allMatch(need -> !bars.reason(need).isEmpty() || need.equals(Condition.MARKED_LINES));
        assertThat(bars.remedies(Condition.FLAT_FACE)).isEmpty();
        assertThat(bars.cautions()).isNotEmpty();
    }

    @Test
    void remedy_takesTheShopsOwnFigure() {
        Remedy own = Remedy.parallelSpacer().adding(ErrorDistribution.rectangular(mm(0.02)));

        assertThat(own.addsTo("slot"))
                .contains(new AddedError(
                        "spacer's thickness", Way.ACROSS, "slot", ErrorDistribution.rectangular(mm(0.02))));
        assertThat(own).isNotEqualTo(Remedy.parallelSpacer());
        assertThat(own.toString()).contains("half-width 0.02 mm");
        assertThat(Remedy.named("notched caul").addsTo("slot")).isEmpty();
        assertThatThrownBy(() -> Remedy.named("notched caul").adding(ErrorDistribution.rectangular(mm(0.02))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must have its error named first");
    }

    @Test
    void usualRemedies_workInTheDirectionOfTheirCause() {
        // Common practice: what stands between edge and fence works across, what lies under the face works in depth.
        assertThat(Remedy.parallelSpacer().addsTo("slot").orElseThrow().way()).isEqualTo(Way.ACROSS);
        assertThat(Remedy.carrierBoard().addsTo("slot").orElseThrow().way()).isEqualTo(Way.ACROSS);
        assertThat(Remedy.plungeRouterBetweenRails()
                        .addsTo("slot")
                        .orElseThrow()
                        .way())
                .isEqualTo(Way.ACROSS);
        assertThat(Remedy.cradle().addsTo("slot").orElseThrow().way()).isEqualTo(Way.ACROSS);
        assertThat(Remedy.shim().addsTo("slot").orElseThrow().way()).isEqualTo(Way.DEPTH);
        assertThat(Remedy.raisedTable().addsTo("slot").orElseThrow().toString())
                .isEqualTo("raised table's thickness, in depth: rectangular, half-width 0.1 mm");
    }
}
