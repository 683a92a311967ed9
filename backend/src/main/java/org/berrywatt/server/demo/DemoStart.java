package org.berrywatt.server.demo;

import org.berrywatt.server.platform.BerrywattSettings;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.stereotype.Component;

/** Fills a server that was started with {@code --demo} before it says that it is ready. */
@Component
class DemoStart implements ApplicationRunner {

    private final BerrywattSettings settings;
    private final DemoDay day;
    private final Replay replay;

    DemoStart(BerrywattSettings settings, DemoDay day, Replay replay) {
        this.settings = settings;
        this.day = day;
        this.replay = replay;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        if (settings.isDemo()) {
            fill();
        }
    }

    private void fill() {
        var demoTeacher = day.load();
        if (settings.demo().equals("live")) {
            replay.start(demoTeacher);
        }
    }
}
