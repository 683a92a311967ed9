package org.berrywatt.server.plan;

/** Names of planned cells: a letter for the team, a number for the cell. */
final class Labels {

    static final String STANDARD = "Z1";
    static final String UNDYED = "Z2";

    private Labels() {}

    /**
     * @param team from 0, at most 23
     * @param number from 1
     */
    static String of(int team, int number) {
        return (char) ('A' + team) + String.valueOf(number);
    }
}
