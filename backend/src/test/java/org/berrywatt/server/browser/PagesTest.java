package org.berrywatt.server.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.PlanRequest;
import org.berrywatt.contract.PlanRequest.PlanFactor;
import org.berrywatt.contract.PlanRequest.PlanHeater;
import org.berrywatt.contract.TeamAnswer;
import org.berrywatt.contract.Typed;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.access.Teachers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.core.io.ClassPathResource;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/**
 * Every page with a day's data in it, at the sizes of a small phone, a laptop and a projector: no violation of the rules
 * that axe-core checks (WCAG 2.2 A and AA among them), no complaint on the console, nothing from another host, no
 * scrolling sideways, and light enough for weak Wi-Fi.
 */
@ServerTest
class PagesTest {

    private static final int LIMIT_BEFORE_CHARTS_BYTES = 300_000;
    private static final List<int[]> SIZES =
            List.of(new int[] {360, 740}, new int[] {1366, 768}, new int[] {1920, 1080});
    private static final String PASSWORD = "nine quiet copper spoons";

    private final Bench bench;
    private final String address;
    private final String teacherName = "Teacher " + UUID.randomUUID().toString().substring(0, 8);
    private final String axe;
    private final Device device = Device.laptop();

    PagesTest(
            @Autowired MockMvcTester server,
            @Autowired JsonMapper json,
            @Autowired Teachers teachers,
            @LocalServerPort int port)
            throws IOException {
        bench = new Bench(server, json);
        address = "http://127.0.0.1:" + port;
        teachers.add(teacherName, PASSWORD);
        axe = new ClassPathResource("META-INF/resources/webjars/axe-core/4.6.3/axe.min.js")
                .getContentAsString(StandardCharsets.UTF_8);
    }

    @BeforeEach
    void fillTheDay() {
        var window = bench.station("Window bench");
        var light = new IrradianceRequest(window, new Typed("12000", "lx"), null, Bench.NOTICED);
        assertThat(bench.teacher.put(light, "/api/irradiances/{id}", UUID.randomUUID()))
                .hasStatusOk();
        for (int i = 1; i <= 3; i++) {
            var team = bench.team("Team " + i);
            var cell = bench.cell(team, "T" + i);
            bench.cell(team, "U" + i);
            bench.signOff(team, Zone.HEAT);
            var current = new Typed(String.valueOf(200 * i), "uA");
            put(team, Bench.darkRequest(cell, new Typed("1", "mV")));
            put(team, Bench.lightRequest(cell, window, new Typed("312", "mV"), current));
        }
        var failing = bench.team("Team 4");
        var washedOff =
                new OutcomeRequest(bench.cell(failing, "T4"), "dye", false, "washedOff", null, null, Bench.NOTICED);
        assertThat(failing.put(washedOff, "/api/outcomes/{id}", UUID.randomUUID()))
                .hasStatusOk();
    }

    @AfterEach
    void putAway() {
        device.close();
    }

    @Test
    void servesStrangersPagesFitForEveryScreen() {
        Stream.of("/index.html", "/join.html", "/wall.html#" + bench.day.id()).forEach(this::look);
    }

    @Test
    void servesCalculatorFitForEveryScreen() {
        Stream.of("#light", "#light?lamp=halogen&light=3,5+klx", "#curve", "#inside?series=169+ohm")
                .forEach(view -> look("/calculator.html" + view));
    }

    @Test
    void servesTeachersPagesFitForEveryScreen() {
        signIn("/api/access/sign-in", "{name: '" + teacherName + "', password: '" + PASSWORD + "'}");
        planTheDay();
        Stream.of("/days.html", "/plan.html#", "/desk.html#", "/light.html#", "/findings.html#", "/wall.html#")
                .map(page -> page.endsWith("#") ? page + bench.day.id() : page)
                .forEach(this::look);
        var desk = "/desk.html#" + bench.day.id();
        look(desk + "/cell/" + bench.cell(bench.team("Team 5"), "T5"));
        look(desk + "/panel/day");
    }

