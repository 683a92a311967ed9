package org.berrywatt.server.light;

import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface GridRepository extends Repository<GridEntity, UUID> {

    List<GridEntity> findByStationIdInOrderByOriginAcceptedAtAscIdAsc(Collection<UUID> stationIds);
}
