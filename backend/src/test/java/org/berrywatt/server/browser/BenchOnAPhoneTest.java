package org.berrywatt.server.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** A team with one phone: from the label on the glass to the result, and nothing typed is lost on the way. */
@ServerTest
class BenchOnAPhoneTest {

    private final Bench bench;
    private final TeamPhone phone;

    BenchOnAPhoneTest(@Autowired MockMvcTester server, @Autowired JsonMapper json, @LocalServerPort int port) {
        bench = new Bench(server, json);
        phone = new TeamPhone(port);
    }

    @BeforeEach
    void startATeam() {
        var light = new IrradianceRequest(bench.station("Window bench"), new Typed("12000", "lx"), null, Bench.NOTICED);
        assertThat(bench.teacher.put(light, "/api/irradiances/{id}", UUID.randomUUID()))
                .hasStatusOk();
        phone.startTeam(bench.code(), "Moths");
    }

    @AfterEach
    void putAway() throws Exception {
        phone.close();
    }

    @Test
    void playsACellFromItsLabelToItsResult() {
        phone.registerCell("M1").darkCheck("M1", "1 mV", "0 uA");
        phone.device.showsText("Before this cell counts");
        phone.lightReading("M1", "312 mV", "640 uA");
        phone.device.showsText("Brought to the reference light");

        openReading("Light toggles");
        for (int i = 0; i < 6; i++) {
            phone.type("toggle-" + i, i % 2 == 0 ? "0" : "640");
        }
        phone.tap("Save the light toggles");
        phone.device.showsText("Mend the light toggles of");
        phone.device.showsText("it answered to the light each time");
        phone.device.picture("bench-result-phone");
        assertThat(phone.device.complaints()).isEmpty();
    }

    @Test
    void tellsWhatAFailureTeaches() {
        phone.registerCell("M1");
        phone.tap("Record how it went");
        choose("It failed");
        choose("The film is patchy or has holes");
        phone.device.showsText("it met grease on the glass");
        phone.tap("Record it");
        phone.device.showsText("Ended at: Film");
        phone.device.showsText("We did this stage again");
    }

    @Test
    void keepsWhatWasTypedOverAReload() {
        phone.registerCell("M1");
        openReading("Dark check");
        phone.type("voltage", "4,5");
        phone.device.driver().navigate().refresh();
        phone.device.showsText("M1: Dark check");
        phone.device.waiting().until(it -> "4,5".equals(value("voltage")));
    }

    @Test
    void returnsARefusedEntryToItsForm() {
        phone.registerCell("M1");
        phone.device.showsText("Everything is with the server");
        bench.setEntry(false);
        phone.darkCheck("M1", "3 mV", "0 uA");
        phone.device.showsText("1 not accepted");
        phone.tap("See why");
        phone.tap("Correct it");
        phone.device.waiting().until(it -> "3 mV".equals(value("voltage")));

        bench.setEntry(true);
        phone.tap("Save the dark check");
        phone.device.showsText("Everything is with the server");
        phone.device.showsText("3 mV, 0 A at");
    }

    private void openReading(String kind) {
        phone.device.act(By.xpath("//a[contains(@class, 'reading')][contains(., '" + kind + "')]"), WebElement::click);
    }

    private void choose(String words) {
        phone.device.act(
                By.xpath("//label[contains(@class, 'choice')][contains(., '" + words + "')]"), WebElement::click);
    }

    private Object value(String field) {
        return phone.device.answers("return document.querySelector('input[name=" + field + "]')?.value");
    }
}
