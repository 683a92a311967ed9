package org.berrywatt.server.platform;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.RequestDispatcher;
import java.sql.SQLException;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

/** What fails in a filter, before any controller. Codes are those of the PostgreSQL manual, appendix A. */
@ServerTest
class FailedElsewhereTest {

    @Autowired
    private MockMvcTester server;

    @ParameterizedTest
    @CsvSource({"08006, unavailable", "53100, storage.full", "XX001, storage.damaged", ", unavailable"})
    void saysOfTheDatabaseWhatAControllerWouldSay(String state, String code) {
        var failure = new IllegalStateException("in a filter", new SQLException("Connection is closed", state));
        assertThat(server.get()
                        .uri("/error")
                        .requestAttr(RequestDispatcher.ERROR_STATUS_CODE, 500)
                        .requestAttr(RequestDispatcher.ERROR_EXCEPTION, failure))
                .hasStatus(503)
                .bodyJson()
                .extractingPath("code")
                .isEqualTo(code);
    }

    @Test
    void saysOfAnythingElseThatItIsTheServersFault() {
        assertThat(server.get()
                        .uri("/error")
                        .requestAttr(RequestDispatcher.ERROR_STATUS_CODE, 500)
                        .requestAttr(RequestDispatcher.ERROR_EXCEPTION, new IllegalStateException("x")))
                .hasStatus(500)
                .bodyJson()
                .extractingPath("code")
                .isEqualTo("internal");
    }
}
