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

    /** Any number that nothing else in the database is locked by. */
    private static final String ONE_AT_A_TIME = "select cast(pg_advisory_xact_lock(20261125) as text)";

    private final DemoTeacher teacher;
    private final LabDays labDays;
    private final DemoClass demoClass;
    private final EntityManager store;

    DemoDay(DemoTeacher teacher, LabDays labDays, DemoClass demoClass, EntityManager store) {
        this.teacher = teacher;
        this.labDays = labDays;
        this.demoClass = demoClass;
        this.store = store;
    }

    /** The day's id, the same in every home. */
    static UUID id() {
        return Table.rows("labday").findFirst().orElseThrow().id("id");
    }

    /**
     * Loads the day unless this home has it already; what visitors changed since stays. Servers that start beside each other
     * on one database take turns.
     *
     * @return the invented teacher
     */
    @Transactional
    public Caller.Teacher load() {
        store.createNativeQuery(ONE_AT_A_TIME).getSingleResult();
        var demoTeacher = teacher.caller();
        UUID labDayId = id();
        if (labDays.find(labDayId).isEmpty()) {
            Afternoon.under(Names.asWritten()).forEach(entry -> enter(entry, labDayId, demoTeacher));
        }
        return demoTeacher;
    }

    /** Forgets each entry once it is written: three hundred looked through before every query would take seconds. */
    private void enter(Entry entry, UUID labDayId, Caller.Teacher demoTeacher) {
        demoClass.enter(entry, labDayId, demoTeacher);
        store.flush();
        store.clear();
    }
}
