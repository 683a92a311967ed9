package org.berrywatt.server.demo;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.berrywatt.server.platform.Addresses;
import org.berrywatt.server.platform.BerrywattSettings;
import org.berrywatt.server.platform.ConsoleNote;
import org.berrywatt.server.platform.Texts;
import org.berrywatt.server.team.Teams;
import org.springframework.stereotype.Component;

/** How to get into the demo: sign-in, team codes, the Walls to look at. */
@Component
class DemoNote implements ConsoleNote {

    private final BerrywattSettings settings;
    private final DemoTeacher teacher;
    private final Replay replay;
    private final Teams teams;
    private final Addresses addresses;
    private final Texts texts;

    DemoNote(
            BerrywattSettings settings,
            DemoTeacher teacher,
            Replay replay,
            Teams teams,
            Addresses addresses,
            Texts texts) {
        this.settings = settings;
        this.teacher = teacher;
        this.replay = replay;
        this.teams = teams;
        this.addresses = addresses;
        this.texts = texts;
    }

    @Override
    public List<String> lines() {
        return settings.isDemo() ? demoLines(DemoDay.id()).toList() : List.of();
    }

    private Stream<String> demoLines(UUID labDayId) {
        return Stream.concat(
                Stream.of(
                        texts.say(
                                "console.demo.signIn",
                                Map.of("name", DemoTeacher.NAME, "password", DemoTeacher.PASSWORD)),
                        texts.say("console.demo.teams", Map.of("codes", codes(labDayId))),
                        wall("console.demo.wall", labDayId)),
                replay.labDayId().map(id -> wall("console.demo.replay", id)).stream());
    }

    private String codes(UUID labDayId) {
        return teams.list(labDayId, teacher.caller()).stream()
                .map(team -> team.name() + " " + Objects.requireNonNull(team.code()))
                .collect(joining(", "));
    }

    private String wall(String key, UUID labDayId) {
        return texts.say(key, Map.of("address", addresses.baseUrls().get(0) + "/wall.html#" + labDayId));
    }
}
