package org.berrywatt.server.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.stream.Stream;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

    @ParameterizedTest
    @ValueSource(strings = {"/core/http.js", "/css/tokens.css", "/webjars/lit/index.js", "/texts/en.json"})
    void letsTheBrowserKeepAFileOfThisVersionForGood(String file) {
        assertThat(server.get().uri(version() + file))
                .hasStatusOk()
                .hasHeader(HttpHeaders.CACHE_CONTROL, "max-age=31536000, public, immutable")
                .body()
                .isEqualTo(body(file));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/core/http.js", "/webjars/lit/index.js"})
    void givesAPageOfAnotherVersionTodaysFileAndLetsNobodyKeepIt(String file) {
        assertThat(server.get().uri("/at/0123456789ab" + file))
                .hasStatusOk()
                .hasHeader(HttpHeaders.CACHE_CONTROL, "no-cache")
                .body()
                .isEqualTo(body(file));
    }

    @Test
    void namesNoFileOfAPageWithoutItsVersion() {
        assertThat(server.get().uri("/bench.html"))
                .bodyText()
                .contains("src=\"" + version() + "/together/bench.js\"", "\"idb\": \"" + version() + "/webjars/idb/")
                .doesNotContainPattern("\"/(?!at/)[\\w-]+/");
    }

    @Test
    void namesEveryModuleAheadThatAPageNeedsBeforeItRuns() {
        assertThat(server.get().uri("/findings.html"))
                .bodyText()
                .contains(Stream.of("/together/early.js", "/together/kit.js", "/webjars/chart.js/dist/chart.js")
                        .map(module -> "<link rel=\"modulepreload\" href=\"" + version() + module + "\"")
                        .toList());
    }

    @Test
    void fetchesTheBenchWhileSomebodyTypesTheCode() {
        assertThat(server.get().uri("/join.html"))
                .bodyText()
                .contains(
                        "<link rel=\"prefetch\" href=\"" + version() + "/together/bench.js\">",
                        "<link rel=\"prefetch\" href=\"" + version() + "/together/bench.css\">");
    }

    @ParameterizedTest
    @CsvSource({"early.js,text/javascript", "bench.later.js,text/javascript", "wall-2.css,text/css"})
    void servesWhatItPutTogetherToBeKeptForGood(String file, String type) {
        assertThat(server.get().uri(version() + "/together/" + file))
                .hasStatusOk()
                .hasContentType(type)
                .hasHeader(HttpHeaders.CACHE_CONTROL, "max-age=31536000, public, immutable");
        assertThat(server.get().uri("/at/0123456789ab/together/" + file))
                .hasStatusOk()
                .hasHeader(HttpHeaders.CACHE_CONTROL, "no-cache")
                .body()
                .isEqualTo(body(version() + "/together/" + file));
    }

    @Test
    void tellsWhatItPutTogetherApart() {
        var tags = Stream.of("early.js", "kit.js", "bench.js", "bench.later.js")
                .map(file -> server.get().uri(version() + "/together/" + file).exchange())
                .map(answer -> answer.getResponse().getHeader(HttpHeaders.ETAG));
        assertThat(tags).doesNotContainNull().doesNotHaveDuplicates();
    }

    /** CSP Level 3 compares the hash with what is between the tags as it was sent. */
    @Test
    void allowsTheImportMapThatItServes() throws NoSuchAlgorithmException {
        var page = server.get().uri("/bench.html").exchange().getResponse();
        var sent = new String(page.getContentAsByteArray(), StandardCharsets.UTF_8);
        var map = sent.split("<script type=\"importmap\">", 2)[1].split("</script>", 2)[0];
        var hash = MessageDigest.getInstance("SHA-256").digest(map.getBytes(StandardCharsets.UTF_8));
        assertThat(page.getHeader("Content-Security-Policy"))
                .contains("'sha256-" + Base64.getEncoder().encodeToString(hash) + "'");
    }

    private byte[] body(String address) {
        return server.get().uri(address).exchange().getResponse().getContentAsByteArray();
    }

    private String version() {
        var page = new String(body("/index.html"), StandardCharsets.UTF_8);
        return page.substring(page.indexOf("/at/")).replaceFirst("(/at/[0-9a-f]{12})(?s:.*)", "$1");
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
                "/nowhere.html",
                "/at/0123456789ab/nowhere.js",
                "/at/0123456789ab/together/nowhere.js",
                "/at/0123456789ab/../application.properties",
                "/at/%2e%2e/application.properties"
            })
    void answersANonexistentFileWithAProblem(String address) {
        assertThat(server.get().uri(address)).hasStatus4xxClientError();
    }
}
