package org.berrywatt.findings;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;

/** Cells of one or several lab days with all their build parameters, column by column. */
public final class Study {

    private final List<Subject> subjects;
    private final List<Factor> factors;
    private final int[] teams;
    private final int[] days;
    private final double[] logs;
    private final int[] working;

    /**
     * Cells and their parameters in one order.
     *
     * @throws IllegalArgumentException when a factor was made for another number of cells
     */
    public Study(List<Subject> subjects, List<Factor> factors) {
        this.subjects = List.copyOf(subjects);
        this.factors = List.copyOf(factors);
        this.days = codes(subjects.stream().map(Subject::day).toList());
        this.teams = codes(subjects.stream()
                .map(subject -> subject.day() + "\n" + subject.team())
                .toList());
        this.working = IntStream.range(0, subjects.size())
                .filter(i -> subjects.get(i).standing() == Standing.COUNTS)
                .toArray();
        this.logs = logs();
    }

    private static int[] codes(List<String> names) {
        Map<String, Integer> known = new HashMap<>();
        return names.stream()
                .mapToInt(name -> {
                    Integer code = known.putIfAbsent(name, known.size());
                    return code == null ? known.size() - 1 : code;
                })
                .toArray();
    }

    /** A cell that gives nothing is taken as half the least that any gives: ranks see it last, ratios stay finite. */
    private double[] logs() {
        double least = Arrays.stream(working)
                .mapToDouble(this::performance)
                .filter(value -> value > 0)
                .min()
                .orElse(1);
        double[] all = new double[subjects.size()];
        Arrays.fill(all, Double.NaN);
        for (int cell : working) {
            all[cell] = Math.log(Math.max(performance(cell), least / 2));
        }
        return all;
    }

    public List<Subject> subjects() {
        return subjects;
    }

    public List<Factor> factors() {
        return factors;
    }

    int size() {
        return subjects.size();
    }

    Standing standing(int cell) {
        return subjects.get(cell).standing();
    }

    double performance(int cell) {
        return Objects.requireNonNull(subjects.get(cell).performance());
    }

    /** Natural logarithm of the performance of a working cell. */
    double log(int cell) {
        return logs[cell];
    }

    int team(int cell) {
        return teams[cell];
    }

    int day(int cell) {
        return days[cell];
    }

    /** Indices of the cells that count. */
    int[] working() {
        return working.clone();
    }

    /** Indices of the cells that count or broke. */
    int[] decided() {
        return IntStream.range(0, size())
                .filter(cell -> standing(cell) != Standing.WAITING)
                .toArray();
    }

    double[] logsOf(int[] cells) {
        return Arrays.stream(cells).mapToDouble(this::log).toArray();
    }

    int[] teamsOf(int[] cells) {
        return Arrays.stream(cells).map(this::team).toArray();
    }

    /** The same without one cell. */
    Study without(int cell) {
        List<Subject> rest = IntStream.range(0, size())
                .mapToObj(i -> i == cell ? waiting(subjects.get(i)) : subjects.get(i))
                .toList();
        return new Study(rest, factors);
    }

    private static Subject waiting(Subject subject) {
        return new Subject(subject.label(), subject.team(), subject.day(), Standing.WAITING, null);
    }
}
