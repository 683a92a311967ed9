package org.berrywatt.server.platform;

import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The names that a module imports while it runs (ECMA-262, ImportCall), where it spells them out. */
final class LaterImports {

    private static final Pattern CALL = Pattern.compile("\\bimport\\(\\s*['\"]([^'\"\\n]+)['\"]\\s*\\)");

    private LaterImports() {}

    static Stream<String> of(String module) {
        return CALL.matcher(module).results().map(found -> found.group(1));
    }

    /** The module with calls of its own making, by the name, in place of these. */
    static String replaced(String module, UnaryOperator<String> call) {
        return CALL.matcher(module).replaceAll(found -> Matcher.quoteReplacement(call.apply(found.group(1))));
    }
}
