package org.berrywatt.server.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.UUID;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.labday.LabDayChanged;
import org.berrywatt.server.lesson.LessonChanged;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.transaction.support.TransactionTemplate;

@ServerTest
class DayChangesTest {

    @Autowired
    private ApplicationContext server;

    @Autowired
    private ApplicationEventPublisher events;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private Revisions revisions;

    private UUID day;

    @BeforeEach
    void makeADay() {
        day = new Rehearsal(server).labDayId;
    }

    @Test
    void countsATransactionOnceHoweverMuchItChanges() {
        long before = revisions.of(day);
        transaction.executeWithoutResult(status -> {
            events.publishEvent(new LabDayChanged(day));
            events.publishEvent(new LabDayChanged(day));
        });
        assertThat(revisions.of(day)).isEqualTo(before + 1);
    }

    @Test
    void countsInTheTransactionOfTheChange() {
        long before = revisions.of(day);
        transaction.executeWithoutResult(status -> {
            events.publishEvent(new LessonChanged(day));
            status.setRollbackOnly();
        });
        assertThat(revisions.of(day)).as("what was rolled back never happened").isEqualTo(before);
    }

    @Test
    void refusesAChangeThatNoTransactionStores() {
        assertThatThrownBy(() -> events.publishEvent(new LabDayChanged(day))).isInstanceOf(IllegalStateException.class);
    }
}
