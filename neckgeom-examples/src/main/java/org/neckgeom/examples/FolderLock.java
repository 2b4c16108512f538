package org.neckgeom.examples;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * The right to write into a folder, for one writer at a time. The system takes it from a process that ends, however it
 * ends.
 */
final class FolderLock implements AutoCloseable {

    static final String NAME = ".neckgeom-lock";

    private static final String FIRST_LINE = "neckgeom writes here, process ";
    private static final int LONGEST = 200;
    private static final long PAUSE_MS = 5;

    /** Folders this process has the lock of or is trying to: to close a file anywhere in a process gives up its locks. */
    private static final Set<Path> HERE = new HashSet<>();

    private final Path folder;
    private final FileChannel locked;
    private final FileChannel readBack;

    private FolderLock(Path folder, FileChannel locked, FileChannel readBack) {
        this.folder = folder;
        this.locked = locked;
        this.readBack = readBack;
    }

    /**
     * Waits for the lock.
     *
     * @param folder a folder that is there
     * @param patience how long to wait
     * @throws Unwritable if another writer has the lock for longer, or a file of the lock's name is not a lock
     */
    static FolderLock of(Path folder, Duration patience) throws IOException {
        Path real = folder.toRealPath();
        long end = System.nanoTime() + patience.toNanos();
        while (true) {
            Optional<FolderLock> lock = tried(real);
            if (lock.isPresent()) {
                return lock.get();
            }
            if (System.nanoTime() >= end) {
                throw new Unwritable(
                        folder + " is being written to by " + holder(real) + "; try again when that is done");
            }
            try {
                Thread.sleep(PAUSE_MS);
            } catch (InterruptedException broken) {
                Thread.currentThread().interrupt();
                throw new Unwritable("waiting for " + folder + " was broken off");
            }
        }
    }

    private static Optional<FolderLock> tried(Path folder) throws IOException {
        if (!begin(folder)) {
            return Optional.empty();
        }
        FolderLock lock = null;
        try {
            lock = opened(folder);
        } finally {
            if (lock == null) {
                end(folder);
            }
        }
        return Optional.ofNullable(lock);
    }

    /** The lock; null while another process has it. */
    private static FolderLock opened(Path folder) throws IOException {
        Path file = folder.resolve(NAME);
        refuseOthers(file);
        FileChannel channel = FileChannel.open(
                file,
                StandardOpenOption.CREATE,
                StandardOpenOption.READ,
                StandardOpenOption.WRITE,
                LinkOption.NOFOLLOW_LINKS);
        FileChannel again = null;
        FolderLock lock = null;
        try {
            // Past the text, which others may read meanwhile.
            if (channel.tryLock(Long.MAX_VALUE - 1, 1, false) != null) {
                String text = FIRST_LINE + ProcessHandle.current().pid() + "\n" + UUID.randomUUID() + "\n";
                channel.truncate(0);
                channel.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8)));
                // The file may have been deleted by the one who had it before; then this lock is of nothing.
                if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                    again = FileChannel.open(file, StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS);
                    lock = text(again).equals(text) ? new FolderLock(folder, channel, again) : null;
                }
            }
        } catch (NoSuchFileException deleted) {
            return null;
        } finally {
            if (lock == null) {
                channel.close();
                if (again != null) {
                    again.close();
                }
            }
        }
        return lock;
    }

    /** A file of this name that no writer made is someone's own. */
    private static void refuseOthers(Path file) throws IOException {
        boolean own;
        try {
            // Asked once: the one who has the lock may delete it at any moment.
            own = Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
                    .isRegularFile();
            if (own) {
                try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS)) {
                    String text = text(channel);
                    own = text.isEmpty() || text.startsWith(FIRST_LINE) || FIRST_LINE.startsWith(text);
                }
            }
        } catch (NoSuchFileException gone) {
            return;
        }
        if (!own) {
            throw new Unwritable(file + " is not a lock of neckgeom; move it away to have this folder written to");
        }
    }

    private static String holder(Path folder) throws IOException {
        synchronized (HERE) {
            if (HERE.contains(folder)) {
                return "this very program";
            }
        }
        try (FileChannel channel =
                FileChannel.open(folder.resolve(NAME), StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS)) {
            String first = text(channel).lines().findFirst().orElse("");
            return first.startsWith(FIRST_LINE)
                    ? first.substring(FIRST_LINE.lastIndexOf("process"))
                    : "another program";
        } catch (NoSuchFileException gone) {
            return "another program";
        }
    }

    private static String text(FileChannel channel) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(LONGEST);
        channel.read(bytes, 0);
        return new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8);
    }

    private static boolean begin(Path folder) {
        synchronized (HERE) {
            return HERE.add(folder);
        }
    }

    private static void end(Path folder) {
        synchronized (HERE) {
            HERE.remove(folder);
        }
    }

    /** Gives the right up, and leaves nothing of it. */
    @Override
    public void close() throws IOException {
        try {
            Files.deleteIfExists(folder.resolve(NAME));
        } finally {
            try {
                readBack.close();
            } finally {
                try {
                    locked.close();
                } finally {
                    end(folder);
                }
            }
        }
    }
}
