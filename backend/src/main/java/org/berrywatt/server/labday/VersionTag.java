package org.berrywatt.server.labday;

import java.util.regex.Pattern;

/** A version as an entity tag (RFC 9110, section 8.8.3): {@code "7"} in quotes. */
public final class VersionTag {

    /** A version that nothing has. */
    private static final long NONE = -1;

    private static final Pattern TAG = Pattern.compile("(?:W/)?\"(\\d{1,18})\"");

    private VersionTag() {}

    public static String of(long version) {
        return "\"" + version + "\"";
    }

    /** The version of a tag; one that nothing has when the tag is not one of ours. */
    public static long read(String tag) {
        var found = TAG.matcher(tag.strip());
        return found.matches() ? Long.parseLong(found.group(1)) : NONE;
    }
}
