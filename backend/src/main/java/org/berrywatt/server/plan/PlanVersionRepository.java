package org.berrywatt.server.plan;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface PlanVersionRepository extends Repository<PlanVersion, UUID> {

    Optional<PlanVersion> findFirstByLabDayIdOrderByNumberDesc(UUID labDayId);
}
