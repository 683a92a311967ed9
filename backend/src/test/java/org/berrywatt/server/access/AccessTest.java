package org.berrywatt.server.access;

import static org.assertj.core.api.Assertions.assertThat;

import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

@ServerTest
class AccessTest {

    private final MockMvcTester server;

    @Autowired
    AccessTest(MockMvcTester server) {
        this.server = server;
    }

    @Test
    void takesABrowserWithoutAPassForNobody() {
        assertThat(server.get().uri("/api/access"))
                .hasStatusOk()
                .bodyJson()
                .extractingPath("kind")
                .isEqualTo("nobody");
    }

    @Test
    void answersAnUnknownAddressWithAProblemDetail() {
        assertThat(server.get().uri("/api/nowhere"))
                .hasStatus(404)
                .hasContentTypeCompatibleWith("application/problem+json")
                .bodyJson()
                .extractingPath("code")
                .isEqualTo("notFound");
    }
}
