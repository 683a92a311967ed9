package org.berrywatt.server.access;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import java.util.Map;
import java.util.Timer;
import java.util.TimerTask;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/**
 * Tells the server's log who came in and who did not, one line each: no password, no code, no pass, and no name but that of a
 * known account, since people type passwords into the field for names. Of each kind a minute has so many lines; what is
 * beyond is counted and told in one line when the minute is over, so that nobody fills a disk.
 */
@Component
class Journal {

    /** What is told, and how many lines of it a minute may have. */
    enum Event {
        NEW_PASS("new pass", 60),
        SIGNED_OUT_ELSEWHERE("signed out elsewhere", 20),
        PASSWORD_CHANGED("password changed", 20),
        REFUSED("refused", 30),
        SLOWED("slowed down", 3),
        NOT_ALLOWED("not allowed", 30);

        private final String words;
        private final int linesPerMinute;

        Event(String words, int linesPerMinute) {
            this.words = words;
            this.linesPerMinute = linesPerMinute;
        }
    }

    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final Logger LOG = LoggerFactory.getLogger(Journal.class);

    private final Map<Event, AtomicLong> told = new ConcurrentHashMap<>();
    private final Timer minutes = new Timer("journal", true);

    @PostConstruct
    void begin() {
        minutes.schedule(
                new TimerTask() {
                    @Override
                    public void run() {
                        sumUp();
                    }
                },
                MINUTE.toMillis(),
                MINUTE.toMillis());
    }

    @PreDestroy
    void end() {
        minutes.cancel();
        sumUp();
    }

    /** @param whom what is known of whoever it was, by {@link #whom} or words of our own */
    void tell(Event event, String whom, HttpServletRequest request) {
        if (toldOf(event).incrementAndGet() <= event.linesPerMinute) {
            LOG.info(
                    "{}: {}, {} {} from {}",
                    event.words,
                    whom,
                    Visible.of(request.getMethod()),
                    Visible.of(request.getRequestURI()),
                    Visible.of(request.getRemoteAddr()));
        }
    }

    /** Ends a minute. */
    void sumUp() {
        for (var event : Event.values()) {
            var more = toldOf(event).getAndSet(0) - event.linesPerMinute;
            if (more > 0) {
                LOG.info("{}: {} more within a minute", event.words, more);
            }
        }
    }

    private AtomicLong toldOf(Event event) {
        return told.computeIfAbsent(event, none -> new AtomicLong());
    }

    /** How a caller is called in the log. */
    static String whom(Caller caller) {
        return caller instanceof Caller.Teacher teacher
                ? "teacher \"" + Visible.of(teacher.name()) + "\""
                : caller.signature();
    }
}
