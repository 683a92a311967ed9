package org.berrywatt.server.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.CellResultAnswer;
import org.berrywatt.contract.Remark;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.cell.Cells;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** What a meter could not show, and what it shows with nothing at all. */
@ServerTest
class MeterLimitsTest {

    @Autowired
    private ApplicationContext server;

    @Autowired
    private Leaderboards leaderboards;

    private Rehearsal day;
    private UUID yard;
    private UUID cell;

    @BeforeEach
    void buildACell() {
        day = new Rehearsal(server);
        yard = day.sunnyStation("Yard");
        day.light(yard, "1000 W/m2");
        cell = day.cell(day.team("Larch"), "L1", "15 x 15 mm");
    }

    /** By hand: a class's meter keeps to ±(1 % + 2 digits), so a display of 0.0 µA is less than 0.2 µA and half a digit. */
    @Test
    void takeADisplayOfNoCurrentForLessThanItShowsAndNotForZero() {
        day.dark(cell, "0 mV", "0.0 uA");
        day.lit(cell, yard, "300 mV", "0.0 uA");
        var note = note("note.currentBelowResolution");
        assertThat((double) Objects.requireNonNull(note.values().get("currentMicroA")))
                .isCloseTo(0.25, within(1e-9));
        assertThat(Objects.requireNonNull(result().powerDensityWm2()).value()).isPositive();
    }

    /** By hand: 0.9 of 1.9 µA in the dark are 47 %, mixed; the same with the leads swapped, and none of it is the cell's. */
    @Test
    void takeNoZeroOfAMeterForABattery() {
        day.dark(cell, "0 mV", "0.9 uA");
        day.minute(1).lit(cell, yard, "300 mV", "1.9 uA");
        assertThat(note("standing.mixed.darkShare").values()).containsEntry("value", 47.0);

        day.minute(2).darkBothWays(cell, List.of("0 mV", "0.9 uA"), List.of("0 mV", "0.9 uA"));
        assertThat(note("standing.meterZero.current").values()).containsEntry("value", 0.9);
        assertThat(result().notes()).extracting(Remark::key).noneMatch(key -> key.startsWith("standing.mixed"));
    }

    private Remark note(String key) {
        return result().notes().stream()
                .filter(note -> note.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private CellResultAnswer result() {
        return leaderboards.result(server.getBean(Cells.class).requireOwn(cell, Rehearsal.TEACHER));
    }
}
