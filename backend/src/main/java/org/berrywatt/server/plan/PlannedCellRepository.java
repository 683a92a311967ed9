package org.berrywatt.server.plan;

import java.util.List;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface PlannedCellRepository extends Repository<PlannedCellEntity, UUID> {

    List<PlannedCellEntity> findByLabDayIdOrderByAcceptedAtAscIdAsc(UUID labDayId);
}
