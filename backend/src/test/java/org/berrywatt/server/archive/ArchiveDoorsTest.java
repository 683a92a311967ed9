package org.berrywatt.server.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.ZipInputStream;
import org.berrywatt.contract.ArchiveAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.RemovalRequest;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class ArchiveDoorsTest {

    private static final String ZIP = "application/zip";

    @Autowired
    private MockMvcTester server;

    @Autowired
    private JsonMapper json;

    private Bench bench;
    private Api team;

    @BeforeEach
    void setUp() {
        bench = new Bench(server, json);
        team = bench.team("Sloe");
        bench.cell(team, "C1");
    }

    @Test
    void movesADayFromOneServerToAnother() {
        byte[] file = archive();
        removed();

        var taken = bench.teacher.answer(bench.teacher.upload(file, ZIP, "/api/archives"), ArchiveAnswer.class);

        assertThat(taken.kept()).isTrue();
        assertThat(bench.teacher.get("/api/labdays/{id}", bench.day.id())).hasStatusOk();
    }

    @Test
    void namesTheFileAfterTheDay() {
        var answer = bench.teacher.get("/api/labdays/{id}/archive", bench.day.id());
        assertThat(answer.getResponse().getHeader("Content-Disposition"))
                .startsWith("attachment;")
                .contains("2026-11-25", "Berry", ".zip");
    }

    @Test
    void holdsNoCodeThatOpensAnything() throws IOException {
        assertThat(text(archive())).contains("Sloe").doesNotContain(bench.code());
    }

    @Test
    void forgetsThePhonesOfARemovedDay() {
        removed();
        bench.teacher.problem(bench.teacher.get("/api/labdays/{id}", bench.day.id()), ProblemCode.NOT_FOUND);
    }

    @Test
    void asksForTheTitleBeforeItRemoves() {
        var answer = bench.teacher.post(new RemovalRequest("Some day"), "/api/labdays/{id}/removal", bench.day.id());
        assertThat(bench.teacher
                        .problem(answer, ProblemCode.LABDAY_TITLE_NEEDED)
                        .detail())
                .contains(bench.day.title());
    }

    @Test
    void isForTeachersAlone() {
        for (Api other : List.of(team, team.asNobody())) {
            assertThat(other.get("/api/labdays/{id}/archive", bench.day.id())).hasStatus4xxClientError();
            assertThat(other.upload(new byte[0], ZIP, "/api/archives")).hasStatus4xxClientError();
            assertThat(other.post(new RemovalRequest(bench.day.title()), "/api/labdays/{id}/removal", bench.day.id()))
                    .hasStatus4xxClientError();
        }
    }

    private byte[] archive() {
        var answer = bench.teacher.get("/api/labdays/{id}/archive", bench.day.id());
        assertThat(answer).hasStatusOk();
        return answer.getResponse().getContentAsByteArray();
    }

    private static String text(byte[] archive) throws IOException {
        var all = new StringBuilder();
        try (var zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
            while (zip.getNextEntry() != null) {
                all.append(new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return all.toString();
    }

    private void removed() {
        assertThat(bench.teacher.post(
                        new RemovalRequest(bench.day.title()), "/api/labdays/{id}/removal", bench.day.id()))
                .hasStatus(204);
    }
}
