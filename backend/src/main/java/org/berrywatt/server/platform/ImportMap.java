package org.berrywatt.server.platform;

import java.net.URI;
import java.util.Comparator;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Where the names stand for which modules import libraries (HTML Living Standard, import maps, without scopes). */
record ImportMap(Map<String, String> imports) {

    private static final Pattern IN_A_PAGE =
            Pattern.compile("<script type=\"importmap\">(.*?)</script>", Pattern.DOTALL);

    /**
     * Reads the map of a page.
     *
     * @throws IllegalArgumentException when the page has none
     */
    static ImportMap of(String page) {
        return IN_A_PAGE
                .matcher(page)
                .results()
                .findFirst()
                .map(found -> JsonMapper.shared().readValue(found.group(1), new TypeReference<ImportMap>() {}))
                .orElseThrow(() -> new IllegalArgumentException("this page has no import map: " + page));
    }

    /** The address that a name means in the module at another address; of several beginnings that fit, the longest. */
    String address(String name, String importer) {
        return imports.containsKey(name) ? imports.get(name) : inFolder(name, importer);
    }

    /** The libraries that the map leads to, by the names of their folders. */
    Stream<String> libraries() {
        return imports.values().stream()
                .map(address -> address.split("/", -1)[2])
                .distinct()
                .sorted();
    }

    private String inFolder(String name, String importer) {
        return imports.keySet().stream()
                .filter(key -> key.endsWith("/") && name.startsWith(key))
                .max(Comparator.comparingInt(String::length))
                .map(key -> imports.get(key) + name.substring(key.length()))
                .orElseGet(() -> URI.create(importer).resolve(name).toString());
    }
}
