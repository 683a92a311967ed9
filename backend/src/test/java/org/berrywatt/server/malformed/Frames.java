package org.berrywatt.server.malformed;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.StringJoiner;
import java.util.UUID;

/** Malformed frames for the live socket: STOMP 1.2 that is none, in web socket frames (RFC 6455) that are none. Seeded. */
final class Frames {

    private static final List<String> COMMANDS = List.of(
            "CONNECT",
            "STOMP",
            "SUBSCRIBE",
            "SEND",
            "UNSUBSCRIBE",
            "ACK",
            "NACK",
            "BEGIN",
            "COMMIT",
            "ABORT",
            "DISCONNECT",
            "MESSAGE",
            "ERROR",
            "CONNECTED",
            "RECEIPT",
            "subscribe",
            "",
            "GET / HTTP/1.1",
            "SUBSCRIBE ",
            "\u202ESEND",
            "\u0000");

    private static final List<String> HEADERS = List.of(
            "destination",
            "id",
            "accept-version",
            "host",
            "heart-beat",
            "content-length",
            "receipt",
            "ack",
            "transaction",
            "login",
            "passcode",
            "selector",
            "subscription",
            "",
            "__TypeId__",
            "x".repeat(300));

    private static final List<String> VALUES = List.of(
            "/topic/labday.%s.room",
            "/topic/**",
            "/topic/labday.*.leaderboard",
            "/user/x",
            "/app/x",
            "1.2",
            "9.9",
            "0,0",
            "-1,1e9",
            "999999999999999999999,1",
            "a,b,c",
            "-5",
            "5",
            "2147483648",
            "\\x",
            "a:b",
            "T(java.lang.Runtime)",
            "headers['x'] == 1/0",
            "\u0000",
            "\uFEFF",
            "\u202E",
            "x".repeat(3_000),
            "");

    /** RFC 6455, 5.5.3: its words come back as they are, so that they must be none that tell of insides. */
    private static final int PING = 0x9;

    private static final byte[] CLOSE = {(byte) 0x88, (byte) 0x80, 0, 0, 0, 0};

    private final Values values;
    private final UUID day;

    Frames(UUID day, long seed) {
        this.day = day;
        values = new Values(new SplittableRandom(seed), Map.of());
    }

    /** A handshake and one to four frames, the first mostly a good one, and the end. */
    byte[] next() {
        var all = new ByteArrayOutputStream();
        all.writeBytes(handshake().getBytes(UTF_8));
        if (!values.chance(8)) {
            all.writeBytes(framed(0x81, "CONNECT\naccept-version:1.2\nhost:localhost\n\n\u0000".getBytes(UTF_8)));
        }
        for (var left = 1 + values.below(3); left > 0; left--) {
            all.writeBytes(frame());
        }
        all.writeBytes(CLOSE);
        return all.toByteArray();
    }

    private String handshake() {
        var key = values.chance(30) ? "short" : "dGhlIHNhbXBsZSBub25jZQ==";
        var version = values.chance(30) ? "99" : "13";
        var protocol = values.chance(10) ? "v9.stomp, \u0001" : "v12.stomp";
        return "GET /live HTTP/1.1\r\nHost: localhost\r\nConnection: Upgrade\r\nUpgrade: websocket\r\nSec-WebSocket-Key: "
                + key + "\r\nSec-WebSocket-Version: " + version + "\r\nSec-WebSocket-Protocol: " + protocol
                + "\r\n\r\n";
    }

    private byte[] frame() {
        var payload = stomp().getBytes(UTF_8);
        return switch (values.below(12)) {
            case 0 -> framed(0x80 | kindButPing(), payload);
            case 1 -> framed(0xF1, payload);
            case 2 -> framed(0x01, payload);
            case 3 -> framed(0x81, new byte[] {(byte) 0xC3, 0x28, (byte) 0xED, (byte) 0xA0, 0});
            case 4 -> framed(0x80 | PING, "ping".repeat(1 + values.below(60)).getBytes(UTF_8));
            case 5 -> new byte[] {(byte) 0x81, (byte) 0xFF, 127, -1, -1, -1, -1, -1, -1, -1, 0, 0, 0, 0};
            case 6 -> new byte[] {(byte) 0x81, 5, 'h', 'e', 'l', 'l', 'o'};
            case 7 -> framed(0x82, payload);
            default -> framed(0x81, payload);
        };
    }

    private int kindButPing() {
        int kind = values.below(16);
        return kind == PING ? kind + 1 : kind;
    }

    /** Masked with zeros, which leaves the payload as it is. */
    private static byte[] framed(int head, byte[] payload) {
        var all = new ByteArrayOutputStream();
        all.write(head);
        if (payload.length < 126) {
            all.write(0x80 | payload.length);
        } else {
            all.writeBytes(new byte[] {(byte) 0xFE, (byte) (payload.length >> 8), (byte) payload.length});
        }
        all.writeBytes(new byte[4]);
        all.writeBytes(payload);
        return all.toByteArray();
    }

    private String stomp() {
        var lines = new StringJoiner("\n");
        lines.add(values.one(COMMANDS));
        for (var left = values.below(6); left > 0; left--) {
            lines.add(values.one(HEADERS) + (values.chance(12) ? "" : ":") + value());
        }
        var body = values.chance(3) ? values.bad() : "{}";
        var text = lines + "\n\n" + body.substring(0, Math.min(body.length(), 4_000));
        return values.chance(6) ? text : text + "\u0000";
    }

    private String value() {
        return values.one(VALUES).replace("%s", day.toString());
    }
}
