package org.berrywatt.server.reading;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface SetAsideRepository extends Repository<SetAside, UUID> {

    Optional<SetAside> findById(UUID id);

    List<SetAside> findByReadingIdInOrderByPosition(Collection<UUID> readingIds);

    @Query("select s from SetAside s where s.readingId in"
            + " (select r.id from ReadingEntity r where r.labDayId = :labDayId) order by s.position")
    List<SetAside> ofLabDay(UUID labDayId);
}
