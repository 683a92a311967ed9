package org.berrywatt.server.platform;

import java.io.PrintStream;
import org.jspecify.annotations.Nullable;
import org.slf4j.LoggerFactory;
import org.springframework.boot.SpringBootExceptionReporter;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;

/** Says in one sentence on the error output why the server cannot start. A stack trace helps nobody who can mend it. */
@Order(Ordered.HIGHEST_PRECEDENCE)
class StartReporter implements SpringBootExceptionReporter {

    private final PrintStream console = System.err;

    /** Spring makes one for each start. */
    StartReporter(@Nullable ConfigurableApplicationContext context) {}

    @Override
    public boolean reportException(Throwable failure) {
        console.println(StartDiagnosis.of(failure).sentence(Texts.load()));
        LoggerFactory.getLogger(StartReporter.class).debug("The server did not start", failure);
        return true;
    }
}
