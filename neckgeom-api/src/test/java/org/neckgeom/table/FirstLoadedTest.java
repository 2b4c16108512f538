package org.neckgeom.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URL;
import java.net.URLClassLoader;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.testing.PublicTypes;
import org.neckgeom.units.Amount;

/** Any class of this module may be the first that is loaded: tables and keys come in an order that holds for each. */
class FirstLoadedTest {

    private static final URL MAIN =
            Amount.class.getProtectionDomain().getCodeSource().getLocation();

    /** Loads this module's classes anew; libraries are those of the tests. */
    private static final class Fresh extends URLClassLoader {

        Fresh() {
            super(new URL[] {MAIN}, FirstLoadedTest.class.getClassLoader());
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            synchronized (getClassLoadingLock(name)) {
                Class<?> loaded = findLoadedClass(name);
                boolean isOurs = name.startsWith("org.neckgeom.");
                return loaded != null ? loaded : isOurs ? findClass(name) : super.loadClass(name, resolve);
            }
        }
    }

    static Stream<Class<?>> types() {
        return PublicTypes.beside(Amount.class).stream();
    }

    @ParameterizedTest
    @MethodSource("types")
    void type_mayBeTheFirstLoaded(Class<?> type) throws Exception {
        try (Fresh fresh = new Fresh()) {
            Class<?> first = Class.forName(type.getName(), true, fresh);

            assertThat(first).isNotSameAs(type);
            assertThat(first.getClassLoader()).isSameAs(fresh);
        }
    }

    static Stream<NounsTest.OfType<?>> nouns() {
        return NounsTest.types();
    }

    @ParameterizedTest
    @MethodSource("nouns")
    void noun_hasAllItsKeys_whenItIsTheFirstLoaded(NounsTest.OfType<?> noun) throws Exception {
        try (Fresh fresh = new Fresh()) {
            Object table = Class.forName(noun.type().getName(), true, fresh)
                    .getField("TABLE")
                    .get(null);

            assertThat(table.getClass().getMethod("help").invoke(table))
                    .isEqualTo(noun.table().help());
        }
    }
}
