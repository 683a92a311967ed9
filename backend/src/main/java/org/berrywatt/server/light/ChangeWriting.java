package org.berrywatt.server.light;

import jakarta.persistence.EntityManager;
import java.util.UUID;
import java.util.function.Function;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.StationAnswer;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;

/** Writes what a teacher changes of a station: once, however often it is sent, and until the day's results are final. */
@Component
class ChangeWriting {

    private final StationRecords records;
    private final LabDays days;
    private final Receipts receipts;
    private final EntityManager store;
    private final ApplicationEventPublisher events;

    ChangeWriting(
            StationRecords records,
            LabDays days,
            Receipts receipts,
            EntityManager store,
            ApplicationEventPublisher events) {
        this.records = records;
        this.days = days;
        this.receipts = receipts;
        this.store = store;
        this.events = events;
    }

    /**
     * The station after a change.
     *
     * @param change makes the row to keep from the station as it is, which is held with its day meanwhile
     * @throws Refusal {@code notFound}, {@code labday.final}
     */
    StationAnswer once(UUID stationId, UUID id, Object request, Function<StationRecord, Object> change) {
        return receipts.once(
                id, new ChangeOfStation(stationId, request), () -> write(stationId, change), () -> answer(stationId));
    }

    /** @throws Refusal {@code notFound} */
    StationRecord record(UUID stationId) {
        return records.find(stationId).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
    }

    private StationAnswer write(UUID stationId, Function<StationRecord, Object> change) {
        var labDayId = record(stationId).station().labDayId();
        days.holdAlone(labDayId);
        days.holdCorrectable(labDayId);
        store.persist(change.apply(record(stationId)));
        events.publishEvent(new LightChanged(labDayId, stationId));
        return answer(stationId);
    }

    private StationAnswer answer(UUID stationId) {
        store.flush();
        return StationAnswers.of(record(stationId));
    }

    /** A change's whole request: the station stands in the address. */
    private record ChangeOfStation(UUID stationId, Object change) {}
}
