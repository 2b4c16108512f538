package org.neckgeom.examples.release;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.apache.felix.framework.FrameworkFactory;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.neckgeom.channel.Centring;
import org.neckgeom.units.Amount;
import org.osgi.framework.Bundle;
import org.osgi.framework.Constants;
import org.osgi.framework.launch.Framework;
import tech.units.indriya.AbstractQuantity;
import tech.uom.lib.common.function.ValueSupplier;

/** The jars of api and core as bundles: Apache Felix, an OSGi framework, resolves them and runs an answer in them. */
class BundlesTest {

    private static final Set<String> TO_CORE_ALONE = Set.of("org.neckgeom.numeric", "org.neckgeom.text");

    private static Path api;
    private static Path core;

    @BeforeAll
    static void find() throws Exception {
        api = place(Amount.class);
        core = place(Centring.class);
        boolean isPacked = Files.isRegularFile(api) && Files.isRegularFile(core);
        if (!isPacked) {
            System.err.println("the bundles were NOT tried: no jars in this build; run mvn verify");
        }
        Assumptions.assumeTrue(isPacked, "the bundles were NOT tried: no jars in this build; run mvn verify");
    }

    private static Path place(Class<?> type) throws URISyntaxException {
        return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    }

    @Test
    void framework_resolvesThem_andRunsAnAnswer(@TempDir Path cache) throws Exception {
        List<Path> jars = new ArrayList<>(List.of(api, core));
        for (Class<?> type : List.of(Quantity.class, AbstractQuantity.class, ValueSupplier.class, inject())) {
            jars.add(place(type));
        }
        Framework framework = new FrameworkFactory()
                .newFramework(Map.of(
                        Constants.FRAMEWORK_STORAGE,
                        cache.toString(),
                        Constants.FRAMEWORK_STORAGE_CLEAN,
                        Constants.FRAMEWORK_STORAGE_CLEAN_ONFIRSTINIT));
        framework.start();
        try {
            List<Bundle> bundles = new ArrayList<>();
            for (Path jar : jars) {
                try (InputStream in = Files.newInputStream(jar)) {
                    bundles.add(framework.getBundleContext().installBundle(jar.toString(), in));
                }
            }
            for (Bundle bundle : bundles) {
                bundle.start(); // throws where it can't be resolved
                assertThat(bundle.getState()).as(bundle.getSymbolicName()).isEqualTo(Bundle.ACTIVE);
            }
            assertThat(bundles.stream().map(Bundle::getSymbolicName)).contains("org.neckgeom.api", "org.neckgeom.core");

            // A scarf in the head, 15 mm at 13 degrees: 15 / sin 13 degrees is 66.681, by hand.
            Bundle using = bundles.get(1);
            Class<?> plans = using.loadClass("org.neckgeom.head.Scarf");
            Class<?> units = using.loadClass("org.neckgeom.units.ShopUnits");
            Object length = units.getMethod("mm", double.class).invoke(null, 15.0);
            Object angle = units.getMethod("deg", double.class).invoke(null, 13.0);
            Class<?> quantity = using.loadClass("javax.measure.Quantity");
            Object scarf = plans.getMethod("of", quantity, quantity, quantity).invoke(null, angle, length, length);
            Class<?> joint = using.loadClass("org.neckgeom.head.ScarfJoint");
            Object answer = joint.getMethod("inTheHead", plans).invoke(null, scarf);

            assertThat(plans).isNotSameAs(Class.forName("org.neckgeom.head.Scarf"));
            assertThat(answer.toString()).contains("66.681 mm");
        } finally {
            framework.stop();
            framework.waitForStop(10_000);
        }
    }

    private static Class<?> inject() throws ClassNotFoundException {
        return Class.forName("jakarta.inject.Inject");
    }

    /** A bundle can't export to one other alone: what a module exports to core is marked for friends. */
    @Test
    void bundles_exportWhatTheModulesDo() throws Exception {
        for (Path jar : List.of(api, core)) {
            ModuleDescriptor module =
                    ModuleFinder.of(jar).findAll().iterator().next().descriptor();
            Set<String> exported = module.exports().stream()
                    .map(ModuleDescriptor.Exports::source)
                    .collect(Collectors.toCollection(TreeSet::new));
            String header = main(jar).getValue(Constants.EXPORT_PACKAGE);
            List<String> clauses = clauses(header);

            assertThat(clauses.stream().map(clause -> clause.replaceAll(";.*", "")))
                    .containsExactlyInAnyOrderElementsOf(exported);
            assertThat(clauses)
                    .allSatisfy(clause -> assertThat(clause)
                            .contains(";version=\"0.")
                            .satisfies(each -> {
                                boolean isForCore = TO_CORE_ALONE.contains(each.replaceAll(";.*", ""));
                                assertThat(each.contains("x-friends")).as(each).isEqualTo(isForCore);
                            }));
        }
    }

    @Test
    void manifests_nameVersionAndWhatIsNeeded() throws Exception {
        for (Path jar : List.of(api, core)) {
            Attributes main = main(jar);

            assertThat(main.getValue("Implementation-Title")).isEqualTo(jar == api ? "neckgeom-api" : "neckgeom-core");
            assertThat(jar.getFileName().toString())
                    .isEqualTo(main.getValue("Implementation-Title") + "-" + main.getValue("Implementation-Version")
                            + ".jar");
            assertThat(main.getValue(Constants.BUNDLE_SYMBOLICNAME))
                    .isEqualTo(jar == api ? "org.neckgeom.api" : "org.neckgeom.core");
            assertThat(main.getValue(Constants.REQUIRE_CAPABILITY)).contains("(version=17)");
            assertThat(clauses(main.getValue(Constants.IMPORT_PACKAGE)).stream()
                            .map(clause -> clause.replaceAll(";.*", ""))
                            .filter(name -> !name.startsWith("org.neckgeom.") && !name.startsWith("java.")))
                    .as("imports of %s", jar)
                    .allMatch(name -> name.matches("(javax\\.measure|tech\\.units\\.indriya|org\\.jspecify)\\b.*"));
            assertThat(main.keySet().stream().map(Object::toString))
                    .doesNotContain("Bnd-LastModified", "Built-By", "Automatic-Module-Name");
        }
    }

    private static Attributes main(Path jar) throws Exception {
        try (JarFile file = new JarFile(jar.toFile())) {
            return file.getManifest().getMainAttributes();
        }
    }

    /** Cut at the commas that no quotation mark encloses. */
    private static List<String> clauses(String header) {
        return Stream.of(header.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)")).toList();
    }
}
