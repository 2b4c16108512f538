package org.neckgeom.examples.shell;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import org.neckgeom.examples.file.Trouble;

/** Standard output that ends the process when nothing reads it any more: a {@code PrintStream} would print on for ever. */
final class EndingOutput extends OutputStream {

    /** What a shell reports of a command that a closed pipe has ended: 128 and the number of the signal (POSIX). */
    private static final int PIPE_CLOSED = 128 + 13;

    private final OutputStream out;

    private EndingOutput(OutputStream out) {
        this.out = out;
    }

    static PrintStream ofThisProcess() {
        // As the JDK chooses it, which can be asked for it from JDK 18 on.
        String usual = System.getProperty(
                "sun.stdout.encoding", Charset.defaultCharset().name());
        Charset charset = Charset.forName(System.getProperty("stdout.encoding", usual));
        return new PrintStream(new EndingOutput(new FileOutputStream(FileDescriptor.out)), true, charset);
    }

    @Override
    public void write(int b) {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int count) {
        try {
            out.write(bytes, from, count);
        } catch (IOException failed) {
            boolean isClosed = "Broken pipe".equals(failed.getMessage());
            if (!isClosed) {
                System.err.println("what the script prints can't be written: " + Trouble.inWords(failed));
            }
            // Not exit: a script's thread may be the one that writes, and hold what the end of the JVM waits for.
            Runtime.getRuntime().halt(isClosed ? PIPE_CLOSED : 1);
        }
    }
}
