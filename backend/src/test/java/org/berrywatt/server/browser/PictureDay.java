package org.berrywatt.server.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.berrywatt.contract.AnnouncementRequest;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.FinalRequest;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.contract.IncidentRequest;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.PlanRequest;
import org.berrywatt.contract.PlanRequest.PlanFactor;
import org.berrywatt.contract.PlanRequest.PlanHeater;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.contract.TimerRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.jspecify.annotations.Nullable;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/**
 * A lesson with something of everything: teams with measured cells, one cell that is still a battery, one that failed, one
 * in the heater, and words from the teacher.
 */
final class PictureDay {

    private static final List<String> TEAMS = List.of("Moths", "Newts", "Voles", "Wrens", "Shrews", "Slow-worms");
    private static final List<String> STAGES = List.of("film", "bake", "dye", "counterElectrode", "fill");

    final Bench bench;
    final UUID window;
    final Api moths;
    final UUID measured;
    final UUID begun;

    PictureDay(MockMvcTester server, JsonMapper json) {
        bench = new Bench(server, json);
        window = bench.station("Window bench");
        readTheLight("11800");
        readTheLight("12000");
        moths = bench.team(TEAMS.get(0));
        measured = measure(moths, "M1", 1);
        begun = register(moths, "M2", 1);
        pass(moths, begun, List.of("film"));
        IntStream.range(1, TEAMS.size()).forEach(this::playATeam);
        plan();
        sayAndWarm();
    }

    UUID id() {
        return bench.day.id();
    }

    /** The code by which a phone joins the first team. */
    String code() {
        return bench.codeOf(moths);
    }

    void end() {
        bench.setEntry(false);
        accept(bench.teacher, new FinalRequest(true, null), "labdays/" + id() + "/final");
    }

    private void playATeam(int number) {
        var name = TEAMS.get(number);
        var team = bench.team(name);
        var initial = name.substring(0, 1) + number;
        measure(team, initial + "a", number + 1);
        var second = register(team, initial + "b", number + 1);
        switch (number) {
            case 1 -> stillABattery(team, second);
            case 2 -> accept(team, outcome(second, "film", "patchy"), "outcomes/" + UUID.randomUUID());
            case 3 -> measureAgain(team, second);
            default -> pass(team, second, List.of("film"));
        }
    }

    /** A cell with everything: stages, dark check, light reading, sweep and toggles. */
    private UUID measure(Api team, String label, int strength) {
        bench.signOff(team, Zone.HEAT);
        bench.signOff(team, Zone.FLAME);
        var cell = register(team, label, strength);
        pass(team, cell, STAGES);
        read(team, cell, "dark", "1 mV", "0 uA");
        read(team, cell, "light", (300 + 20 * strength) + " mV", (400 + 90 * strength) + " uA");
        record(team, cell, "sweep", null, null, sweep(strength));
        return cell;
    }

    private void stillABattery(Api team, UUID cell) {
        pass(team, cell, STAGES);
        read(team, cell, "dark", "180 mV", "300 uA");
        read(team, cell, "light", "210 mV", "330 uA");
    }

    private void measureAgain(Api team, UUID cell) {
        read(team, cell, "dark", "2 mV", "1 uA");
        read(team, cell, "light", "352 mV", "610 uA");
        record(team, cell, "toggles", null, null, toggles());
    }

    private UUID register(Api team, String label, int strength) {
        var recipe = List.of(
                new BuildValue("dyeSource", strength % 2 == 0 ? "blackberry" : "hibiscus", null),
                new BuildValue("bakeTemperature", strength % 3 == 0 ? "400" : "450", "degC"));
        var cell = UUID.randomUUID();
        accept(
                team,
                new CellRequest(Bench.teamId(team), label, recipe, new Typed("15 x 15", "mm"), Bench.NOTICED),
                "cells/" + cell);
        return cell;
    }

    private void pass(Api team, UUID cell, List<String> stages) {
        stages.forEach(stage -> accept(team, outcome(cell, stage, null), "outcomes/" + UUID.randomUUID()));
    }

    private static OutcomeRequest outcome(UUID cell, String stage, @Nullable String failure) {
        return new OutcomeRequest(cell, stage, failure == null, failure, null, null, Bench.NOTICED);
    }

    private void read(Api team, UUID cell, String kind, String voltage, String current) {
        record(team, cell, kind, new Typed(voltage, null), new Typed(current, null), null);
    }

    private void record(
            Api team,
            UUID cell,
            String kind,
            @Nullable Typed voltage,
            @Nullable Typed current,
            @Nullable List<SweepPoint> points) {
        var station = kind.equals("dark") ? null : window;
        accept(
                team,
                new ReadingRequest(
                        cell, kind, station, voltage, current, null, null, points, true, null, null, Bench.NOTICED),
                "readings/" + UUID.randomUUID());
    }

    /** Loads and voltages as a small cell might show them. */
    private static List<SweepPoint> sweep(int strength) {
        return List.of("10 5", "100 48", "330 145", "560 205", "1000 255", "3300 305").stream()
                .map(row -> row.split(" "))
                .map(row -> new SweepPoint(
                        new Typed(row[0] + " ohm", null),
                        new Typed(Integer.parseInt(row[1]) * (20 + strength) / 20 + " mV", null),
                        null))
                .toList();
    }

    private static List<SweepPoint> toggles() {
        return List.of("0", "610", "1", "604", "0", "607").stream()
                .map(current -> new SweepPoint(null, null, new Typed(current + " uA", null)))
                .toList();
    }

    private void readTheLight(String lux) {
        accept(
                bench.teacher,
                new IrradianceRequest(window, new Typed(lux, "lx"), null, Bench.NOTICED),
                "irradiances/" + UUID.randomUUID());
    }

    private void plan() {
        var dyes = new PlanFactor("dyeSource", List.of(new Typed("hibiscus", null), new Typed("beetroot", null)));
        var plates = List.of(new PlanHeater("A", 12));
        var request =
                new PlanRequest(4, 3, List.of(dyes), List.of(), List.of(), plates, 2, 300, 2, null, true, true, 25, 7L);
        accept(bench.teacher, request, "labdays/" + id() + "/plan/versions/" + UUID.randomUUID());
    }

    private void sayAndWarm() {
        var warm = new HeaterSlotRequest(begun, "Plate A", 2, new Typed("450", "degC"), 30, null, null, null);
        accept(bench.teacher, warm, "heater-slots/" + UUID.randomUUID());
        accept(
                bench.teacher,
                new AnnouncementRequest(id(), "Ten minutes left for light readings.", 30),
                "announcements/" + UUID.randomUUID());
        accept(bench.teacher, new TimerRequest(id(), "Tidy up", 900, null, null), "timers/" + UUID.randomUUID());
        accept(
                bench.teacher,
                new IncidentRequest(
                        id(), null, "glass", "A slide broke.", "Swept up, nobody cut.", null, Bench.NOTICED),
                "incidents/" + UUID.randomUUID());
    }

    private static void accept(Api who, Object request, String address) {
        assertThat(who.put(request, "/api/" + address)).hasStatusOk();
    }
}
