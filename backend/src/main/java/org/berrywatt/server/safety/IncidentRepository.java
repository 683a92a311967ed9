package org.berrywatt.server.safety;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface IncidentRepository extends Repository<Incident, UUID> {

    List<Incident> findByLabDayIdOrderByOriginAcceptedAtAscIdAsc(UUID labDayId);

    /** Keeps corrections of the same incident apart: the second waits and then sees the first. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select i from Incident i where i.id = :id and i.labDayId = :labDayId")
    Optional<Incident> holdAlone(UUID id, UUID labDayId);

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select i from Incident i where i.id = :id")
    Optional<Incident> holdAlone(UUID id);

    boolean existsByReplaces(UUID id);
}
