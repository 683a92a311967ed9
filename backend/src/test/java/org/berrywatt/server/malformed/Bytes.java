package org.berrywatt.server.malformed;

import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Arrays;

/** Spoils a body where it is bytes: cut, not UTF-8, bottomless, larger than allowed. */
final class Bytes {

    private static final int DEPTH = 10_000;
    private static final int OVERSIZE = 70_000;

    private final Values values;

    Bytes(Values values) {
        this.values = values;
    }

    byte[] of(String body) {
        return switch (values.below(20)) {
            case 0 -> Arrays.copyOf(body.getBytes(UTF_8), values.below(body.length() + 1));
            case 1 -> spliced(body, 0xC3, 0x28);
            case 2 -> spliced(body, 0xED, 0xA0, 0x80);
            case 3 -> spliced(body, 0x00);
            case 4 -> ("[".repeat(DEPTH) + "]".repeat(DEPTH)).getBytes(UTF_8);
            case 5 -> ("{\"a\":".repeat(DEPTH) + body + "}".repeat(DEPTH)).getBytes(UTF_8);
            case 6 -> (body + " ".repeat(OVERSIZE)).getBytes(UTF_8);
            case 7 -> body.getBytes(UTF_16);
            case 8 -> (body + body).getBytes(UTF_8);
            default -> body.getBytes(UTF_8);
        };
    }

    private byte[] spliced(String body, int... strange) {
        var bytes = body.getBytes(UTF_8);
        var at = values.below(bytes.length + 1);
        var all = Arrays.copyOf(bytes, bytes.length + strange.length);
        System.arraycopy(bytes, at, all, at + strange.length, bytes.length - at);
        for (var i = 0; i < strange.length; i++) {
            all[at + i] = (byte) strange[i];
        }
        return all;
    }
}
