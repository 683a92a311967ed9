package org.berrywatt.server.lesson;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface AnnouncementRepository extends Repository<AnnouncementEntity, UUID> {

    Optional<AnnouncementEntity> findById(UUID id);

    Optional<AnnouncementEntity> findFirstByLabDayIdOrderByPositionDesc(UUID labDayId);

    int countByLabDayId(UUID labDayId);
}
