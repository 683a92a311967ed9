package org.berrywatt.server.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.berrywatt.contract.TeamRequest;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** Whatever a name holds, the Wall shows it as text, in its own row, and two names that look the same are not taken. */
@ServerTest
class NamesOnTheWallTest {

    /** Names that leave their row, and the page when it is wider than the screen. */
    private static final String OUT_OF_ITS_ROW = """
            const names = [...document.querySelectorAll('.board .name')].filter(name => {
              const box = name.getBoundingClientRect(), cell = name.closest('th').getBoundingClientRect();
              return box.left < cell.left - 1 || box.right > cell.right + 1 || box.top < cell.top - 1 || box.bottom > cell.bottom + 1;
            }).map(name => name.textContent);
            return document.documentElement.scrollWidth > innerWidth ? [...names, 'the page'] : names;""";

    private final Device device = Device.projector();
    private final MockMvcTester server;
    private final JsonMapper json;
    private final String address;

    NamesOnTheWallTest(@Autowired MockMvcTester server, @Autowired JsonMapper json, @LocalServerPort int port) {
        this.server = server;
        this.json = json;
        address = "http://127.0.0.1:" + port;
    }

    @AfterEach
    void putAway() {
        device.close();
    }

    @Test
    void areShownAsTheyWereTypedOrRefused() {
        var names = List.of(
                "<img src=x onerror=bo()>",
                "<b>Voles</b>",
                "\"Newts\" & 'Wrens' \\ `",
                "\u05e9\u05dc\u05d5\u05dd 12 (\u05d0\u05d1)",
                "Z\u0338\u0322\u0353oe",
                "\ud835\udd4e\ufdfd".repeat(12),
                "W".repeat(24),
                "ace");
        var named = new Bench(server, json);
        names.forEach(named::team);
        assertThat(refused(named, "\u0430\u0441\u0435")).isEqualTo("name.taken");
        assertThat(refused(named, "\uff21CE")).isEqualTo("name.taken");
        assertThat(refused(named, "Vol\u200bes")).isEqualTo("text.unfit");
        assertThat(refused(named, "\u202eseloV")).isEqualTo("text.unfit");
        assertThat(refused(named, "\u200fVoles")).isEqualTo("text.unfit");
        assertThat(refused(named, "\uff37".repeat(40))).isEqualTo("text.tooLong");

        device.open(address + "/wall.html#" + named.day.id());
        device.waiting().until(it -> shownNames().size() == names.size());
        assertThat(Set.<Object>copyOf(shownNames())).isEqualTo(Set.copyOf(names));
        for (var width : new int[] {1920, 1024, 390}) {
            device.resize(width, 1080);
            device.settled();
            assertThat(device.driver().executeScript(OUT_OF_ITS_ROW))
                    .as(width + " px")
                    .isEqualTo(List.of());
        }
        device.picture("wall-names");
        assertThat(device.driver().executeScript("return document.querySelectorAll('.name img, .name b').length"))
                .isEqualTo(0L);
        assertThat(device.complaints()).isEmpty();
    }

    private List<?> shownNames() {
        return (List<?>) Objects.requireNonNull(device.driver()
                .executeScript(
                        "return [...document.querySelectorAll('.board .name > span')].map(it => it.textContent)"));
    }

    private static String refused(Bench bench, String name) {
        var answer =
                bench.teacher.put(new TeamRequest(bench.day.id(), null, name), "/api/teams/{id}", UUID.randomUUID());
        return bench.teacher
                .json()
                .readTree(answer.getResponse().getContentAsByteArray())
                .get("code")
                .asString();
    }
}
