package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.contract.Samples.Group;
import org.neckgeom.table.Branch;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.QuantityType;
import org.neckgeom.table.Table;
import org.neckgeom.testing.PublicTypes;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;

/** What every value promises: equality, text, immutability. */
class ValueTypesTest {

    /** What is written once, while a class loads, and is itself alone. */
    private static final Set<Class<?>> DECLARED =
            Set.of(Table.class, Key.class, QuantityType.class, Moves.class, Branch.class);

    static Stream<Class<?>> types() {
        return Samples.all().keySet().stream();
    }

    @Test
    void samples_coverEveryValueType() {
        List<Class<?>> values = PublicTypes.beside(Amount.class).stream()
                .filter(type -> !type.isInterface() && !type.isEnum() && !PublicTypes.isStaticOnly(type))
                .filter(type -> !Modifier.isAbstract(type.getModifiers())) // its own types are the values
                .filter(type -> type != Report.class && !DECLARED.contains(type)) // a builder for one text
                .filter(type -> !Throwable.class.isAssignableFrom(type)) // thrown, not kept
                .toList();

        assertThat(Samples.all().keySet()).containsExactlyInAnyOrderElementsOf(values);
    }

    @ParameterizedTest
    @MethodSource("types")
    void equals_holdsWithinGroupsAndFailsBetween(Class<?> type) {
        List<Group> groups = Samples.all().get(type);
        for (int i = 0; i < groups.size(); i++) {
            for (Supplier<?> member : groups.get(i).members()) {
                Object value = member.get();
                assertThat(value.equals(null)).isFalse();
                assertThat(value).isNotEqualTo("text").isEqualTo(value);
                for (int j = 0; j < groups.size(); j++) {
                    for (Supplier<?> otherMember : groups.get(j).members()) {
                        Object other = otherMember.get();
                        assertThat(value.equals(other))
                                .as("%s and %s", value, other)
                                .isEqualTo(i == j);
                        if (i == j) {
                            assertThat(value).hasSameHashCodeAs(other);
                        }
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    void hashCode_tellsGroupsApart(Class<?> type) {
        List<Object> samples = Samples.of(type);

        assertThat(samples.stream().map(Object::hashCode).distinct().count())
                .as("distinct hashes of %d unequal %s", samples.size(), type.getSimpleName())
                .isGreaterThan(samples.size() / 2);
    }

    @ParameterizedTest
    @MethodSource("types")
    void toString_isWrittenForPeople(Class<?> type) {
        for (Object value : Samples.of(type)) {
            assertThat(value.toString())
                    .as("%s", type)
                    .hasSizeBetween(1, 999)
                    .doesNotContain("@" + Integer.toHexString(System.identityHashCode(value)))
                    .doesNotContain(type.getName())
                    .doesNotContain("NaN", "null", "-0 ")
                    .doesNotEndWith("\n");
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    void fields_arePrivateFinalAndNoQuantities(Class<?> type) {
        for (Field field : type.getDeclaredFields()) {
            if (!Modifier.isStatic(field.getModifiers()) && !field.isSynthetic()) {
                assertThat(field.getModifiers() & (Modifier.PRIVATE | Modifier.FINAL))
                        .as("%s", field)
                        .isEqualTo(Modifier.PRIVATE | Modifier.FINAL);
                assertThat(Quantity.class.isAssignableFrom(field.getType()))
                        .as("%s", field)
                        .isFalse();
            }
        }
        assertThat(Modifier.isFinal(type.getModifiers())).as("%s", type).isTrue();
    }

    @ParameterizedTest
    @MethodSource("types")
    void arrays_areHandedOutFresh(Class<?> type) throws ReflectiveOperationException {
        for (Object value : Samples.of(type)) {
            String before = value.toString();
            int hash = value.hashCode();
            for (Method method : type.getMethods()) {
                if (method.getReturnType() == double[].class && method.getParameterCount() == 0) {
                    double[] array = (double[]) method.invoke(value);
                    assertThat(method.invoke(value)).as("%s", method).isEqualTo(array);
                    double[] kept = array.clone();
                    Arrays.fill(array, -7);
                    assertThat((double[]) method.invoke(value)).as("%s", method).isEqualTo(kept);
                } else if (method.getReturnType().isArray()) {
                    throw new AssertionError("array of another type: " + method);
                }
            }
            assertThat(value).hasToString(before);
            assertThat(value.hashCode()).isEqualTo(hash);
        }
    }

    @Test
    void samples_holdMoreThanOneRecipeForManyValues() {
        assertThat(Samples.all().values().stream()
                        .flatMap(List::stream)
                        .filter(group -> group.members().size() > 1)
                        .count())
                .isGreaterThan(15);
    }
}
