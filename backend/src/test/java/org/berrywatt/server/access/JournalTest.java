package org.berrywatt.server.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.berrywatt.server.access.Journal.Event;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.mock.web.MockHttpServletRequest;

@ExtendWith(OutputCaptureExtension.class)
class JournalTest {

    private final Journal journal = new Journal();
    private final MockHttpServletRequest request = new MockHttpServletRequest("POST", "/api/access/sign-in");

    @Test
    void tellsWhoCameInFromWhere(CapturedOutput output) {
        request.setRemoteAddr("192.0.2.30");
        journal.tell(Event.NEW_PASS, Journal.whom(new Caller.Teacher(UUID.randomUUID(), "Ada Rowan")), request);
        assertThat(output.getAll())
                .contains("new pass: teacher \"Ada Rowan\", POST /api/access/sign-in from 192.0.2.30");
    }

    /** CWE-117: a line end, a terminal's escape, a mark that turns the line round and a quotation mark, all in one name. */
    @Test
    void letsNobodyForgeALine(CapturedOutput output) {
        var name = "Ada\r\n2026-11-27T10:00:00Z INFO  Journal: new pass\u001b[2K\u202e\u2028\" x";
        journal.tell(Event.REFUSED, Journal.whom(new Caller.Teacher(UUID.randomUUID(), name)), request);
        assertThat(output.getAll().lines().filter(line -> line.contains("Ada")))
                .singleElement()
                .asString()
                .contains("refused: teacher \"Ada\\u{d}\\u{a}2026", "\\u{1b}[2K\\u{202e}\\u{2028}\\u{22} x\"")
                .doesNotContain("\u001b", "\u202e", "\u2028");
    }

    @Test
    void cutsWhatIsTooLongForALine() {
        assertThat(Visible.of("\u00e4".repeat(81))).isEqualTo("\u00e4".repeat(80) + "\u2026");
        assertThat(Visible.of("\u00e4".repeat(80))).hasSize(80);
    }

    @Test
    void countsAFloodInsteadOfTellingEachOfIt(CapturedOutput output) {
        for (var tries = 0; tries < 1_000; tries++) {
            journal.tell(Event.SLOWED, "somebody", request);
        }
        assertThat(lines(output)).isEqualTo(3);
        journal.sumUp();
        assertThat(output.getAll()).contains("slowed down: 997 more within a minute");
        journal.tell(Event.SLOWED, "somebody", request);
        journal.sumUp();
        assertThat(lines(output)).isEqualTo(5);
    }

    @Test
    void hasRoomForOtherNewsDuringAFlood(CapturedOutput output) {
        for (var tries = 0; tries < 1_000; tries++) {
            journal.tell(Event.REFUSED, "somebody", request);
        }
        journal.tell(Event.PASSWORD_CHANGED, "teacher \"Ada Rowan\"", request);
        assertThat(output.getAll()).contains("password changed: teacher \"Ada Rowan\"");
    }

    private static long lines(CapturedOutput output) {
        return output.getAll()
                .lines()
                .filter(line -> line.contains("slowed down"))
                .count();
    }
}