    private void planTheDay() {
        var dyes = new PlanFactor("dyeSource", List.of(new Typed("hibiscus", null), new Typed("beetroot", null)));
        var plates = List.of(new PlanHeater("A", 12));
        var plan =
                new PlanRequest(4, 3, List.of(dyes), List.of(), List.of(), plates, 2, 300, 2, null, true, true, 25, 7L);
        assertThat(bench.teacher.put(plan, "/api/labdays/{day}/plan/versions/{id}", bench.day.id(), UUID.randomUUID()))
                .hasStatusOk();
    }

    @Test
    void servesTeamsPagesFitForEveryScreen() {
        var team = bench.team("Wagtails");
        var cell = bench.cell(team, "W1");
        var code = bench
                .teacher
                .answers(bench.teacher.get("/api/labdays/{id}/teams", bench.day.id()), TeamAnswer.class)
                .stream()
                .filter(it -> it.name().equals("Wagtails"))
                .findFirst()
                .map(TeamAnswer::code)
                .orElseThrow();
        signIn("/api/access/join", "{code: '" + code + "'}");
        Stream.of(
                        "",
                        "#cell/" + cell,
                        "#new",
                        "#dark/" + cell,
                        "#light/" + cell,
                        "#sweep/" + cell,
                        "#outcome/" + cell + "/bake",
                        "#toggles/" + cell,
                        "#work/" + cell)
                .forEach(view -> look("/bench.html" + view));
    }

    private void put(Api team, Object reading) {
        assertThat(team.put(reading, "/api/readings/{id}", UUID.randomUUID())).hasStatusOk();
    }

    private void signIn(String path, String body) {
        device.open(address + "/index.html");
        var script = "const done = arguments[0];"
                + "const token = document.cookie.match(/XSRF-TOKEN=([^;]+)/)?.[1];"
                + "fetch('/api/access').then(() => fetch('" + path + "', {method: 'POST', body: JSON.stringify(" + body
                + "), headers: {'Content-Type': 'application/json',"
                + " 'X-XSRF-TOKEN': document.cookie.match(/XSRF-TOKEN=([^;]+)/)[1]}})).then(it => done(it.status))";
        assertThat(device.driver().executeAsyncScript(script)).isEqualTo(200L);
    }

    private void look(String page) {
        for (int[] size : SIZES) {
            device.resize(size[0], size[1]);
            device.open("about:blank").open(address + page);
            device.settled();
            var where = page + " at " + size[0] + " px";
            device.picture(page.replaceAll("[0-9a-f]{8}-[0-9a-f-]{27}", "").replaceAll("\\W+", "-") + "-" + size[0]);
            assertThat(violations()).as("axe on " + where).isEqualTo(List.of());
            assertThat(device.complaints()).as("console of " + where).isEmpty();
            assertThat(
                            device.driver()
                                    .executeScript(
                                            "return document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                    .as("sideways scroll of " + where)
                    .isEqualTo(0L);
            assertThat(
                            device.driver()
                                    .executeScript(
                                            "return performance.getEntriesByType('resource').map(it => new URL(it.name).origin).filter(it => it !== location.origin)"))
                    .as("other hosts of " + where)
                    .isEqualTo(List.of());
        }
        assertThat((Long) device.driver()
                        .executeScript(
                                "return performance.getEntries().filter(it => it.encodedBodySize && !it.name.includes('chart.js'))"
                                        + ".reduce((sum, it) => sum + it.encodedBodySize, 0)"))
                .as("bytes of " + page + " before charts")
                .isBetween(1L, (long) LIMIT_BEFORE_CHARTS_BYTES);
    }

    private Object violations() {
        device.driver().executeScript(axe);
        return device.driver()
                .executeAsyncScript(
                        "const done = arguments[0];"
                                + "axe.run().then(found => done(found.violations.map(it => it.id + ': ' + it.nodes.map(n => n.target.join(' ')).slice(0, 3).join(', '))))");
    }
}
