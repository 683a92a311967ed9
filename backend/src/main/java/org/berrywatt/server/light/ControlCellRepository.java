package org.berrywatt.server.light;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface ControlCellRepository extends Repository<ControlCellEntity, UUID> {

    Optional<ControlCellEntity> findFirstByLabDayIdOrderByPositionDesc(UUID labDayId);
}
