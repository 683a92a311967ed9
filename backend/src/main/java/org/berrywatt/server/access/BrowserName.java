package org.berrywatt.server.access;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a browser calls itself in {@code User-Agent} (RFC 9110, 10.1.5), short enough to be known again. Most claim to be
 * several at once, so that the rarer name counts: each list is tried in its order.
 */
final class BrowserName {

    private static final List<Sign> BROWSERS = List.of(
            new Sign("Edg", "Edge"),
            new Sign("OPR/", "Opera"),
            new Sign("SamsungBrowser/", "Samsung Internet"),
            new Sign("Firefox/", "Firefox"),
            new Sign("FxiOS/", "Firefox"),
            new Sign("Chrome/", "Chrome"),
            new Sign("CriOS/", "Chrome"),
            new Sign("Safari/", "Safari"));
    private static final List<Sign> SYSTEMS = List.of(
            new Sign("iPhone", "iPhone"),
            new Sign("iPad", "iPad"),
            new Sign("Android", "Android"),
            new Sign("Windows", "Windows"),
            new Sign("CrOS", "ChromeOS"),
            new Sign("Macintosh", "macOS"),
            new Sign("Linux", "Linux"));

    private record Sign(String claim, String name) {}

    private BrowserName() {}

    /** As {@code "Firefox, Windows"}; empty for what is not known. Nothing of the header itself is passed on. */
    static String of(@Nullable String userAgent) {
        return userAgent == null
                ? ""
                : Stream.of(BROWSERS, SYSTEMS)
                        .flatMap(signs -> signs.stream()
                                .filter(sign -> userAgent.contains(sign.claim()))
                                .map(Sign::name)
                                .limit(1))
                        .collect(Collectors.joining(", "));
    }
}
