package org.berrywatt.server.platform;

import java.util.List;
import java.util.regex.Pattern;

/**
 * The names that a module imports before it runs (ECMA-262, ImportDeclaration and ExportDeclaration with a FromClause), in
 * their order. Imports that the module asks for while it runs are not among them.
 */
final class StaticImports {

    /** A statement starts a line, or follows another one's end, as in files without white space. */
    private static final Pattern STATEMENT = Pattern.compile(
            "(?:^|[;}]|\\*/)\\s*(?:import|export)\\b\\s*(?:[\\w$*{},\\s]+?\\bfrom\\s*)?[\"']([^\"'\\n]+)[\"']",
            Pattern.MULTILINE);

    private StaticImports() {}

    static List<String> of(String module) {
        return STATEMENT.matcher(module).results().map(found -> found.group(1)).toList();
    }
}
