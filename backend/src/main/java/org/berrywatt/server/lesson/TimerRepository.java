package org.berrywatt.server.lesson;

import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface TimerRepository extends Repository<TimerEntity, UUID> {

    Optional<TimerEntity> findById(UUID id);

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select t from TimerEntity t where t.id = :id")
    Optional<TimerEntity> holdAlone(UUID id);

    @Query("select t from TimerEntity t where t.labDayId = :labDayId and t.stoppedAt is null and t.endsAt > :after"
            + " order by t.endsAt, t.id")
    List<TimerEntity> standing(UUID labDayId, Instant after);

    long countByLabDayId(UUID labDayId);
}
