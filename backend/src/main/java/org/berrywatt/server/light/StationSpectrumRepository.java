package org.berrywatt.server.light;

import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface StationSpectrumRepository extends Repository<StationSpectrum, UUID> {

    List<StationSpectrum> findByStationIdInOrderByPosition(Collection<UUID> stationIds);
}
