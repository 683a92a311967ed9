package org.berrywatt.server.platform;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;

/**
 * Puts a page's modules together into a few files, since a browser fetches a few large files sooner than many small ones:
 * what every page asks the server for, what every page draws with, the page's own, and what it imports while it runs.
 * Each module becomes a function that {@code core/parts.js} runs once, when it is needed.
 */
final class ModuleFiles {

    static final String EARLY = "/core/early.js";
    private static final String KIT = "/kit/kit.js";
    private static final String PARTS = "/core/parts.js";

    /** The library of the charts is larger than all pages, and the same for all of them. */
    private static final List<String> APART = List.of("/webjars/chart.js/", "/webjars/kurkle__color/");

    private static final String BEGINNING = "import { add, at as $at, use as $use } from './early.js';\n";

    private final UnaryOperator<String> text;
    private final ImportMap map;
    private final ModuleTree tree;
    private final Map<String, ModuleText> taken = new ConcurrentHashMap<>();
    private final Collection<String> early;
    private final Collection<String> kit;

    /** Modules whose text is had by their address, and the map that their imports go by. */
    ModuleFiles(UnaryOperator<String> text, ImportMap map) {
        this.text = text;
        this.map = map;
        tree = new ModuleTree(text, map);
        early = tree.needed(List.of(EARLY));
        kit = without(tree.needed(List.of(KIT)), early);
    }

    /** The modules that stay apart and that a page's module needs before it can run. */
    List<String> apart(String page) {
        return tree.needed(List.of(page)).stream().filter(ModuleFiles::isApart).toList();
    }

    /**
     * The files of a page by their names: {@code early.js} and {@code kit.js}, which are the same for all pages, and two
     * that are called like the page's module.
     *
     * @throws IllegalStateException when modules import each other, or one wants what another does not export
     */
    Map<String, String> of(String page) {
        var name = name(page);
        var known = new LinkedHashSet<>(early);
        var files = new TreeMap<String, String>();
        files.put(
                "early.js",
                text.apply(PARTS) + "const [$at, $use] = [at, use];\n" + added(early, Set.of(), "") + use(EARLY));
        files.put("kit.js", BEGINNING + added(kit, known, ""));
        known.addAll(kit);
        var own = without(tree.needed(List.of(page)), known);
        var before = List.copyOf(known);
        known.addAll(own);
        var later = without(tree.neededLater(known), known);
        if (!later.isEmpty()) files.put(name + ".later.js", BEGINNING + added(later, known, ""));
        var fetch = later.isEmpty() ? "" : ", again => import('./" + name + ".later.js' + again)";
        files.put(name + ".js", BEGINNING + "import './kit.js';\n" + added(own, before, fetch) + "await " + use(page));
        return files;
    }

    /** {@code bench} for {@code /pages/bench.js}. */
    private static String name(String page) {
        return page.replaceFirst(".*/(\\w+)\\.js", "$1");
    }

    private static String use(String module) {
        return "$use('" + module + "');\n";
    }

    private String added(Collection<String> modules, Collection<String> before, String rest) {
        var known = new TreeSet<>(before);
        var written = new ArrayList<String>();
        for (var module : modules) {
            if (isApart(module)) continue;
            written.add(written(module, known));
            known.add(module);
        }
        return written.stream().collect(joining(",\n", "add({\n", "\n}" + rest + ");\n"));
    }

    private String written(String module, Set<String> known) {
        var parts = textOf(module);
        var sources = parts.sources().stream().map(source -> checked(source, module, known));
        var function = LaterImports.replaced(parts.asFunction(), name -> "$use('" + map.address(name, module) + "')")
                .replace("import.meta.url", "$at('" + module + "')");
        return "'" + module + "': [[" + sources.map(each -> "'" + each + "'").collect(joining(", ")) + "], " + function
                + "]";
    }

    /** What the page's function finds an import by: an address, or the name of what stays apart. */
    private String checked(String source, String module, Set<String> known) {
        var address = map.address(source, module);
        if (isApart(address)) return source;
        if (!known.contains(address)) {
            throw new IllegalStateException("modules import each other: " + module + " and " + address);
        }
        var missing = new TreeSet<>(textOf(module).wantedFrom(source));
        missing.removeAll(exports(address));
        if (!missing.isEmpty()) {
            throw new IllegalStateException(module + " wants " + missing + " of " + address + ", which has none");
        }
        return address;
    }

    private Set<String> exports(String module) {
        var all = new TreeSet<>(textOf(module).exports());
        textOf(module).passedOnWhole().forEach(source -> all.addAll(exports(map.address(source, module))));
        return all;
    }

    private ModuleText textOf(String module) {
        return taken.computeIfAbsent(module, address -> new ModuleText(text.apply(address)));
    }

    private static boolean isApart(String module) {
        return APART.stream().anyMatch(module::startsWith);
    }

    private static List<String> without(Collection<String> modules, Collection<String> others) {
        return modules.stream().filter(each -> !others.contains(each)).toList();
    }
}
