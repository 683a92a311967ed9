package org.berrywatt.server.demo;

import jakarta.persistence.EntityManager;
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
    private final EntityManager store;

    DemoDay(LabDays labDays, DemoClass demoClass, EntityManager store) {
        this.labDays = labDays;
        this.demoClass = demoClass;
        this.store = store;
    }

    /** The day's id, the same in every home. */
    static UUID id() {
        return Table.rows("labday").findFirst().orElseThrow().id("id");
    }

    /** Loads the day unless this home has it already; what visitors changed since stays. */
    @Transactional
    public void load(Caller.Teacher teacher) {
        UUID labDayId = id();
        if (labDays.find(labDayId).isEmpty()) {
            Afternoon.under(Names.asWritten()).forEach(entry -> enter(entry, labDayId, teacher));
        }
    }

    /** Forgets each entry once it is written: three hundred looked through before every query would take seconds. */
    private void enter(Entry entry, UUID labDayId, Caller.Teacher teacher) {
        demoClass.enter(entry, labDayId, teacher);
        store.flush();
        store.clear();
    }
}
