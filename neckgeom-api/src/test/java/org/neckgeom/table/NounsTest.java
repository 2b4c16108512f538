package org.neckgeom.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.contract.Samples;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Json;
import org.neckgeom.form.Tree;
import org.neckgeom.testing.PublicTypes;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** What every noun with a table promises, found by reflection, with the samples of its type. */
class NounsTest {

    private static final List<Object> BAD = Arrays.asList(
            null,
            "",
            " ",
            "x",
            "1e999 in",
            "-3 mm",
            "12 mm\n",
            "y".repeat(2_000),
            "\uD800",
            Double.NaN,
            -1.0,
            0.5,
            true,
            List.of(),
            Arrays.asList((Object) null),
            List.of("x", "x"),
            Map.of(),
            Map.of("value", 1.0),
            Map.of("x", Map.of()));

    private static final Set<String> BESIDE_OTHERS = Set.of("one-of", "together", "no-adjuster");

    /** Values of one type with the table they are written by. */
    record OfType<T>(Class<T> type, Table<T> table) {

        @SuppressWarnings("unchecked")
        static OfType<?> of(Class<?> type) {
            try {
                return new OfType<>((Class<Object>) type, (Table<Object>)
                        type.getField("TABLE").get(null));
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(type + " has no public TABLE", e);
            }
        }

        List<T> samples() {
            return Samples.of(type).stream().map(type::cast).toList();
        }

        /** Every member of every group. */
        List<T> all() {
            return Samples.all().get(type).stream()
                    .flatMap(group -> group.members().stream())
                    .map(Supplier::get)
                    .<T>map(type::cast)
                    .toList();
        }

        @Override
        public String toString() {
            return type.getSimpleName();
        }
    }

    static Stream<OfType<?>> types() {
        return PublicTypes.beside(Amount.class).stream()
                .filter(type -> Noun.class.isAssignableFrom(type) && type != Noun.class || hasTable(type))
                .map(OfType::of);
    }

    private static boolean hasTable(Class<?> type) {
        return Arrays.stream(type.getFields()).anyMatch(field -> field.getType() == Table.class);
    }

    /** The tables of all types, and those inside them that no user sees. */
    static Stream<Table<?>> tables() {
        Set<Table<?>> found = new LinkedHashSet<>();
        types().forEach(type -> collect(type.table(), found));
        return found.stream();
    }

    private static void collect(Table<?> table, Set<Table<?>> found) {
        if (found.add(table)) {
            for (Key<?, ?> key : table.keys()) {
                key.type.inside().ifPresent(inner -> collect(inner, found));
            }
        }
    }

    @Test
    void walk_findsTheNouns() {
        assertThat(types().map(noun -> noun.type().getSimpleName()))
                .contains("Heel", "Wood")
                .hasSizeGreaterThan(25);
    }

    @ParameterizedTest
    @MethodSource("types")
    <T> void noun_readsBackEqual_fromBothSpellings(OfType<T> noun) {
        assertThat(noun.samples()).isNotEmpty();
        for (T value : noun.all()) {
            for (Spelling spelling : Spelling.values()) {
                Tree written = noun.table().write(value, spelling);
                T back = noun.table().read(Json.read(Json.of(written)));

                assertThat(back).as("%s", written).isEqualTo(value).hasSameHashCodeAs(value);
                assertThat(back).hasToString(value.toString());
                assertThat(noun.table().write(back, spelling)).isEqualTo(written);
            }
        }
    }

