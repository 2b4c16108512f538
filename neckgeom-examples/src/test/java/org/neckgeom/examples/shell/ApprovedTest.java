package org.neckgeom.examples.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ApprovedTest {

    @TempDir
    Path folder;

    @Test
    void check_passesTheApprovedTextOnly() throws IOException {
        Path file = Files.writeString(folder.resolve("a.txt"), "one\ntwo\n");

        assertThatCode(() -> Approved.check(file, "one\ntwo\n")).doesNotThrowAnyException();
        assertThatThrownBy(() -> Approved.check(file, "one\ntwi\n"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("a.txt, line 2 (of 2 approved, 2 printed)")
                .hasMessageContaining("approved: two")
                .hasMessageContaining("printed:  twi");
        assertThatThrownBy(() -> Approved.check(file, "one\ntwo\nthree\n"))
                .hasMessageContaining("approved: (nothing more)");
        assertThatThrownBy(() -> Approved.check(file, "one\ntwo")).hasMessageContaining("line ends only");
    }

    @Test
    void check_failsWithoutAnApprovedFile() {
        assertThatThrownBy(() -> Approved.check(folder.resolve("none.txt"), "one\n"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("there is no approved file")
                .hasMessageContaining("one");
    }

    @Test
    void check_approvesAnewOnRequestAndSkips() throws IOException {
        Path file = folder.resolve("deep/new.txt");
        String before = System.getProperty(Approved.PROPERTY);
        System.setProperty(Approved.PROPERTY, "true");
        try {
            assertThatThrownBy(() -> Approved.check(file, "new\n"))
                    .isInstanceOf(org.opentest4j.TestAbortedException.class);
        } finally {
            if (before == null) {
                System.clearProperty(Approved.PROPERTY);
            } else {
                System.setProperty(Approved.PROPERTY, before);
            }
        }

        assertThat(file).hasContent("new\n");
    }
}
