package org.berrywatt.server.cell;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import org.berrywatt.contract.Typed;
import org.jspecify.annotations.Nullable;

/** An area as typed (sides or area) and as understood. */
@Embeddable
record TypedCellArea(
        @Column(name = "area_text") String text,
        @Column(name = "area_unit") @Nullable String unit,
        @Column(name = "area_m2") double areaM2,
        @Column(name = "area_uncertainty_m2") double standardUncertaintyM2) {

    Typed typed() {
        return new Typed(text, unit);
    }

    CellArea view() {
        return new CellArea(areaM2, standardUncertaintyM2);
    }
}
