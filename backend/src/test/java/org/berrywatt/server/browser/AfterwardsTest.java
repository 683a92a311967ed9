package org.berrywatt.server.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.assertj.core.data.Offset;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.access.Teachers;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** What a teacher does when the room is empty: the report on paper, the data, and a day that leaves and comes back. */
@ServerTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AfterwardsTest {

    private static final String PASSWORD = "nine quiet copper spoons";
    private static final By TITLE = By.cssSelector(".removal input");
    private static final By ARCHIVE = By.id("archive");

    /** PDF 32000-1, 7.7.3.3: a page object and its media box in points, 1/72 inch. */
    private static final Pattern PAGE = Pattern.compile("/Type /Page\\b(?!s)");

    private static final Pattern MEDIA_BOX = Pattern.compile("/MediaBox \\[0 0 ([\\d.]+) ([\\d.]+)]");

    private final Bench bench;
    private final PictureDay day;
    private final String address;
    private final String teacherName = "Teacher " + UUID.randomUUID().toString().substring(0, 8);
    private final Device desk = Device.laptop();
    private final Inspection inspection = new Inspection(desk);

    AfterwardsTest(
            @Autowired MockMvcTester server,
            @Autowired JsonMapper json,
            @Autowired Teachers teachers,
            @LocalServerPort int port)
            throws IOException {
        bench = new Bench(server, json);
        day = new PictureDay(server, json);
        address = "http://127.0.0.1:" + port;
        teachers.add(teacherName, PASSWORD);
    }

    @BeforeEach
    void signIn() {
        inspection.begin();
        desk.open(address + "/index.html");
        var body = "{\"name\": \"" + teacherName + "\", \"password\": \"" + PASSWORD + "\"}";
        assertThat(desk.post("/api/access/sign-in", body)).isEqualTo(200L);
    }

    @AfterAll
    void putAway() {
        desk.close();
    }

    @Test
    void showsTheReportOnEveryScreen() {
        openReport();
        inspection.of("report");
    }

    @Test
    void showsTheDataOnEveryScreen() {
        open("/data.html#" + day.id(), ".data > section .table");
        inspection.of("data");
    }

    /** ISO 216: A4 is 210 mm by 297 mm; ANSI Y14.1: Letter is 8.5 in by 11 in. */
    @ParameterizedTest(name = "{0}: {1} in by {2} in")
    @CsvSource({"A4, 8.2677, 11.6929", "Letter, 8.5, 11"})
    void printsEachTeamOnOneSheetAndCurvesAsLines(String paper, double widthIn, double heightIn) throws IOException {
        openReport();
        long teams = (Long) desk.driver().executeScript("return document.querySelectorAll('.report .team').length");

        desk.driver().executeScript("document.body.dataset.print = 'teams'");
        String sheets = printed("report-teams-" + paper, widthIn, heightIn);
        desk.driver().executeScript("document.body.dataset.print = 'class'");
        String report = printed("report-class-" + paper, widthIn, heightIn);

        assertThat(PAGE.matcher(sheets).results()).hasSize((int) teams);
        assertThat(PAGE.matcher(report).results()).hasSizeBetween(3, 9);
        assertThat(List.of(sheets, report))
                .allSatisfy(file -> assertThat(MEDIA_BOX.matcher(file).results())
                        .allSatisfy(box -> assertThat(inches(box, 1)).isCloseTo(widthIn, within()))
                        .allSatisfy(box -> assertThat(inches(box, 2)).isCloseTo(heightIn, within())))
                .allSatisfy(file -> assertThat(file).doesNotContain("/Subtype /Image"));
    }

    @Test
    void printsTheTeachersWordsToATeam() {
        openReport();
        var comment = By.cssSelector(".team textarea");
        desk.act(comment, field -> field.sendKeys(Keys.chord(Keys.CONTROL, "a"), "Careful records."));
        desk.act(By.cssSelector(".team .comment .button"), button -> button.sendKeys(Keys.ENTER));
        desk.showsText("Saved at");
        openReport();
        assertThat(desk.shown(comment).getDomProperty("value")).isEqualTo("Careful records.");
    }

    @Test
    void deletesADayByItsTitleAndBringsItInAgain(@TempDir Path folder) throws IOException {
        bench.cell(bench.team("Sloe"), "S1");
        Path archive = archive(folder);
        open("/data.html#" + bench.day.id(), ".data > section .table");
        desk.act(TITLE, field -> field.sendKeys("Some day", Keys.ENTER));
        desk.showsText("“Some day” is not the title of this lab day.");
        desk.act(TITLE, field -> field.sendKeys(Keys.chord(Keys.CONTROL, "a"), bench.day.title(), Keys.ENTER));
        desk.showsText("Bring in an archive");
        assertThat(bench.teacher.get("/api/labdays/{id}", bench.day.id())).hasStatus(404);

        desk.act(By.cssSelector(".ways .quiet"), button -> button.sendKeys(Keys.ENTER));
        Path diary = Files.writeString(folder.resolve("diary.zip"), "Dear diary");
        desk.shown(ARCHIVE).sendKeys(diary.toString());
        desk.showsText("This file is not a lab day written by Berrywatt");
        desk.shown(ARCHIVE).sendKeys(archive.toString());
        desk.showsText("Checked: nothing is missing or altered");
        assertThat(bench.teacher.get("/api/labdays/{id}", bench.day.id())).hasStatus(404);
        desk.complaints();
        inspection.of("days-archive");

        desk.act(By.cssSelector(".found .button"), button -> button.sendKeys(Keys.ENTER));
        desk.showsText("“" + bench.day.title() + "” is here.");
        assertThat(bench.teacher.get("/api/labdays/{id}", bench.day.id())).hasStatusOk();
    }

    private void openReport() {
        open("/report.html#" + day.id(), ".report .team");
    }

    private void open(String page, String drawn) {
        desk.openAnew(address + page);
        desk.shown(By.cssSelector(drawn));
        desk.settled();
    }

    /** The page as a PDF, which is kept for people to look at; read byte by byte, its objects are plain text. */
    private String printed(String name, double widthIn, double heightIn) throws IOException {
        var answer = desk.driver()
                .executeCdpCommand("Page.printToPDF", Map.of("paperWidth", widthIn, "paperHeight", heightIn));
        byte[] pdf = Base64.getDecoder().decode(String.valueOf(answer.get("data")));
        var folder = Files.createDirectories(Path.of("target", "pictures"));
        Files.write(folder.resolve(name + ".pdf"), pdf);
        return new String(pdf, StandardCharsets.ISO_8859_1);
    }

    private static double inches(MatchResult box, int side) {
        return Double.parseDouble(box.group(side)) / 72;
    }

    /** Paper is cut to whole pixels of the screen, 96 to an inch. */
    private static Offset<Double> within() {
        return Offset.offset(1.0 / 48);
    }

    private Path archive(Path folder) throws IOException {
        var answer = bench.teacher.get("/api/labdays/{id}/archive", bench.day.id());
        return Files.write(folder.resolve("day.zip"), answer.getResponse().getContentAsByteArray());
    }
}
