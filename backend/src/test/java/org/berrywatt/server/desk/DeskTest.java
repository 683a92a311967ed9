package org.berrywatt.server.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.berrywatt.server.desk.AttentionList.minute;

import java.util.UUID;
import org.berrywatt.contract.AttentionItem;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.PutOffRequest;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.Api;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class DeskTest {

    private final ApplicationContext server;
    private final Desk desk;
    private final Rehearsal day;
    private final AttentionList list;
    private final Api teacher;
    private final UUID team;
    private final UUID yard;

    @Autowired
    DeskTest(ApplicationContext server, MockMvcTester door, JsonMapper json, Desk desk) {
        this.server = server;
        this.desk = desk;
        day = new Rehearsal(server);
        list = new AttentionList(desk, day.labDayId);
        teacher = new Api(door, json, Rehearsal.TEACHER);
        team = day.team("Larch");
        yard = day.sunnyStation("Yard");
    }

    @Test
    void hasNothingToSayOfADayWithoutTroubleOrTeams() {
        assertThat(list.keysAt(5)).isEmpty();
        assertThat(new AttentionList(desk, new Rehearsal(server).labDayId).at(0))
                .isEmpty();
    }

    @Test
    void asksForTheDarkCheckSinceTheFirstReadingUntilItIsThere() {
        day.light(yard, "1000 W/m2");
        var cell = day.cell(team, "L1", "15 x 15 mm");
        day.minute(3).lit(cell, yard, "400 mV", "0.900 mA");
        day.minute(4).lit(cell, yard, "400 mV", "0.900 mA");
        assertThat(list.at(6))
                .extracting(AttentionItem::key, AttentionItem::cellId, AttentionItem::since, AttentionItem::action)
                .containsExactly(tuple("noDarkCheck", cell, minute(3), "openCell"));
        day.minute(7).dark(cell, "0 mV", "0 uA");
        assertThat(list.keysAt(8)).isEmpty();
    }

    @Test
    void tellsABatteryWithTheSentenceThatItsTeamReads() {
        day.light(yard, "1000 W/m2");
        var cell = day.cell(team, "L1", "15 x 15 mm");
        day.dark(cell, "300 mV", "80.0 uA");
        day.lit(cell, yard, "310 mV", "100.0 uA");
        assertThat(list.at(1)).singleElement().satisfies(item -> {
            assertThat(item.key()).isEqualTo("battery");
            assertThat(item.remark()).isNotNull();
            assertThat(item.values()).containsEntry("cell", "L1");
        });
    }

    @Test
    void putsWhatSpoilsBeforeWhatIsDoubtfulAndTheOlderFirst() {
        var cell = day.cell(team, "L1", "15 x 15 mm");
        var other = day.cell(team, "L2", "15 x 15 mm");
        day.dark(cell, "0 mV", "0 uA");
        day.dark(other, "0 mV", "0 uA");
        day.minute(2).lit(other, yard, "1200 mV", "0.900 mA");
        day.minute(5).lit(cell, yard, "1100 mV", "0.900 mA");
        assertThat(list.at(6))
                .extracting(AttentionItem::key, AttentionItem::urgency, AttentionItem::cellId)
                .containsExactly(tuple("stationDark", 2, null), tuple("unusual", 3, other), tuple("unusual", 3, cell));
    }

    @Test
    void namesTheZoneOfAHotStepWithoutSignOffBeforeAllElse() {
        var cell = day.cell(team, "L1", null);
        day.minute(3).passed(cell, "film");
        assertThat(list.at(30).get(0)).satisfies(item -> {
            assertThat(item.key()).isEqualTo("unsigned");
            assertThat(item.urgency()).isEqualTo(1);
            assertThat(item.teamId()).isEqualTo(team);
            assertThat(item.since()).isEqualTo(minute(3));
            assertThat(item.values()).containsEntry("zone", "catalogue.zone.heat");
        });
        day.minute(30).signedOff(team, Zone.HEAT);
        assertThat(list.keysAt(31)).doesNotContain("unsigned");
        assertThat(list.keysAt(30 + 91)).contains("unsigned");
    }

    @Test
    void keepsWhatIsPutOffOnTheListWithTheTimeAtWhichItComesBack() {
        var id = list.at(30).get(0).id();
        var seen = desk.putOff(day.labDayId, new PutOffRequest(id, 10), Rehearsal.TEACHER, minute(30));
        assertThat(seen.items()).extracting(AttentionItem::putOffUntil).containsExactly(minute(40));
        assertThat(list.at(39)).extracting(AttentionItem::putOffUntil).containsExactly(minute(40));
        assertThat(list.at(40)).extracting(AttentionItem::putOffUntil).containsOnlyNulls();
        desk.putOff(day.labDayId, new PutOffRequest(id, 10), Rehearsal.TEACHER, minute(40));
        desk.putOff(day.labDayId, new PutOffRequest(id, 0), Rehearsal.TEACHER, minute(41));
        assertThat(list.at(41)).extracting(AttentionItem::putOffUntil).containsOnlyNulls();
    }

    @Test
    void isForTeachersOnly() {
        var phone = teacher.asTeam(team, day.labDayId);
        assertThat(phone.get("/api/labdays/{id}/desk", day.labDayId)).hasStatus(403);
        assertThat(phone.put(new PutOffRequest("quiet", 10), "/api/labdays/{id}/desk/put-off", day.labDayId))
                .hasStatus(403);
        assertThat(teacher.get("/api/labdays/{id}/desk", day.labDayId)).hasStatusOk();
        teacher.problem(teacher.get("/api/labdays/{id}/desk", UUID.randomUUID()), ProblemCode.NOT_FOUND);
    }

    @Test
    void refusesToPutOffForLongerThanADay() {
        var refused = teacher.put(new PutOffRequest("quiet", 1441), "/api/labdays/{id}/desk/put-off", day.labDayId);
        assertThat(teacher.problem(refused, ProblemCode.QUANTITY_IMPOSSIBLE).limit())
                .isEqualTo("[0, 1440]");
    }
}
