package org.berrywatt.server.light;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.UUID;
import java.util.function.Supplier;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SetAsideAnswer;
import org.berrywatt.contract.SetAsideRequest;
import org.berrywatt.contract.SpectrumRequest;
import org.berrywatt.contract.StationAnswer;
import org.berrywatt.contract.StationCorrectionRequest;
import org.berrywatt.light.OwnSpectrum;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.SpectrumTable;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What a teacher changes of a station after the fact: settings typed wrong, a light reading that misleads, the spectrum of its own
 * lamp. Also while the day is closed, until its results are final; nothing earlier is lost. Each can be asked about before.
 */
@Service
public class StationChanges {

    private static final int LONGEST_REASON = 120;
    private static final int LONGEST_NAME = 60;

    private final StationRecords records;
    private final LightSetAsideRepository setAsides;
    private final LightReadingRepository readings;
    private final LabDays days;
    private final Receipts receipts;
    private final EntityManager store;
    private final ApplicationEventPublisher events;

    StationChanges(
            StationRecords records,
            LightSetAsideRepository setAsides,
            LightReadingRepository readings,
            LabDays days,
            Receipts receipts,
            EntityManager store,
            ApplicationEventPublisher events) {
        this.records = records;
        this.setAsides = setAsides;
        this.readings = readings;
        this.days = days;
        this.receipts = receipts;
        this.store = store;
        this.events = events;
    }

    /**
     * Corrects a station's settings; they count as if it had been set up so.
     *
     * @throws Refusal {@code notFound}, {@code labday.final}, or when a setting or the reason is refused
     */
    @Transactional
    public StationAnswer correct(UUID stationId, UUID id, StationCorrectionRequest request, Caller caller, Instant at) {
        var teacher = caller.requireTeacher();
        return once(stationId, id, request, () -> {
            var setup =
                    StationConverter.corrected(request, changeable(stationId).setup());
            var reason = Words.line("reason", request.reason(), LONGEST_REASON);
            return new StationCorrection(id, stationId, setup, reason, teacher, at);
        });
    }

    /** The station as it would be with these settings; nothing is written. */
    @Transactional(readOnly = true)
    public Station ifCorrected(UUID stationId, StationCorrectionRequest request, Caller caller) {
        caller.requireTeacher();
        var record = record(stationId);
        return record.with(StationConverter.corrected(request, record.setup())).view();
    }

    /**
     * Gives the spectrum of a station's own lamp, or takes it back.
     *
     * @throws Refusal {@code notFound}, {@code labday.final}, {@code spectrum...} naming the row, or when the name is refused
     */
    @Transactional
    public StationAnswer give(UUID stationId, UUID id, SpectrumRequest request, Caller caller, Instant at) {
        var teacher = caller.requireTeacher();
        return once(stationId, id, request, () -> {
            changeable(stationId);
            var name = Words.line("name", request.name(), LONGEST_NAME);
            spectrum(request);
            return new StationSpectrum(id, stationId, name, request.csv(), teacher, at);
        });
    }

    /** The station as it would be under a lamp of this spectrum; nothing is written. */
    @Transactional(readOnly = true)
    public Station ifLitBy(UUID stationId, SpectrumRequest request, Caller caller) {
        caller.requireTeacher();
        return record(stationId).with(spectrum(request)).view();
    }

    /**
     * Sets a light reading aside or takes that back.
     *
     * @throws Refusal {@code notFound}, {@code labday.final}, {@code replaced.already}, or when the reason is refused
     */
    @Transactional
    public SetAsideAnswer setAside(UUID id, SetAsideRequest request, Caller caller, Instant at) {
        var teacher = caller.requireTeacher();
        return receipts.once(
                id,
                request,
                () -> write(id, request, teacher, at),
                () -> setAsides.findById(id).orElseThrow().answer());
    }

    /** The station as it would be with the reading set aside, or taken back where there is no reason; nothing is written. */
    @Transactional(readOnly = true)
    public Station ifSetAside(SetAsideRequest request, Caller caller, Instant at) {
        var teacher = caller.requireTeacher();
        var record = standing(request.readingId());
        return record.with(new LightSetAside(UUID.randomUUID(), request.readingId(), request.reason(), teacher, at))
                .view();
    }

    private SetAsideAnswer write(UUID id, SetAsideRequest request, Caller.Teacher teacher, Instant at) {
        var readingId = Given.need("readingId", request.readingId());
        readings.holdAlone(readingId);
        var station = standing(readingId).station();
        days.holdCorrectable(station.labDayId());
        var typed = request.reason();
        var reason = typed == null ? null : Words.line("reason", typed, LONGEST_REASON);
        var setAside = new LightSetAside(id, readingId, reason, teacher, at);
        store.persist(setAside);
        events.publishEvent(new LightChanged(station.labDayId(), station.id()));
        return setAside.answer();
    }

    private StationAnswer once(UUID stationId, UUID id, Object request, Supplier<Object> change) {
        return receipts.once(
                id, new ChangeOfStation(stationId, request), () -> after(stationId, change), () -> answer(stationId));
    }

    private StationAnswer after(UUID stationId, Supplier<Object> change) {
        store.persist(change.get());
        events.publishEvent(new LightChanged(record(stationId).station().labDayId(), stationId));
        return answer(stationId);
    }

    private StationAnswer answer(UUID stationId) {
        store.flush();
        return StationAnswers.of(record(stationId));
    }

    private StationRecord changeable(UUID stationId) {
        var record = record(stationId);
        days.holdCorrectable(record.station().labDayId());
        return record;
    }

    private StationRecord record(UUID stationId) {
        return records.find(stationId).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
    }

    private StationRecord standing(@Nullable UUID readingId) {
        var record = records.ofReading(Given.need("readingId", readingId))
                .orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND).field("readingId"));
        if (record.light().replacementOf(Given.need("readingId", readingId)) != null) {
            throw Refusal.of(ProblemCode.REPLACED_ALREADY).field("readingId");
        }
        return record;
    }

    private static @Nullable OwnSpectrum spectrum(SpectrumRequest request) {
        var csv = request.csv();
        return csv == null ? null : SpectrumTable.read("csv", KnownSpectra.nameOf(csv), csv);
    }

    /** A change's whole request: the station stands in the address. */
    private record ChangeOfStation(UUID stationId, Object change) {}
}
