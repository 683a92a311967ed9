package org.berrywatt.server.team;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.LuminanceSource;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.TeamAnswer;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** QR pictures of join links, read back by the library's own reader of ISO/IEC 18004. */
@ServerTest
class JoinLinkTest {

    private static final int MODULE_PX = 4;
    private static final Pattern SIDE = Pattern.compile("viewBox=\"0 0 (\\d+)");
    private static final Pattern DARK = Pattern.compile("M(\\d+) (\\d+)h1v1h-1z");
    private final Bench bench;

    JoinLinkTest(@Autowired MockMvcTester server, @Autowired JsonMapper json) {
        bench = new Bench(server, json);
    }

    @Test
    void leadsAPhoneToTheJoinPageWithTheDaysCode() throws ReaderException {
        assertThat(link(bench.teacher, "/api/labdays/{id}/link.svg", bench.day.id()))
                .matches("https?://.+/join\\.html#" + bench.code());
    }

    @Test
    void leadsASecondPhoneToItsTeam() throws ReaderException {
        var team = bench.team("Larks");
        var code = bench.teacher
                .answers(bench.teacher.get("/api/labdays/{id}/teams", bench.day.id()), TeamAnswer.class)
                .get(0)
                .code();
        assertThat(link(team, "/api/teams/{id}/link.svg", Bench.teamId(team))).endsWith("/join.html#" + code);
    }

    @Test
    void showsATeamNeitherTheDaysCodeNorAnotherTeams() {
        var larks = bench.team("Larks");
        var owls = bench.team("Owls");
        larks.problem(larks.get("/api/labdays/{id}/link.svg", bench.day.id()), ProblemCode.NOT_ALLOWED);
        larks.problem(larks.get("/api/teams/{id}/link.svg", Bench.teamId(owls)), ProblemCode.NOT_ALLOWED);
    }

    private static String link(Api caller, String uri, Object id) throws ReaderException {
        var answer = caller.get(uri, id);
        assertThat(answer).hasStatusOk().hasContentType("image/svg+xml");
        return read(new String(answer.getResponse().getContentAsByteArray(), java.nio.charset.StandardCharsets.UTF_8));
    }

    private static String read(String svg) throws ReaderException {
        var side = SIDE.matcher(svg);
        if (!side.find()) {
            throw NotFoundException.getNotFoundInstance();
        }
        var picture = new BinaryBitmap(new HybridBinarizer(drawn(svg, Integer.parseInt(side.group(1)))));
        return new QRCodeReader().decode(picture).getText();
    }

    private static LuminanceSource drawn(String svg, int side) {
        int width = side * MODULE_PX;
        int[] pixels = new int[width * width];
        Arrays.fill(pixels, 0xFFFFFF);
        var dark = DARK.matcher(svg);
        while (dark.find()) {
            fill(pixels, width, Integer.parseInt(dark.group(1)), Integer.parseInt(dark.group(2)));
        }
        return new RGBLuminanceSource(width, width, pixels);
    }

    private static void fill(int[] pixels, int width, int column, int row) {
        for (int y = row * MODULE_PX; y < (row + 1) * MODULE_PX; y++) {
            Arrays.fill(pixels, y * width + column * MODULE_PX, y * width + (column + 1) * MODULE_PX, 0);
        }
    }
}
