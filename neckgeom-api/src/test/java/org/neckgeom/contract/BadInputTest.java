package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.testing.BadInput;
import org.neckgeom.testing.Grown;
import org.neckgeom.testing.PublicTypes;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/** Bad input to every public factory and step of this module: answered with finite numbers or refused in words. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("long")
class BadInputTest {

    private static final int MIXED = 300;
    private static final Duration HANGS = Duration.ofMinutes(3);

    private static final List<String> TEXTS =
            List.of("thing", "1 3/4 in", "12.5 mm", "A3", "black walnut", "3/8", "13 deg");

    private final BadInput badInput = new BadInput(Grown.from(types().toList(), samples(), Map.of(), TEXTS), MIXED);

    /** Text and numeric are exported to core only, which keeps their promises by its own tests. */
    static Stream<Class<?>> types() {
        Set<String> inner = Set.of("org.neckgeom.text", "org.neckgeom.numeric");
        // Bare factors and texts of bare numbers hand on what they are given; every way in that uses them checks first.
        Set<Class<?>> bare = Set.of(ShopUnit.class, LengthStyle.class);
        return PublicTypes.beside(Amount.class).stream()
                .filter(type -> !inner.contains(type.getPackageName()) && !bare.contains(type));
    }

    private static List<Object> samples() {
        List<Object> samples = new ArrayList<>();
        for (Class<?> type : Samples.all().keySet()) {
            if (type != Report.class) {
                samples.addAll(Samples.of(type));
            }
        }
        return samples;
    }

    @AfterAll
    void printTheCount() {
        System.out.println("bad input to the api: " + badInput.count());
    }

    @ParameterizedTest
    @MethodSource("types")
    void badInput_isRefusedInWords(Class<?> type) {
        int before = badInput.calls();

        List<String> faults = assertTimeoutPreemptively(HANGS, () -> badInput.faults(type), badInput::now);

        assertThat(faults.stream().limit(25))
                .as("of %d calls", badInput.calls() - before)
                .isEmpty();
    }

    @Test
    void types_areThoseUsersSee() {
        assertThat(types()).contains(Amount.class).hasSizeGreaterThan(35);
    }
}
