package org.berrywatt.server.malformed;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/** Malformed requests to the doors that the server describes, the same ones for the same seed. */
final class Requests {

    private static final Pattern VARIABLE = Pattern.compile("\\{(.*?)}");

    private static final List<String> STRANGE_SEGMENTS = List.of(
            "1-1-1-1-1",
            "x",
            "%00",
            "%2e%2e%2f",
            "..%5c",
            "%ff%fe",
            "%e2%80%ae",
            ";a=b",
            "null",
            "%",
            "%zz",
            "{id}",
            "x".repeat(3_000),
            "00000000-0000-0000-0000-00000000000g",
            "%F0%9F%AB%90",
            "a%20b",
            "<script>",
            "~",
            "\u00e9");

    private static final List<String> METHODS = List.of(
            "DELETE",
            "PATCH",
            "HEAD",
            "OPTIONS",
            "TRACE",
            "CONNECT",
            "get",
            "PUTT",
            "PROPFIND",
            "POST",
            "PUT",
            "GET",
            "\u00dcT");

    private static final List<String> MEDIA_TYPES = List.of(
            "text/plain",
            "application/xml",
            "multipart/form-data",
            "multipart/form-data; boundary=",
            "json",
            "*/*",
            "application/json; charset=utf-7",
            "application/json; charset=none",
            "application/json;;;",
            "application/x-www-form-urlencoded",
            "application/vnd.spring-boot.actuator.v3+json",
            "\"",
            "application/zip");

    private static final List<String> HEADERS = List.of(
            "If-Match: \"",
            "If-Match: *",
            "If-Match: \"1e9\"",
            "If-Match: W/\"1\"",
            "If-None-Match: \"" + "x".repeat(3_000) + "\"",
            "Accept: application/xml",
            "Accept: ;;;",
            "Accept-Language: \u00ff\u00fe",
            "Range: bytes=0-,5-2,-",
            "Accept-Encoding: br;q=x",
            "Cookie: berrywatt-pass=\"",
            "Cookie: berrywatt-pass=" + "A".repeat(5_000),
            "Cookie: ;;;=;=",
            "X-Forwarded-For: 1.2.3.4",
            "X-Forwarded-Proto: gopher",
            "Forwarded: for=\"_x\"",
            "X-HTTP-Method-Override: DELETE",
            "Content-Encoding: gzip",
            "Expect: 100-continue",
            "Expect: 200-ok",
            "Transfer-Encoding: identity",
            "Upgrade: h2c",
            "Origin: null",
            "Host: b",
            "Content-Length: -1",
            "Content-Length: 5",
            "no colon here",
            " folded: 1",
            "X-Empty:",
            "X: \u0000",
            "If-Modified-Since: x");

    /** Whoever went through it would be nobody afterwards. */
    private static final String ENDS_A_PASS = "/api/access/sign-out";

    private record Door(String path, String method) {}

    private final JsonNode description;
    private final List<Door> doors = new ArrayList<>();
    private final Values values;
    private final Bodies bodies;
    private final Bytes bytes;

    Requests(JsonNode description, Map<String, UUID> known, long seed) {
        this.description = description;
        values = new Values(new SplittableRandom(seed), known);
        bodies = new Bodies(description.path("components").path("schemas"), values);
        bytes = new Bytes(values);
        description.get("paths").properties().stream()
                .filter(path -> !path.getKey().equals(ENDS_A_PASS))
                .forEach(path ->
                        path.getValue().propertyNames().forEach(method -> doors.add(new Door(path.getKey(), method))));
    }

    /** The next request, on behalf of whoever holds a pass; it asks for the end of the connection. */
    byte[] next(Stream<String> pass) {
        var door = values.one(doors);
        var operation = description.get("paths").get(door.path()).get(door.method());
        var body = body(operation);
        var lines = new ArrayList<String>();
        lines.add(method(door.method()) + " " + path(door.path()) + query(operation) + " " + version());
        lines.addAll(List.of("Host: localhost", "Connection: close"));
        pass.forEach(lines::add);
        if (body.length > 0) {
            lines.add("Content-Type: " + mediaType(operation));
            lines.add("Content-Length: " + body.length);
        }
        if (values.chance(6)) {
            lines.add(values.one(HEADERS));
        }
        return joined(String.join("\r\n", lines) + "\r\n\r\n", body);
    }

    private String method(String method) {
        return values.chance(25) ? values.one(METHODS) : method.toUpperCase(Locale.ROOT);
    }

    private String version() {
        return values.chance(100)
                ? values.one(List.of("HTTP/1.0", "HTTP/0.9", "HTTP/2.0", "HTTP/9.9", "FTP/1", ""))
                : "HTTP/1.1";
    }

    private String path(String template) {
        var rest = template.startsWith("/api/") ? template.substring("/api/".length()) : template;
        return VARIABLE.matcher(template)
                .replaceAll(found ->
                        Matcher.quoteReplacement(segment(found.group(1).equals("id") ? rest : found.group(1))));
    }

    private String segment(String name) {
        return values.chance(6) ? values.one(STRANGE_SEGMENTS) : values.id(name).toString();
    }

    private String query(JsonNode operation) {
        var parts = new ArrayList<String>();
        operation.path("parameters").forEach(parameter -> {
            if (parameter.get("in").asString().equals("query")) {
                var value = values.chance(2) ? values.word("") : values.bad();
                parts.add(parameter.get("name").asString() + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8));
            }
        });
        if (values.chance(30)) {
            parts.add(values.one(List.of("%", "a=%ff", "=", "&&&", "a[]=1", "x=%00", "debug=true", "trace=true")));
        }
        return parts.isEmpty() ? "" : "?" + String.join("&", parts);
    }

    private byte[] body(JsonNode operation) {
        var content = operation.path("requestBody").path("content");
        return content.isEmpty()
                ? (values.chance(10) ? bytes.of(values.bad()) : new byte[0])
                : bytes.of(bodies.of(content.iterator().next().path("schema")));
    }

    private String mediaType(JsonNode operation) {
        var asked = operation.path("requestBody").path("content").propertyNames().stream()
                .findFirst()
                .orElse("application/json");
        return values.chance(20) ? values.one(MEDIA_TYPES) : asked;
    }

    private static byte[] joined(String head, byte[] body) {
        var first = head.getBytes(ISO_8859_1);
        var all = Arrays.copyOf(first, first.length + body.length);
        System.arraycopy(body, 0, all, first.length, body.length);
        return all;
    }
}
