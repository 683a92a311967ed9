package org.berrywatt.server.reading;

import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.quantity.Field;
import org.berrywatt.reading.Fields;
import org.berrywatt.reading.LightToggles;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.TypedAmount;
import org.berrywatt.server.typed.TypedValues;
import org.berrywatt.server.typed.TypedValues.Unusual;
import org.jspecify.annotations.Nullable;

/** Reads a series of light toggles: covered and open in turn, covered first, always the same of voltage and current. */
record ToggleConverter(Unusual unusual) {

    private static final int FEWEST_ROWS = 2 * LightToggles.LEAST;
    private static final int MOST_ROWS = 20;

    /** @throws Refusal {@code toggles.incomplete} outside [6, 20] rows, or when a number is refused */
    List<ToggleRow> rows(List<SweepPoint> points) {
        if (points.size() < FEWEST_ROWS || points.size() > MOST_ROWS) {
            throw Refusal.of(ProblemCode.TOGGLES_INCOMPLETE)
                    .field("points")
                    .value(points.size())
                    .limit(FEWEST_ROWS + " to " + MOST_ROWS);
        }
        var voltages = Given.need("points[0]", points.get(0)).voltage() != null;
        return IntStream.range(0, points.size())
                .mapToObj(at -> row("points[" + at + "]", points.get(at), at % 2 == 1, voltages))
                .toList();
    }

    private ToggleRow row(String path, @Nullable SweepPoint point, boolean lit, boolean voltages) {
        Field field = voltages ? Fields.VOLTAGE : Fields.CURRENT;
        var given = Given.need(path, point);
        var amount = TypedValues.number(
                path + "." + field.key(), voltages ? given.voltage() : given.current(), unusual, field);
        return new ToggleRow(lit, field.key(), TypedAmount.of(amount));
    }
}
