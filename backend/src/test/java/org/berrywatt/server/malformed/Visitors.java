package org.berrywatt.server.malformed;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.berrywatt.server.Bench;
import org.berrywatt.server.access.Teachers;

/**
 * Who sends malformed requests: mostly a teacher, whom most doors let in, a team, and nobody.
 *
 * @param teacher cookie with a teacher's pass
 * @param team cookie with a team's pass
 * @param known what exists, so that some requests come far
 */
record Visitors(String teacher, String team, Map<String, UUID> known) {

    private static final String PASSWORD = "seven slow brass kettles";
    private static final String TOKEN = "11111111-2222-3333-4444-555555555555";
    private static final Pattern PASS = Pattern.compile("Set-Cookie: (berrywatt-pass=[^;]+)");

    static Visitors of(RawDoor door, Bench bench, Teachers teachers) throws IOException {
        var name = "Malformed " + UUID.randomUUID().toString().substring(0, 8);
        teachers.add(name, PASSWORD);
        var own = bench.team("Medlar");
        var known = Map.of(
                "labday", bench.day.id(),
                "team", Bench.teamId(own),
                "cell", bench.cell(own, "M1"),
                "station", bench.station("Malformed lamp"));
        return new Visitors(
                pass(door, "/api/access/sign-in", "{\"name\":\"" + name + "\",\"password\":\"" + PASSWORD + "\"}"),
                pass(door, "/api/access/join", "{\"code\":\"" + bench.codeOf(own) + "\"}"),
                known);
    }

    UUID day() {
        return Objects.requireNonNull(known.get("labday"));
    }

    /** Headers for the n-th request. */
    Stream<String> pass(int n) {
        return switch (n % 8) {
            case 0 -> headers("");
            case 1, 2 -> headers(team);
            default -> headers(teacher);
        };
    }

    private static Stream<String> headers(String pass) {
        return Stream.of("Cookie: XSRF-TOKEN=" + TOKEN + pass, "X-XSRF-TOKEN: " + TOKEN);
    }

    private static String pass(RawDoor door, String address, String body) throws IOException {
        var request = "POST " + address + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
                + String.join("\r\n", headers("").toList())
                + "\r\nContent-Type: application/json\r\nContent-Length: " + body.length() + "\r\n\r\n" + body;
        var answer = door.send("127.0.0.1", request.getBytes(UTF_8)).text();
        var cookie = PASS.matcher(answer);
        if (!cookie.find()) {
            throw new AssertionError("no pass in " + answer);
        }
        return "; " + cookie.group(1);
    }
}
