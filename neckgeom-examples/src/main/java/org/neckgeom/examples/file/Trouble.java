package org.neckgeom.examples.file;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Locale;

/** Why a file can't be had or written, in words for its user. */
public final class Trouble {

    private Trouble() {}

    /**
     * {@return the reason, without the file's name and without the name of any class, such as {@code you have no right
     * to} or {@code no space left on device}}
     *
     * @param failure what the system reported
     */
    public static String inWords(IOException failure) {
        if (failure instanceof AccessDeniedException) {
            return "you have no right to";
        }
        if (failure instanceof NoSuchFileException) {
            return "it is not there";
        }
        if (failure instanceof FileAlreadyExistsException) {
            return "something else of that name is there";
        }
        if (failure instanceof CharacterCodingException) {
            return "it holds a byte that is not UTF-8 text";
        }
        String reason = failure instanceof FileSystemException system ? system.getReason() : failure.getMessage();
        return reason == null || reason.isBlank()
                ? "the system gives no reason"
                : reason.substring(0, 1).toLowerCase(Locale.ROOT) + reason.substring(1);
    }
}
