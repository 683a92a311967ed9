package org.berrywatt.server.platform;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Which modules a module needs before it can run, near and far, and which it may ask for while it runs. */
final class ModuleTree {

    private final UnaryOperator<String> text;
    private final ImportMap map;
    private final Map<String, List<String>> imports = new ConcurrentHashMap<>();

    /** Modules whose text is had by their address, and the map that their imports go by. */
    ModuleTree(UnaryOperator<String> text, ImportMap map) {
        this.text = text;
        this.map = map;
    }

    /** The addresses of these modules and of all that they import, each once; what is imported comes first. */
    Collection<String> needed(Collection<String> modules) {
        var gathered = new LinkedHashSet<String>();
        var visited = new LinkedHashSet<String>();
        modules.forEach(module -> gather(module, visited, gathered));
        return gathered;
    }

    /** What these modules, and those that they lead to, import while they run, with all that it needs. */
    Collection<String> neededLater(Collection<String> modules) {
        var later = new LinkedHashSet<String>();
        var found = modules;
        while (later.addAll(needed(found.stream().flatMap(this::askedFor).toList()))) {
            found = List.copyOf(later);
        }
        return later;
    }

    private void gather(String module, Set<String> visited, Set<String> gathered) {
        if (!visited.add(module)) return;
        imports.computeIfAbsent(module, this::importsOf).forEach(each -> gather(each, visited, gathered));
        gathered.add(module);
    }

    private List<String> importsOf(String module) {
        return StaticImports.of(text.apply(module)).stream()
                .map(name -> map.address(name, module))
                .toList();
    }

    private Stream<String> askedFor(String module) {
        return LaterImports.of(text.apply(module)).map(name -> map.address(name, module));
    }
}
