package org.berrywatt.server.desk;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.AttentionItem;
import org.berrywatt.server.Rehearsal;

/** The attention list of a rehearsed day, minutes after noon. */
record AttentionList(Desk desk, UUID labDayId) {

    List<AttentionItem> at(int minute) {
        return desk.of(labDayId, Rehearsal.TEACHER, minute(minute)).items();
    }

    List<String> keysAt(int minute) {
        return at(minute).stream().map(AttentionItem::key).toList();
    }

    static Instant minute(int afterNoon) {
        return Rehearsal.NOON.plusSeconds(60L * afterNoon);
    }
}
