package org.neckgeom.examples.release;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** Finds the paths of the building machine in what is to be published, inside jars too. */
final class MachineTraces {

    private final List<String> paths;

    /** Traces are what contains one of these texts. */
    MachineTraces(List<String> paths) {
        this.paths = List.copyOf(paths);
    }

    /** The project's folder, the user's home, the JDK and the local repository of this machine. */
    static MachineTraces ofThisMachine(Path stage) {
        Path project = Objects.requireNonNull(stage.getParent()).getParent();
        return new MachineTraces(Stream.of(
                        project.toString(),
                        System.getProperty("user.dir"),
                        System.getProperty("user.home") + "/",
                        System.getProperty("java.home"),
                        System.getProperty("maven.repo.local"),
                        System.getProperty("java.io.tmpdir") + "/")
                .filter(Objects::nonNull)
                .distinct()
                .toList());
    }

    /** One sentence for each trace in a file or, when it is a jar, in its entries. */
    List<String> in(String file, byte[] bytes) throws IOException {
        List<String> found = new ArrayList<>();
        if (!file.endsWith(".jar")) {
            look(file, bytes, found);
            return found;
        }
        try (ZipInputStream jar = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = jar.getNextEntry(); entry != null; entry = jar.getNextEntry()) {
                look(file + " in " + entry.getName(), jar.readAllBytes(), found);
            }
        }
        return found;
    }

    private void look(String where, byte[] bytes, List<String> found) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        for (String path : paths) {
            if (text.contains(path)) {
                found.add(where + " names the path " + path + " of the building machine");
            }
        }
    }
}
