package org.berrywatt.server.platform;

import java.util.List;

/** What a feature wants the console to say once the server is ready; asked after everything has started. */
public interface ConsoleNote {

    /** Whole lines, without indentation; none when there is nothing to say. */
    List<String> lines();
}
