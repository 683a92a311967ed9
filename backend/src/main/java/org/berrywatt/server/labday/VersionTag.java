package org.berrywatt.server.labday;

import java.util.regex.Pattern;

/** A version as an entity tag (RFC 9110, section 8.8.3): {@code "7"} in quotes. */
final class VersionTag {

    /** A version that no day has. */
    private static final long NONE = -1;

    private static final Pattern TAG = Pattern.compile("(?:W/)?\"(\\d{1,18})\"");

    private VersionTag() {}

    static String of(long version) {
        return "\"" + version + "\"";
    }

    /** The version of a tag; one that no day has when the tag is not one of ours. */
    static long read(String tag) {
        var found = TAG.matcher(tag.strip());
        return found.matches() ? Long.parseLong(found.group(1)) : NONE;
    }
}
