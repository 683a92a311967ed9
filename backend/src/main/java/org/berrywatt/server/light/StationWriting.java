package org.berrywatt.server.light;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.GridRequest;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.StationRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Corrections;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Origin;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;

/** Writes stations and readings of their light. Nothing written is ever changed. */
@Component
class StationWriting {

    private final LabDays days;
    private final StationNames names;
    private final StationRepository stations;
    private final LightReadingRepository readings;
    private final EntityManager store;
    private final ApplicationEventPublisher events;

    StationWriting(
            LabDays days,
            StationNames names,
            StationRepository stations,
            LightReadingRepository readings,
            EntityManager store,
            ApplicationEventPublisher events) {
        this.days = days;
        this.names = names;
        this.stations = stations;
        this.readings = readings;
        this.store = store;
        this.events = events;
    }

    void setUp(UUID id, StationRequest request, Caller caller, Instant at) {
        var day = days.holdAlone(Given.need("labDayId", request.labDayId()));
        var setup = StationConverter.setup(request);
        names.requireFree(setup.name(), id, day.id());
        store.persist(new StationEntity(id, day.id(), setup, caller.signature(), at));
        events.publishEvent(new LightChanged(day.id(), id));
    }

    /** The id of the station of a request. */
    UUID require(@Nullable UUID stationId) {
        return station(stationId).id();
    }

    void readGrid(UUID id, GridRequest request, Caller caller, Instant at) {
        var station = station(request.stationId());
        days.holdOpen(station.labDayId());
        var origin = Origin.of(caller.signature(), request.noticedAt(), at);
        store.persist(new GridEntity(
                id, station.id(), GridConverter.places(request), GridConverter.columns(request), origin));
        events.publishEvent(new LightChanged(station.labDayId(), station.id()));
    }

    void read(UUID id, IrradianceRequest request, Caller caller, Instant at) {
        var station = station(request.stationId());
        days.holdFor(station.labDayId(), request.replaces(), caller);
        requireStanding(station, request.replaces());
        var origin = Origin.of(caller.signature(), request.noticedAt(), at);
        store.persist(new LightReadingEntity(
                id, station.id(), StationConverter.light(request.reading()), request.replaces(), origin));
        events.publishEvent(new LightChanged(station.labDayId(), station.id()));
    }

    private StationEntity station(@Nullable UUID id) {
        if (id == null) {
            throw Refusal.of(ProblemCode.STATION_MISSING).field("stationId");
        }
        return stations.findById(id)
                .orElseThrow(() -> Refusal.of(ProblemCode.STATION_MISSING)
                        .field("stationId")
                        .value(id));
    }

    private void requireStanding(StationEntity station, @Nullable UUID replaced) {
        if (replaced != null) {
            Corrections.requireStanding(
                    readings.holdAlone(replaced, station.id()), () -> readings.existsByReplaces(replaced));
        }
    }
}
