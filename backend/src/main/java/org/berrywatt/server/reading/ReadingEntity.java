package org.berrywatt.server.reading;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.berrywatt.server.cell.CellIdentity;
import org.berrywatt.server.typed.Origin;
import org.berrywatt.server.typed.TypedAmount;
import org.hibernate.annotations.BatchSize;
import org.hibernate.annotations.EmbeddedColumnNaming;
import org.jspecify.annotations.Nullable;

/** A reading of a cell; written once. A correction is a new reading that names the one it replaces. */
@Entity
@Table(name = "reading")
class ReadingEntity {

    @Id
    private UUID id;

    private UUID cellId;

    @Column(nullable = false)
    private UUID labDayId;

    private String kind;
    private @Nullable UUID stationId;

    @Embedded
    @EmbeddedColumnNaming("voltage_%s")
    private @Nullable TypedAmount voltage;

    @Embedded
    @EmbeddedColumnNaming("current_%s")
    private @Nullable TypedAmount current;

    @Embedded
    @EmbeddedColumnNaming("swapped_voltage_%s")
    private @Nullable TypedAmount swappedVoltage;

    @Embedded
    @EmbeddedColumnNaming("swapped_current_%s")
    private @Nullable TypedAmount swappedCurrent;

    @ElementCollection
    @CollectionTable(name = "reading_point", joinColumns = @JoinColumn(name = "reading_id"))
    @OrderColumn(name = "position")
    @BatchSize(size = 200)
    private List<SweepRow> points;

    @ElementCollection
    @CollectionTable(name = "reading_toggle", joinColumns = @JoinColumn(name = "reading_id"))
    @OrderColumn(name = "position")
    @BatchSize(size = 200)
    private List<ToggleRow> toggles;

    private boolean unusualConfirmed;
    private @Nullable UUID replaces;
    private @Nullable String reason;

    @Embedded
    private Taken taken;

    @Embedded
    private Origin origin;

    protected ReadingEntity() {}

    ReadingEntity(UUID id, CellIdentity cell, MeterReading reading, @Nullable Correction correction, Origin origin) {
        this.id = id;
        this.cellId = cell.id();
        this.labDayId = cell.labDayId();
        this.kind = reading.kind().key();
        this.stationId = reading.stationId();
        this.voltage = reading.voltage();
        this.current = reading.current();
        this.swappedVoltage = reading.swappedVoltage();
        this.swappedCurrent = reading.swappedCurrent();
        this.points = reading.points();
        this.toggles = reading.toggles();
        this.unusualConfirmed = reading.unusualConfirmed();
        this.replaces = correction == null ? null : correction.replaces();
        this.reason = correction == null ? null : correction.reason();
        this.taken = correction == null ? Taken.now(origin) : correction.taken();
        this.origin = origin;
    }

    UUID id() {
        return id;
    }

    UUID cellId() {
        return cellId;
    }

    UUID labDayId() {
        return labDayId;
    }

    @Nullable
    UUID replaces() {
        return replaces;
    }

    @Nullable
    String reason() {
        return reason;
    }

    Taken taken() {
        return taken;
    }

    Origin origin() {
        return origin;
    }

    MeterReading reading() {
        return new MeterReading(
                ReadingKind.of(kind),
                stationId,
                voltage,
                current,
                swappedVoltage,
                swappedCurrent,
                points,
                toggles,
                unusualConfirmed);
    }

    RecordedReading view() {
        return new RecordedReading(
                id,
                cellId,
                ReadingKind.of(kind),
                stationId,
                measured(voltage),
                measured(current),
                measured(swappedVoltage),
                measured(swappedCurrent),
                Stream.concat(
                                points.stream().map(SweepRow::view),
                                toggles.stream().map(ToggleRow::view))
                        .toList(),
                taken.by(),
                taken.at());
    }

    private static @Nullable Measured measured(@Nullable TypedAmount amount) {
        return amount == null ? null : new Measured(amount.valueSi(), amount.resolutionSi());
    }
}
