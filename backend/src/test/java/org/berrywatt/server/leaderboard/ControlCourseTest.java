package org.berrywatt.server.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.ControlCellAnswer;
import org.berrywatt.contract.ControlCellAnswer.Course;
import org.berrywatt.contract.ControlCellRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.light.ControlCells;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

@ServerTest
class ControlCourseTest {

    @Autowired
    private ApplicationContext server;

    @Autowired
    private Leaderboards leaderboards;

    @Autowired
    private ControlCells controls;

    private Rehearsal day;
    private UUID yard;
    private UUID shade;
    private UUID cell;

    @BeforeEach
    void readTwoStations() {
        day = new Rehearsal(server);
        yard = day.sunnyStation("Yard");
        shade = day.sunnyStation("Shade");
        day.light(yard, "800 W/m2");
        day.light(shade, "400 W/m2");
        cell = day.cell(day.team("Larch"), "K1", "15 x 15 mm");
        day.dark(cell, "0 mV", "0 uA");
    }

    @Test
    void hasNoneUntilATeacherChooses() {
        assertThat(controls.ofLabDay(day.labDayId)).isEmpty();
        choose(cell);
        assertThat(controls.ofLabDay(day.labDayId).orElseThrow().id()).isEqualTo(cell);
        choose(null);
        assertThat(controls.ofLabDay(day.labDayId)).isEmpty();
    }

    @Test
    void refusesACellOfAnotherDay() {
        var other = new Rehearsal(server);
        var stranger = other.cell(other.team("Rowan"), "K1", null);
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> choose(stranger))
                .matches(refusal -> refusal.code() == ProblemCode.NOT_FOUND);
    }

    /** Half the light, half the current: current in proportion to light is what IEC 60904-10 calls linear. */
    @Test
    void findsThatMetersAndControlCellAgree() {
        day.lit(cell, yard, "400 mV", "0.800 mA");
        day.lit(cell, shade, "380 mV", "0.400 mA");

        var check = course().checks().get(0);

        assertThat(check.one()).isEqualTo("Shade");
        assertThat(check.other()).isEqualTo("Yard");
        assertThat(check.lightRatio().value()).isEqualTo(2, within(1e-9));
        assertThat(check.currentRatio().value()).isEqualTo(2, within(1e-9));
        assertThat(check.agrees()).isTrue();
    }

    @Test
    void findsThatAMeterAndTheControlCellDisagree() {
        day.lit(cell, yard, "400 mV", "0.800 mA");
        day.lit(cell, shade, "380 mV", "0.160 mA");

        assertThat(course().checks().get(0).agrees()).isFalse();
    }

    @Test
    void comparesReadingsThatLieNearInTime() {
        day.lit(cell, yard, "400 mV", "0.800 mA");
        day.minute(30).lit(cell, yard, "400 mV", "0.600 mA");
        day.minute(35).lit(cell, shade, "380 mV", "0.400 mA");

        assertThat(course().checks().get(0).currentRatio().value()).isEqualTo(1.5, within(1e-9));
    }

    /** From 0.8 mA to 0.4 mA in an hour is ln 2 = 0.693 per hour downwards, worked by hand. */
    @Test
    void followsTheControlCellOverTheDay() {
        day.lit(cell, yard, "400 mV", "0.800 mA");
        day.minute(60).lit(cell, yard, "390 mV", "0.400 mA");

        Course yardCourse = course().stations().get(0);

        assertThat(yardCourse.readings()).hasSize(2);
        assertThat(Objects.requireNonNull(yardCourse.driftPerHour()).value()).isEqualTo(-Math.log(2), within(1e-9));
        assertThat(course().checks()).isEmpty();
    }

    private ControlCellAnswer course() {
        choose(cell);
        return leaderboards.asControl(controls.ofLabDay(day.labDayId).orElseThrow());
    }

    private void choose(@Nullable UUID chosen) {
        controls.choose(day.labDayId, new ControlCellRequest(chosen), Rehearsal.TEACHER, Rehearsal.NOON);
    }
}
