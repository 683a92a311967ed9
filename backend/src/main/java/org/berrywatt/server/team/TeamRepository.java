package org.berrywatt.server.team;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface TeamRepository extends Repository<TeamEntity, UUID> {

    Optional<TeamEntity> findById(UUID id);

    Optional<TeamEntity> findByCode(String code);

    List<TeamEntity> findByLabDayIdAndMergedIntoIsNullOrderByMark(UUID labDayId);

    Optional<TeamEntity> findByLabDayIdAndNameKey(UUID labDayId, String nameKey);

    /** Teams that were joined to this one before go along. */
    @Modifying(flushAutomatically = true)
    @Query("update TeamEntity t set t.mergedInto = :into where t.mergedInto = :teamId")
    void forward(UUID teamId, UUID into);

    boolean existsByLabDayIdAndNameKey(UUID labDayId, String nameKey);

    int countByLabDayId(UUID labDayId);
}
