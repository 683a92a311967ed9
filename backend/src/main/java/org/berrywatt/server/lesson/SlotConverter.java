package org.berrywatt.server.lesson;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.reading.Fields;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.TypedAmount;
import org.berrywatt.server.typed.TypedValues;
import org.berrywatt.server.typed.TypedValues.Unusual;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;

/** Reads stays on heaters as typed. */
final class SlotConverter {

    private static final int LONGEST_NAME = 24;
    private static final int MOST_POSITIONS = 24;
    private static final int LONGEST_HOLD_MINUTES = 480;
    private static final int LONGEST_NOTE = 200;

    private SlotConverter() {}

    /**
     * @param replaced what is corrected: its times hold where the correction says nothing of them
     * @param earliest a time in before it is taken for it
     */
    static Stay stay(HeaterSlotRequest request, @Nullable HeaterSlot replaced, Instant earliest, Instant at) {
        var outAt = replaced == null ? null : replaced.outAt();
        var inAt = request.inAt() == null && replaced != null
                ? replaced.inAt()
                : held(request.inAt(), earliest, outAt == null ? at : outAt);
        return new Stay(
                request.cellId(),
                Words.line("heater", request.heater(), LONGEST_NAME),
                Given.between("position", request.position(), 1, MOST_POSITIONS),
                TypedAmount.of(TypedValues.number("target", request.target(), Unusual.TAKE, Fields.HEATER_TARGET)),
                Given.between("holdMinutes", request.holdMinutes(), 1, LONGEST_HOLD_MINUTES),
                inAt,
                outAt,
                note(request.note()));
    }

    private static @Nullable String note(@Nullable String typed) {
        return typed == null || typed.isBlank() ? null : Words.line("note", typed, LONGEST_NOTE);
    }

    /** A time as a phone tells it, held within what can be, in milliseconds: a wrong clock must not cost an entry. Null is the latest. */
    static Instant held(@Nullable Instant told, Instant earliest, Instant latest) {
        if (told == null || told.isAfter(latest)) {
            return latest;
        }
        return told.isBefore(earliest) ? earliest : told.truncatedTo(ChronoUnit.MILLIS);
    }
}
