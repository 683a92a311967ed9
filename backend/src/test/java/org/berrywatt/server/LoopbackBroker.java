package org.berrywatt.server;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import org.apache.activemq.artemis.core.config.impl.ConfigurationImpl;
import org.apache.activemq.artemis.core.server.embedded.EmbeddedActiveMQ;
import org.slf4j.LoggerFactory;

/** A STOMP broker beside the servers under test. */
@SuppressWarnings("try") // the broker's own end may throw anything
final class LoopbackBroker implements AutoCloseable {

    private final EmbeddedActiveMQ broker = new EmbeddedActiveMQ();
    private final int port = ServerProcess.freePort();

    LoopbackBroker() throws Exception {
        ((Logger) LoggerFactory.getLogger("org.apache")).setLevel(Level.WARN);
        broker.setConfiguration(new ConfigurationImpl()
                .setPersistenceEnabled(false)
                .setSecurityEnabled(false)
                .addAcceptorConfiguration(
                        "stomp",
                        "tcp://127.0.0.1:%d?protocols=STOMP;multicastPrefix=/topic/;anycastPrefix=/queue/"
                                .formatted(port)));
        broker.start();
    }

    int port() {
        return port;
    }

    @Override
    public void close() throws Exception {
        broker.stop();
    }
}
