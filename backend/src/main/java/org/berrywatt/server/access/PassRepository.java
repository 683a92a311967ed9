package org.berrywatt.server.access;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface PassRepository extends Repository<Pass, String> {

    Optional<Pass> findById(String tokenHash);

    Pass save(Pass pass);

    void deleteById(String tokenHash);

    @Modifying
    @Query("delete from Pass pass where pass.expiresAt < :now")
    void deleteExpired(Instant now);

    @Modifying
    @Query("delete from Pass pass where pass.teamId = :teamId")
    void deleteOfTeam(UUID teamId);

    @Modifying
    @Query("delete from Pass pass where pass.teacherId = :teacherId")
    void deleteOfTeacher(UUID teacherId);

    @Modifying
    @Query("delete from Pass pass where pass.teacherId = :teacherId and pass.tokenHash <> :kept")
    void deleteOfTeacherBut(String kept, UUID teacherId);

    @Modifying(flushAutomatically = true)
    @Query("update Pass pass set pass.teamId = :into where pass.teamId = :teamId")
    void moveTeam(UUID teamId, UUID into);
}
