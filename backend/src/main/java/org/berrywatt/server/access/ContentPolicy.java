package org.berrywatt.server.access;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a page of ours may load: files of this server, and one inline script, the import map, known by its SHA-256
 * (W3C Content Security Policy Level 3).
 */
final class ContentPolicy {

    private static final Pattern IMPORT_MAP =
            Pattern.compile("<script type=\"importmap\">(.*?)</script>", Pattern.DOTALL);

    private ContentPolicy() {}

    /** The policy for pages as they are served. */
    static String of(Stream<String> pages) {
        var scripts = pages.flatMap(ContentPolicy::importMaps)
                .distinct()
                .map(map -> " 'sha256-" + sha256(map) + "'")
                .collect(Collectors.joining());
        return "default-src 'none'; script-src 'self'" + scripts + "; style-src 'self'; img-src 'self' data:;"
                + " connect-src 'self'; font-src 'self'; manifest-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self';"
                + " frame-ancestors 'none'";
    }

    private static Stream<String> importMaps(String page) {
        return IMPORT_MAP.matcher(page).results().map((MatchResult found) -> found.group(1));
    }

    private static String sha256(String text) {
        try {
            var digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java platform has SHA-256", missing);
        }
    }
}
