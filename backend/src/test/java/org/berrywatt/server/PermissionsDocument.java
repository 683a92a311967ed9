package org.berrywatt.server;

import java.util.List;
import java.util.stream.Collectors;

/** Who may do what as a page to read: the tables that {@link PermissionsTest} and {@link SocketPermissionsTest} try out. */
final class PermissionsDocument {

    private static final String HEAD = """
            # Who may do what

            Written by `sh deploy/api.sh` from the tables that `PermissionsTest` and `SocketPermissionsTest` try out, every line with every
            caller; not by hand. A door that is not in the table fails the build, and so does this page when it is not as it was tried.

            *Nobody* also stands for whoever got the link of a day's Wall: the link holds the day's id and nothing else. A *team* is a phone
            that joined with the team's code; *other day* is a team of another day. Every teacher may do what any teacher may. With a day's
            code in the request, anybody may name a new team where the day allows it (`JoiningTest`).

            - `yes`: done, or refused for a reason of its own (a number behind it: the status that the trial met, such as 409 for
              what was there already)
            - `–`: 401, nobody is known
            - `no`: 403, known and not allowed
            """;

    private static final String COLUMNS = """
            | | nobody | other day | other team | own team | teacher |
            |---|---|---|---|---|---|
            """;

    private static final String SOCKET = """

            ## The live socket

            STOMP at `/live`. Listening needs no pass, as looking at the Wall needs none; `no` is an ERROR frame and the end of the
            connection. Handshakes from pages of other sites are refused with 403 (`LiveTest`).

            """;

    private static final String REST = """

            ## Everything else

            | | nobody | team | teacher |
            |---|---|---|---|
            | pages, scripts, pictures | yes | yes | yes |
            | `GET /v3/api-docs` | yes | yes | yes |
            | `GET /actuator/health` | yes | yes | yes |
            | `GET /actuator/metrics` | – | no | yes |
            | anything else under `/actuator` | – | no | 404 |
            """;

    private PermissionsDocument() {}

    static String text() {
        return HEAD + "\n## The doors\n\n" + COLUMNS + table(PermissionsTest.DOORS) + SOCKET + COLUMNS
                + table(SocketPermissionsTest.FRAMES) + REST;
    }

    private static String table(String rows) {
        return rows.lines().map(PermissionsDocument::row).collect(Collectors.joining("\n", "", "\n"));
    }

    private static String row(String line) {
        var parts = List.of(line.strip().split(",\\s+"));
        var name = "`" + parts.get(0).strip().replaceAll(" +", " ").replace(" (edit)", "` (edit)`") + "`";
        return ("| " + name + " | "
                        + parts.subList(1, parts.size()).stream()
                                .map(PermissionsDocument::word)
                                .collect(Collectors.joining(" | "))
                        + " |")
                .replace("``", "");
    }

    private static String word(String tried) {
        return switch (tried.strip()) {
            case "200" -> "yes";
            case "401" -> "–";
            case "403" -> "no";
            case "yes", "no" -> tried.strip();
            default -> "yes (" + tried.strip() + ")";
        };
    }
}
