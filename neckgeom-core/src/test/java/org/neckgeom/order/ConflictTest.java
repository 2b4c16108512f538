package org.neckgeom.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.order.Conflict.Kind;

class ConflictTest {

    private static Conflict conflict(Remedy... remedies) {
        return Conflict.of(
                Kind.IN_THE_WAY,
                "cut rod channel",
                Optional.of("glue wings"),
                Condition.WINGS,
                "they meet the fence",
                List.of(new KeptOrder("glue wings", "cut rod channel")),
                List.of(remedies));
    }

    @Test
    void toString_namesConflictReasonRemedyAndWhatItAdds() {
        assertThat(conflict(Remedy.parallelSpacer(), Remedy.cradle()).toString())
                .isEqualTo("""
                cut rod channel: wings in the way, from "glue wings"
                  why     they meet the fence
                  kept    glue wings before cut rod channel
                  remedy  parallel spacer between shaft and fence
                  how     thicker than the head stands proud; centre the cutter with the spacer in place
                  adds    spacer's thickness, across: rectangular, half-width 0.05 mm
                  or      cradle hollowed to the back""");
    }

    @Test
    void toString_saysSo_whenThereIsNoRemedy() {
        assertThat(conflict().toString()).endsWith("remedy  none: give up the kept order");
        assertThat(conflict().remedy()).isEmpty();
        assertThat(conflict().adds()).isEmpty();
    }

    @Test
    void toString_staysShort_withTheLongestNames() {
        String name = "n".repeat(50);
        String words = "w".repeat(80);
        Remedy remedy = Remedy.named(name)
                .how(words)
                .adding(name, AddedError.Way.DEPTH, ErrorDistribution.bias(mm(0.123456789)));
        List<KeptOrder> kept = Collections.nCopies(20, new KeptOrder(name, "m".repeat(50)));
        for (Kind kind : Kind.values()) {
            Conflict conflict = kind == Kind.CYCLE
                    ? Conflict.ofCycle(Collections.nCopies(40, name), Collections.nCopies(40, "r".repeat(200)), kept)
                    : Conflict.of(
                            kind, name, Optional.of(name), Condition.named(name), words, kept, List.of(remedy, remedy));

            assertThat(conflict.toString()).as(kind.name()).hasSizeLessThan(1000);
            assertThat(Conflicts.of(Collections.nCopies(30, conflict)).toString())
                    .hasSizeLessThan(1000);
        }
    }

    @Test
    void conflicts_sayHowManyHaveNoRemedy() {
        assertThat(Conflicts.of(List.of()).toString()).isEqualTo("Conflicts: none");
        assertThat(Conflicts.of(List.of(conflict())).toString()).startsWith("Conflicts: 1 conflict, no remedy\n1. cut");
        Conflicts mixed = Conflicts.of(List.of(conflict(Remedy.shim()), conflict()));
        assertThat(mixed.toString()).startsWith("Conflicts: 2 conflicts, 1 without remedy");
        assertThat(mixed.haveRemedies()).isFalse();
        assertThat(Conflicts.of(List.of(conflict(Remedy.shim()))).haveRemedies())
                .isTrue();
        Conflicts many = Conflicts.of(new ArrayList<>(Collections.nCopies(9, conflict(Remedy.shim()))));
        assertThat(many.toString()).endsWith("more: table()");
        assertThat(many.table()).contains("\n9. cut rod channel");
    }

    @Test
    void equals_comparesEveryPart() {
        assertThat(conflict(Remedy.shim()))
                .isEqualTo(conflict(Remedy.shim()))
                .hasSameHashCodeAs(conflict(Remedy.shim()));
        assertThat(conflict(Remedy.shim())).isNotEqualTo(conflict());
        assertThat(Conflicts.of(List.of(conflict()))).isEqualTo(Conflicts.of(List.of(conflict())));
    }

    @Test
    void of_refusesCyclesThatAreNone() {
        assertThatThrownBy(() -> Conflict.ofCycle(List.of("plane"), List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("operations of a cycle must be 2 or more, but were 1");
        assertThatThrownBy(() ->
                        Conflict.of(Kind.CYCLE, "plane", Optional.empty(), Condition.WINGS, "", List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("use ofCycle");
    }
}
