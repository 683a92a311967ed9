package org.berrywatt.server.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.berrywatt.contract.AttentionItem;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

@ServerTest
class TeamMattersTest {

    private final Rehearsal day;
    private final AttentionList list;
    private final UUID team;

    @Autowired
    TeamMattersTest(ApplicationContext server, Desk desk) {
        day = new Rehearsal(server);
        list = new AttentionList(desk, day.labDayId);
        team = day.team("Larch");
    }

    @Test
    void missesATeamAfterTwentyMinutesAndOneThatBakesAfterNinety() {
        assertThat(list.keysAt(20)).isEmpty();
        assertThat(list.at(21)).singleElement().satisfies(item -> {
            assertThat(item.key()).isEqualTo("silent");
            assertThat(item.teamId()).isEqualTo(team);
            assertThat(item.values()).containsEntry("minutes", 21L);
        });
        var cell = day.minute(21).cell(team, "L1", null);
        day.passed(cell, "film");
        assertThat(list.keysAt(100)).doesNotContain("silent");
        assertThat(list.keysAt(112)).contains("silent");
    }

    @Test
    void saysOnceThatTheWholeClassIsQuietInsteadOfMissingEveryTeam() {
        day.team("Rowan");
        assertThat(list.keysAt(60)).containsExactly("silent", "silent");
        assertThat(list.keysAt(121)).containsExactly("quiet");
    }

    @Test
    void doesNotMissATeamThatWasHereForAnotherLesson() {
        var rowan = day.team("Rowan");
        day.minute(9 * 60).cell(rowan, "R1", null);
        assertThat(list.keysAt(9 * 60 + 10)).isEmpty();
        assertThat(list.at(9 * 60 + 21)).extracting(AttentionItem::teamId).containsExactly(rowan);
    }
}
