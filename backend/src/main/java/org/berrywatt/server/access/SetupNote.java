package org.berrywatt.server.access;

import java.util.List;
import java.util.Map;
import org.berrywatt.server.platform.ConsoleNote;
import org.berrywatt.server.platform.Texts;
import org.springframework.stereotype.Component;

/** Shows the one-time key on the console until the first teacher exists. */
@Component
class SetupNote implements ConsoleNote {

    private final Teachers teachers;
    private final SetupKey key;
    private final Texts texts;

    SetupNote(Teachers teachers, SetupKey key, Texts texts) {
        this.teachers = teachers;
        this.key = key;
        this.texts = texts;
    }

    @Override
    public List<String> lines() {
        return teachers.setupNeeded()
                ? List.of(texts.say("console.setup"), texts.say("console.setupKey", Map.of("key", key.text())))
                : List.of();
    }
}
