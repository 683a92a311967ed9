package org.berrywatt.server.cell;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface CellEventRepository extends Repository<CellEventEntity, UUID> {

    Optional<CellEventEntity> findById(UUID id);

    List<CellEventEntity> findByCellIdInOrderByOriginAcceptedAtAscIdAsc(Collection<UUID> cellIds);
}
