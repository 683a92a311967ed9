package org.berrywatt.server.reading;

import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.contract.Typed;
import org.berrywatt.quantity.Field;
import org.berrywatt.reading.Fields;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.SweepRows;
import org.berrywatt.server.typed.TypedAmount;
import org.berrywatt.server.typed.TypedValues;
import org.berrywatt.server.typed.TypedValues.Unusual;
import org.jspecify.annotations.Nullable;

/** Reads what a team typed off its meter. */
final class ReadingConverter {

    private static final int FEWEST_ROWS = 5;
    private static final int MOST_ROWS = 60;

    private final ReadingRequest request;
    private final Unusual unusual;

    private ReadingConverter(ReadingRequest request) {
        this.request = request;
        this.unusual = request.unusualConfirmed() ? Unusual.TAKE : Unusual.ASK;
    }

    /**
     * The reading in SI units.
     *
     * @throws Refusal for an unknown kind, {@code station.missing} when a reading under light has none, {@code
     *     sweep.tooShort} outside [5, 60] rows, {@code toggles.incomplete} outside [6, 20] rows, or when a number is refused, {@code dark.leads} as {@link DarkConverter} says,
     *     or when the rows make no curve, see {@link SweepRows#sweep}
     */
    static MeterReading reading(ReadingRequest request) {
        return new ReadingConverter(request).reading();
    }

    private MeterReading reading() {
        var kind = ReadingKind.of(Given.choice("kind", request.kind(), ReadingKind.KEYS));
        if (kind != ReadingKind.DARK && request.stationId() == null) {
            throw Refusal.of(ProblemCode.STATION_MISSING).field("stationId");
        }
        return switch (kind) {
            case SWEEP -> sweep();
            case TOGGLES -> toggles();
            case DARK -> DarkConverter.reading(request, unusual);
            case LIGHT -> light();
        };
    }

    private MeterReading light() {
        return new MeterReading(
                ReadingKind.LIGHT,
                request.stationId(),
                amount("voltage", request.voltage(), Fields.VOLTAGE),
                amount("current", request.current(), Fields.CURRENT),
                null,
                null,
                List.of(),
                List.of(),
                request.unusualConfirmed());
    }

    private MeterReading sweep() {
        var rows = rows(Given.need("points", request.points()));
        requireCurve(rows);
        return new MeterReading(
                ReadingKind.SWEEP,
                request.stationId(),
                null,
                null,
                null,
                null,
                rows,
                List.of(),
                request.unusualConfirmed());
    }

    private MeterReading toggles() {
        var rows = new ToggleConverter(unusual).rows(Given.need("points", request.points()));
        return new MeterReading(
                ReadingKind.TOGGLES,
                request.stationId(),
                null,
                null,
                null,
                null,
                List.of(),
                rows,
                request.unusualConfirmed());
    }

    private List<SweepRow> rows(List<SweepPoint> points) {
        if (points.size() < FEWEST_ROWS || points.size() > MOST_ROWS) {
            throw Refusal.of(ProblemCode.SWEEP_TOO_SHORT)
                    .field("points")
                    .value(points.size())
                    .limit(FEWEST_ROWS + " to " + MOST_ROWS);
        }
        return IntStream.range(0, points.size())
                .mapToObj(at -> row("points[" + at + "]", points.get(at)))
                .toList();
    }

    private static void requireCurve(List<SweepRow> rows) {
        SweepRows.sweep(rows.stream().map(SweepRow::point).toList());
    }

    private SweepRow row(String path, @Nullable SweepPoint point) {
        return new RowConverter(path, unusual).row(Given.need(path, point));
    }

    private TypedAmount amount(String path, @Nullable Typed typed, Field field) {
        return TypedAmount.of(TypedValues.number(path, typed, unusual, field));
    }
}
