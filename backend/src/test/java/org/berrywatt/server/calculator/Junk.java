package org.berrywatt.server.calculator;

import java.util.List;
import java.util.SplittableRandom;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Spoils good requests: numbers at and beyond every edge, wrong kinds, gaps, repeats. Seeded. */
final class Junk {

    private static final List<String> LEAVES = List.of(
            "null",
            "0",
            "-0.0",
            "-1",
            "1",
            "1e-320",
            "1e-100",
            "1e-9",
            "1e4",
            "-1e4",
            "1e5",
            "1e6",
            "1e15",
            "1e308",
            "-1e308",
            "1e999",
            "-1e999",
            "NaN",
            "\"NaN\"",
            "\"Infinity\"",
            "\"0.1\"",
            "\"\"",
            "\"sun\"",
            "true",
            "[]",
            "[null]",
            "{}",
            "[1,2]",
            "2147483648",
            "0.5");

    private final SplittableRandom random;
    private final JsonMapper json = new JsonMapper();

    Junk(long seed) {
        random = new SplittableRandom(seed);
    }

    /** The request with one to four of its values spoilt, as text. */
    String spoil(String request) {
        var tree = json.readTree(request);
        for (var times = random.nextInt(1, 5); times > 0; times--) {
            spoil(tree);
        }
        // leaves stand in as texts and lose their marks at the end, because JSON knows no NaN
        return json.writeValueAsString(tree).replaceAll("\"<(.*?)>\"", "$1").replace("\\\"", "\"");
    }

    private void spoil(JsonNode node) {
        if (node instanceof ObjectNode object && !object.isEmpty()) {
            var names = List.copyOf(object.propertyNames());
            spoil(object, names.get(random.nextInt(names.size())));
        } else if (node instanceof ArrayNode array && !array.isEmpty()) {
            spoil(array, random.nextInt(array.size()));
        }
    }

    private void spoil(ObjectNode object, String name) {
        if (goesDeeper(object.get(name))) {
            spoil(object.get(name));
        } else {
            object.put(name, leaf());
        }
    }

    private void spoil(ArrayNode array, int index) {
        if (random.nextInt(8) == 0) {
            array.add(array.get(index).deepCopy());
        } else if (goesDeeper(array.get(index))) {
            spoil(array.get(index));
        } else {
            array.set(index, leaf());
        }
    }

    private boolean goesDeeper(JsonNode child) {
        return child.isContainer() && random.nextInt(10) > 0;
    }

    private String leaf() {
        return "<" + LEAVES.get(random.nextInt(LEAVES.size())) + ">";
    }
}
