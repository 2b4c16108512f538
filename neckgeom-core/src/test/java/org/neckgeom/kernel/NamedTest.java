package org.neckgeom.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class NamedTest {

    private static final long SEED = 41L;

    /** Against the JDK's map that keeps its order, copied at each step. */
    @Test
    void with_isACopyOfAMapWithOneMore() {
        SplittableRandom random = new SplittableRandom(SEED);
        Named<Integer> named = Named.none();
        Map<String, Integer> map = new LinkedHashMap<>();
        for (int i = 0; i < 2_000; i++) {
            String name = "name " + random.nextInt(1_000);
            Named<Integer> before = named;
            Map<String, Integer> copy = Map.copyOf(map);

            named = named.with(name, i);
            map.put(name, i);

            assertThat(named.find(name)).as("seed %s, step %s", SEED, i).isEqualTo(i);
            assertThat(before.size()).as("seed %s, step %s", SEED, i).isEqualTo(copy.size());
            assertThat(before.find(name)).as("seed %s, step %s", SEED, i).isEqualTo(copy.get(name));
        }
        assertThat(named.names()).as("seed %s", SEED).containsExactlyElementsOf(map.keySet());
        assertThat(named.values()).as("seed %s", SEED).containsExactlyElementsOf(map.values());
        assertThat(named.find("nobody")).isNull();
    }

    @Test
    void equals_asksForTheSameValuesInAnyOrder() {
        Named<String> one = Named.<String>none().with("a", "1").with("b", "2");
        Named<String> other = Named.<String>none().with("b", "2").with("a", "1");

        assertThat(one).isEqualTo(other).hasSameHashCodeAs(other);
        assertThat(one).isNotEqualTo(one.with("a", "3"));
        assertThat(one).isNotEqualTo(one.with("c", "3"));
        assertThat(one.names()).isEqualTo(List.of("a", "b"));
    }

    /** Names of one hash are told apart by their letters, and thousands of ascending ones do not make a deep tree. */
    @Test
    void with_takesNamesOfOneHashAndManyInOrder() {
        Named<Integer> named = Named.<Integer>none().with("Aa", 1).with("BB", 2);
        for (int i = 0; i < 100_000; i++) {
            named = named.with(String.format(Locale.ROOT, "%06d", i), i);
        }

        assertThat(named.find("Aa")).isEqualTo(1);
        assertThat(named.find("BB")).isEqualTo(2);
        assertThat(named.find("099999")).isEqualTo(99_999);
        assertThat(named.size()).isEqualTo(100_002);
    }
}
