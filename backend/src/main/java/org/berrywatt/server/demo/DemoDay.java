package org.berrywatt.server.demo;

import java.util.UUID;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.labday.LabDays;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The whole demo day at once: in one transaction, so that a home has all of it or nothing. */
@Component
class DemoDay {

    private final LabDays labDays;
    private final DemoClass demoClass;

    DemoDay(LabDays labDays, DemoClass demoClass) {
        this.labDays = labDays;
        this.demoClass = demoClass;
    }

    /** The day's id, the same in every home. */
    static UUID id() {
        return Table.rows("labday").findFirst().orElseThrow().id("id");
    }

    /** Loads the day unless this home has it already; what visitors changed since stays. */
    @Transactional
    public void load(Caller.Teacher teacher) {
        if (labDays.find(id()).isEmpty()) {
            Afternoon.under(Names.asWritten()).forEach(entry -> demoClass.enter(entry, id(), teacher));
        }
    }
}
