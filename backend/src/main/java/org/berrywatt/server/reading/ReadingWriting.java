package org.berrywatt.server.reading;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.CellIdentity;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.light.Stations;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Corrections;
import org.berrywatt.server.typed.Origin;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;

/** Writes readings while the day is open, and a teacher's corrections until it is final. Nothing written is changed. */
@Component
class ReadingWriting {

    private static final int LONGEST_REASON = 120;

    private final LabDays days;
    private final Stations stations;
    private final ReadingRepository readings;
    private final EntityManager store;
    private final ApplicationEventPublisher events;

    ReadingWriting(
            LabDays days,
            Stations stations,
            ReadingRepository readings,
            EntityManager store,
            ApplicationEventPublisher events) {
        this.days = days;
        this.stations = stations;
        this.readings = readings;
        this.store = store;
        this.events = events;
    }

    ReadingEntity accept(UUID id, CellIdentity cell, ReadingRequest request, Caller caller, Instant at) {
        days.holdFor(cell.labDayId(), request.replaces(), caller);
        var reading = ReadingConverter.reading(request);
        requireStation(cell, reading.stationId());
        var origin = Origin.of(caller.signature(), request.noticedAt(), at);
        var entity = new ReadingEntity(id, cell, reading, correction(cell, request), origin);
        store.persist(entity);
        events.publishEvent(new ReadingAccepted(cell.labDayId(), cell.id(), id));
        return entity;
    }

    private void requireStation(CellIdentity cell, @Nullable UUID stationId) {
        if (stationId != null && !isOfDay(stationId, cell.labDayId())) {
            throw Refusal.of(ProblemCode.STATION_MISSING).field("stationId").value(stationId);
        }
    }

    private boolean isOfDay(UUID stationId, UUID labDayId) {
        return stations.labDayOf(stationId).filter(labDayId::equals).isPresent();
    }

    private @Nullable Correction correction(CellIdentity cell, ReadingRequest request) {
        var replaced = request.replaces();
        if (replaced == null) {
            return null;
        }
        var wrong = readings.holdAlone(replaced, cell.id());
        Corrections.requireStanding(
                wrong, () -> readings.replacementOf(replaced).isPresent());
        var entity = wrong.orElseThrow();
        return new Correction(replaced, reason(entity, request.reason()), entity.taken());
    }

    /** A corrected pair of numbers speaks for itself; rows do not. */
    private static @Nullable String reason(ReadingEntity wrong, @Nullable String typed) {
        return typed == null && !wrong.reading().kind().isInRows() ? null : Words.line("reason", typed, LONGEST_REASON);
    }
}
