package org.berrywatt.server.light;

import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface StationCorrectionRepository extends Repository<StationCorrection, UUID> {

    List<StationCorrection> findByStationIdInOrderByPosition(Collection<UUID> stationIds);
}
