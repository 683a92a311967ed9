package org.berrywatt.server.cell;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface CellRepository extends Repository<CellEntity, UUID> {

    Optional<CellEntity> findById(UUID id);

    List<CellEntity> findByLabDayIdOrderByOriginAcceptedAtAscIdAsc(UUID labDayId);

    boolean existsByLabDayIdAndLabelKey(UUID labDayId, String labelKey);

    int countByTeamId(UUID teamId);
}
