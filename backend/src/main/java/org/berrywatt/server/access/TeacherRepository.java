package org.berrywatt.server.access;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface TeacherRepository extends Repository<Teacher, UUID> {

    Optional<Teacher> findById(UUID id);

    Optional<Teacher> findByNameFolded(String nameFolded);

    long count();

    Teacher save(Teacher teacher);
}
