package org.neckgeom.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.testing.PublicTypes;
import org.neckgeom.units.Amount;

/** Any class of this module may be the first that is loaded: tables and keys come in an order that holds for each. */
class FirstLoadedTest {

    private static final URL MAIN =
            Amount.class.getProtectionDomain().getCodeSource().getLocation();

    /** The libraries; loaded once, for it is our own classes that must be fresh. */
    private static final ClassLoader LIBRARIES = new URLClassLoader(libraries(), ClassLoader.getPlatformClassLoader());

    private static URL[] libraries() {
        Set<URL> all = new LinkedHashSet<>();
        for (String property : new String[] {"java.class.path", "jdk.module.path"}) {
            for (String entry : System.getProperty(property, "").split(File.pathSeparator, -1)) {
                if (entry.endsWith(".jar")) {
                    all.add(url(entry));
                }
            }
        }
        return all.toArray(new URL[0]);
    }

    private static URL url(String entry) {
        try {
            return Path.of(entry).toUri().toURL();
        } catch (MalformedURLException e) {
            throw new IllegalStateException(e);
        }
    }

    static Stream<Class<?>> types() {
        return PublicTypes.beside(Amount.class).stream();
    }

    @ParameterizedTest
    @MethodSource("types")
    void type_mayBeTheFirstLoaded(Class<?> type) throws Exception {
        try (URLClassLoader fresh = new URLClassLoader(new URL[] {MAIN}, LIBRARIES)) {
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
        try (URLClassLoader fresh = new URLClassLoader(new URL[] {MAIN}, LIBRARIES)) {
            Object table = Class.forName(noun.type().getName(), true, fresh)
                    .getField("TABLE")
                    .get(null);

            assertThat(table.getClass().getMethod("help").invoke(table))
                    .isEqualTo(noun.table().help());
        }
    }
}
