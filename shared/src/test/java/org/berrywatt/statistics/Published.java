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
        JsonNode numbers = root.path("data").path(name);
        return IntStream.range(0, numbers.size())
                .mapToDouble(i -> numbers.path(i).asDouble())
                .toArray();
    }

    double computed(String name) {
        return root.path("computed").path(name).asDouble();
    }
}
