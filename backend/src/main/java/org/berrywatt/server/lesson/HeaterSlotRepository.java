package org.berrywatt.server.lesson;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface HeaterSlotRepository extends Repository<HeaterSlotEntity, UUID> {

    Optional<HeaterSlotEntity> findById(UUID id);

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select s from HeaterSlotEntity s where s.id = :id")
    Optional<HeaterSlotEntity> holdAlone(UUID id);

    /** The cell of a stay; loads no stay, so that its state is seen only once its day is held. */
    @Query("select s.cellId from HeaterSlotEntity s where s.id = :id")
    Optional<UUID> cellOf(UUID id);

    boolean existsByReplaces(UUID id);

    Optional<HeaterSlotEntity> findByReplaces(UUID id);

    long countByCellId(UUID cellId);

    /** Those that no correction replaces, in the order put in. */
    @Query("select s from HeaterSlotEntity s where s.labDayId = :labDayId"
            + " and not exists (select 1 from HeaterSlotEntity later where later.replaces = s.id)"
            + " order by s.inAt, s.id")
    List<HeaterSlotEntity> standing(UUID labDayId);

    /** Those on a heater now. */
    @Query("select s from HeaterSlotEntity s where s.labDayId = :labDayId and s.outAt is null"
            + " and not exists (select 1 from HeaterSlotEntity later where later.replaces = s.id)")
    List<HeaterSlotEntity> occupied(UUID labDayId);
}
