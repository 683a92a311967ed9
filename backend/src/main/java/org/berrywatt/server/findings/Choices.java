package org.berrywatt.server.findings;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.berrywatt.contract.FindingsAnswer.Choice;
import org.berrywatt.contract.FindingsAnswer.Value;

/** What cells can be filtered by: facets with two values or more, but not so many that nobody would read them. */
final class Choices {

    private static final int MOST_VALUES = 60;

    private Choices() {}

    static List<Choice> of(StudyTable table) {
        return Facet.of(table.columns()).stream()
                .flatMap(facet -> choice(facet, table).stream())
                .toList();
    }

    private static Optional<Choice> choice(Facet facet, StudyTable table) {
        Map<Group, Integer> counts = new LinkedHashMap<>();
        for (var row : table.rows()) {
            counts.merge(facet.of().apply(row), 1, Integer::sum);
            if (counts.size() > MOST_VALUES) {
                return Optional.empty();
            }
        }
        return counts.size() < 2 ? Optional.empty() : Optional.of(new Choice(facet.key(), values(counts)));
    }

    private static List<Value> values(Map<Group, Integer> counts) {
        return counts.entrySet().stream()
                .map(entry -> new Value(entry.getKey().key(), entry.getKey().name(), entry.getValue()))
                .sorted(Comparator.comparing(Choices::size).thenComparing(Value::name))
                .toList();
    }

    /** Numbers rising; what is no number stands after them, by name. */
    private static double size(Value value) {
        return value.name().matches("-?[\\d.]+") ? Double.parseDouble(value.name()) : Double.POSITIVE_INFINITY;
    }
}
