package org.berrywatt.server.team;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface TeamRepository extends Repository<TeamEntity, UUID> {

    Optional<TeamEntity> findById(UUID id);

    Optional<TeamEntity> findByCode(String code);

    List<TeamEntity> findByLabDayIdOrderByMark(UUID labDayId);

    boolean existsByLabDayIdAndNameKey(UUID labDayId, String nameKey);

    int countByLabDayId(UUID labDayId);
}
