package org.berrywatt.server.platform;

import static java.util.stream.Collectors.joining;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The pages as browsers get them: the addresses of their files carry the version of all files, so that a browser keeps
 * them for good, and their modules and style sheets are put together, so that it asks for few.
 */
public final class ServedPages {

    static final String TOGETHER = "/together/";

    private static final Pattern FILE = Pattern.compile("\"/(?=[\\w-]+/)");
    private static final Pattern OWN_MODULE = Pattern.compile("<script type=\"module\" src=\"(/pages/\\w+\\.js)\"");
    private static final Pattern ANY_MODULE = Pattern.compile("\"/(?:core|pages)/(\\w+\\.js)\"");
    private static final Pattern SHEET_AHEAD =
            Pattern.compile("(?<=<link rel=\"prefetch\" href=)\"/css/(\\w+\\.css)\"");
    private static final Pattern FIRST_MODULE = Pattern.compile("(?=<script type=\"module\")");

    private static final String PRELOAD = "<link rel=\"modulepreload\" href=\"%s\" fetchpriority=\"%s\">\n";

    private final Map<String, String> written;
    private final Map<String, String> served = new HashMap<>();
    private final Map<String, String> together = new TreeMap<>();
    private final ModuleFiles modules;
    private final SheetFiles sheets;
    private final String version;

    private ServedPages(PageSources sources) {
        written = sources.pages();
        var map = ImportMap.of(written.values().iterator().next());
        modules = new ModuleFiles(sources::text, map);
        sheets = new SheetFiles(sources::text);
        written.forEach((name, page) -> served.put(name, putTogether(page, name.replace(".html", ""))));
        version = sources.version(map, together.values());
        served.replaceAll((name, page) -> FILE.matcher(page).replaceAll("\"" + place() + "/"));
    }

    static ServedPages load() {
        return new ServedPages(new PageSources());
    }

    /** The text of every page as it is served, and as it was written: both work. */
    public Stream<String> texts() {
        return Stream.concat(served.values().stream(), written.values().stream());
    }

    /** The text of a page of {@code /}, by its file's name. */
    String text(String page) {
        return served.getOrDefault(page, "");
    }

    /** The files that were put together, by their names below {@link #TOGETHER}. */
    Map<String, String> together() {
        return Map.copyOf(together);
    }

    /** What all addresses of files begin with in these pages: {@code /at/VERSION}. */
    String place() {
        return "/at/" + version;
    }

    private String putTogether(String page, String name) {
        var module = ownModule(page);
        together.putAll(modules.of(module));
        var dressed = sheets.dress(page, name, TOGETHER);
        together.putAll(dressed.sheets());
        var asking = FIRST_MODULE.matcher(dressed.page()).replaceFirst(preloads(module));
        return Stream.of(ANY_MODULE, SHEET_AHEAD)
                .reduce(asking, (text, file) -> file.matcher(text).replaceAll("\"" + TOGETHER + "$1\""), (a, b) -> b);
    }

    private static String ownModule(String page) {
        return OWN_MODULE
                .matcher(page)
                .results()
                .map(found -> found.group(1))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("this page has no module of its own: " + page));
    }

    /**
     * A preload stands behind the import map, which has to come before the first module. What the page's first module asks
     * the server for must not wait behind the modules of the others.
     */
    private String preloads(String module) {
        var apart = modules.apart(module).stream().map(each -> PRELOAD.formatted(each, "low"));
        return PRELOAD.formatted(TOGETHER + "early.js", "high")
                + PRELOAD.formatted(TOGETHER + "kit.js", "auto")
                + apart.collect(joining());
    }
}
