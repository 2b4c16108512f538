package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Executable;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.neckgeom.plan.Job;
import org.neckgeom.testing.PublicTypes;
import org.neckgeom.units.Amount;

/** Two lengths by position are easily read, three are mixed up: they are named steps, or parts of a noun. */
class ThreeLengthsTest {

    private static final int MOST = 2;

    @Test
    void publicMethods_takeNoMoreThanTwoLengthsByPosition() {
        List<Class<?>> types = Stream.<Class<?>>of(Amount.class, Job.class)
                .flatMap(member -> PublicTypes.beside(member).stream())
                .toList();

        assertThat(types).hasSizeGreaterThan(150);
        assertThat(types.stream().flatMap(ThreeLengthsTest::tooMany)).isEmpty();
    }

    @Test
    void tooMany_findsFactoriesAndMethodsButNoListsOfLengths() {
        assertThat(tooMany(Sayable.class).map(Executable::getName)).containsExactlyInAnyOrder("box", "trimmed");
    }

    /** What the rule is about, and what it is not. */
    @SuppressWarnings("unused")
    interface Sayable {
        static Sayable box(Quantity<Length> length, Quantity<Length> width, Quantity<Length> height) {
            throw new UnsupportedOperationException();
        }

        Sayable trimmed(Amount<Length> front, int times, Quantity<Length> back, Quantity<Length> side);

        Sayable moved(Quantity<Length> along, Quantity<Length> aside);

        @SuppressWarnings("unchecked")
        Sayable holes(Quantity<Length> diameter, Quantity<Length> setBack, Quantity<Length>... depths);
    }

    private static Stream<Executable> tooMany(Class<?> type) {
        return Stream.<Executable>concat(PublicTypes.methods(type).stream(), Arrays.stream(type.getConstructors()))
                .filter(way -> Arrays.stream(way.getGenericParameterTypes())
                                .filter(ThreeLengthsTest::isLength)
                                .count()
                        > MOST);
    }

    private static boolean isLength(Type type) {
        return type instanceof ParameterizedType of
                && of.getRawType() instanceof Class<?> raw
                && Quantity.class.isAssignableFrom(raw)
                && of.getActualTypeArguments()[0] == Length.class;
    }
}
