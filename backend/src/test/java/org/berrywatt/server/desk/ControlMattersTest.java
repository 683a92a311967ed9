package org.berrywatt.server.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.UUID;
import org.berrywatt.contract.AttentionItem;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

@ServerTest
class ControlMattersTest {

    private static final String RATIO = "ratioToControl.medianOfDeclared";
    private final Rehearsal day;
    private final AttentionList list;
    private final UUID cell;
    private final UUID yard;

    @Autowired
    ControlMattersTest(ApplicationContext server, Desk desk) {
        day = new Rehearsal(server);
        list = new AttentionList(desk, day.labDayId);
        cell = day.cell(day.team("Larch"), "L1", "15 x 15 mm");
        yard = day.sunnyStation("Yard");
        day.light(yard, "1000 W/m2");
    }

    @Test
    void askForAControlCellOnceSomethingIsReadThatItShouldBeComparedWith() {
        day.rule(RATIO);
        assertThat(list.at(1)).isEmpty();
        read();
        assertThat(list.at(5))
                .extracting(AttentionItem::key, AttentionItem::urgency, AttentionItem::action, AttentionItem::since)
                .containsExactly(tuple("noControl", 2, "openControl", AttentionList.minute(2)));
        day.control(cell);
        assertThat(list.at(5)).isEmpty();
    }

    @Test
    void askForNoneWhereTheDayRanksByAnythingElse() {
        read();
        assertThat(list.at(5)).isEmpty();
    }

    private void read() {
        day.minute(2).dark(cell, "0 mV", "0 uA");
        day.minute(3).lit(cell, yard, "400 mV", "0.900 mA");
    }
}
