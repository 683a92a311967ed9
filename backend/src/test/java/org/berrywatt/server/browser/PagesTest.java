package org.berrywatt.server.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import java.util.UUID;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.access.Teachers;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** The picture book: every page in its main states, inspected on every screen. One browser and one full day serve all. */
@ServerTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagesTest {

    private static final int LIMIT_BEFORE_CHARTS_BYTES = 300_000;
    private static final String PASSWORD = "nine quiet copper spoons";
    private static final String WEIGHT =
            "return performance.getEntries().filter(it => it.encodedBodySize && !it.name.includes('chart.js'))"
                    + ".reduce((sum, it) => sum + it.encodedBodySize, 0)";

    private final MockMvcTester server;
    private final JsonMapper json;
    private final String address;
    private final String teacherName = "Teacher " + UUID.randomUUID().toString().substring(0, 8);
    private final PictureDay day;
    private final Device device = Device.laptop();
    private final Inspection inspection = new Inspection(device);

    PagesTest(
            @Autowired MockMvcTester server,
            @Autowired JsonMapper json,
            @Autowired Teachers teachers,
            @LocalServerPort int port)
            throws IOException {
        this.server = server;
        this.json = json;
        address = "http://127.0.0.1:" + port;
        teachers.add(teacherName, PASSWORD);
        day = new PictureDay(server, json);
    }

    @BeforeEach
    void becomeAStranger() {
        device.offline(false);
        device.forget(address);
        inspection.begin();
        device.open(address + "/index.html");
    }

    @AfterAll
    void putAway() {
        device.close();
    }

    @Test
    void showsStrangersTheStartTheWayInAndTheWall() {
        look("start", "/index.html");
        look("join", "/join.html");
        look("wall-full", "/wall.html#" + day.id());
        look("wall-empty", "/wall.html#" + new Bench(server, json).day.id());
    }

    @Test
    void showsACodeThatNobodyKnows() {
        open("/join.html#ZZZZZZ");
        device.shown(By.cssSelector("form [role=alert] bw-notice, form .complaint"));
        device.complaints();
        inspection.of("join-refused");
    }

    @Test
    void showsTheCalculatorsQuestions() {
        look("calculator-light", "/calculator.html#light");
        look("calculator-halogen", "/calculator.html#light?lamp=halogen&light=3,5+klx");
        look("calculator-curve", "/calculator.html#curve");
        look("calculator-inside", "/calculator.html#inside?series=169+ohm");
    }

    @Test
    void showsTeachersAnEmptyDay() {
        signIn();
        var empty = "#" + new Bench(server, json).day.id();
        look("desk-empty", "/desk.html" + empty);
        look("light-empty", "/light.html" + empty);
        look("findings-empty", "/findings.html" + empty);
    }

    @Test
    void showsTeachersAFullLesson() {
        signIn();
        look("start-teacher", "/index.html#password");
        look("days", "/days.html");
        look("plan", "/plan.html#" + day.id());
        look("light-full", "/light.html#" + day.id());
        look("findings-full", "/findings.html#" + day.id());
        look("findings-days", "/findings.html");
        var desk = "/desk.html#" + day.id();
        look("desk-full", desk);
        look("desk-cell", desk + "/cell/" + day.measured);
        for (var panel : new String[] {"heater", "timers", "announce", "teams", "incidents", "day"}) {
            look("desk-" + panel, desk + "/panel/" + panel);
        }
    }

    @Test
    void showsATeamWithoutACellWhereToBegin() {
        var empty = new Bench(server, json);
        look("bench-stranger", "/bench.html");
        join(empty.codeOf(empty.team("Wagtails")));
        look("bench-empty", "/bench.html");
    }

    @Test
    void showsATeamItsCellsAndTheirForms() {
        join(day.code());
        look("bench", "/bench.html");
        look("bench-measured", "/bench.html#cell/" + day.measured);
        look("bench-begun", "/bench.html#cell/" + day.begun);
        look("bench-register", "/bench.html#new");
        for (var form : new String[] {"dark", "light", "sweep", "toggles", "work", "sheet", "heater"}) {
            look("bench-" + form, "/bench.html#" + form + "/" + day.measured);
        }
        look("bench-outcome", "/bench.html#outcome/" + day.begun + "/bake");
    }

    @Test
    void showsWhatWaitsWhileThereIsNoNetwork() {
        join(day.code());
        open("/bench.html#dark/" + day.measured);
        device.offline(true);
        saveADarkCheck();
        device.showsText("saved on this phone");
        device.complaints();
        inspection.of("bench-offline");
        device.offline(false);
        device.showsText("Everything is with the server");
    }

    @Test
    void showsADayThatIsOverAndWhatItRefuses() {
        var over = new PictureDay(server, json);
        join(over.code());
        open("/bench.html#dark/" + over.measured);
        over.end();
        saveADarkCheck();
        device.showsText("1 not accepted");
        device.complaints();
        inspection.of("bench-refused");
        look("bench-waiting", "/bench.html#waiting");
        look("bench-over", "/bench.html#");
        look("wall-over", "/wall.html#" + over.id());
        signIn();
        look("desk-over", "/desk.html#" + over.id());
        look("desk-over-day", "/desk.html#" + over.id() + "/panel/day");
    }

    private void look(String name, String page) {
        open(page);
        inspection.of(name);
        assertThat((Long) device.driver().executeScript(WEIGHT))
                .as("bytes of " + page + " before charts")
                .isBetween(1L, (long) LIMIT_BEFORE_CHARTS_BYTES);
    }

    /** Another view of a page is had without loading the page again. */
    private void open(String page) {
        var parts = page.split("#", 2);
        var here = String.valueOf(device.driver().getCurrentUrl());
        if (parts.length > 1 && here.startsWith(address + parts[0] + "#") && here.contains("bench.html")) {
            device.driver().executeScript("location.hash = arguments[0]", "#" + parts[1]);
        } else {
            device.openAnew(address + page);
        }
        device.settled();
    }

    private void saveADarkCheck() {
        for (var field : Map.of("voltage", "1 mV", "current", "0 uA").entrySet()) {
            device.act(By.cssSelector("input[name=" + field.getKey() + "]"), input -> input.sendKeys(field.getValue()));
        }
        device.act(By.xpath("//button[contains(., 'Save the dark check')]"), WebElement::click);
    }

    private void signIn() {
        var body = "{\"name\": \"" + teacherName + "\", \"password\": \"" + PASSWORD + "\"}";
        assertThat(device.post("/api/access/sign-in", body)).isEqualTo(200L);
    }

    private void join(String code) {
        assertThat(device.post("/api/access/join", "{\"code\": \"" + code + "\"}"))
                .isEqualTo(200L);
    }
}
