package org.berrywatt.server;

import java.io.IOException;
import java.net.CookieManager;
import java.net.HttpCookie;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;

/** Talks to a running server as a page does: keeps cookies and sends the CSRF token back. */
public final class Browser {

    private final CookieManager cookies = new CookieManager();
    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(cookies).build();
    private final String baseUrl;

    private Browser(String baseUrl) {
        this.baseUrl = baseUrl;
    }

    public static Browser at(String baseUrl) throws IOException, InterruptedException {
        var browser = new Browser(baseUrl);
        browser.get("/api/access");
        return browser;
    }

    /** A browser that holds a pass already, and a token of its own making. */
    public static Browser holding(String pass, String baseUrl) {
        var browser = new Browser(baseUrl);
        browser.keep("berrywatt-pass", pass);
        browser.keep("XSRF-TOKEN", "any");
        return browser;
    }

    private void keep(String name, String value) {
        var cookie = new HttpCookie(name, value);
        cookie.setPath("/");
        cookie.setVersion(0);
        cookies.getCookieStore().add(URI.create(baseUrl), cookie);
    }

    public static Browser of(ServerProcess server) throws IOException, InterruptedException {
        return at(server.baseUrl());
    }

    /** The same browser, forgetful. */
    public Browser withoutToken() {
        cookies.getCookieStore().removeAll();
        return this;
    }

    public HttpResponse<String> get(String address) throws IOException, InterruptedException {
        return send("GET", address, BodyPublishers.noBody());
    }

    public HttpResponse<String> post(String address, String json) throws IOException, InterruptedException {
        return send("POST", address, BodyPublishers.ofString(json));
    }

    public HttpResponse<String> put(String address, String json) throws IOException, InterruptedException {
        return send("PUT", address, BodyPublishers.ofString(json));
    }

    /** Sends any body, also one whose length is not announced. */
    public HttpResponse<String> send(String method, String address, HttpRequest.BodyPublisher body)
            throws IOException, InterruptedException {
        var request = HttpRequest.newBuilder(URI.create(baseUrl + address))
                .header("Content-Type", "application/json")
                .header("X-XSRF-TOKEN", csrfToken())
                .method(method, body)
                .build();
        return client.send(request, BodyHandlers.ofString());
    }

    private String csrfToken() {
        return cookies.getCookieStore().getCookies().stream()
                .filter(cookie -> cookie.getName().equals("XSRF-TOKEN"))
                .map(HttpCookie::getValue)
                .findFirst()
                .orElse("none yet");
    }
}
