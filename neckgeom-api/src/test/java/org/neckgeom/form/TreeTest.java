package org.neckgeom.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.fault.Refusal;

class TreeTest {

    @Test
    void of_givesPlainDataBack() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", "octave");
        map.put("frets", 21);
        map.put("parts", Arrays.asList(1.5, null, true, Map.of()));

        Tree tree = Tree.of(map);

        map.put("frets", 21.0);
        assertThat(tree.plain()).isEqualTo(map);
        assertThat(Tree.of(tree.plain())).isEqualTo(tree).hasSameHashCodeAs(tree);
        assertThat(Json.read(Json.of(tree))).isEqualTo(tree);
    }

    /** A tree is a copy that nobody can change. */
    @Test
    @SuppressWarnings("unchecked")
    void plain_cannotBeChanged() {
        List<Object> list = new ArrayList<>(List.of(1.0));
        Tree tree = Tree.of(Map.of("list", list));
        list.add(2.0);
        Map<String, Object> plain = (Map<String, Object>) tree.plain();

        assertThat(plain).isEqualTo(Map.of("list", List.of(1.0)));
        assertThatThrownBy(() -> plain.put("more", 1)).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> ((List<Object>) plain.get("list")).add(1))
                .isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    void of_refusesWhatJsonHasNoWordFor_withItsPlace() {
        assertRefused(Map.of("a", List.of(1, Map.of("b", Double.NaN))), "a[1].b must be a finite number, but was NaN");
        assertRefused(Map.of("a", new StringBuilder().getClass()), "a must be a map, a list, a text");
        assertRefused(Map.of("a", Map.of(7, "b")), "a must have texts as names, but was 7");
        assertRefused("x".repeat(100_001), "tree must have no text of more than 100000 characters");
        List<Object> endless = new ArrayList<>();
        endless.add(endless);
        assertRefused(endless, "must have no more than 100 levels");
    }

    private static void assertRefused(Object data, String words) {
        assertThatThrownBy(() -> Tree.of(data)).isInstanceOf(Refusal.class).hasMessageContaining(words);
    }

    @Test
    void read_ofWhatIsWritten_isEqual_atRandomTrees() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 2000; i++) {
            Tree tree = Tree.of(Arrays.asList(random(random, 0), random(random, 0)));

            assertThat(Json.read(Json.of(tree))).as("tree %d, seed 7", i).isEqualTo(tree);
        }
    }

    private static Object random(SplittableRandom random, int depth) {
        return switch (random.nextInt(depth > 4 ? 5 : 7)) {
            case 0 -> null;
            case 1 -> random.nextBoolean();
            case 2 -> Double.longBitsToDouble(random.nextLong() & ~(1L << 62));
            case 3 -> random.nextInt(-1000, 1000);
            case 4 -> text(random);
            case 5 -> {
                List<Object> list = new ArrayList<>();
                for (int i = random.nextInt(4); i > 0; i--) {
                    list.add(random(random, depth + 1));
                }
                yield list;
            }
            default -> {
                Map<String, Object> map = new LinkedHashMap<>();
                for (int i = random.nextInt(4); i > 0; i--) {
                    map.put(text(random), random(random, depth + 1));
                }
                yield map;
            }
        };
    }

    private static String text(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(8); i > 0; i--) {
            text.appendCodePoint(random.nextInt(0xD800));
        }
        return text.toString();
    }
}
