package org.berrywatt.server;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;

/** The server's description of itself as a page to read. */
final class ApiDocument {

    private static final String HEAD = """
            # The server's doors

            Written by `sh deploy/api.sh` from the description that the server gives of itself at `/v3/api-docs` (OpenAPI), not by hand.

            Everything is JSON unless a line says otherwise. Numbers that people typed travel as they were typed, with the unit that was chosen
            beside the field (`Typed`); the server reads them. What is made gets its id from whoever makes it: sent twice, it is stored once.
            A refusal is a problem of RFC 9457 with `code`, `detail` and, where there is one, `field`, `value`, `limit` and `wayOut`. Whoever has
            signed in or joined carries a pass in a cookie; what changes something also needs the header `X-XSRF-TOKEN` with the
            value of the cookie `XSRF-TOKEN`. The calculator needs neither. Who may use which door stands in `PermissionsTest`.
            """;

    /** An answer with headers of its own is no other answer. */
    private static final String WRAPPER = "ResponseEntity";

    private static final String REFERENCE = "#/components/schemas/";

    private final JsonNode description;

    ApiDocument(JsonNode description) {
        this.description = description;
    }

    String text() {
        List<String> parts = new ArrayList<>();
        parts.add(HEAD);
        doors().forEach((group, lines) -> parts.add("## " + group + "\n\n" + String.join("\n", lines) + "\n"));
        parts.add("## What travels\n");
        schemas().forEach((name, schema) -> parts.add(schema(name, schema)));
        return String.join("\n", parts);
    }

    private Map<String, List<String>> doors() {
        var groups = new TreeMap<String, List<String>>();
        description
                .get("paths")
                .properties()
                .forEach(path -> path.getValue()
                        .properties()
                        .forEach(door -> groups.computeIfAbsent(group(door.getValue()), key -> new ArrayList<>())
                                .add(door(door.getKey(), path.getKey(), door.getValue()))));
        groups.values().forEach(lines -> lines.sort(null));
        return groups;
    }

    private static String group(JsonNode door) {
        var name = door.get("tags").get(0).asString().replace("-controller", "").replace('-', ' ');
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    private static String door(String method, String path, JsonNode door) {
        var takes = type(content(door.path("requestBody").path("content")).path("schema"));
        var answers =
                type(content(door.path("responses").path("200").path("content")).path("schema"));
        return "- `" + method.toUpperCase(Locale.ROOT) + " " + path + query(door) + "`" + said(" takes ", takes)
                + said(takes.isEmpty() ? " answers " : ", answers ", answers);
    }

    private static String query(JsonNode door) {
        var names = elements(door.path("parameters")).stream()
                .filter(parameter -> parameter.get("in").asString().equals("query"))
                .map(parameter -> parameter.get("name").asString() + "=")
                .collect(Collectors.joining("&"));
        return names.isEmpty() ? "" : "?" + names;
    }

    private static String said(String before, String type) {
        return type.isEmpty() ? "" : before + type;
    }

    private static JsonNode content(JsonNode content) {
        return content.properties().stream()
                .findFirst()
                .map(Map.Entry::getValue)
                .orElse(content);
    }

    /** Those that a door speaks of, and what they are made of. */
    private Map<String, JsonNode> schemas() {
        var all = description.get("components").get("schemas");
        var sorted = new TreeMap<String, JsonNode>();
        var open = new ArrayDeque<>(named(description.get("paths")));
        while (!open.isEmpty()) {
            var name = open.pop();
            if (all.has(name) && sorted.putIfAbsent(name, all.get(name)) == null) {
                open.addAll(named(all.get(name)));
            }
        }
        return sorted;
    }

    private static List<String> named(JsonNode within) {
        return within.findValuesAsString("$ref").stream().map(ApiDocument::name).toList();
    }

    private static String name(String reference) {
        return reference.substring(REFERENCE.length()).replace(WRAPPER, "");
    }

    private static String schema(String name, JsonNode schema) {
        var rows = schema.path("properties").properties().stream()
                .map(property -> "| `" + property.getKey() + "` | " + type(property.getValue()) + " | "
                        + words(property.getValue().path("description")) + " |")
                .collect(Collectors.joining("\n"));
        var table = rows.isEmpty() ? "" : "\n| field | type | |\n|---|---|---|\n" + rows + "\n";
        return "### " + name + "\n\n" + words(schema.path("description")) + "\n" + table;
    }

    private static String words(JsonNode description) {
        return description
                .asString("")
                .replaceAll("\\s+", " ")
                .replace("|", "\\|")
                .strip();
    }

    private static String type(JsonNode schema) {
        if (schema.has("$ref")) {
            return link(name(schema.get("$ref").asString()));
        }
        if (schema.has("items")) {
            return "list of " + type(schema.get("items"));
        }
        return schema.has("format")
                ? schema.get("format").asString()
                : schema.path("type").asString("");
    }

    private static String link(String name) {
        return name.equals("String") ? "text" : "[" + name + "](#" + name.toLowerCase(Locale.ROOT) + ")";
    }

    private static List<JsonNode> elements(JsonNode array) {
        List<JsonNode> all = new ArrayList<>();
        array.forEach(all::add);
        return all;
    }
}