    /** Data of a noun as an answer has the names of its keys, and reads back; what follows from them is passed over. */
    @ParameterizedTest
    @MethodSource("types")
    <T> void noun_readsBackEqual_fromItsDataAsAnAnswer(OfType<T> noun) {
        for (T value : noun.all()) {
            Tree data = Tree.of(value);

            assertThat(noun.table().read(Json.read(Json.of(data))))
                    .as("%s", data)
                    .isEqualTo(value);
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    <T> void noun_isEqual_whenADefaultIsGivenInstead(OfType<T> noun) {
        for (T value : noun.samples()) {
            for (Key<T, ?> key : noun.table().keys) {
                Map<String, Object> map = map(noun, value);
                if (key.usual != null && !key.isInline && !map.containsKey(key.name())) {
                    map.put(key.name(), usual(key));
                    T given;
                    try {
                        given = noun.table().read(Tree.of(map));
                    } catch (Refusal refused) { // not beside another key that replaces it or has no use for it
                        assertThat(refused.faults()).extracting(Fault::rule).containsAnyElementsOf(BESIDE_OTHERS);
                        continue;
                    }
                    assertThat(given).as("%s", map).isEqualTo(value).hasSameHashCodeAs(value);
                }
            }
        }
    }

    private static <T, V> Object usual(Key<T, V> key) {
        return key.type.write(key.usual, Spelling.WORDS);
    }

    @ParameterizedTest
    @MethodSource("types")
    <T> void noun_isAnother_exactlyWhenAnotherValueHoldsUnderAKey(OfType<T> noun) {
        for (T value : noun.samples()) {
            for (Key<T, ?> key : noun.table().keys) {
                Map<String, Object> map = map(noun, value);
                if (key.isNeeded || map.remove(key.name()) == null) {
                    continue;
                }
                T without;
                try {
                    without = noun.table().read(Tree.of(map));
                } catch (Refusal refused) { // needed beside another key
                    assertThat(refused.faults()).isNotEmpty();
                    continue;
                }
                boolean isHeld = held(noun, without, key).equals(held(noun, value, key));
                assertThat(without.equals(value))
                        .as("%s without %s", value, key)
                        .isEqualTo(isHeld);
            }
        }
    }

    private static <T> Optional<?> held(OfType<T> noun, T value, Key<T, ?> key) {
        return noun.table().split(value).find(key);
    }

    @ParameterizedTest
    @MethodSource("types")
    <T> void noun_isAnsweredOrRefusedInWords_forAnyValueUnderAKey(OfType<T> noun) {
        T value = noun.samples().get(0);
        List<String> keys = flat(noun.table()).stream().map(Key::name).toList();
        for (String key : keys) {
            for (Object bad : BAD) {
                Map<String, Object> map = map(noun, value);
                map.put(key, bad);
                try {
                    assertThat(noun.table().read(Tree.of(map)).toString()).isNotBlank();
                } catch (Refusal refused) {
                    for (Fault fault : refused.faults()) {
                        String first = fault.path().split("[.\\[]", 2)[0];
                        assertThat(keys).as("%s: %s", bad, fault).contains(first);
                        assertThat(Words.isLine(fault.toString()))
                                .as("%s", fault)
                                .isTrue();
                        assertThat(fault.rule()).matches("[a-z][a-z0-9]*(-[a-z0-9]+)*");
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    <T> void noun_refusesNullByName(OfType<T> noun) {
        T value = noun.samples().get(0);
        Table<T> table = noun.table();

        assertThatNullPointerException().isThrownBy(() -> table.read(null)).withMessage("tree");
        assertThatNullPointerException()
                .isThrownBy(() -> table.write(null, Spelling.WORDS))
                .withMessage("noun");
        assertThatNullPointerException()
                .isThrownBy(() -> table.write(value, null))
                .withMessage("spelling");
    }

    @ParameterizedTest
    @MethodSource("types")
    <T> void noun_keepsItsValuesInAnyStyle(OfType<T> noun) {
        for (T value : noun.samples()) {
            for (LengthStyle style : LengthStyle.values()) {
                assertThat(noun.table().in(value, style)).isEqualTo(value).hasSameHashCodeAs(value);
            }
        }
    }

    /** A key in words and another one's in camel case must not meet either: both are read everywhere. */
    @ParameterizedTest
    @MethodSource("tables")
    void keys_areUniqueInBothSpellings(Table<?> table) {
        Map<String, String> owners = new HashMap<>();
        for (Key<?, ?> key : flat(table)) {
            assertThat(key.name()).matches("[a-z][a-z0-9]*([ -][a-z0-9]+)*");
            for (Spelling spelling : Spelling.values()) {
                String name = key.name(spelling);
                String owner = owners.putIfAbsent(name, key.name());
                assertThat(owner == null || spelling == Spelling.JSON && owner.equals(key.name()))
                        .as("%s twice in %s", name, table.about())
                        .isTrue();
            }
        }
        assertThat(owners).isNotEmpty();
    }

    private static List<Key<?, ?>> flat(Table<?> table) {
        List<Key<?, ?>> all = new ArrayList<>();
        for (Key<?, ?> key : table.keys()) {
            if (key.isInline) {
                all.addAll(flat(key.type.inside().orElseThrow()));
            } else {
                all.add(key);
            }
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("tables")
    void meanings_areOneLineInTheVocabularysWords(Table<?> table) {
        List<String> meanings = new ArrayList<>(List.of(table.about()));
        flat(table).forEach(key -> meanings.add(key.about()));
        for (String meaning : meanings) {
            assertThat(Words.isLine(meaning)).as(meaning).isTrue();
            assertThat(meaning)
                    .hasSizeBetween(3, 160)
                    .isEqualTo(meaning.strip())
                    .doesNotEndWith(".")
                    .doesNotContainPattern("(?i)\\b(told|untold|says?|said|reckoned|alike|whatever|nobody|lives)\\b");
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void keys_areFixedOnceTheNounIsUsed(Table<?> table) {
        table.values();

        assertThat(catchThrowable(() -> table.optional("more", Types.TEXT, "another")))
                .isInstanceOf(Refusal.class)
                .hasMessageEndingWith("are fixed once it is read or made");
    }

    private static <T> Map<String, Object> map(OfType<T> noun, T value) {
        return new LinkedHashMap<>(noun.table().plain(value, Spelling.WORDS));
    }
}
