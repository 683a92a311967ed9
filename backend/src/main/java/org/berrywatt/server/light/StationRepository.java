package org.berrywatt.server.light;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface StationRepository extends Repository<StationEntity, UUID> {

    Optional<StationEntity> findById(UUID id);

    List<StationEntity> findByLabDayIdOrderByCreatedAtAscIdAsc(UUID labDayId);
}
