package org.berrywatt.statistics;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.stream.IntStream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** A reference file of test resources {@code statistics/}; its first lines name the published source. */
record Published(JsonNode root) {

    static Published file(String name) throws IOException {
        try (InputStream in = Published.class.getResourceAsStream("/statistics/" + name)) {
            return new Published(new ObjectMapper().readTree(Objects.requireNonNull(in, name)));
        }
    }

    double[] data(String name) {
        return numbers(root.path("data").path(name));
    }

    /** Numbers, also where they stand as text to keep their digits. */
    static double[] numbers(JsonNode list) {
        return IntStream.range(0, list.size())
                .mapToDouble(i -> number(list.path(i)))
                .toArray();
    }

    static double number(JsonNode node) {
        return node.isString() ? Double.parseDouble(node.asString()) : node.asDouble();
    }

    /** Names as numbers from 0 in the order of their first appearance. */
    int[] codes(String name) {
        JsonNode list = root.path("data").path(name);
        var names = IntStream.range(0, list.size())
                .mapToObj(i -> list.path(i).asString())
                .toList();
        var distinct = names.stream().distinct().toList();
        return names.stream().mapToInt(distinct::indexOf).toArray();
    }

    double computed(String name) {
        return root.path("computed").path(name).asDouble();
    }

    JsonNode at(String... path) {
        JsonNode node = root;
        for (String step : path) {
            node = node.isArray() ? node.path(Integer.parseInt(step)) : node.path(step);
        }
        return node;
    }
}
