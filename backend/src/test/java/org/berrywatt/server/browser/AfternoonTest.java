package org.berrywatt.server.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.FinalRequest;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.access.Teachers;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** An afternoon with four phones, a Desk and a Wall: from joining to places that are final. */
@ServerTest
class AfternoonTest {

    private static final String PASSWORD = "nine quiet copper spoons";

    private final Bench bench;
    private final MockMvcTester server;
    private final JsonMapper json;
    private final String address;
    private final String teacherName = "Teacher " + UUID.randomUUID().toString().substring(0, 8);
    private final UUID irradiance = UUID.randomUUID();
    private final TeamPhone moths;
    private final TeamPhone newts;
    private final TeamPhone voles;
    private final TeamPhone wrens;
    private final Device desk = Device.laptop();
    private final Device wall = Device.projector();
    private final UUID station;
    private final Instant lightRead = Instant.now();

    AfternoonTest(
            @Autowired MockMvcTester server,
            @Autowired JsonMapper json,
            @Autowired Teachers teachers,
            @LocalServerPort int port) {
        this.server = server;
        this.json = json;
        bench = new Bench(server, json);
        station = bench.station("Window bench");
        address = "http://127.0.0.1:" + port;
        teachers.add(teacherName, PASSWORD);
        moths = new TeamPhone(port);
        newts = new TeamPhone(port);
        voles = new TeamPhone(port);
        wrens = new TeamPhone(port);
    }

    @BeforeEach
    void openTheDay() {
        SameDayAgain.oneCellEach(bench);
        readTheLight(irradiance, "12000", null);
        signIn(desk);
        desk.open(address + "/desk.html#" + bench.day.id());
        wall.open(address + "/wall.html#" + bench.day.id());
        wall.showsText("No team yet");
    }

    @AfterEach
    void putAway() throws Exception {
        for (var phone : List.of(moths, newts, voles, wrens)) {
            phone.close();
        }
        desk.close();
        wall.close();
    }

    @Test
    void playsAnAfternoonFromJoiningToFinalPlaces() {
        join(moths, "Moths", "M1");
        join(newts, "Newts", "N1");
        join(voles, "Voles", "V1");
        join(wrens, "Wrens", "W1");
        desk.showsText("Wrens");

        newts.darkCheck("N1", "180 mV", "300 uA").lightReading("N1", "200 mV", "320 uA");
        desk.showsText("N1 is still a battery");
        wall.waiting().until(it -> placesOnTheWall().contains("still a battery"));
        desk.picture("afternoon-desk-battery");

        moths.darkCheck("M1", "1 mV", "0 uA").lightReading("M1", "312 mV", "640 uA");
        wrens.darkCheck("W1", "1 mV", "0 uA").lightReading("W1", "401 mV", "910 uA");
        wall.waiting().until(it -> ranked() == 2);

        voles.darkCheck("V1", "1 mV", "0 uA");
        voles.device.showsText("Everything is with the server");
        voles.wifi.cut();
        voles.lightReading("V1", "280 mV", "420 uA");
        voles.device.showsText("saved on this phone");
        assertThat(ranked()).isEqualTo(2);
        voles.wifi.mend();
        wall.waiting().until(it -> ranked() == 3);

        newts.darkCheck("N1", "2 mV", "4 uA").lightReading("N1", "350 mV", "520 uA");
        wall.waiting().until(it -> ranked() == 4);
        desk.waiting().until(it -> !desk.visibleText().contains("N1 is still a battery"));
        wall.picture("afternoon-wall-four-teams");

        var before = figureOnTheWall("Wrens");
        readTheLight(UUID.randomUUID(), "9000", irradiance);
        wall.waiting().until(it -> figureOnTheWall("Wrens") > before * 1.2);

        bench.setEntry(false);
        makeFinal();
        wall.showsText("Entry is closed.");
        moths.lightReading("M1", "500 mV", "2000 uA");
        moths.device.showsText("not accepted");
        wall.picture("afternoon-wall-final");

        var again = new SameDayAgain(server, json, bench, new Typed("9000", "lx"), lightRead);
        assertThat(figureOnTheWall("Wrens")).isPositive();
        assertThat(again.placesWhenEnteredInReverse()).isEqualTo(again.places());
    }

    private void join(TeamPhone phone, String team, String label) {
        phone.startTeam(bench.code(), team).registerCell(label);
    }

    private void readTheLight(UUID id, String lux, @Nullable UUID replaces) {
        var request = new IrradianceRequest(station, new Typed(lux, "lx"), replaces, lightRead);
        assertThat(bench.teacher.put(request, "/api/irradiances/{id}", id)).hasStatusOk();
    }

    private void makeFinal() {
        assertThat(bench.teacher.put(new FinalRequest(true, null), "/api/labdays/{id}/final", bench.day.id()))
                .hasStatusOk();
    }

    private void signIn(Device device) {
        device.open(address + "/index.html");
        device.driver()
                .executeAsyncScript(
                        "const done = arguments[arguments.length - 1];"
                                + "fetch('/api/access').then(() => fetch('/api/access/sign-in', {method: 'POST',"
                                + " body: JSON.stringify({name: '" + teacherName + "', password: '" + PASSWORD + "'}),"
                                + " headers: {'Content-Type': 'application/json',"
                                + " 'X-XSRF-TOKEN': document.cookie.match(/XSRF-TOKEN=([^;]+)/)[1]}})).then(it => done(it.status))");
    }

    private String placesOnTheWall() {
        turnToThePlaces();
        return wall.visibleText();
    }

    /** The Wall turns its leaves by itself; somebody who wants the places turns it by hand. */
    private void turnToThePlaces() {
        wall.driver()
                .executeScript("for (let leaf = 0; leaf < 9 && !document.querySelector('.board'); leaf++)"
                        + " document.querySelector('.pager button:last-child').click()");
    }

    /** Teams with a figure, as the Wall's table has them. */
    private long ranked() {
        turnToThePlaces();
        return wall.driver()
                .findElements(By.cssSelector("tr[data-team]:not([data-value=''])"))
                .size();
    }

    /** A team's figure as the Wall has it; 0 while it has none. */
    private double figureOnTheWall(String team) {
        turnToThePlaces();
        var row = By.xpath("//tr[@data-team][contains(., '" + team + "')]");
        return wall.driver().findElements(row).stream()
                .map(it -> it.getDomAttribute("data-value"))
                .filter(value -> value != null && !value.isEmpty())
                .mapToDouble(Double::parseDouble)
                .findFirst()
                .orElse(0);
    }
}
