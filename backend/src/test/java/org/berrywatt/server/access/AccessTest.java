package org.berrywatt.server.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.net.http.HttpResponse;
import java.util.Locale;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.Browser;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.platform.KeyInHome;
import org.berrywatt.server.platform.Refusal;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;

/** Signing in and out as a browser does it. */
@ServerTest
class AccessTest {

    private static final String PASSWORD = "seven slow brass kettles";
    private static final String NEW = "eight slow brass kettles";

    private final JdbcClient database;
    private final Teachers teachers;
    private final Passes passes;
    private final PasswordChange change;
    private final KeyInHome home;
    private final String server;
    private final Browser browser;
    private final String name = "Teacher " + UUID.randomUUID().toString().substring(0, 8);

    @Autowired
    AccessTest(
            @LocalServerPort int port,
            Teachers teachers,
            Passes passes,
            PasswordChange change,
            KeyInHome home,
            JdbcClient database)
            throws Exception {
        this.database = database;
        this.teachers = teachers;
        this.passes = passes;
        this.change = change;
        this.home = home;
        server = "http://localhost:" + port;
        browser = Browser.at(server);
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

    @Test
    void changesAPasswordAndSignsTheTeacherOutEverywhereElse() throws Exception {
        var elsewhere = elsewhere();
        signIn(name, PASSWORD);
        assertThat(change(PASSWORD, NEW).statusCode()).isEqualTo(204);
        assertThat(browser.get("/api/access").body()).contains("\"kind\":\"teacher\"");
        assertThat(elsewhere.get("/api/labdays").statusCode()).isEqualTo(401);
        assertThat(signIn(name, PASSWORD).statusCode()).isEqualTo(401);
        assertThat(signIn(name, NEW).statusCode()).isEqualTo(200);
    }

    @Test
    void changesNoPasswordWithoutThePresentOne() throws Exception {
        var elsewhere = elsewhere();
        signIn(name, PASSWORD);
        var answer = change("not " + PASSWORD, NEW);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("password.wrong", "\"field\":\"present\"")
                .doesNotContain(PASSWORD, NEW);
        assertThat(elsewhere.get("/api/labdays").statusCode()).isEqualTo(200);
        assertThat(signIn(name, PASSWORD).statusCode()).isEqualTo(200);
    }

    @Test
    void givesNoPassToWhoeverSignedInWithThePasswordBeforeAChange() {
        var proven = teachers.signIn(name, PASSWORD);
        change.to(NEW, proven);
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> passes.issueTo(proven, new MockHttpServletRequest()))
                .satisfies(refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.SIGN_IN_REFUSED));
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> change.to(PASSWORD, proven))
                .satisfies(refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.PASSWORD_WRONG));
    }

    @Test
    void setsAForgottenPasswordAnewWithTheKeyFromTheServersHomeAndEndsAllPasses() throws Exception {
        var elsewhere = elsewhere();
        var key = home.make().text();
        assertThat(forgot(key, name, NEW).statusCode()).isEqualTo(204);
        assertThat(browser.get("/api/labdays").statusCode()).isEqualTo(200);
        assertThat(elsewhere.get("/api/labdays").statusCode()).isEqualTo(401);
        assertThat(signIn(name, NEW).statusCode()).isEqualTo(200);
        assertThat(forgot(key, name, PASSWORD).body()).contains("access.refused");
    }

    private HttpResponse<String> forgot(String key, String who, String password) throws Exception {
        return browser.post(
                "/api/access/new-password",
                "{\"key\": \"" + key + "\", \"name\": \"" + who + "\", \"password\": \"" + password + "\"}");
    }

    /** Another browser in which the teacher is signed in. */
    private Browser elsewhere() throws Exception {
        var other = Browser.at(server);
        other.post("/api/access/sign-in", "{\"name\": \"" + name + "\", \"password\": \"" + PASSWORD + "\"}");
        return other;
    }

    private HttpResponse<String> change(String present, String password) throws Exception {
        return browser.put(
                "/api/access/password", "{\"present\": \"" + present + "\", \"password\": \"" + password + "\"}");
    }

    private HttpResponse<String> signIn(String who, String password) throws Exception {
        return browser.post("/api/access/sign-in", "{\"name\": \"" + who + "\", \"password\": \"" + password + "\"}");
    }
}
