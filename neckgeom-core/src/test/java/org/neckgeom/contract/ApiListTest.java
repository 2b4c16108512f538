package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.plan.Job;
import org.neckgeom.units.Amount;

/**
 * The public API is what {@code src/test/resources/api} says, so that every change of it is seen in review. To approve a
 * change run this test with {@code -Dneckgeom.approve=true}, read what changed in the files, and commit them.
 */
class ApiListTest {

    static Stream<ApiList> modules() {
        return Stream.of(ApiList.ofModuleOf(Amount.class), ApiList.ofModuleOf(Job.class));
    }

    @ParameterizedTest
    @MethodSource("modules")
    void api_isTheApprovedOne(ApiList module) throws IOException {
        ApprovedList.of(module.module(), "the public API", ApiListTest::withOwners)
                .hold(module.text());
    }

    /** Each member's line after its type's, so that a line alone says whose it is. */
    private static List<String> withOwners(List<String> lines) {
        List<String> owned = new ArrayList<>();
        String owner = "";
        for (String line : lines) {
            owner = line.startsWith("    ") ? owner : line.strip();
            owned.add(line.startsWith("    ") ? owner + ": " + line.strip() : line);
        }
        return owned;
    }

    /** One of each kind, and what must not show. */
    @SuppressWarnings("unused")
    sealed interface Kinds<T extends Comparable<T>> {
        String NAME = "a name";

        enum Colour implements Kinds<String> {
            RED,
            BLACK
        }

        record Pair<T extends Comparable<T>>(T first, List<? extends T> rest) implements Kinds<T> {}

        abstract non-sealed class Open implements Kinds<Integer> {
            protected int count;
            int hidden;

            protected Open(String... names) throws IOException {}

            @Deprecated
            public abstract <E extends Exception> void run(E[] each) throws E;

            void hidden() {}
        }

        default T one() {
            return null;
        }
    }

    @Test
    void list_saysWhatAUserCanCall() {
        assertThat(ApiList.of(Kinds.class)).isEqualTo("""
                  sealed interface ApiListTest$Kinds<T extends Comparable<T>> permits %1$sColour, %1$sPair, %1$sOpen
                    static final String NAME = a name
                    default T one()
                """.formatted("org.neckgeom.contract.ApiListTest$Kinds$"));
        assertThat(ApiList.of(Kinds.Colour.class)).startsWith("""
                  enum ApiListTest$Kinds$Colour implements org.neckgeom.contract.ApiListTest$Kinds<String> {RED, BLACK}
                """);
        assertThat(ApiList.of(Kinds.Pair.class))
                .startsWith("  record ApiListTest$Kinds$Pair<T extends Comparable<T>>"
                        + "(T first, java.util.List<? extends T> rest) implements ")
                .contains("    T first()\n")
                .contains("    new(T, java.util.List<? extends T>)\n");
        assertThat(ApiList.of(Kinds.Open.class)).isEqualTo("""
                  abstract class ApiListTest$Kinds$Open implements org.neckgeom.contract.ApiListTest$Kinds<Integer>
                    protected int count
                    protected new(String...) throws java.io.IOException
                    @Deprecated abstract <E extends Exception> void run(E[]) throws E
                """);
    }
}
