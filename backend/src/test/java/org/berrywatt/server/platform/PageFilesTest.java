package org.berrywatt.server.platform;

import static org.assertj.core.api.Assertions.assertThat;

import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

@ServerTest
class PageFilesTest {

    private final MockMvcTester server;

    @Autowired
    PageFilesTest(MockMvcTester server) {
        this.server = server;
    }

    @Test
    void asksTheBrowserToCheckAPageByItsContent() {
        assertThat(server.get().uri("/index.html"))
                .hasStatusOk()
                .hasHeader(HttpHeaders.CACHE_CONTROL, "no-cache")
                .containsHeader(HttpHeaders.ETAG)
                .doesNotContainHeader(HttpHeaders.LAST_MODIFIED);
    }

    @Test
    void sendsNothingWhenTheBrowserHasTheSameContent() {
        var first = String.valueOf(
                server.get().uri("/index.html").exchange().getResponse().getHeader(HttpHeaders.ETAG));
        assertThat(server.get().uri("/index.html").header(HttpHeaders.IF_NONE_MATCH, first))
                .hasStatus(304);
    }

    @Test
    void opensTheStartPageUnderTheBareAddress() {
        assertThat(server.get().uri("/")).hasStatusOk().hasForwardedUrl("index.html");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/webjars/lit/index.js",
                "/webjars/chart.js/dist/chart.js",
                "/webjars/lit__reactive-element/reactive-element.js"
            })
    void findsALibraryWithoutItsVersion(String address) {
        assertThat(server.get().uri(address)).hasStatusOk().hasHeader(HttpHeaders.CACHE_CONTROL, "max-age=43200");
    }

    @Test
    void setsNoCookieWithAPage() {
        assertThat(server.get().uri("/index.html")).doesNotContainHeader(HttpHeaders.SET_COOKIE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/application.properties",
                "/../application.properties",
                "/%2e%2e/application.properties",
                "/nowhere.html"
            })
    void answersANonexistentFileWithAProblem(String address) {
        assertThat(server.get().uri(address)).hasStatus4xxClientError();
    }
}
