package org.berrywatt.server.platform;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A module taken apart into what it imports, what it exports and the lines between (ECMA-262, 16.2 Modules). It knows the
 * forms that the pages and their libraries are written in; a default import or export is none of them, and what it does
 * not know it refuses.
 */
final class ModuleText {

    private static final String START = "(^|[;}]|\\*/)(\\s*)";
    private static final String FROM = "from\\s*[\"']([^\"'\\n]+)[\"']";
    private static final Pattern PLAIN_IMPORT = pattern(START + "import\\s*[\"'][^\"'\\n]+[\"']");
    private static final Pattern IMPORT = pattern(START + "import\\s*(\\{[^}]*\\}|\\*\\s*as\\s+[\\w$]+)\\s*" + FROM);
    private static final Pattern PASSED_ON = pattern(START + "export\\s*(\\{[^}]*\\}|\\*)\\s*" + FROM);
    private static final Pattern LISTED = pattern(START + "export\\s*(\\{[^}]*\\})");
    private static final Pattern PICKED = pattern(START + "export\\s+((?:const|let|var)\\s*(\\{[^}]*\\}))");
    private static final Pattern DECLARED =
            pattern(START + "export\\s+((?:(?:async\\s+)?function\\s*\\*?|class|const|let|var)\\s*\\b([\\w$]+))");
    private static final Pattern UNKNOWN = pattern(START + "(?:import\\b(?!\\s*[(.])|export\\b)[^\\n]*");
    private static final Pattern NAME = Pattern.compile("([\\w$]+)(?:\\s*(?:\\bas\\b|:)\\s*([\\w$]+))?");
    private static final Pattern SOURCE_MAP = Pattern.compile("//# sourceMappingURL=\\S*");

    private final List<String> sources;
    private final List<String> taken = new ArrayList<>();
    private final List<Named> named = new ArrayList<>();
    private final List<String> passedOnWhole = new ArrayList<>();
    private final TreeMap<String, String> exports = new TreeMap<>();
    private final String body;

    private record Named(String source, String name) {}

    /**
     * Takes a module apart.
     *
     * @throws IllegalArgumentException when a statement of import or export has none of the known forms
     */
    ModuleText(String text) {
        sources = StaticImports.of(text).stream().distinct().toList();
        var rest = replace(SOURCE_MAP, text, found -> "");
        rest = replace(PLAIN_IMPORT, rest, ModuleText::start);
        rest = replace(PASSED_ON, rest, this::passOn);
        rest = replace(IMPORT, rest, this::take);
        rest = replace(LISTED, rest, this::list);
        rest = replace(PICKED, rest, this::pick);
        body = replace(DECLARED, rest, this::declare);
        refuseUnknown();
    }

    /** The names that it imports modules by, in their order, each once. */
    List<String> sources() {
        return sources;
    }

    /** What it wants to find in the module that it imports by a name. */
    Set<String> wantedFrom(String source) {
        return named.stream()
                .filter(each -> each.source.equals(source))
                .map(Named::name)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** The names that it exports by itself. */
    Set<String> exports() {
        return exports.keySet();
    }

    /** The names of modules all of whose exports it exports, too. */
    List<String> passedOnWhole() {
        return passedOnWhole;
    }

    /** The body of a function of the exports of its sources, in their order, that gives its own. */
    String asFunction() {
        var parameters = Stream.iterate(0, i -> i + 1).limit(sources.size()).map(i -> "$" + i);
        return "async (" + parameters.collect(joining(", ")) + ") => {" + String.join("", taken) + "\n" + body
                + "\nreturn { " + given() + " };\n}";
    }

    private String given() {
        var whole = passedOnWhole.stream().map(source -> "..." + exportsOf(source));
        var own = exports.entrySet().stream().map(each -> each.getKey() + ": " + each.getValue());
        return Stream.concat(whole, own).collect(joining(", "));
    }

    private String exportsOf(String source) {
        return "$" + sources.indexOf(source);
    }

    private String take(MatchResult found) {
        var what = found.group(3);
        if (!what.startsWith("*")) want(found.group(4), what);
        var names = what.startsWith("*") ? what.replaceFirst("\\*\\s*as\\s+", "") : what.replaceAll("\\s+as\\s+", ": ");
        taken.add(" const " + names + " = " + exportsOf(found.group(4)) + ";");
        return start(found);
    }

    private String passOn(MatchResult found) {
        var source = found.group(4);
        if (found.group(3).equals("*")) {
            passedOnWhole.add(source);
        } else {
            want(source, found.group(3));
            names(found.group(3)).forEach(each -> exports.put(outer(each), exportsOf(source) + "." + each.group(1)));
        }
        return start(found);
    }

    private String list(MatchResult found) {
        names(found.group(3)).forEach(each -> exports.put(outer(each), each.group(1)));
        return start(found);
    }

    private String pick(MatchResult found) {
        names(found.group(4)).forEach(each -> exports.put(outer(each), outer(each)));
        return start(found) + found.group(3);
    }

    private String declare(MatchResult found) {
        exports.put(found.group(4), found.group(4));
        return start(found) + found.group(3);
    }

    private void want(String source, String list) {
        names(list).forEach(each -> named.add(new Named(source, each.group(1))));
    }

    private void refuseUnknown() {
        UNKNOWN.matcher(body).results().findFirst().ifPresent(found -> {
            throw new IllegalArgumentException("a module cannot be put together with others for: "
                    + found.group().strip());
        });
    }

    private static String outer(MatchResult name) {
        return name.group(2) == null ? name.group(1) : name.group(2);
    }

    private static Stream<MatchResult> names(String list) {
        return NAME.matcher(list).results();
    }

    private static String start(MatchResult found) {
        return found.group(1) + found.group(2);
    }

    private static Pattern pattern(String regex) {
        return Pattern.compile(regex, Pattern.MULTILINE);
    }

    private static String replace(Pattern what, String text, Function<MatchResult, String> with) {
        return what.matcher(text).replaceAll(found -> Matcher.quoteReplacement(with.apply(found)));
    }
}
