package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;

/**
 * Which cells lean on a reading of a station's light: their result takes the light from it, alone or between it and the next.
 *
 * @param cells in the order registered
 */
public record LightUseAnswer(UUID irradianceId, List<CellAtLight> cells) {

    /** A cell and its team. */
    public record CellAtLight(UUID cellId, String label, UUID teamId, String team) {}
}
