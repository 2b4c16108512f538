package org.neckgeom.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.shop.TrialCut;
import tech.units.indriya.quantity.Quantities;

/** A program that never meets a foreign quantity must not pay for Indriya's start: none of its classes is loaded. */
class PlainPathTest {

    /** What a small program does: units, text, a reading, a verdict, a design, a refusal. */
    static final class Plain {
        private Plain() {}

        public static void main(String[] args) {
            Estimate<Length> offset = Estimate.of(ShopUnits.mm(0.14), ShopUnits.thou(0.8));
            System.out.println(Verdict.of(offset, Limits.within(ShopUnits.length("0.15 mm"))));
            System.out.println(TrialCut.walls(ShopUnits.inch("1 3/16"), ShopUnits.inch(1.2)));
            System.out.println(Neck.named("plain")
                    .scale(ShopUnits.mm(560))
                    .fingerboard(Fingerboard.tapered(ShopUnits.mm(34), ShopUnits.mm(46)))
                    .back(BackProfile.between(ShopUnits.mm(14), ShopUnits.mm(16))));
            System.out.println(ShopUnits.pitch("A3").plus(ShopUnits.rpm(60)));
            System.out.println(offset.expanded(ShopUnits.percent(95)).in(ShopUnit.INCH));
            try {
                ShopUnits.length("3 furlongs");
            } catch (IllegalArgumentException e) {
                System.out.println(e.getMessage());
            }
        }
    }

    /** The same, and then a quantity of Indriya's: shows that the check can fail. */
    static final class Foreign {
        private Foreign() {}

        public static void main(String[] args) {
            Plain.main(args);
            Quantity<Length> foreign = Quantities.getQuantity(3, tech.units.indriya.unit.Units.METRE);
            System.out.println(LibraryUnits.mm(foreign, "length"));
        }
    }

    @TempDir
    private Path folder;

    @Test
    void plainProgram_loadsNoClassOfIndriya() throws Exception {
        assertThat(classesLoadedBy(Plain.class)).isEmpty();
    }

    @Test
    void programWithAForeignQuantity_loadsIndriya() throws Exception {
        assertThat(classesLoadedBy(Foreign.class)).isNotEmpty();
    }

    private List<String> classesLoadedBy(Class<?> program) throws IOException, InterruptedException {
        Path log = folder.resolve("classes.txt");
        Path out = folder.resolve("out.txt");
        String classPath = Stream.of(program, Amount.class, Quantity.class, Quantities.class)
                .map(type -> type.getProtectionDomain().getCodeSource())
                .map(CodeSource::getLocation)
                .map(location ->
                        Path.of(java.net.URI.create(location.toString())).toString())
                .distinct()
                .collect(Collectors.joining(java.io.File.pathSeparator));
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xlog:class+load:file=" + log,
                        "-cp",
                        classPath + java.io.File.pathSeparator + others(),
                        program.getName())
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
        int exit = process.waitFor();

        String printed = Files.readString(out, StandardCharsets.UTF_8);
        assertThat(exit).as(printed).isZero();
        assertThat(printed).contains("UNDECIDED").contains("furlongs");
        List<String> loaded = Files.readAllLines(log, StandardCharsets.UTF_8);
        assertThat(loaded).anyMatch(line -> line.contains("org.neckgeom.units.Amount "));
        return loaded.stream().filter(line -> line.contains(" tech.units.")).toList();
    }

    /** What Indriya needs besides: its two small libraries, found where their classes come from. */
    private static String others() {
        return Stream.of("tech.uom.lib.common.function.ValueSupplier", "jakarta.inject.Singleton")
                .map(name -> {
                    try {
                        return Path.of(Class.forName(name)
                                        .getProtectionDomain()
                                        .getCodeSource()
                                        .getLocation()
                                        .toURI())
                                .toString();
                    } catch (ReflectiveOperationException | java.net.URISyntaxException e) {
                        throw new IllegalStateException(name, e);
                    }
                })
                .collect(Collectors.joining(java.io.File.pathSeparator));
    }
}
