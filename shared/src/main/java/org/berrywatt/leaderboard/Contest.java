package org.berrywatt.leaderboard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;

/**
 * Who is above whom, counted over the trials. Only whole numbers are kept, so that a team taken out and put in again leaves no
 * trace, and no order of putting in matters.
 */
final class Contest {
    private final int trials;
    private final List<Row> rows = new ArrayList<>();
    /** Where the row of a team stands. */
    private final Map<UUID, Integer> indexes = new HashMap<>();

    /** A contender with its counts: {@code wins} against each row, {@code above} in each trial. */
    private static final class Row {
        private final Contender contender;
        private final short[] above;
        private int[] wins;

        Row(Contender contender, short[] above, int[] wins) {
            this.contender = contender;
            this.above = above;
            this.wins = wins;
        }

        Row copy() {
            return new Row(contender, above.clone(), wins.clone());
        }
    }

    Contest(int trials) {
        this.trials = trials;
    }

    Contest copy() {
        var copy = new Contest(trials);
        rows.forEach(row -> copy.rows.add(row.copy()));
        copy.indexes.putAll(indexes);
        return copy;
    }

    List<Contender> contenders() {
        return rows.stream().map(row -> row.contender).toList();
    }

    void remove(UUID teamId) {
        var index = indexes.get(teamId);
        if (index == null) {
            return;
        }
        var gone = rows.remove(index.intValue());
        for (Row row : rows) {
            uncount(gone.contender.trials(), row);
            row.wins = without(index, row.wins);
        }
        indexes.remove(teamId);
        indexes.replaceAll((team, place) -> place > index ? place - 1 : place);
    }

    /** Puts a team in, or in the place of what it was before. */
    void put(Contender contender) {
        var index = indexes.get(contender.teamId());
        if (index == null) {
            add(contender);
        } else {
            replace(index, contender);
        }
    }

    private void add(Contender contender) {
        var added = new Row(contender, new short[trials], new int[rows.size() + 1]);
        for (int i = 0; i < rows.size(); i++) {
            var row = rows.get(i);
            row.wins = Arrays.copyOf(row.wins, rows.size() + 1);
            row.wins[rows.size()] = count(added, row, i);
        }
        indexes.put(contender.teamId(), rows.size());
        rows.add(added);
    }

    /** The same as taking it out and putting it in again, in one pass over the others. */
    private void replace(int index, Contender contender) {
        double[] gone = rows.get(index).contender.trials();
        var added = new Row(contender, new short[trials], new int[rows.size()]);
        for (int i = 0; i < rows.size(); i++) {
            if (i != index) {
                rows.get(i).wins[index] = recount(gone, added, rows.get(i), i);
            }
        }
        rows.set(index, added);
    }

    /** Trials in which one is above the other. */
    int wins(Contender one, Contender other) {
        return row(one).wins[indexOf(other.teamId())];
    }

    /** Clearly better: above in at least 97.5 % of the trials. */
    boolean isClearlyAbove(Contender one, Contender other) {
        return wins(one, other) * 1000L >= trials * 975L;
    }

    double chanceAbove(Contender one, Contender other) {
        return wins(one, other) / (double) trials;
    }

    PlaceInterval placeInterval(Contender contender) {
        return PlaceInterval.of(row(contender).above, rows.size());
    }

    /** Counts a new row against another, and returns how often the other is above. */
    private static int count(Row added, Row row, int index) {
        double[] mine = added.contender.trials();
        double[] theirs = row.contender.trials();
        int won = 0;
        int lost = 0;
        for (int trial = 0; trial < mine.length; trial++) {
            int up = oneIfAbove(mine[trial], theirs[trial]);
            int down = oneIfAbove(theirs[trial], mine[trial]);
            won += up;
            lost += down;
            row.above[trial] += (short) up;
            added.above[trial] += (short) down;
        }
        added.wins[index] = won;
        return lost;
    }

    /** Takes one back and counts another in its place, in one pass: reading the trials of all is what takes the time. */
    private static int recount(double[] gone, Row added, Row row, int index) {
        double[] mine = added.contender.trials();
        double[] theirs = row.contender.trials();
        short[] aboveMe = added.above;
        short[] aboveThem = row.above;
        int won = 0;
        int lost = 0;
        for (int trial = 0; trial < mine.length; trial++) {
            int up = oneIfAbove(mine[trial], theirs[trial]);
            int down = oneIfAbove(theirs[trial], mine[trial]);
            won += up;
            lost += down;
            aboveThem[trial] += (short) (up - oneIfAbove(gone[trial], theirs[trial]));
            aboveMe[trial] += (short) down;
        }
        added.wins[index] = won;
        return lost;
    }

    private static void uncount(double[] gone, Row row) {
        double[] theirs = row.contender.trials();
        for (int trial = 0; trial < gone.length; trial++) {
            row.above[trial] -= (short) oneIfAbove(gone[trial], theirs[trial]);
        }
    }

    /**
     * The sign bit of the difference, which is never 0 for two doubles that differ: the chances of alike teams are even, and a
     * branch guessed wrong in every other trial costs more than all the rest.
     */
    private static int oneIfAbove(double one, double other) {
        return (int) (Double.doubleToRawLongBits(other - one) >>> (Double.SIZE - 1));
    }

    private static int[] without(int index, int[] wins) {
        int[] shorter = Arrays.copyOf(wins, wins.length - 1);
        System.arraycopy(wins, index + 1, shorter, index, shorter.length - index);
        return shorter;
    }

    private Row row(Contender contender) {
        return rows.get(indexOf(contender.teamId()));
    }

    private int indexOf(UUID teamId) {
        return Objects.requireNonNull(indexes.get(teamId));
    }
}
