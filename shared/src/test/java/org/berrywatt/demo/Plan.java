package org.berrywatt.demo;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The class's plan. Four plates hold four temperatures, and each team leaves one of them out, so that each serves six cells;
 * each team tries each of three dyes. Which cell gets what was drawn with cards.
 */
final class Plan {

    private static final List<Integer> PLATES_C = List.of(350, 400, 450, 500);
    private static final List<String> DYES = List.of("elderberry", "blackberry", "onionSkin");

    private Plan() {}

    static List<PlannedCell> cells() {
        return IntStream.range(0, Team.ALL.size())
                .mapToObj(Plan::ofTeam)
                .flatMap(List::stream)
                .toList();
    }

    private static List<PlannedCell> ofTeam(int number) {
        Team team = Team.ALL.get(number);
        List<Integer> plates = new ArrayList<>(PLATES_C);
        plates.remove(number % PLATES_C.size());
        List<Integer> temperatures = shuffled(plates, "plates " + team.name());
        List<String> dyes = shuffled(DYES, "dyes " + team.name());
        return IntStream.range(0, 3)
                .mapToObj(place -> cell(team, number, place, temperatures.get(place), dyes.get(place)))
                .toList();
    }

    private static PlannedCell cell(Team team, int number, int place, int bakeC, String dye) {
        Draws draws = Draws.of("plan " + team.name() + place);
        LocalDateTime registered = Scenario.at(11, 55).plusSeconds(number * 97L + place * 310L + draws.between(0, 60));
        boolean candleBench = (place + number) % 2 == 0;
        return new PlannedCell(team, place, bakeC, dye, candleBench, soak(draws), registered);
    }

    private static int soak(Draws draws) {
        return draws.oneOf(List.of(15, 20, 25, 30));
    }

    private static <T> List<T> shuffled(List<T> cards, String name) {
        List<T> deck = new ArrayList<>(cards);
        for (int i = deck.size() - 1; i > 0; i--) {
            Collections.swap(deck, i, Draws.of(name + i).between(0, i));
        }
        return deck;
    }
}
