package org.berrywatt.server.platform;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Typed;
import org.jspecify.annotations.Nullable;

/**
 * The server's polite no. Thrown anywhere below a controller, it rolls the transaction back and reaches the browser as
 * a {@link org.berrywatt.contract.Problem}; its sentence is {@code problem.CODE} of the text catalogue.
 *
 * <p>Immutable: every {@code with...} answers a new refusal.
 */
@SuppressWarnings("serial")
public final class Refusal extends RuntimeException {

    private final ProblemCode code;
    private final Map<String, Object> values;
    private final List<Typed> choices;

    private Refusal(ProblemCode code, Map<String, Object> values, List<Typed> choices) {
        super(code.code() + " " + values, null, false, false);
        this.code = code;
        this.values = values;
        this.choices = choices;
    }

    public static Refusal of(ProblemCode code) {
        return new Refusal(code, Map.of(), List.of());
    }

    /** Names the refused field by its path in the request, for example {@code "points[3].load"}. */
    public Refusal field(String path) {
        return with("field", path);
    }

    /** What was given. */
    public Refusal value(Object given) {
        return with("value", given);
    }

    /** What is accepted; ranges in interval notation. */
    public Refusal limit(Object accepted) {
        return with("limit", accepted);
    }

    /** Fills a further placeholder of the sentence. */
    public Refusal with(String placeholder, Object value) {
        var more = new TreeMap<>(values);
        more.put(placeholder, value);
        return new Refusal(code, Map.copyOf(more), choices);
    }

    /** Readings to choose from, for a number that can be read in two ways. */
    public Refusal choices(List<Typed> readings) {
        return new Refusal(code, values, List.copyOf(readings));
    }

    public ProblemCode code() {
        return code;
    }

    public Map<String, Object> values() {
        return values;
    }

    List<Typed> choices() {
        return choices;
    }

    @Nullable
    String text(String placeholder) {
        return values.containsKey(placeholder) ? String.valueOf(values.get(placeholder)) : null;
    }
}
