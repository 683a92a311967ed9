package org.berrywatt.server.browser;

import java.io.IOException;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** A team's phone in the hands of somebody who taps and types. */
final class TeamPhone implements AutoCloseable {

    final Device device = Device.phone();
    final WeakWifi wifi;

    TeamPhone(int serverPort) {
        wifi = new WeakWifi(serverPort);
    }

    /** Follows the day's QR link and names a team. */
    TeamPhone startTeam(String dayCode, String name) {
        device.open(wifi.address() + "/join.html#" + dayCode);
        type("name", name);
        tap("Start the team");
        device.showsText("Your cells");
        return this;
    }

    /** Registers a cell of 15 mm by 15 mm. */
    TeamPhone registerCell(String label) {
        tap("Register a cell");
        type("label", label);
        tap("More, if you know it already");
        device.act(By.xpath("(//bw-area//input[@type='text'])[1]"), side -> side.sendKeys("15"));
        device.act(By.xpath("(//bw-area//input[@type='text'])[2]"), side -> side.sendKeys("15"));
        tap("Register this cell");
        device.showsText("Cell " + label);
        return this;
    }

    TeamPhone darkCheck(String label, String voltage, String current) {
        return reading(label, "Dark check", voltage, current, "Save the dark check");
    }

    TeamPhone lightReading(String label, String voltage, String current) {
        return reading(label, "Light reading", voltage, current, "Save the light reading");
    }

    private TeamPhone reading(String label, String kind, String voltage, String current, String save) {
        device.act(By.xpath("//a[contains(@class, 'reading')][contains(., '" + kind + "')]"), WebElement::click);
        device.showsText(label + ": " + kind);
        type("voltage", voltage);
        type("current", current);
        tap(save);
        device.showsText("Cell " + label);
        return this;
    }

    void type(String field, String text) {
        device.act(By.cssSelector("input[name=" + field + "]"), input -> {
            input.clear();
            input.sendKeys(text);
        });
    }

    void tap(String words) {
        device.act(
                By.xpath(
                        "//*[self::a or self::button or self::summary][contains(normalize-space(.), '" + words + "')]"),
                WebElement::click);
    }

    @Override
    public void close() throws IOException {
        device.close();
        wifi.close();
    }
}
