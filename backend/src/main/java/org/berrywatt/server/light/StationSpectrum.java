package org.berrywatt.server.light;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.SpectrumAnswer;
import org.berrywatt.contract.SpectrumAnswer.SpectrumPoint;
import org.berrywatt.light.OwnSpectrum;
import org.berrywatt.server.access.Caller;
import org.jspecify.annotations.Nullable;

/** The spectrum of a station's own lamp as given, or its taking back; written once, and the latest of a station holds. */
@Entity
@Table(name = "station_spectrum")
class StationSpectrum {

    /** Enough for a drawing of a hand's width. */
    private static final int MOST_POINTS = 160;

    @Id
    private UUID id;

    /** Given by the database in the order written. */
    @Column(insertable = false, updatable = false)
    private @Nullable Long position;

    private UUID stationId;
    private String name;
    private @Nullable String csv;
    private String teacher;

    @Column(nullable = false)
    private String writtenBy;

    private Instant writtenAt;

    protected StationSpectrum() {}

    /** @param csv null takes the spectrum back */
    StationSpectrum(UUID id, UUID stationId, String name, @Nullable String csv, Caller.Teacher teacher, Instant at) {
        this.id = id;
        this.stationId = stationId;
        this.name = name;
        this.csv = csv;
        this.teacher = teacher.name();
        this.writtenBy = teacher.signature();
        this.writtenAt = at;
    }

    UUID id() {
        return id;
    }

    UUID stationId() {
        return stationId;
    }

    @Nullable
    String csv() {
        return csv;
    }

    SpectrumAnswer answer(@Nullable OwnSpectrum spectrum) {
        var outline = spectrum == null
                ? List.<SpectrumPoint>of()
                : spectrum.outline(MOST_POINTS).stream()
                        .map(point -> new SpectrumPoint(point.nm(), point.share()))
                        .toList();
        return new SpectrumAnswer(name, teacher, writtenAt, outline);
    }
}
