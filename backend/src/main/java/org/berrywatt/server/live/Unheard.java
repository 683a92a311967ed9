package org.berrywatt.server.live;

import java.time.Duration;
import java.util.concurrent.ScheduledFuture;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.dao.DataAccessException;
import org.springframework.modulith.events.IncompleteEventPublications;
import org.springframework.scheduling.concurrent.ThreadPoolTaskScheduler;
import org.springframework.stereotype.Component;
import org.springframework.transaction.TransactionException;

/**
 * Hears announcements that nobody heard for a while: those of another server that was killed, or of this one while the
 * database was away. To hear one twice does no harm.
 */
@Component
class Unheard implements DisposableBean {

    private static final Logger LOG = LoggerFactory.getLogger(Unheard.class);
    private static final Duration A_WHILE = Duration.ofSeconds(10);

    private final IncompleteEventPublications eventLog;
    private final ScheduledFuture<?> hearings;

    Unheard(IncompleteEventPublications eventLog, @Qualifier("live") ThreadPoolTaskScheduler scheduler) {
        this.eventLog = eventLog;
        hearings = scheduler.scheduleWithFixedDelay(
                this::hear, scheduler.getClock().instant().plus(A_WHILE), A_WHILE);
    }

    private void hear() {
        try {
            eventLog.resubmitIncompletePublicationsOlderThan(A_WHILE);
        } catch (DataAccessException | TransactionException databaseIsAway) {
            LOG.debug("The event log cannot be read now.", databaseIsAway);
        }
    }

    @Override
    public void destroy() {
        hearings.cancel(false);
    }
}
