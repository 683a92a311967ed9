package org.berrywatt.server.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.access.Teachers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** A teacher takes a day's archive, deletes the day for good by its title, and brings it in again. */
@ServerTest
class MovingADayTest {

    private static final String PASSWORD = "nine quiet copper spoons";
    private static final By TITLE = By.cssSelector(".removal input");
    private static final By ARCHIVE = By.id("archive");

    private final Bench bench;
    private final String address;
    private final String teacherName = "Teacher " + UUID.randomUUID().toString().substring(0, 8);
    private final Device desk = Device.laptop();

    @TempDir
    Path folder;

    MovingADayTest(
            @Autowired MockMvcTester server,
            @Autowired JsonMapper json,
            @Autowired Teachers teachers,
            @LocalServerPort int port) {
        bench = new Bench(server, json);
        address = "http://127.0.0.1:" + port;
        teachers.add(teacherName, PASSWORD);
    }

    @BeforeEach
    void signIn() {
        desk.open(address + "/index.html");
        desk.driver()
                .executeAsyncScript(
                        "const done = arguments[arguments.length - 1];"
                                + "fetch('/api/access').then(() => fetch('/api/access/sign-in', {method: 'POST',"
                                + " body: JSON.stringify({name: '" + teacherName + "', password: '" + PASSWORD + "'}),"
                                + " headers: {'Content-Type': 'application/json',"
                                + " 'X-XSRF-TOKEN': document.cookie.match(/XSRF-TOKEN=([^;]+)/)[1]}})).then(it => done(it.status))");
        bench.cell(bench.team("Sloe"), "S1");
    }

    @AfterEach
    void putAway() {
        desk.close();
    }

    @Test
    void deletesADayByItsTitleAndBringsItInAgain() throws IOException {
        Path archive = archive();
        desk.open(address + "/data.html#" + bench.day.id());
        desk.act(TITLE, field -> field.sendKeys("Some day", Keys.ENTER));
        desk.showsText("“Some day” is not the title of this lab day.");
        desk.act(TITLE, field -> field.sendKeys(Keys.chord(Keys.CONTROL, "a"), bench.day.title(), Keys.ENTER));
        desk.showsText("Bring in an archive");
        assertThat(bench.teacher.get("/api/labdays/{id}", bench.day.id())).hasStatus(404);

        desk.act(By.cssSelector(".ways .quiet"), button -> button.sendKeys(Keys.ENTER));
        desk.shown(ARCHIVE)
                .sendKeys(Files.writeString(folder.resolve("diary.zip"), "Dear diary")
                        .toString());
        desk.showsText("This file is not a lab day written by Berrywatt");
        desk.shown(ARCHIVE).sendKeys(archive.toString());
        desk.showsText("Checked: nothing is missing or altered");
        assertThat(bench.teacher.get("/api/labdays/{id}", bench.day.id())).hasStatus(404);

        desk.act(By.cssSelector(".found .button"), button -> button.sendKeys(Keys.ENTER));
        desk.showsText("“" + bench.day.title() + "” is here.");
        assertThat(bench.teacher.get("/api/labdays/{id}", bench.day.id())).hasStatusOk();
    }

    private Path archive() throws IOException {
        var answer = bench.teacher.get("/api/labdays/{id}/archive", bench.day.id());
        return Files.write(folder.resolve("day.zip"), answer.getResponse().getContentAsByteArray());
    }
}
