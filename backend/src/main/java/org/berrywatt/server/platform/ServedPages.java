package org.berrywatt.server.platform;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toUnmodifiableMap;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The pages as browsers get them: the addresses of their files carry the version of all files, so that a browser keeps
 * them for good, and all modules that a page needs are named at once, so that it does not find them level by level.
 */
public final class ServedPages {

    private static final Pattern FILE = Pattern.compile("\"/(?=[\\w-]+/)");
    private static final Pattern MODULE = Pattern.compile("<script type=\"module\" src=\"([^\"]+)\"");
    private static final Pattern FIRST_MODULE = Pattern.compile("(?=<script type=\"module\")");

    private static final String PRELOAD = "<link rel=\"modulepreload\" href=\"%s\" fetchpriority=\"%s\">\n";

    private final String version;
    private final Map<String, String> written;
    private final Map<String, String> served;

    private ServedPages(String version, Map<String, String> written, Map<String, String> served) {
        this.version = version;
        this.written = written;
        this.served = served;
    }

    static ServedPages load() {
        var sources = new PageSources();
        var written = sources.pages();
        var map = ImportMap.of(written.values().iterator().next());
        var modules = new ModuleTree(sources::text, map);
        var version = sources.version(map);
        var served = written.entrySet().stream()
                .collect(toUnmodifiableMap(Map.Entry::getKey, page -> served(page.getValue(), modules, version)));
        return new ServedPages(version, written, served);
    }

    /** The text of every page as it is served, and as it was written: both work. */
    public Stream<String> texts() {
        return Stream.concat(served.values().stream(), written.values().stream());
    }

    /** The text of a page of {@code /}, by its file's name. */
    String text(String page) {
        return served.getOrDefault(page, "");
    }

    /** What all addresses of files begin with in these pages: {@code /at/VERSION}. */
    String place() {
        return "/at/" + version;
    }

    private static String served(String page, ModuleTree modules, String version) {
        var asked = FIRST_MODULE.matcher(page).replaceFirst(Matcher.quoteReplacement(preloads(page, modules)));
        return FILE.matcher(asked).replaceAll("\"/at/" + version + "/");
    }

    /**
     * A preload stands behind the import map, which has to come before the first module. What the page's first module asks
     * the server for must not wait behind the modules of the others.
     */
    private static String preloads(String page, ModuleTree modules) {
        var entries =
                MODULE.matcher(page).results().map(found -> found.group(1)).toList();
        var first = modules.needed(entries.subList(0, 1));
        return modules.needed(entries).stream()
                .map(module -> PRELOAD.formatted(module, first.contains(module) ? "high" : "low"))
                .collect(joining());
    }
}
