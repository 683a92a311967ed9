package org.berrywatt.server.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Path;
import org.berrywatt.contract.ArchiveAnswer;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.leaderboard.Leaderboards;
import org.berrywatt.server.platform.Refusal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

@ServerTest
class ArchivesTest {

    @Autowired
    private ApplicationContext server;

    @Autowired
    private Archives archives;

    @Autowired
    private Removals removals;

    @Autowired
    private Leaderboards leaderboards;

    @TempDir
    Path folder;

    private Rehearsal day;

    @BeforeEach
    void playADay() {
        day = new Rehearsal(server);
        var yard = day.sunnyStation("Yard");
        var light = day.light(yard, "790 W/m2");
        for (int mend = 1; mend <= 9; mend++) {
            light = day.light(yard, 790 + mend + " W/m2", light);
        }
        var cell = day.cell(day.team("Larch"), "K1", "15 x 15 mm", new BuildValue("bakeTemperature", "450", "degC"));
        day.dark(cell, "0 mV", "0 uA");
        day.lit(cell, yard, "400 mV", "0.800 mA");
        day.refill(cell);
        day.failure(day.cell(day.team("Rowan"), "R1", null), "bake", "glassCracked");
    }

    @Test
    void bringsADayBackWithTheSameLeaderboard() throws IOException {
        LeaderboardState before = leaderboards.of(day.labDayId);
        Path file = written("day.zip");
        removals.remove(day.labDayId, "Rehearsal");

        ArchiveAnswer taken = archives.take(file, false);

        assertThat(taken)
                .extracting(ArchiveAnswer::teams, ArchiveAnswer::cells, ArchiveAnswer::readings)
                .containsExactly(2L, 2L, 2L);
        assertThat(taken.sameResults()).isTrue();
        assertThat(taken.changesSince()).isZero();
        assertThat(leaderboards.of(day.labDayId)).isEqualTo(before);
    }

    @Test
    void refusesADayThatIsHereAlready() throws IOException {
        Path file = written("day.zip");
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> archives.take(file, false))
                .matches(refusal -> refusal.code() == ProblemCode.LABDAY_EXISTS);
    }

    @Test
    void aCheckLeavesNothing() throws IOException {
        Path file = written("day.zip");
        removals.remove(day.labDayId, "Rehearsal");

        assertThat(archives.take(file, true).kept()).isFalse();

        assertThatExceptionOfType(Refusal.class).isThrownBy(() -> archives.day(day.labDayId));
    }

    private Path written(String name) throws IOException {
        Path file = folder.resolve(name);
        archives.write(archives.day(day.labDayId), Rehearsal.NOON, file);
        return file;
    }
}
