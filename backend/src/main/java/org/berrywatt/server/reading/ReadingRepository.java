package org.berrywatt.server.reading;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface ReadingRepository extends Repository<ReadingEntity, UUID> {

    Optional<ReadingEntity> findById(UUID id);

    @Query("select r from ReadingEntity r where r.cellId = :cellId order by r.taken.at, r.origin.acceptedAt, r.id")
    List<ReadingEntity> ofCell(UUID cellId);

    @Query("select r from ReadingEntity r where r.labDayId = :labDayId order by r.taken.at, r.origin.acceptedAt, r.id")
    List<ReadingEntity> ofLabDay(UUID labDayId);

    @Query("select r from ReadingEntity r where r.labDayId = :labDayId"
            + " and not exists (select c from ReadingEntity c where c.replaces = r.id)"
            + " and not exists (select s from SetAside s where s.readingId = r.id and s.reason is not null"
            + " and not exists (select l from SetAside l where l.readingId = r.id and l.position > s.position))"
            + " order by r.taken.at, r.origin.acceptedAt, r.id")
    List<ReadingEntity> validOfLabDay(UUID labDayId);

    /** Keeps corrections of the same reading apart: the second waits and then sees the first. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select r from ReadingEntity r where r.id = :id and r.cellId = :cellId")
    Optional<ReadingEntity> holdAlone(UUID id, UUID cellId);

    /** Keeps settings-aside of the same reading apart, and apart from its correction. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select r from ReadingEntity r where r.id = :id")
    Optional<ReadingEntity> holdAlone(UUID id);

    @Query("select c.id from ReadingEntity c where c.replaces = :id")
    Optional<UUID> replacementOf(UUID id);
}
