package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.net.http.WebSocket;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.SSLException;
import javax.net.ssl.SSLParameters;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The server with a certificate of its own, as docs/guide/tls.md says: pages, the live socket and passes go encrypted. */
class TlsIT {

    private static SelfSigned certificate;
    private static ServerProcess server;
    private static HttpClient client;

    @BeforeAll
    static void startWithACertificate() throws Exception {
        var home = ServerProcess.newHome();
        certificate = SelfSigned.in(home.resolveSibling("tls-" + home.getFileName()));
        client = HttpClient.newBuilder().sslContext(certificate.trust()).build();
        server = ServerProcess.start(
                home,
                "--server.ssl.certificate=" + certificate.pem(),
                "--server.ssl.certificate-private-key=" + certificate.privateKey());
        Awaitility.await()
                .atMost(6, TimeUnit.MINUTES)
                .ignoreExceptions()
                .until(() -> get("/actuator/health").statusCode() == 200);
    }

    @AfterAll
    static void end() {
        server.close();
    }

    @Test
    void servesPagesEncryptedAndSaysSoOnTheConsole() throws Exception {
        assertThat(get("/").statusCode()).isEqualTo(200);
        assertThat(server.output())
                .contains("https://localhost:" + server.port())
                .doesNotContain("http://");
    }

    @Test
    void tellsBrowsersToStayWithTlsOnThisNameAlone() throws Exception {
        assertThat(get("/").headers().firstValue("Strict-Transport-Security")).hasValue("max-age=31536000");
    }

    @Test
    void answersNothingInPlain() {
        var plain = HttpRequest.newBuilder(URI.create("http://localhost:" + server.port() + "/"))
                .build();
        assertThatThrownBy(() -> HttpClient.newHttpClient().send(plain, BodyHandlers.ofString()))
                .isInstanceOf(IOException.class);
    }

    /** RFC 8996 ends TLS 1.0 and 1.1. */
    @Test
    void speaksNoOldTls() {
        var old = new SSLParameters(null, new String[] {"TLSv1", "TLSv1.1"});
        var client = HttpClient.newBuilder()
                .sslContext(certificate.trust())
                .sslParameters(old)
                .build();
        assertThatThrownBy(() -> client.send(HttpRequest.newBuilder(at("/")).build(), BodyHandlers.ofString()))
                .isInstanceOf(SSLException.class);
    }

    @Test
    void bringsTheLiveSocketEncrypted() throws Exception {
        var socket = client.newWebSocketBuilder()
                .subprotocols("v12.stomp")
                .buildAsync(URI.create("wss://localhost:" + server.port() + "/live"), new WebSocket.Listener() {})
                .get(20, TimeUnit.SECONDS);
        assertThat(socket.getSubprotocol()).isEqualTo("v12.stomp");
        socket.abort();
    }

    @Test
    void givesPassesThatBrowsersSendEncryptedOnly() throws Exception {
        var token = get("/api/access").headers().allValues("Set-Cookie").stream()
                .filter(cookie -> cookie.startsWith("XSRF-TOKEN="))
                .findFirst()
                .orElseThrow();
        assertThat(token).contains("Secure");
        var setup = "{\"key\":\"" + server.setupKey()
                + "\",\"name\":\"Ms Alder\",\"password\":\"seven slow brass kettles\"}";
        var signedIn = post("/api/access/setup", setup, token.replaceFirst("XSRF-TOKEN=([^;]*).*", "$1"));
        assertThat(signedIn.statusCode()).isEqualTo(200);
        assertThat(signedIn.headers().allValues("Set-Cookie"))
                .anySatisfy(pass -> assertThat(pass)
                        .startsWith("berrywatt-pass=")
                        .contains("Secure", "HttpOnly", "SameSite=Strict"));
    }

    @Test
    void endsWithOneSentenceWhenTheCertificateIsNotThere() throws Exception {
        try (var refused = ServerProcess.start(
                ServerProcess.newHome(),
                "--server.ssl.certificate=" + Path.of("target/no-such.pem"),
                "--server.ssl.certificate-private-key=" + certificate.privateKey())) {
            assertThat(refused.exitCode()).isNotZero();
            assertThat(refused.errors()).contains("no-such.pem").hasLineCount(1).doesNotContain("Exception", "\tat ");
        }
    }

    private static HttpResponse<String> get(String address) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(at(address)).build(), BodyHandlers.ofString());
    }

    private static HttpResponse<String> post(String address, String json, String token)
            throws IOException, InterruptedException {
        var request = HttpRequest.newBuilder(at(address))
                .header("Content-Type", "application/json")
                .header("Cookie", "XSRF-TOKEN=" + token)
                .header("X-XSRF-TOKEN", token)
                .POST(BodyPublishers.ofString(json))
                .build();
        return client.send(request, BodyHandlers.ofString());
    }

    private static URI at(String address) {
        return URI.create("https://localhost:" + server.port() + address);
    }
}
