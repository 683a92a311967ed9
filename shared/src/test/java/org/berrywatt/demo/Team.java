package org.berrywatt.demo;

import java.util.List;

/**
 * A team of the class.
 *
 * @param initial letter that its cells carry
 * @param oxide what its paste is made of
 * @param grindMin how long it ground its paste
 */
record Team(String name, String initial, String oxide, String acid, int grindMin, Habit habit) {

    /** Oxide, acid and grinding differ between teams only; nature does not care about the acid and the grinding. */
    static final List<Team> ALL = List.of(
            new Team("Dormice", "D", "mixedPhaseTitania", "acetic", 20, new Habit(false, " ", false, "uA")),
            new Team("Fieldfares", "F", "mixedPhaseTitania", "vinegar", 30, new Habit(true, " ", false, "µA")),
            new Team("Glow-worms", "G", "anataseTitania", "acetic", 25, new Habit(false, " ", true, "uA")),
            new Team("Hedgehogs", "H", "mixedPhaseTitania", "vinegar", 15, new Habit(false, "", false, "uA")),
            new Team("Linnets", "L", "anataseTitania", "acetic", 35, new Habit(false, " ", false, "µA")),
            new Team("Newts", "N", "mixedPhaseTitania", "acetic", 30, new Habit(true, " ", true, "uA")),
            new Team("Shrews", "S", "anataseTitania", "vinegar", 20, new Habit(false, " ", true, "µA")),
            new Team("Wrens", "W", "mixedPhaseTitania", "vinegar", 40, new Habit(false, " ", false, "uA")));

    String id() {
        return Scenario.id("team " + name);
    }

    /** How well its hands work, apart from every recipe. */
    double skill() {
        return Draws.of("skill " + name).factor(0.10);
    }

    Meter meter() {
        return Meter.of(Draws.of("meter " + name));
    }
}
