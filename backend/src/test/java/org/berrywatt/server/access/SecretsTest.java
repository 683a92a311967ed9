package org.berrywatt.server.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.JoinRequest;
import org.berrywatt.contract.SetupRequest;
import org.berrywatt.contract.SignInRequest;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

/** What opens something is told to nobody who only reads along. */
@ServerTest
@ExtendWith(OutputCaptureExtension.class)
class SecretsTest {

    private static final String PASSWORD = "eleven quiet copper moons";
    private static final String WRONG = "twelve quiet copper moons";

    private final String name = "Teacher " + UUID.randomUUID().toString().substring(0, 8);
    private final Bench bench;
    private final Api phone;

    @Autowired
    SecretsTest(MockMvcTester server, JsonMapper json, Teachers teachers, Journal journal) {
        journal.sumUp(); // tests before this one may have used up the minute's lines
        bench = new Bench(server, json);
        phone = bench.teacher.asNobody().from("192.0.2.16");
        teachers.add(name, PASSWORD);
    }

    @Test
    void keepsPasswordsCodesKeysAndPassesOutOfTheLogAndTheConsole(CapturedOutput output) {
        var code = bench.codeOf(bench.team("Quince"));
        var signedIn = phone.post(new SignInRequest(name, PASSWORD), "/api/access/sign-in");
        var refused = phone.post(new SignInRequest(name, WRONG), "/api/access/sign-in");
        var joined = phone.post(new JoinRequest(code), "/api/access/join");
        var guessed = phone.post(new JoinRequest("QQQQQQ"), "/api/access/join");
        phone.post("{\"name\": \"" + name + "\", \"password\": [\"" + PASSWORD + "\"]}", "/api/access/sign-in");
        phone.post(new SetupRequest("abcd-efgh-jkmn-pqrs", name, PASSWORD), "/api/access/setup");
        assertThat(List.of(status(signedIn), status(refused), status(joined), status(guessed)))
                .containsExactly(200, 401, 200, 401);
        assertThat(output.getAll())
                .doesNotContain(PASSWORD, WRONG, code, "QQQQQQ", "abcd-efgh", pass(signedIn), pass(joined));
    }

    /** Somebody typed the password into the field for the name. */
    @Test
    void namesNobodyInTheLogButKnownAccounts(CapturedOutput output) {
        phone.post(new SignInRequest(PASSWORD, ""), "/api/access/sign-in");
        phone.post(new SignInRequest(name, WRONG), "/api/access/sign-in");
        assertThat(output.getAll())
                .contains("refused: unknown name, POST /api/access/sign-in from 192.0.2.16")
                .contains("refused: teacher \"" + name + "\", POST /api/access/sign-in from 192.0.2.16")
                .doesNotContain(PASSWORD, WRONG);
    }

    @Test
    void tellsTheLogOfWaysInAndOfWhatWasNotAllowed(CapturedOutput output) {
        var team = bench.team("Medlar");
        phone.post(new SignInRequest(name, PASSWORD), "/api/access/sign-in");
        phone.post(new JoinRequest(bench.codeOf(team)), "/api/access/join");
        team.get("/api/labdays");
        assertThat(output.getAll())
                .contains("new pass: teacher \"" + name + "\", POST /api/access/sign-in from 192.0.2.16")
                .contains("new pass: " + team.caller().signature() + ", POST /api/access/join from 192.0.2.16")
                .contains("not allowed: " + team.caller().signature() + ", GET /api/labdays from 127.0.0.1");
    }

    @Test
    void keepsPassesAndPasswordsOutOfEveryAnswer() throws Exception {
        var signedIn = phone.post(new SignInRequest(name, PASSWORD), "/api/access/sign-in");
        var refused = phone.post(new SignInRequest(name, WRONG), "/api/access/sign-in");
        assertThat(signedIn.getResponse().getContentAsString()).doesNotContain(PASSWORD, pass(signedIn), "pbkdf2");
        assertThat(refused.getResponse().getContentAsString()).doesNotContain(WRONG, "pbkdf2");
    }

    private static int status(MvcTestResult answer) {
        return answer.getResponse().getStatus();
    }

    private static String pass(MvcTestResult answer) {
        return Objects.requireNonNull(answer.getResponse().getCookie("berrywatt-pass"))
                .getValue();
    }
}
