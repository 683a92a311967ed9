package org.berrywatt.server.access;

import org.berrywatt.server.platform.ConsoleKey;
import org.springframework.stereotype.Component;

/** The key on the console that makes its reader the first teacher; new with every start. */
@Component
class SetupKey {

    private final ConsoleKey key = ConsoleKey.random();

    SetupKey() {}

    String text() {
        return key.text();
    }

    boolean is(String tried) {
        return key.is(tried);
    }
}
