package org.berrywatt.server.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.berrywatt.contract.ArchiveAnswer;
import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.TeamStanding;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.leaderboard.Leaderboards;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.io.ClassPathResource;

/**
 * An archive that a server wrote on 26 November 2026, before days had a date until which they are kept and teams had
 * comments. It stays as it is, and every later version takes it in.
 */
@ServerTest
class OldArchiveTest {

    private static final String FILE = "archive/written-2026-11-26.zip";

    @Autowired
    private Archives archives;

    @Autowired
    private Leaderboards leaderboards;

    @TempDir
    Path folder;

    /** As typed on that day: Larch read a cell in the dark, in the light and with five loads; Rowan's washed off. */
    @Test
    void takesInADayOfAnEarlierVersion() throws IOException {
        ArchiveAnswer taken = archives.take(file(), false);

        assertThat(taken.title()).isEqualTo("Kept since the first archive");
        assertThat(taken.changesSince()).isPositive();
        assertThat(taken)
                .extracting(ArchiveAnswer::teams, ArchiveAnswer::cells, ArchiveAnswer::readings)
                .containsExactly(2L, 2L, 3L);
        assertThat(archives.day(taken.labDayId()).keepUntil()).isNull();
        assertThat(leaderboards.of(taken.labDayId()).teams())
                .extracting(TeamStanding::name)
                .containsExactly("Larch", "Rowan");
        assertThat(leaderboards.of(taken.labDayId()).teams())
                .flatExtracting(TeamStanding::cells)
                .extracting(CellStanding::standing)
                .containsExactly("counts", "failed");
    }

    private Path file() throws IOException {
        try (var in = new ClassPathResource(FILE).getInputStream()) {
            Path file = folder.resolve("day.zip");
            Files.copy(in, file);
            return file;
        }
    }
}
