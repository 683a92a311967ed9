package org.berrywatt.server.labday;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface LabDayRepository extends Repository<LabDayEntity, UUID> {

    Optional<LabDayEntity> findById(UUID id);

    /** The id alone, so that the day itself may be held afterwards and is read only then. */
    @Query("select d.id from LabDayEntity d where d.code = :code")
    Optional<UUID> idOfCode(String code);

    @Query("select d from LabDayEntity d order by d.settings.heldOn desc, d.createdAt desc")
    List<LabDayEntity> newestFirst();

    /** Keeps the day as it is until the transaction ends; many may hold it at once. */
    @Lock(LockModeType.PESSIMISTIC_READ)
    @Query("select d from LabDayEntity d where d.id = :id")
    Optional<LabDayEntity> hold(UUID id);

    /** Keeps the day to this transaction alone. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select d from LabDayEntity d where d.id = :id")
    Optional<LabDayEntity> holdAlone(UUID id);
}
