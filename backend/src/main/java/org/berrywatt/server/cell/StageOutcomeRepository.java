package org.berrywatt.server.cell;

import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface StageOutcomeRepository extends Repository<StageOutcomeEntity, UUID> {

    List<StageOutcomeEntity> findByCellIdInOrderByOriginAcceptedAtAscIdAsc(Collection<UUID> cellIds);

    /** Keeps corrections of the same outcome apart: the second waits and then sees the first. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select o from StageOutcomeEntity o where o.id = :id and o.cellId = :cellId")
    Optional<StageOutcomeEntity> holdAlone(UUID id, UUID cellId);

    boolean existsByReplaces(UUID id);
}
