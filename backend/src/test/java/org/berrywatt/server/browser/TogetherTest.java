package org.berrywatt.server.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.AnnouncementRequest;
import org.berrywatt.contract.CellAnswer;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.contract.PhoneAnswer;
import org.berrywatt.contract.TeamAnswer;
import org.berrywatt.contract.TimerRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** Two phones of one team and a teacher: what one does, the others see without a reload. */
@ServerTest
class TogetherTest {

    private final Bench bench;
    private final TeamPhone first;
    private final TeamPhone second;

    TogetherTest(@Autowired MockMvcTester server, @Autowired JsonMapper json, @LocalServerPort int port) {
        bench = new Bench(server, json);
        first = new TeamPhone(port);
        second = new TeamPhone(port);
    }

    @AfterEach
    void putAway() throws Exception {
        first.close();
        second.close();
    }

    @Test
    void showsOnOnePhoneWhatAnotherRegistersAndTheTeacherSays() {
        first.startTeam(bench.code(), "Newts");
        join(second);
        second.device.driver().executeScript("window.neverReloaded = true");

        first.registerCell("N1");
        second.device.showsText("N1");
        tellEverybody("Goggles on, please.");
        second.device.showsText("Goggles on, please.");
        startTimer("Break");
        second.device.showsText("Break");
        putOnHeater();
        second.tap("N1");
        second.device.showsText("On Plate A, position 2, set to 450 °C");
        second.tap("I have taken it out");
        second.device.showsText("still hot");
        second.device.picture("together-heater");

        assertThat(second.device.driver().executeScript("return window.neverReloaded"))
                .isEqualTo(true);
        first.device
                .waiting()
                .withMessage("two phones that told that nothing waits on them")
                .until(it ->
                        phones().stream().map(PhoneAnswer::waiting).toList().equals(List.of(0, 0)));
    }

    private void join(TeamPhone phone) {
        var code = bench.teacher
                .answers(bench.teacher.get("/api/labdays/{id}/teams", bench.day.id()), TeamAnswer.class)
                .get(0)
                .code();
        phone.device.open(phone.wifi.address() + "/join.html#" + code);
        phone.device.showsText("Your cells");
    }

    private void tellEverybody(String words) {
        var request = new AnnouncementRequest(bench.day.id(), words, 10);
        assertThat(bench.teacher.put(request, "/api/announcements/{id}", UUID.randomUUID()))
                .hasStatusOk();
    }

    private void startTimer(String words) {
        var request = new TimerRequest(bench.day.id(), words, 600, null, null);
        assertThat(bench.teacher.put(request, "/api/timers/{id}", UUID.randomUUID()))
                .hasStatusOk();
    }

    private void putOnHeater() {
        var cell = bench.teacher
                .answers(bench.teacher.get("/api/labdays/{id}/cells", bench.day.id()), CellAnswer.class)
                .get(0);
        var request = new HeaterSlotRequest(
                cell.id(), "Plate A", 2, new Typed("450", "degC"), 50, null, null, "As rehearsed");
        assertThat(bench.teacher.put(request, "/api/heater-slots/{id}", UUID.randomUUID()))
                .hasStatusOk();
    }

    private List<PhoneAnswer> phones() {
        return bench.teacher.answers(bench.teacher.get("/api/labdays/{id}/phones", bench.day.id()), PhoneAnswer.class);
    }
}
