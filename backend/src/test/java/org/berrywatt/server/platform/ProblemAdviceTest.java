package org.berrywatt.server.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import org.berrywatt.contract.Problem;
import org.berrywatt.server.Browser;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.json.JsonMapper;

/** Requests that no feature ever sees, over a real connection. */
@ServerTest
class ProblemAdviceTest {

    private static final String SIGN_IN = "/api/access/sign-in";
    private final Browser browser;

    ProblemAdviceTest(@LocalServerPort int port) throws Exception {
        browser = Browser.at("http://localhost:" + port);
    }

    @Test
    void namesTheFieldWhereTheBodyStopsMakingSense() throws Exception {
        var problem = problem(400, browser.post(SIGN_IN, "{\"name\": {\"first\": 1}, \"password\": \"x\"}"));
        assertThat(problem.code()).isEqualTo("request.unreadable");
        assertThat(problem.field()).isEqualTo("name");
    }

    @Test
    void answersBrokenJson() throws Exception {
        assertThat(problem(400, browser.post(SIGN_IN, "{\"name\": ")).code()).isEqualTo("request.unreadable");
    }

    @Test
    void answersAMethodThatIsNotOffered() throws Exception {
        var answer = browser.put(SIGN_IN, "{}");
        assertThat(problem(405, answer).code()).isEqualTo("request.method");
        assertThat(answer.headers().firstValue("Allow")).hasValue("POST");
    }

    @Test
    void answersAnUnknownAddress() throws Exception {
        assertThat(problem(404, browser.get("/api/nowhere")).code()).isEqualTo("notFound");
        assertThat(problem(404, browser.get("/nowhere.html")).code()).isEqualTo("notFound");
    }

    @Test
    void answersWhatTheFirewallRejects() throws Exception {
        assertThat(problem(400, browser.get("/api/..%2faccess;x=1")).code()).isEqualTo("request.unreadable");
    }

    @Test
    void refusesABodyOfTenMegabytesWhoseLengthIsAnnounced() throws Exception {
        var answer = browser.send("POST", SIGN_IN, BodyPublishers.ofByteArray(new byte[10_000_000]));
        assertThat(problem(413, answer).limit()).isEqualTo("64 KB");
    }

    @Test
    void refusesABodyOfTenMegabytesThatComesInChunks() throws Exception {
        var body = ("{\"name\": \"" + "x".repeat(10_000_000) + "\"}").getBytes(StandardCharsets.UTF_8);
        var answer = browser.send("POST", SIGN_IN, BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(body)));
        assertThat(problem(413, answer).code()).isEqualTo("request.tooLarge");
    }

    @Test
    void refusesAWriteWithoutTheTokenFromTheCookie() throws Exception {
        assertThat(problem(403, browser.withoutToken().post("/api/access/sign-out", "{}"))
                        .code())
                .isEqualTo("access.pageOutdated");
    }

    @Test
    void explainsTheKindOfProblemUnderItsType() throws Exception {
        var type = problem(404, browser.get("/api/nowhere")).type();
        assertThat(browser.get(type.toString()).body()).contains("\"code\":\"notFound\"", "\"status\":404");
    }

    @Test
    void describesTheApiWhenAsked() throws Exception {
        assertThat(browser.get("/v3/api-docs").body()).contains("\"openapi\":\"3.", "/api/access/sign-in");
    }

    private static Problem problem(int status, HttpResponse<String> answer) {
        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
        assertThat(answer.body()).doesNotContain("Exception", "\tat ");
        return new JsonMapper().readValue(answer.body(), Problem.class);
    }
}
