package org.berrywatt.server.light;

import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface LightReadingRepository extends Repository<LightReadingEntity, UUID> {

    List<LightReadingEntity> findByStationIdInOrderByOriginAcceptedAtAscIdAsc(Collection<UUID> stationIds);

    Optional<LightReadingEntity> findById(UUID id);

    /** Keeps corrections of the same reading apart: the second waits and then sees the first. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select r from LightReadingEntity r where r.id = :id and r.stationId = :stationId")
    Optional<LightReadingEntity> holdAlone(UUID id, UUID stationId);

    /** Keeps settings-aside of the same reading apart, and apart from its correction. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select r from LightReadingEntity r where r.id = :id")
    Optional<LightReadingEntity> holdAlone(UUID id);

    boolean existsByReplaces(UUID id);
}
