package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.TimeUnit;
import org.berrywatt.contract.JoinRequest;
import org.berrywatt.contract.SignInRequest;
import org.berrywatt.server.access.Teachers;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** Who may do what on the live socket, as {@link PermissionsTest} for the doors: everybody may listen, nobody may speak. */
@ServerTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SocketPermissionsTest {

    static final String FRAMES = """
            SUBSCRIBE /topic/labday.{id}.leaderboard,    yes, yes, yes, yes, yes
            SUBSCRIBE /topic/labday.{id}.room,           yes, yes, yes, yes, yes
            SUBSCRIBE /topic/labday.{id}.lesson,         no,  no,  no,  no,  no
            SUBSCRIBE /topic/labday.*.leaderboard,       no,  no,  no,  no,  no
            SUBSCRIBE /topic/labday.*.room,              no,  no,  no,  no,  no
            SUBSCRIBE /topic/**,                         no,  no,  no,  no,  no
            SUBSCRIBE /queue/errors,                     no,  no,  no,  no,  no
            SUBSCRIBE /user/queue/errors,                no,  no,  no,  no,  no
            SUBSCRIBE /app/labday.{id},                  no,  no,  no,  no,  no
            SEND /topic/labday.{id}.leaderboard,         no,  no,  no,  no,  no
            SEND /topic/labday.{id}.room,                no,  no,  no,  no,  no
            SEND /app/readings,                          no,  no,  no,  no,  no
            SEND /user/teacher/queue/errors,             no,  no,  no,  no,  no
            """;

    private static final String PASSWORD = "seven slow brass kettles";

    private final HttpClient client = HttpClient.newHttpClient();
    private final int port;
    private final UUID day;
    private final List<String> cookies;

    @Autowired
    SocketPermissionsTest(MockMvcTester server, JsonMapper json, Teachers teachers, @LocalServerPort int port) {
        this.port = port;
        var bench = new Bench(server, json);
        day = bench.day.id();
        var otherDay = new Bench(server, json);
        var name = "Listener " + day.toString().substring(0, 8);
        teachers.add(name, PASSWORD);
        var phone = bench.teacher.asNobody();
        cookies = List.of(
                "",
                joined(phone, otherDay.codeOf(otherDay.team("Hawthorn"))),
                joined(phone, bench.codeOf(bench.team("Elder"))),
                joined(phone, bench.codeOf(bench.team("Sloe"))),
                pass(phone, new SignInRequest(name, PASSWORD), "/api/access/sign-in"));
    }

    private static String joined(Api phone, String code) {
        return pass(phone, new JoinRequest(code), "/api/access/join");
    }

    private static String pass(Api phone, Object request, String address) {
        var cookie = phone.post(request, address).getResponse().getCookie("berrywatt-pass");
        return "berrywatt-pass=" + Objects.requireNonNull(cookie).getValue();
    }

    @ParameterizedTest(name = "{0}: nobody {1}, other day {2}, other team {3}, own team {4}, teacher {5}")
    @CsvSource(textBlock = FRAMES)
    void letsEverybodyListenAndNobodySpeak(
            String frame, String nobody, String otherDay, String otherTeam, String ownTeam, String teacher)
            throws Exception {
        for (var i = 0; i < cookies.size(); i++) {
            assertThat(isTaken(frame, cookies.get(i)))
                    .as("%s by caller %d", frame, i)
                    .isEqualTo(List.of(nobody, otherDay, otherTeam, ownTeam, teacher)
                            .get(i)
                            .equals("yes"));
        }
    }

    /** Whether the server lets the connection live until its orderly end. */
    private boolean isTaken(String frame, String cookie) throws Exception {
        var answers = new Answers();
        var address = URI.create("ws://localhost:" + port + "/live");
        var builder = client.newWebSocketBuilder().subprotocols("v12.stomp");
        var socket = (cookie.isEmpty() ? builder : builder.header("Cookie", cookie))
                .buildAsync(address, answers)
                .get(20, TimeUnit.SECONDS);
        socket.sendText(text("CONNECT", "accept-version:1.2\nhost:localhost"), true)
                .join();
        answers.connected.get(20, TimeUnit.SECONDS);
        socket.sendText(text(frame.replaceFirst(" .*", ""), "id:1\ndestination:" + destination(frame)), true)
                .thenCompose(sent -> sent.sendText(text("DISCONNECT", "receipt:bye"), true))
                .exceptionally(cut -> socket);
        try {
            return answers.receipt.get(20, TimeUnit.SECONDS);
        } finally {
            socket.abort();
        }
    }

    private String destination(String frame) {
        return frame.substring(frame.indexOf(' ') + 1).replace("{id}", day.toString());
    }

    private static String text(String command, String headers) {
        return command + "\n" + headers + "\n\n\0";
    }

    /** An ERROR frame, or the end before the receipt, is a refusal. */
    private static final class Answers implements WebSocket.Listener {

        private final CompletableFuture<Boolean> connected = new CompletableFuture<>();
        private final CompletableFuture<Boolean> receipt = new CompletableFuture<>();

        @Override
        public @Nullable CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean last) {
            var text = data.toString();
            if (text.startsWith("CONNECTED")) {
                connected.complete(true);
            } else if (text.startsWith("RECEIPT")) {
                receipt.complete(true);
            } else if (text.startsWith("ERROR")) {
                receipt.complete(false);
            }
            socket.request(1);
            return null;
        }

        @Override
        public @Nullable CompletionStage<?> onClose(WebSocket socket, int status, String reason) {
            receipt.complete(false);
            return null;
        }

        @Override
        public void onError(WebSocket socket, Throwable cause) {
            receipt.complete(false);
        }
    }
}
