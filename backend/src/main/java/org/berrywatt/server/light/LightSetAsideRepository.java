package org.berrywatt.server.light;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface LightSetAsideRepository extends Repository<LightSetAside, UUID> {

    Optional<LightSetAside> findById(UUID id);

    List<LightSetAside> findByReadingIdInOrderByPosition(Collection<UUID> readingIds);
}
