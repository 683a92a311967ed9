package org.berrywatt.server.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.berrywatt.contract.NewPasswordRequest;
import org.berrywatt.contract.PasswordRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.Api;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.platform.KeyInHome;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

/** What a new password is refused for, tried from an address of its own, since wrong tries slow an address down. */
@ServerTest
class AccountTest {

    private static final String PASSWORD = "seven slow brass kettles";
    private static final String NEW = "eight slow brass kettles";

    private final String name = "Teacher " + UUID.randomUUID().toString().substring(0, 8);
    private final KeyInHome home;
    private final Api teacher;

    @Autowired
    AccountTest(MockMvcTester server, JsonMapper json, Teachers teachers, KeyInHome home) {
        this.home = home;
        teacher = new Api(server, json, teachers.add(name, PASSWORD)).from("192.0.2.17");
    }

    @Test
    void countsAWrongPresentPasswordLikeAWrongSignInButNoUnfitNewOne() {
        for (var tried = 0; tried < 12; tried++) {
            teacher.problem(change(PASSWORD, "kettle"), ProblemCode.PASSWORD_WEAK);
        }
        var answer = change("guess 0", NEW);
        assertThat(teacher.problem(answer, ProblemCode.PASSWORD_WRONG).field()).isEqualTo("present");
        for (var guess = 1; guess <= 25 && answer.getResponse().getStatus() == 422; guess++) {
            answer = change("guess " + guess, NEW);
        }
        teacher.problem(answer, ProblemCode.SLOW_DOWN);
    }

    @Test
    void refusesANewPasswordThatIsGuessedFirst() {
        var problem = teacher.problem(change(PASSWORD, name + "!"), ProblemCode.PASSWORD_GUESSABLE);
        assertThat(problem.field()).isEqualTo("password");
        assertThat(problem.detail()).contains("tries").doesNotContain(name);
        assertThat(problem.wayOut()).contains("four words");
    }

    @Test
    void setsNoPasswordWithoutTheKeyForAnUnknownNameOrToAGuessableOneAndKeepsTheKey() throws Exception {
        var key = home.make().text();
        assertThat(teacher.problem(forgot("not " + key, name, NEW), ProblemCode.SIGN_IN_REFUSED)
                        .field())
                .isEqualTo("key");
        assertThat(teacher.problem(forgot(key, "nobody", NEW), ProblemCode.ACCOUNT_UNKNOWN)
                        .wayOut())
                .contains(name);
        teacher.problem(forgot(key, name, "passwort123"), ProblemCode.PASSWORD_GUESSABLE);
        assertThat(forgot(key, name, NEW)).hasStatus(204);
    }

    private MvcTestResult change(String present, String password) {
        return teacher.put(new PasswordRequest(present, password), "/api/access/password");
    }

    private MvcTestResult forgot(String key, String who, String password) {
        return teacher.asNobody().post(new NewPasswordRequest(key, who, password), "/api/access/new-password");
    }
}
