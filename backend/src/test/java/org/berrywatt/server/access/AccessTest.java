package org.berrywatt.server.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Locale;
import java.util.UUID;
import org.berrywatt.server.Browser;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;

/** Signing in and out as a browser does it. */
@ServerTest
class AccessTest {

    private static final String PASSWORD = "seven slow brass kettles";
    private final JdbcClient database;
    private final Browser browser;
    private final String name = "Teacher " + UUID.randomUUID().toString().substring(0, 8);

    AccessTest(@LocalServerPort int port, @Autowired Teachers teachers, @Autowired JdbcClient database)
            throws Exception {
        this.database = database;
        browser = Browser.at("http://localhost:" + port);
        teachers.add(name, PASSWORD);
    }

    @Test
    void takesABrowserWithoutAPassForNobody() throws Exception {
        assertThat(browser.get("/api/access").body()).contains("\"kind\":\"nobody\"");
    }

    @Test
    void knowsATeacherAgainUntilSigningOut() throws Exception {
        signIn(name, PASSWORD);
        assertThat(browser.get("/api/access").body()).contains("\"kind\":\"teacher\"", name);
        browser.post("/api/access/sign-out", "{}");
        assertThat(browser.get("/api/access").body()).contains("\"kind\":\"nobody\"");
    }

    @Test
    void doesNotMindCaseAndSpacesInAName() throws Exception {
        assertThat(signIn("  " + name.toUpperCase(Locale.ROOT), PASSWORD).statusCode())
                .isEqualTo(200);
    }

    @Test
    void tellsNothingAboutWhichOfNameAndPasswordIsWrong() throws Exception {
        var wrongPassword = signIn(name, "wrong " + PASSWORD);
        var unknownName = signIn("nobody " + name, PASSWORD);
        assertThat(wrongPassword.statusCode()).isEqualTo(401);
        assertThat(unknownName.statusCode()).isEqualTo(401);
        assertThat(unknownName.body()).isEqualTo(wrongPassword.body()).contains("access.refused");
    }

    @Test
    void slowsDownGuessingAtOneAccountAndSaysHowLongToWait() throws Exception {
        HttpResponse<String> answer = signIn(name, "guess 0");
        for (int guess = 1; guess <= 30 && answer.statusCode() == 401; guess++) {
            answer = signIn(name, "guess " + guess);
        }
        assertThat(answer.statusCode()).isEqualTo(429);
        assertThat(answer.headers().firstValue("Retry-After")).get().asString().matches("[1-9][0-9]*");
        assertThat(answer.body()).contains("access.slowDown", "Wait ");
        assertThat(signIn(name, PASSWORD).statusCode()).isEqualTo(429);
    }

    @Test
    void givesAPassThatNoScriptAndNoOtherSiteCanUse() throws Exception {
        var cookie = signIn(name, PASSWORD).headers().allValues("Set-Cookie");
        assertThat(cookie)
                .anySatisfy(pass -> assertThat(pass)
                        .startsWith("berrywatt-pass=")
                        .contains("HttpOnly", "SameSite=Strict", "Path=/"));
    }

    @Test
    void showsMetricsToTeachersOnly() throws Exception {
        assertThat(browser.get("/actuator/metrics").statusCode()).isEqualTo(401);
        signIn(name, PASSWORD);
        assertThat(browser.get("/actuator/metrics").statusCode()).isEqualTo(200);
        assertThat(browser.get("/actuator/env").statusCode()).isEqualTo(404);
    }

    @Test
    void refusesASecondFirstTeacher() throws Exception {
        var setup = "{\"key\": \"any\", \"name\": \"Second\", \"password\": \"" + PASSWORD + "\"}";
        assertThat(browser.post("/api/access/setup", setup).body()).contains("setup.done");
    }

    @Test
    void asksForWhatASignInLacks() throws Exception {
        var answer = browser.post("/api/access/sign-in", "{\"name\": \"" + name + "\"}");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("value.missing", "\"field\":\"password\"");
    }

    @Test
    void keepsThePasswordOfAnEarlierServerAnewAtTheNextSignIn() throws Exception {
        database.sql("update teacher set password_hash = ? where name = ?")
                .params("{bcrypt}" + new BCryptPasswordEncoder(4).encode(PASSWORD), name)
                .update();
        assertThat(signIn(name, PASSWORD).statusCode()).isEqualTo(200);
        assertThat(database.sql("select password_hash from teacher where name = ?")
                        .param(name)
                        .query(String.class)
                        .single())
                .startsWith("{pbkdf2-sha512}");
        assertThat(signIn(name, PASSWORD).statusCode()).isEqualTo(200);
    }

    private HttpResponse<String> signIn(String who, String password) throws Exception {
        return browser.post("/api/access/sign-in", "{\"name\": \"" + who + "\", \"password\": \"" + password + "\"}");
    }
}
