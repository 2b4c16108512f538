package org.neckgeom.examples;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), by which bytes are known again. */
final class Hash {

    private Hash() {}

    /** 64 lower-case hexadecimal digits. */
    static String of(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new AssertionError(everyPlatformHasIt);
        }
    }
}
