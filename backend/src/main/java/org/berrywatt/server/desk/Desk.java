package org.berrywatt.server.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.AttentionItem;
import org.berrywatt.contract.DeskAnswer;
import org.berrywatt.contract.PutOffRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/** The teacher's attention list. */
@Service
class Desk {

    private static final int LONGEST_ITEM = 120;
    private static final int LONGEST_MINUTES = 1440;

    private final DeskRecords records;
    private final PutOffs putOffs;

    Desk(DeskRecords records, PutOffs putOffs) {
        this.records = records;
        this.putOffs = putOffs;
    }

    /**
     * What waits for the teacher; for teachers.
     *
     * @throws Refusal {@code notFound} when there is no such day
     */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public DeskAnswer of(UUID labDayId, Caller caller, Instant now) {
        return answer(records.of(labDayId, caller.requireTeacher(), now));
    }

    /**
     * Puts an item off, which stays on the list with the time at which it comes back; for teachers. The last word holds.
     *
     * @throws Refusal {@code quantity.impossible} outside [0, 1440] minutes, {@code notFound} when there is no such day
     */
    @Transactional
    public DeskAnswer putOff(UUID labDayId, PutOffRequest request, Caller caller, Instant now) {
        var by = caller.requireTeacher();
        var item = Words.line("item", request.item(), LONGEST_ITEM);
        var minutes = Given.between("minutes", request.minutes(), 0, LONGEST_MINUTES);
        var record = records.of(labDayId, by, now);
        putOffs.write(labDayId, item, now.plus(Duration.ofMinutes(minutes)), by.signature());
        return answer(record);
    }

    private DeskAnswer answer(DeskRecord record) {
        var matters = Attention.of(record);
        var until = putOffs.at(record.day().id(), record.now());
        List<AttentionItem> items =
                matters.stream().map(it -> item(it, until.get(it.id()))).toList();
        return new DeskAnswer(record.now(), items);
    }

    private static AttentionItem item(Matter matter, @Nullable Instant putOffUntil) {
        return new AttentionItem(
                matter.id(),
                matter.kind().key(),
                matter.kind().urgency().number(),
                matter.teamId(),
                matter.cellId(),
                matter.stationId(),
                matter.since(),
                matter.values(),
                matter.remark(),
                matter.kind().action(),
                putOffUntil);
    }
}
