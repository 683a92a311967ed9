package org.berrywatt.server.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.berrywatt.contract.CellAnswer;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** Two phones on weak Wi-Fi and the projector, from the join code to the Wall. */
@ServerTest
class FirstLightTest {

    private final Bench bench;
    private final WeakWifi wallWifi;
    private final TeamPhone moths;
    private final TeamPhone wrens;
    private final Device wall = Device.projector();

    FirstLightTest(@Autowired MockMvcTester server, @Autowired JsonMapper json, @LocalServerPort int port) {
        bench = new Bench(server, json);
        wallWifi = new WeakWifi(port);
        moths = new TeamPhone(port);
        wrens = new TeamPhone(port);
    }

    @BeforeEach
    void layOutTheDay() {
        var station = bench.station("Window bench");
        var light = new IrradianceRequest(station, new Typed("12000", "lx"), null, Bench.NOTICED);
        assertThat(bench.teacher.put(light, "/api/irradiances/{id}", UUID.randomUUID()))
                .hasStatusOk();
        moths.startTeam(bench.code(), "Moths").registerCell("M1").darkCheck("M1", "1 mV", "0 uA");
        wrens.startTeam(bench.code(), "Wrens").registerCell("W1").darkCheck("W1", "0,001 V", "0 uA");
        wall.open(wallWifi.address() + "/wall.html#" + bench.day.id());
        wall.showsText("Moths");
        wall.driver().executeScript("window.neverReloaded = true");
    }

    @AfterEach
    void putAway() throws Exception {
        wall.close();
        wallWifi.close();
        moths.close();
        wrens.close();
    }

    @Test
    void carriesReadingsFromPhonesToTheWallOverAConnectionThatComesAndGoes() {
        moths.lightReading("M1", "312 mV", "640 uA");
        wall.waiting().until(it -> teamsWithoutResult() == 1);
        moths.device.picture("first-light-phone");

        wallWifi.cut();
        wall.showsText("reconnecting");
        wrens.lightReading("W1", "0,401 V", "0.91 mA");
        wallWifi.mend();
        wall.showsText("live");
        wall.waiting().until(it -> teamsWithoutResult() == 0);

        moths.wifi.cut();
        moths.lightReading("M1", "330 mV", "1,52 mA");
        moths.device.showsText("saved on this phone");
        assertThat(lightReadings("Moths")).isEqualTo(1);
        moths.wifi.mend();
        moths.device.waiting().until(it -> lightReadings("Moths") == 2);
        moths.device.showsText("Everything is with the server");
        assertThat(lightReadings("Moths")).isEqualTo(2);

        wall.answers("return window.neverReloaded");
        wall.picture("first-light-wall");
        assertThat(moths.device.complaints()).allMatch(FirstLightTest::isAboutTheNetwork);
        assertThat(wall.complaints()).allMatch(FirstLightTest::isAboutTheNetwork);
    }

    private int teamsWithoutResult() {
        return wall.visibleText().split("no result yet", -1).length - 1;
    }

    private long lightReadings(String team) {
        var cells =
                bench.teacher.answers(bench.teacher.get("/api/labdays/{id}/cells", bench.day.id()), CellAnswer.class);
        var label = team.substring(0, 1) + "1";
        var cell = cells.stream()
                .filter(it -> it.label().equals(label))
                .findFirst()
                .orElseThrow();
        return bench
                .teacher
                .answers(bench.teacher.get("/api/cells/{id}/readings", cell.id()), ReadingAnswer.class)
                .stream()
                .filter(it -> it.kind().equals("light"))
                .count();
    }

    private static boolean isAboutTheNetwork(String complaint) {
        return complaint.contains("net::ERR_") || complaint.contains("WebSocket connection");
    }
}
