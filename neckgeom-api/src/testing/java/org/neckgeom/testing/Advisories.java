package org.neckgeom.testing;

import java.io.IOException;
import java.lang.module.ModuleDescriptor.Version;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Published advisories on what a module runs or is tested on, out of the list {@code advisories.csv} that comes with the
 * build: no network, so no newer than the list.
 */
public final class Advisories {

    private static final Path LIST = Path.of("..", "neckgeom-api", "src", "testing", "advisories.csv");

    private Advisories() {}

    /** What stands on this module's path in a version that an advisory names. */
    public static List<String> faults() throws IOException {
        List<String> faults = new ArrayList<>();
        for (Path jar : Licences.jars()) {
            Path version = Objects.requireNonNull(jar.getParent());
            faults.addAll(of(
                    version.getParent().getFileName().toString(),
                    version.getFileName().toString()));
        }
        return faults;
    }

    /** What the list has on a version of an artifact. */
    public static List<String> of(String artifact, String version) throws IOException {
        Version is = Version.parse(version);
        return Files.readAllLines(LIST).stream()
                .filter(line -> line.startsWith(artifact + ","))
                .map(line -> line.split(",", -1))
                .filter(cells -> cells[1].isEmpty() || is.compareTo(Version.parse(cells[1])) >= 0)
                .filter(cells -> cells[2].isEmpty() || is.compareTo(Version.parse(cells[2])) < 0)
                .map(cells -> artifact + " " + version + " has " + cells[3])
                .toList();
    }
}
