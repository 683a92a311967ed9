package org.berrywatt.server.archive;

import java.io.InputStream;
import java.io.OutputStream;
import java.security.DigestInputStream;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4) of what passes by. */
final class Checksum {

    private final MessageDigest digest;

    Checksum() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    OutputStream passingOn(OutputStream out) {
        return new DigestOutputStream(out, digest);
    }

    InputStream passingOn(InputStream in) {
        return new DigestInputStream(in, digest);
    }

    /** Ends the sum. */
    String hex() {
        return HexFormat.of().formatHex(digest.digest());
    }

    static String of(byte[] bytes) {
        var sum = new Checksum();
        sum.digest.update(bytes);
        return sum.hex();
    }
}
