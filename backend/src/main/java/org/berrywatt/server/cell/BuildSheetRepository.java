package org.berrywatt.server.cell;

import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface BuildSheetRepository extends Repository<BuildSheet, UUID> {

    List<BuildSheet> findByCellIdIn(Collection<UUID> cellIds);

    /** Keeps corrections of the same sheet apart: the second waits and then sees the first. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select s from BuildSheet s where s.id = :id and s.cellId = :cellId")
    Optional<BuildSheet> holdAlone(UUID id, UUID cellId);

    boolean existsByReplaces(UUID id);
}
