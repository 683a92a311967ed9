package org.berrywatt.server.malformed;

import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import tools.jackson.databind.JsonNode;

/**
 * Bodies for a door as its description asks for them, with something wrong here and there: other types, edges of numbers and
 * times, fields left out, added or given twice.
 */
final class Bodies {

    private static final String REFERENCE = "#/components/schemas/";
    private static final int ONE_IN = 9;
    private static final int DEEPEST = 6;

    private final JsonNode schemas;
    private final Values values;

    Bodies(JsonNode schemas, Values values) {
        this.schemas = schemas;
        this.values = values;
    }

    String of(JsonNode schema) {
        return value("", schema, 0);
    }

    private String value(String name, JsonNode schema, int depth) {
        return values.chance(ONE_IN) ? values.bad() : good(name, resolved(schema), depth);
    }

    private JsonNode resolved(JsonNode schema) {
        return schema.has("$ref") ? schemas.path(schema.get("$ref").asString().substring(REFERENCE.length())) : schema;
    }

    private String good(String name, JsonNode schema, int depth) {
        return switch (schema.path("type").asString("object")) {
            case "array" -> array(name, schema, depth);
            case "boolean" -> String.valueOf(values.chance(2));
            case "integer" -> String.valueOf(values.below(12));
            case "number" -> values.one(List.of("0.5", "1e-3", "25", "300", "1e-7"));
            case "string" -> '"' + text(name, schema.path("format").asString("")) + '"';
            default -> depth > DEEPEST ? "null" : object(schema, depth);
        };
    }

    private String array(String name, JsonNode schema, int depth) {
        var items = new StringJoiner(",", "[", "]");
        for (var left = values.below(4); left > 0; left--) {
            items.add(value(name, schema.get("items"), depth + 1));
        }
        return items.toString();
    }

    private String text(String name, String format) {
        return switch (format) {
            case "uuid" -> values.id(name).toString();
            case "date" -> "2026-11-25";
            case "date-time" -> "2026-11-25T10:15:30Z";
            default -> values.word(name);
        };
    }

    private String object(JsonNode schema, int depth) {
        var fields = new StringJoiner(",", "{", "}");
        schema.path("properties").properties().forEach(property -> add(fields, property, depth));
        if (values.chance(12)) {
            fields.add("\"surplus\":" + values.bad());
        }
        return fields.toString();
    }

    private void add(StringJoiner fields, Map.Entry<String, JsonNode> property, int depth) {
        for (var times = values.chance(ONE_IN) ? values.below(3) : 1; times > 0; times--) {
            fields.add('"' + property.getKey() + "\":" + value(property.getKey(), property.getValue(), depth + 1));
        }
    }
}
