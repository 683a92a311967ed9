package org.berrywatt.demo;

import java.time.Duration;
import java.time.LocalDateTime;

/**
 * A cell as it was planned and registered.
 *
 * @param place 0, 1 or 2 within the team
 * @param bakeC temperature of the film
 * @param candleBench soot on the counter glass and two layers of tape, or pencil and one layer
 * @param soakMin minutes in the dye
 * @param registered when it was entered
 */
record PlannedCell(
        Team team, int place, int bakeC, String dye, boolean candleBench, int soakMin, LocalDateTime registered) {

    String label() {
        return team.initial() + (place + 1);
    }

    String id() {
        return Scenario.id("cell " + label());
    }

    Draws draws(String what) {
        return Draws.of(what + " " + label());
    }

    /** Width and height of the film in mm. */
    int widthMm() {
        return draws("width").between(14, 18);
    }

    int heightMm() {
        return draws("height").between(14, 20);
    }

    double areaCm2() {
        return widthMm() * heightMm() / 100.0;
    }

    LocalDateTime after(LocalDateTime earlier, int minutes, String what) {
        return earlier.plus(Duration.ofSeconds(minutes * 60L + draws(what).between(-100, 100)));
    }
}
