package org.berrywatt.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/** Moves cells through an afternoon: films by team, bakes by temperature, then dye, closing, and the queue at the stations. */
final class Afternoon {

    private final Workshop workshop;
    private final UniformRandomProvider random;
    private final Map<String, Integer> readyMin = new HashMap<>();
    private final List<Slot> slots = new ArrayList<>();

    Afternoon(Workshop workshop, long seed) {
        this.workshop = workshop;
        this.random = RandomSource.XO_SHI_RO_256_PP.create(seed);
    }

    List<Slot> slots(List<Job> jobs) {
        byTeam(jobs).forEach(this::makeFilms);
        bake(jobs);
        jobs.stream()
                .collect(Collectors.groupingBy(this::bath, TreeMap::new, Collectors.toList()))
                .values()
                .forEach(this::dyeAndClose);
        measure(jobs);
        return slots.stream().sorted(Comparator.comparingInt(Slot::fromMin)).toList();
    }

    private static Map<Integer, List<Job>> byTeam(List<Job> jobs) {
        return jobs.stream().collect(Collectors.groupingBy(Job::team, TreeMap::new, Collectors.toList()));
    }

    private void makeFilms(int team, List<Job> jobs) {
        int minutes = Pace.film(jobs.size());
        add(Slot.at(Slot.Kind.FILM, team, labels(jobs), 0, minutes));
        add(Slot.at(Slot.Kind.COUNTER_ELECTRODE, team, labels(jobs), minutes, Pace.COUNTER_ELECTRODE));
        jobs.forEach(job -> readyMin.put(job.label(), minutes));
    }

    /** Cooler bakes come first: a heater warms up faster than it cools down. */
    private void bake(List<Job> jobs) {
        var free = new int[workshop.heaters().size()];
        jobs.stream()
                .collect(Collectors.groupingBy(Program::of, TreeMap::new, Collectors.toList()))
                .forEach((program, alike) -> bake(program, Shuffle.of(alike, random), free));
    }

    private void bake(Program program, List<Job> jobs, int[] free) {
        var left = jobs;
        while (!left.isEmpty()) {
            int heater = earliest(free);
            var batch = left.subList(
                    0, Math.min(left.size(), workshop.heaters().get(heater).positions()));
            left = left.subList(batch.size(), left.size());
            int from = Math.max(free[heater], latest(batch));
            free[heater] = from + Pace.bake(program.holdMin());
            add(new Slot(Slot.Kind.BAKE, heater + 1, labels(batch), from, free[heater], program.bakeC()));
            for (var job : batch) {
                readyMin.put(job.label(), free[heater]);
            }
        }
    }

    private Bath bath(Job job) {
        return new Bath(job.team(), ready(job), job.soakMin());
    }

    private void dyeAndClose(List<Job> jobs) {
        var first = jobs.get(0);
        int minutes = Pace.dyeAndClose(first.soakMin());
        add(Slot.at(Slot.Kind.DYE_AND_CLOSE, first.team(), labels(jobs), ready(first), minutes));
        int ready = ready(first) + minutes;
        jobs.forEach(job -> readyMin.put(job.label(), ready));
    }

    private void measure(List<Job> jobs) {
        var free = new int[workshop.stations()];
        Shuffle.of(jobs, random).stream()
                .sorted(Comparator.comparingInt(this::ready))
                .forEach(job -> {
                    int station = earliest(free);
                    int from = Math.max(free[station], ready(job));
                    free[station] = from + Pace.MEASURE;
                    add(Slot.at(Slot.Kind.MEASURE, station + 1, List.of(job.label()), from, Pace.MEASURE));
                });
    }

    private void add(Slot slot) {
        slots.add(slot);
    }

    private int ready(Job job) {
        return readyMin.getOrDefault(job.label(), 0);
    }

    private int latest(List<Job> jobs) {
        return jobs.stream().mapToInt(this::ready).max().orElse(0);
    }

    private static int earliest(int[] free) {
        int best = 0;
        for (int i = 1; i < free.length; i++) {
            best = free[i] < free[best] ? i : best;
        }
        return best;
    }

    private static List<String> labels(List<Job> jobs) {
        return jobs.stream().map(Job::label).toList();
    }

    /** What a heater does in one go. */
    private record Program(double bakeC, double holdMin) implements Comparable<Program> {

        static Program of(Job job) {
            return new Program(job.bakeC(), job.holdMin());
        }

        @Override
        public int compareTo(Program other) {
            return Comparator.comparingDouble(Program::bakeC)
                    .thenComparingDouble(Program::holdMin)
                    .compare(this, other);
        }
    }

    /** Cells of a team that go into the dye together. */
    private record Bath(int team, int fromMin, double soakMin) implements Comparable<Bath> {

        @Override
        public int compareTo(Bath other) {
            return Comparator.comparingInt(Bath::team)
                    .thenComparingInt(Bath::fromMin)
                    .thenComparingDouble(Bath::soakMin)
                    .compare(this, other);
        }
    }
}
