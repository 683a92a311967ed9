package org.berrywatt.server.reading;

import jakarta.persistence.Embeddable;
import jakarta.persistence.Embedded;
import org.berrywatt.curve.SweepPoint;
import org.hibernate.annotations.EmbeddedColumnNaming;
import org.jspecify.annotations.Nullable;

/**
 * One row of a load sweep. What was typed keeps its text; what followed from the other two has none.
 *
 * @param load in ohm, when it was typed
 * @param voltage in V
 * @param current in A, delivered current positive
 */
@Embeddable
record SweepRow(
        @Embedded @EmbeddedColumnNaming("load_%s") @Nullable RowAmount load,
        @Embedded @EmbeddedColumnNaming("voltage_%s") RowAmount voltage,
        @Embedded @EmbeddedColumnNaming("current_%s") RowAmount current) {

    /** By the loads' nominal values; meter and tolerance come in later. */
    SweepPoint point() {
        return SweepPoint.exact(voltage.valueSi(), current.valueSi());
    }

    RecordedPoint view() {
        return new RecordedPoint(load == null ? null : load.valueSi(), voltage.shown(), current.shown());
    }
}
