package org.berrywatt.server.labday;

import java.util.UUID;

/** Something of a lab day has changed. Announced in the transaction that stores it; later features act when that commits. */
public interface DayChange {

    UUID labDayId();
}
