package org.berrywatt.server.access;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;
import org.springframework.transaction.annotation.Transactional;

interface TeacherRepository extends Repository<Teacher, UUID> {

    Optional<Teacher> findById(UUID id);

    Optional<Teacher> findByNameFolded(String nameFolded);

    long count();

    @Query("select teacher.name from Teacher teacher order by teacher.createdAt")
    List<String> names();

    /** A teacher whose password is still kept as this; it stays so until the transaction ends. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select teacher from Teacher teacher where teacher.id = :id and teacher.passwordHash = :hash")
    Optional<Teacher> lock(UUID id, String hash);

    /** Answers how many were found to replace: 0 when somebody else was faster. */
    @Modifying
    @Transactional
    @Query(
            "update Teacher teacher set teacher.passwordHash = :hash where teacher.id = :id and teacher.passwordHash = :old")
    int replace(UUID id, String old, String hash);

    Teacher save(Teacher teacher);
}
