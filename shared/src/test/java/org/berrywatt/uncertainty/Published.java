package org.berrywatt.uncertainty;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Published examples; each file names its source. */
final class Published {
    private Published() {}

    static JsonNode json(String name) {
        try (InputStream file = Published.class.getResourceAsStream("/uncertainty/" + name)) {
            return JsonMapper.shared().readTree(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double number(JsonNode node, String name) {
        return Double.parseDouble(node.get(name).asString());
    }

    static double[] numbers(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false)
                .mapToDouble(one -> Double.parseDouble(one.asString()))
                .toArray();
    }
}
