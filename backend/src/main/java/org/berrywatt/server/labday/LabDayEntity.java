package org.berrywatt.server.labday;

import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A lab day; it opens for entries as soon as it exists. */
@Entity
@Table(name = "lab_day")
class LabDayEntity {

    @Id
    private UUID id;

    @Version
    private long version;

    private String code;

    @Embedded
    private LabDaySettings settings;

    private boolean entryOpen = true;
    private boolean resultsFinal;

    @Nullable
    private LocalDate keepUntil;

    @Column(nullable = false)
    private Instant createdAt;

    protected LabDayEntity() {}

    LabDayEntity(UUID id, String code, LabDaySettings settings, Instant createdAt) {
        this.id = id;
        this.code = code;
        this.settings = settings;
        this.createdAt = createdAt;
    }

    UUID id() {
        return id;
    }

    long version() {
        return version;
    }

    String code() {
        return code;
    }

    LabDaySettings settings() {
        return settings;
    }

    boolean entryOpen() {
        return entryOpen;
    }

    boolean resultsFinal() {
        return resultsFinal;
    }

    @Nullable
    LocalDate keepUntil() {
        return keepUntil;
    }

    void keepUntil(@Nullable LocalDate date) {
        keepUntil = date;
    }

    void change(LabDaySettings changed) {
        settings = changed;
    }

    void setEntryOpen(boolean open) {
        entryOpen = open;
    }

    /** Final results end entry; results that are final no more leave it closed. */
    void setResultsFinal(boolean isFinal) {
        resultsFinal = isFinal;
        entryOpen = entryOpen && !isFinal;
    }

    LabDay view() {
        return new LabDay(
                id,
                settings.title(),
                settings.heldOn(),
                settings.referenceIrradianceWm2(),
                settings.referenceAreaM2(),
                settings.rule(),
                settings.cellsPerTeam(),
                settings.teamsCreateThemselves(),
                entryOpen,
                resultsFinal,
                keepUntil,
                version);
    }
}
