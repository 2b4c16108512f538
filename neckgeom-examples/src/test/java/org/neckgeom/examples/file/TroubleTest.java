package org.neckgeom.examples.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class TroubleTest {

    /** What the JDK throws for a file "a", by its documentation. */
    static List<Arguments> failures() {
        return List.of(
                Arguments.of(new AccessDeniedException("a"), "you have no right to"),
                Arguments.of(new NoSuchFileException("a"), "it is not there"),
                Arguments.of(new FileAlreadyExistsException("a"), "something else of that name is there"),
                Arguments.of(new MalformedInputException(1), "it holds a byte that is not UTF-8 text"),
                Arguments.of(new FileSystemException("a", null, "Read-only file system"), "read-only file system"),
                Arguments.of(new IOException("No space left on device"), "no space left on device"),
                Arguments.of(new NotDirectoryException("a"), "the system gives no reason"),
                Arguments.of(new IOException(), "the system gives no reason"));
    }

    @ParameterizedTest
    @MethodSource("failures")
    void inWords_namesTheReasonAndNoClass(IOException failure, String words) {
        assertThat(Trouble.inWords(failure)).isEqualTo(words);
    }
}
