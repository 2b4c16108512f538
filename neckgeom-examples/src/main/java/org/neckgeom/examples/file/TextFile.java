package org.neckgeom.examples.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The text of a file on disk, or one sentence on why it can't be had. */
public final class TextFile {

    /** The largest file looked at: a UTF-8 character takes up to four bytes. */
    private static final long MOST_BYTES = 4L * YamlText.MOST_CHARACTERS;

    private TextFile() {}

    /**
     * {@return the text of a UTF-8 file}
     *
     * @param path the file
     * @throws FileRefused if there is no such file, it is not a plain file, can't be read, is too large or is not UTF-8
     */
    public static String read(Path path) {
        Place whole = Place.whole(path.toString());
        if (!Files.exists(path)) {
            throw FileRefused.at(
                    whole,
                    "there is no such file; looked for " + path.toAbsolutePath().normalize());
        }
        if (!Files.isRegularFile(path)) {
            throw FileRefused.at(whole, "is a folder or a device, but must be a file");
        }
        try {
            long size = Files.size(path);
            if (size > MOST_BYTES) {
                throw FileRefused.at(
                        whole, "the file has " + size + " bytes, more than the " + MOST_BYTES + " allowed");
            }
            return decode(path.toString(), Files.readAllBytes(path));
        } catch (IOException unreadable) {
            throw FileRefused.at(whole, "the file can't be read: " + Trouble.inWords(unreadable));
        }
    }

    /**
     * Bytes as UTF-8 text.
     *
     * @param file the file's name, for the refusal
     * @param bytes its bytes
     * @return the text
     * @throws FileRefused naming the line of the first byte that is not UTF-8
     */
    static String decode(String file, byte[] bytes) {
        var decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        try {
            return decoder.decode(in).toString();
        } catch (CharacterCodingException broken) {
            int line = 1;
            for (int i = 0; i < in.position(); i++) {
                line += bytes[i] == '\n' ? 1 : 0;
            }
            throw FileRefused.at(
                    new Place(file, line, ""), "holds a byte that is not UTF-8 text; save the file as UTF-8");
        }
    }
}
