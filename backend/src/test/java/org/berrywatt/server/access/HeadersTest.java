package org.berrywatt.server.access;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import org.berrywatt.server.ServerTest;
import org.berrywatt.server.malformed.RawDoor;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Every answer tells the browser what it may do with it, whichever part of the server gave it. */
@ServerTest
class HeadersTest {

    private static final String LONG = "Content-Length: 70000";

    private final RawDoor door;

    HeadersTest(@LocalServerPort int port) {
        door = new RawDoor(port);
    }

    @ParameterizedTest(name = "{0} {1}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
            GET /                       | HTTP/1.1 |                        | 200
            GET /wall.html              | HTTP/1.1 |                        | 200
            GET /css/tokens.css         | HTTP/1.1 |                        | 200
            GET /nothing-here           | HTTP/1.1 |                        | 404
            GET /error                  | HTTP/1.1 |                        | 404
            GET /api/access             | HTTP/1.1 |                        | 200
            GET /api/labdays            | HTTP/1.1 |                        | 401
            GET /api/problems/none      | HTTP/1.1 |                        | 404
            PUT /api/teams/1            | HTTP/1.1 |                        | 403
            DELETE /api/calculations/x  | HTTP/1.1 |                        | 404
            PUT /api/calculations/light | HTTP/1.1 |                        | 405
            POST /api/calculations/light | HTTP/1.1 | Content-Length: 70000 | 413
            POST /api/calculations/light | HTTP/1.1 | Content-Type: */*     | 415
            POST /api/calculations/light | HTTP/1.1 | Content-Type: application/x-www-form-urlencoded | 415
            POST /api/calculations/light | HTTP/1.1 | Content-Type: multipart/form-data; boundary=x   | 415
            POST /api/calculations/light | HTTP/1.1 | Content-Type: strange | 415
            POST /api/calculations/light | HTTP/1.1 | Content-Type: text/plain | 415
            GET /api/..;/labdays        | HTTP/1.1 |                        | 400
            GET /api//labdays           | HTTP/1.1 |                        | 400
            GET /api/%00                | HTTP/1.1 |                        | 400
            GET /api/%2e%2e/x           | HTTP/1.1 |                        | 400
            GET /                       | HTTP/9.9 |                        | 400
            GET                         | HTTP/1.1 |                        | 400
            GET /                       | HTTP/1.1 | Content-Length: -5     | 400
            GET /                       | HTTP/1.1 | no colon here          | 400
            GET /live                   | HTTP/1.1 |                        | 400
            GET /actuator/health        | HTTP/1.1 |                        | 200
            GET /actuator/metrics       | HTTP/1.1 |                        | 401
            GET /v3/api-docs            | HTTP/1.1 |                        | 200
            """)
    void tellsTheBrowserWhatItMayDo(String request, String version, @Nullable String header, int status)
            throws Exception {
        var answer = door.send("127.0.0.1", bytes(request, version, header)).text();
        var head = answer.substring(0, answer.indexOf("\r\n\r\n"));
        assertThat(head)
                .startsWith("HTTP/1.1 " + status)
                .contains(
                        "X-Content-Type-Options: nosniff",
                        "Referrer-Policy: no-referrer",
                        "X-Frame-Options: DENY",
                        "default-src 'none'",
                        "object-src 'none'",
                        "base-uri 'none'",
                        "frame-ancestors 'none'")
                .doesNotContain("unsafe-", "Server:", "X-Powered-By", "Access-Control-Allow-Origin");
        assertThat(head.lines().filter(line -> line.startsWith("Content-Security-Policy")))
                .hasSize(1);
    }

    private static byte[] bytes(String request, String version, @Nullable String header) {
        var lines = request + " " + version + "\r\nHost: localhost\r\nConnection: close\r\n"
                + (header == null ? "" : header + "\r\n") + "\r\n";
        return (lines + (LONG.equals(header) ? " ".repeat(70_000) : "")).getBytes(ISO_8859_1);
    }
}
