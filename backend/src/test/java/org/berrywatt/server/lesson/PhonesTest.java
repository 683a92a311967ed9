package org.berrywatt.server.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.PhoneAnswer;
import org.berrywatt.contract.PhoneRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class PhonesTest {

    private final Lesson lesson;
    private final Bench bench;
    private final Api sloe;

    @Autowired
    PhonesTest(Lesson lesson, MockMvcTester server, JsonMapper json) {
        this.lesson = lesson;
        bench = new Bench(server, json);
        sloe = bench.team("Sloe");
    }

    @Test
    void remembersOfAPhoneOnlyWhatItToldLast() {
        var phone = UUID.randomUUID();
        tell(sloe, phone, 3, List.of("labday.closed"));
        var last = tell(sloe, phone, 1, List.of());

        assertThat(phones()).containsExactly(last);
        assertThat(lesson.phones(bench.day.id()))
                .extracting(Phone::waiting, Phone::teamId)
                .containsExactly(tuple(1, Bench.teamId(sloe)));
    }

    @Test
    void keepsADozenPhonesOfATeam() {
        for (int i = 0; i < 14; i++) {
            tell(sloe, UUID.randomUUID(), i, List.of());
        }

        assertThat(phones()).hasSize(12);
    }

    @Test
    void refusesACodeThatNoRefusalHas() {
        var problem = sloe.problem(
                sloe.put(new PhoneRequest(0, List.of("nonsense")), "/api/phones/{id}", UUID.randomUUID()),
                ProblemCode.CHOICE_UNKNOWN);
        assertThat(problem.field()).isEqualTo("refusedCodes");
    }

    private PhoneAnswer tell(Api by, UUID phone, int waiting, List<String> codes) {
        return by.answer(by.put(new PhoneRequest(waiting, codes), "/api/phones/{id}", phone), PhoneAnswer.class);
    }

    private List<PhoneAnswer> phones() {
        return bench.teacher.answers(bench.teacher.get("/api/labdays/{id}/phones", bench.day.id()), PhoneAnswer.class);
    }
}
