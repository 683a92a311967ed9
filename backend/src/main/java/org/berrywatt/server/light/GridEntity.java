package org.berrywatt.server.light;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.berrywatt.light.Uniformity;
import org.berrywatt.server.typed.Origin;
import org.berrywatt.server.typed.TypedAmount;
import org.hibernate.annotations.BatchSize;

/** Readings over a station's spot, row by row; written once. */
@Entity
@Table(name = "light_grid")
class GridEntity {

    @Id
    private UUID id;

    private UUID stationId;

    @ElementCollection
    @CollectionTable(name = "light_grid_place", joinColumns = @JoinColumn(name = "grid_id"))
    @OrderColumn(name = "position")
    @BatchSize(size = 200)
    private List<TypedAmount> places;

    private int columns;

    @Embedded
    private Origin origin;

    protected GridEntity() {}

    GridEntity(UUID id, UUID stationId, List<TypedAmount> places, int columns, Origin origin) {
        this.id = id;
        this.stationId = stationId;
        this.places = List.copyOf(places);
        this.columns = columns;
        this.origin = origin;
    }

    UUID id() {
        return id;
    }

    UUID stationId() {
        return stationId;
    }

    List<TypedAmount> places() {
        return List.copyOf(places);
    }

    int columns() {
        return columns;
    }

    Instant acceptedAt() {
        return origin.acceptedAt();
    }

    Uniformity uniformity() {
        return Uniformity.of(places.stream().map(TypedAmount::valueSi).toList());
    }
}
