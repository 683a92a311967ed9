package org.berrywatt.server.cell;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface CellRepository extends Repository<CellEntity, UUID> {

    Optional<CellEntity> findById(UUID id);

    List<CellEntity> findByLabDayIdOrderByOriginAcceptedAtAscIdAsc(UUID labDayId);

    boolean existsByLabDayIdAndLabelKey(UUID labDayId, String labelKey);

    int countByTeamId(UUID teamId);

    @Modifying(flushAutomatically = true, clearAutomatically = true)
    @Query("update CellEntity c set c.teamId = :into where c.teamId = :teamId")
    void moveTeam(UUID teamId, UUID into);
}
