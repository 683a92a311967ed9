package org.berrywatt.server.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.SignOutRequest;
import org.berrywatt.contract.SignedInBrowser;
import org.berrywatt.server.Browser;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.mock.web.MockHttpServletRequest;
import tools.jackson.databind.json.JsonMapper;

/** Where a teacher is signed in, and the end of it there: two browsers and one that lists them. */
@ServerTest
class SignedInBrowsersTest {

    private static final String PASSWORD = "seven slow brass kettles";

    private final JsonMapper json;
    private final Teachers teachers;
    private final Passes passes;
    private final String server;
    private final Browser lost;
    private final Browser home;
    private final Browser here;

    @Autowired
    SignedInBrowsersTest(JsonMapper json, Teachers teachers, Passes passes, @LocalServerPort int port) {
        this.json = json;
        this.teachers = teachers;
        this.passes = passes;
        this.server = "http://localhost:" + port;
        var teacher = newTeacher();
        lost = signedIn(teacher, "Mozilla/5.0 (Macintosh; Intel Mac OS X x.y; rv:42.0) Gecko/20100101 Firefox/42.0");
        home = signedIn(teacher, "a browser of its own");
        here = signedIn(teacher, "Mozilla/5.0 (X11; Linux x86_64; rv:42.0) Gecko/20100101 Firefox/42.0");
    }

    @Test
    void listsThisBrowserFirstThenTheLatest() throws Exception {
        assertThat(listed(here)).extracting(SignedInBrowser::here).containsExactly(true, false, false);
        assertThat(listed(here))
                .extracting(SignedInBrowser::browser)
                .containsExactly("Firefox, Linux", "", "Firefox, macOS");
        assertThat(listed(here)).extracting(SignedInBrowser::since).isSortedAccordingTo((a, b) -> b.compareTo(a));
        assertThat(listed(lost).get(0).id()).isEqualTo(listed(here).get(2).id());
    }

    @Test
    void listsNoBrowserOfAnotherTeacherAndEndsNone() throws Exception {
        var own = listed(here);
        var other = signedIn(newTeacher(), "a browser of theirs");
        assertThat(listed(other)).hasSize(1);

        assertThat(end(other, PASSWORD, own.get(1).id()).statusCode()).isEqualTo(204);
        assertThat(listed(here)).hasSize(3);
    }

    @Test
    void endsOneBrowserAndNoOther() throws Exception {
        var lostOne = listed(here).get(2).id();
        assertThat(end(here, PASSWORD, lostOne).statusCode()).isEqualTo(204);
        assertThat(isSignedIn(lost)).isFalse();
        assertThat(isSignedIn(home)).isTrue();
        assertThat(end(here, PASSWORD, lostOne).statusCode()).isEqualTo(204);
    }

    @Test
    void endsAllOthersAndStaysHere() throws Exception {
        assertThat(end(here, PASSWORD, null).statusCode()).isEqualTo(204);
        assertThat(List.of(isSignedIn(lost), isSignedIn(home), isSignedIn(here)))
                .containsExactly(false, false, true);
    }

    @Test
    void endsNothingForWhoeverSitsAtTheBrowserWithoutThePassword() throws Exception {
        var answer = end(here, "not " + PASSWORD, null);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("password.wrong", "\"field\":\"present\"");
        assertThat(isSignedIn(lost)).isTrue();
    }

    @Test
    void endsThisBrowserNeitherByItsId() throws Exception {
        end(here, PASSWORD, listed(here).get(0).id());
        assertThat(isSignedIn(here)).isTrue();
    }

    private Caller.Teacher newTeacher() {
        return teachers.add("Teacher " + UUID.randomUUID().toString().substring(0, 8), PASSWORD);
    }

    private Browser signedIn(Caller.Teacher teacher, String userAgent) {
        var request = new MockHttpServletRequest();
        request.addHeader("User-Agent", userAgent);
        return Browser.holding(passes.issue(teacher, request).getValue(), server);
    }

    private static boolean isSignedIn(Browser browser) throws Exception {
        return browser.get("/api/labdays").statusCode() == 200;
    }

    private List<SignedInBrowser> listed(Browser by) throws Exception {
        return List.of(json.readValue(by.get("/api/access/browsers").body(), SignedInBrowser[].class));
    }

    private HttpResponse<String> end(Browser by, String present, @Nullable UUID browser) throws Exception {
        return by.post("/api/access/sign-out-elsewhere", json.writeValueAsString(new SignOutRequest(present, browser)));
    }
}
