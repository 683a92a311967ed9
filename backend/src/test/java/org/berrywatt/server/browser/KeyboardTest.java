package org.berrywatt.server.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.UUID;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.access.Teachers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** The main tasks of a lesson without a pointer (WCAG 2.1.1, 2.4.3, 2.4.7). */
@ServerTest
class KeyboardTest {

    private static final String PASSWORD = "nine quiet copper spoons";

    private final Bench bench;
    private final UUID window;
    private final String address;
    private final String teacherName = "Teacher " + UUID.randomUUID().toString().substring(0, 8);
    private final Device device = Device.laptop();
    private final Keyboard keyboard = new Keyboard(device);

    KeyboardTest(
            @Autowired MockMvcTester server,
            @Autowired JsonMapper json,
            @Autowired Teachers teachers,
            @LocalServerPort int port) {
        bench = new Bench(server, json);
        window = bench.station("Window bench");
        address = "http://127.0.0.1:" + port;
        teachers.add(teacherName, PASSWORD);
    }

    @BeforeEach
    void readTheLight() {
        var light = new IrradianceRequest(window, new Typed("12000", "lx"), null, Bench.NOTICED);
        assertThat(bench.teacher.put(light, "/api/irradiances/{id}", UUID.randomUUID()))
                .hasStatusOk();
    }

    @AfterEach
    void putAway() {
        device.close();
    }

    @Test
    void takesATeamFromItsCodeToASweep() {
        device.open(address + "/join.html").showsText("Code");
        keyboard.type("Code", bench.code() + Keys.ENTER);
        device.showsText("Name of your team");
        keyboard.type("Name of your team", "Newts" + Keys.ENTER);
        device.showsText("Your cells");

        keyboard.press("Register a cell");
        device.showsText("Label on the glass");
        keyboard.type("Label on the glass", "N1");
        keyboard.press("More, if you know it already");
        keyboard.type("One side", "15");
        keyboard.type("Other side", "15");
        keyboard.press("Register this cell");
        device.showsText("Cell N1");

        keyboard.press("Record how it went");
        device.showsText("How did it go");
        keyboard.to("It worked").strike(Keys.SPACE);
        keyboard.press("Record it");
        device.showsText("Cell N1");

        read("Dark check", "Voltage, covered", "1 mV", "Current, covered", "0 uA");
        read("Light reading", "Voltage, nothing else connected", "312 mV", "Current, meter only", "640 uA");

        keyboard.press("Load sweep");
        device.showsText("N1: Load sweep");
        enterRow(1, "100", "60");
        enterRow(2, "470", "220");
        enterRow(3, "1000", "280");
        enterRow(4, "3300", "305");
        enterRow(5, "10", "6");
        keyboard.press("Save the sweep");
        device.showsText("Cell N1");
        device.showsText("5 points");
    }

    @Test
    void letsATeacherSignOffSetAsideAndCloseTheEntry() {
        var team = bench.team("Moths");
        var cell = bench.cell(team, "M1");
        assertThat(team.put(Bench.darkRequest(cell, new Typed("1", "mV")), "/api/readings/{id}", UUID.randomUUID()))
                .hasStatusOk();
        signIn();

        device.open(address + "/desk.html#" + bench.day.id()).showsText("Hot plate");
        keyboard.press("Moths, Hot plate");
        device.showsText("Go through this with them");
        keyboard.press("All of it was said and shown");
        keyboard.press("Sign off");
        keyboard.to("Moths, Hot plate: until");

        device.openAnew(address + "/desk.html#" + bench.day.id() + "/cell/" + cell)
                .showsText("Dark check");
        keyboard.press("Set aside: Dark check");
        device.showsText("Why it does not count");
        keyboard.type("Why it does not count", "The clip had slipped" + Keys.ENTER);
        device.showsText("Set aside The clip had slipped");

        device.openAnew(address + "/desk.html#" + bench.day.id() + "/panel/day").showsText("Close entry for teams");
        keyboard.press("Close entry for teams");
        device.showsText("Open entry");
    }

    @Test
    void letsATeacherEnterTheLight() {
        signIn();
        device.open(address + "/light.html#" + bench.day.id()).showsText("Window bench");
        keyboard.type("The light now", "11500");
        keyboard.press("Save the reading");
        device.showsText("11500");
    }

    private void read(String kind, String voltageField, String voltage, String currentField, String current) {
        keyboard.press(kind);
        device.showsText("N1: " + kind);
        keyboard.type(voltageField, voltage);
        keyboard.type(currentField, current);
        keyboard.press("Save the " + kind.toLowerCase(Locale.ROOT));
        device.showsText("Cell N1");
    }

    private void enterRow(int number, String ohm, String millivolt) {
        if (number > 1) keyboard.press("Another row");
        keyboard.type("Resistor in row " + number, ohm);
        keyboard.type("Voltage in row " + number, millivolt);
    }

    private void signIn() {
        device.open(address + "/index.html");
        var body = "{\"name\": \"" + teacherName + "\", \"password\": \"" + PASSWORD + "\"}";
        assertThat(device.post("/api/access/sign-in", body)).isEqualTo(200L);
    }
}
