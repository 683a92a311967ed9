package org.berrywatt.server.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** Of cells and of the stations where they are read. */
@ServerTest
class ReadingMattersTest {

    private final Rehearsal day;
    private final AttentionList list;
    private final UUID team;
    private final UUID yard;

    @Autowired
    ReadingMattersTest(ApplicationContext server, Desk desk) {
        day = new Rehearsal(server);
        list = new AttentionList(desk, day.labDayId);
        team = day.team("Larch");
        yard = day.sunnyStation("Yard");
    }

    @Test
    void comparesTwoReadingsAtOneStationSoonAfterEachOther() {
        day.light(yard, "1000 W/m2");
        var cell = day.cell(team, "L1", "15 x 15 mm");
        day.dark(cell, "0 mV", "0 uA");
        day.lit(cell, yard, "400 mV", "1.000 mA");
        day.minute(2).lit(cell, yard, "400 mV", "1.140 mA");
        assertThat(list.keysAt(3)).isEmpty();
        day.minute(4).lit(cell, yard, "400 mV", "0.800 mA");
        assertThat(list.at(5)).singleElement().satisfies(item -> {
            assertThat(item.key()).isEqualTo("apart");
            // (1.140 - 0.800 - 2 digits of 0.001) / 1.140, worked by hand
            assertThat(item.values()).containsEntry("percent", 30.0);
        });
        day.minute(25).lit(cell, yard, "400 mV", "0.500 mA");
        assertThat(list.keysAt(26)).doesNotContain("apart");
    }

    @Test
    void saysThatAStationWentStaleOnlyWhileCellsAreReadThere() {
        day.light(yard, "1000 W/m2");
        assertThat(list.keysAt(19)).isEmpty();
        var cell = day.cell(team, "L1", "15 x 15 mm");
        day.dark(cell, "0 mV", "0 uA");
        day.minute(15).lit(cell, yard, "400 mV", "0.900 mA");
        assertThat(list.keysAt(18)).containsExactly("stationStale");
        day.minute(18).light(yard, "990 W/m2");
        assertThat(list.keysAt(19)).isEmpty();
    }
}
