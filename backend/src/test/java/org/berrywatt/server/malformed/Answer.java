package org.berrywatt.server.malformed;

import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What the server sent back over a connection until it closed it.
 *
 * @param text head and body, byte for byte as ISO 8859-1
 * @param nanos time until the end
 */
public record Answer(String text, long nanos) {

    private static final Pattern STATUS = Pattern.compile("^(?:HTTP/1\\.1 100.*\r\n\r\n)?HTTP/1\\.1 ([0-9]{3})");

    /** A trace's lines, names of classes and packages, what a database says, and who made the web server. */
    private static final Pattern INSIDES =
            Pattern.compile("\tat |[a-z]Exception|Throwable|\\b(java|jakarta|org|com|io|tools)\\.[a-z0-9]+\\.[A-Za-z]|"
                    + "SQLState|ERROR: |constraint|Hibernate|Jackson|(?i:jetty|whitelabel)");

    /** The status, or 0 when the connection ended without an answer. */
    int status() {
        var found = STATUS.matcher(text);
        return found.find() ? Integer.parseInt(found.group(1)) : 0;
    }

    /** Which words tell of the server's insides. */
    Stream<String> insides() {
        return INSIDES.matcher(text).results().map(found -> around(found.start(), found.end()));
    }

    private String around(int start, int end) {
        return text.substring(Math.max(0, start - 40), Math.min(text.length(), end + 40));
    }
}
