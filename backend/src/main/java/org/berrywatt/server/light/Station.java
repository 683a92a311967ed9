package org.berrywatt.server.light;

import java.util.List;
import java.util.UUID;
import org.berrywatt.light.Instrument;
import org.berrywatt.light.Lamp;
import org.berrywatt.light.LightSource;
import org.berrywatt.light.Uniformity;
import org.jspecify.annotations.Nullable;

/**
 * A light station as later features see it.
 *
 * @param lamp its kind: how it drifts and how long a reading holds
 * @param source what shines: the kind of lamp, or its own spectrum where one was given
 * @param distanceM lamp to cell, in (0, infinity)
 * @param angleDeg angle of incidence, in [0, 90)
 * @param uniformity how even its light is; null while nobody read it
 * @param readings valid readings (corrections applied, without those set aside), oldest first
 */
public record Station(
        UUID id,
        UUID labDayId,
        String name,
        Lamp lamp,
        LightSource source,
        Instrument instrument,
        @Nullable Double distanceM,
        @Nullable Double angleDeg,
        @Nullable Uniformity uniformity,
        List<LightReading> readings) {

    /** Relative standard uncertainty of the light from where a cell lies in the spot. */
    public double placeUncertainty() {
        return uniformity == null ? Uniformity.UNREAD_PLACE : uniformity.relativeUncertainty();
    }

    /** This station with a reading in place of the one with the same id. */
    Station with(LightReading changed) {
        var all = readings.stream()
                .map(reading -> reading.id().equals(changed.id()) ? changed : reading)
                .toList();
        return new Station(id, labDayId, name, lamp, source, instrument, distanceM, angleDeg, uniformity, all);
    }
}
