package org.neckgeom.examples.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TextFileTest {

    @TempDir
    Path folder;

    @Test
    void read_givesTheText() throws IOException {
        Path file = Files.writeString(folder.resolve("neck.yaml"), "name: Köa é\n");

        assertThat(TextFile.read(file)).isEqualTo("name: Köa é\n");
    }

    @Test
    void read_namesAMissingFileAndWhereItLooked() {
        assertThatThrownBy(() -> TextFile.read(Path.of("no-such-neck.yaml")))
                .isInstanceOf(FileRefused.class)
                .hasMessageStartingWith("no-such-neck.yaml: there is no such file; looked for ")
                .hasMessageEndingWith(
                        Path.of("no-such-neck.yaml").toAbsolutePath().toString());
    }

    @Test
    void read_refusesAFolder() {
        assertThatThrownBy(() -> TextFile.read(folder)).hasMessageEndingWith("but must be a file");
    }

    @Test
    void read_refusesAHugeFileWithoutReadingIt() throws IOException {
        Path file = Files.write(folder.resolve("huge.yaml"), new byte[2_000_000]);

        assertThatThrownBy(() -> TextFile.read(file))
                .hasMessageContaining("2000000 bytes, more than the 1048576 allowed");
    }

    @Test
    void read_namesTheLineThatIsNotUtf8() throws IOException {
        Path file = Files.write(folder.resolve("old.yaml"), "a: 1\nb: Köa\n".getBytes(StandardCharsets.ISO_8859_1));

        assertThatThrownBy(() -> TextFile.read(file))
                .hasMessage(file + ", line 2: holds a byte that is not UTF-8 text; save the file as UTF-8");
    }
}
