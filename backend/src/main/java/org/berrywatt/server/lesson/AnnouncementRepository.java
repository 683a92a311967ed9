package org.berrywatt.server.lesson;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface AnnouncementRepository extends Repository<AnnouncementEntity, UUID> {

    Optional<AnnouncementEntity> findById(UUID id);

    Optional<AnnouncementEntity> findFirstByLabDayIdOrderByMadeAtDescIdAsc(UUID labDayId);

    long countByLabDayId(UUID labDayId);
}
