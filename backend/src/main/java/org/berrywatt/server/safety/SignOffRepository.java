package org.berrywatt.server.safety;

import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface SignOffRepository extends Repository<SignOff, UUID> {

    Optional<SignOff> findById(UUID id);

    List<SignOff> findByLabDayIdOrderBySignedAtAscIdAsc(UUID labDayId);

    List<SignOff> findByTeamIdIn(Collection<UUID> teamIds);

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select s from SignOff s where s.id = :id")
    Optional<SignOff> holdAlone(UUID id);
}
