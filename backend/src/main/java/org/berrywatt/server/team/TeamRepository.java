package org.berrywatt.server.team;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface TeamRepository extends Repository<TeamEntity, UUID> {

    Optional<TeamEntity> findById(UUID id);

    Optional<TeamEntity> findByCode(String code);

    List<TeamEntity> findByLabDayIdAndMergedIntoIsNullOrderByMark(UUID labDayId);

    /** Those joined to another one among them. */
    List<TeamEntity> findByLabDayIdOrderByMark(UUID labDayId);

    Optional<TeamEntity> findByLabDayIdAndNameKey(UUID labDayId, String nameKey);

    /** The teams that were joined to this one. */
    List<TeamEntity> findByMergedIntoOrderByMark(UUID mergedInto);

    /** Asks the database, whatever this transaction has seen of the team before. */
    @Query("select coalesce(t.mergedInto, t.id) from TeamEntity t where t.id = :id")
    Optional<UUID> idOfRemaining(UUID id);

    /** Teams that were joined to this one before go along. */
    @Modifying(flushAutomatically = true)
    @Query("update TeamEntity t set t.mergedInto = :into where t.mergedInto = :teamId")
    void forward(UUID teamId, UUID into);

    boolean existsByLabDayIdAndNameKey(UUID labDayId, String nameKey);

    int countByLabDayId(UUID labDayId);

    /**
     * The team of this id.
     *
     * @throws Refusal {@code notFound}
     */
    default TeamEntity existing(UUID id) {
        return findById(id).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
    }
}
