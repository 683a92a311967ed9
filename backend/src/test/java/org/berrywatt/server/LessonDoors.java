package org.berrywatt.server;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.berrywatt.contract.AnnouncementRequest;
import org.berrywatt.contract.HeaterOutRequest;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.contract.IncidentRequest;
import org.berrywatt.contract.PhoneRequest;
import org.berrywatt.contract.SignOffRequest;
import org.berrywatt.contract.TimerExtensionRequest;
import org.berrywatt.contract.TimerRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.safety.Zone;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The doors of safety and of the course of the lesson, for {@link Doors}. The team is signed off for the heat. */
final class LessonDoors {

    private final Bench bench;
    private final Api own;
    private final UUID cell;
    private final UUID slot;

    /** Puts the team's cell on a heater and takes it off again, so that a door has a stay to end and the cell is free. */
    LessonDoors(Bench bench, Api own, UUID cell) {
        this.bench = bench;
        this.own = own;
        this.cell = cell;
        slot = UUID.randomUUID();
        own.put(onHeater(), "/api/heater-slots/{id}", slot);
        takeOff(own);
    }

    Map<String, Function<Api, MvcTestResult>> all() {
        return Stream.of(ofSafety(), ofTheLesson())
                .flatMap(doors -> doors.entrySet().stream())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private Map<String, Function<Api, MvcTestResult>> ofSafety() {
        return Map.of(
                "PUT /api/sign-offs/{id}", by -> by.put(flame(), "/api/sign-offs/{id}", fresh()),
                "PUT /api/sign-offs/{id}/withdrawal",
                        by -> by.put("", "/api/sign-offs/{id}/withdrawal", bench.made(flame(), "/api/sign-offs/{id}")),
                "GET /api/labdays/{labDayId}/sign-offs", by -> by.get("/api/labdays/{id}/sign-offs", day()),
                "PUT /api/incidents/{id}", by -> by.put(incident(), "/api/incidents/{id}", fresh()),
                "PUT /api/incidents/{id}/look",
                        by -> by.put("", "/api/incidents/{id}/look", bench.made(incident(), "/api/incidents/{id}")),
                "GET /api/labdays/{labDayId}/incidents", by -> by.get("/api/labdays/{id}/incidents", day()));
    }

    private Map<String, Function<Api, MvcTestResult>> ofTheLesson() {
        return Map.ofEntries(
                entry("GET /api/labdays/{labDayId}/lesson", by -> by.get("/api/labdays/{id}/lesson", day())),
                entry("PUT /api/announcements/{id}", by -> by.put(announcement(), "/api/announcements/{id}", fresh())),
                entry("PUT /api/announcements/{id}/end", this::takeBack),
                entry("PUT /api/timers/{id}", by -> by.put(timer(), "/api/timers/{id}", fresh())),
                entry("PUT /api/timers/{id}/extensions/{extensionId}", this::extend),
                entry(
                        "PUT /api/timers/{id}/end",
                        by -> by.put("", "/api/timers/{id}/end", bench.made(timer(), "/api/timers/{id}"))),
                entry("PUT /api/heater-slots/{id}", by -> by.put(onHeater(), "/api/heater-slots/{id}", fresh())),
                entry("PUT /api/heater-outs/{id}", this::takeOff),
                entry(
                        "PUT /api/phones/{id}",
                        by -> by.put(new PhoneRequest(0, List.of()), "/api/phones/{id}", fresh())),
                entry("GET /api/labdays/{labDayId}/phones", by -> by.get("/api/labdays/{id}/phones", day())));
    }

    private MvcTestResult takeBack(Api by) {
        return by.put("", "/api/announcements/{id}/end", bench.made(announcement(), "/api/announcements/{id}"));
    }

    private MvcTestResult extend(Api by) {
        var id = bench.made(timer(), "/api/timers/{id}");
        return by.put(new TimerExtensionRequest(5), "/api/timers/{id}/extensions/{extensionId}", id, fresh());
    }

    private MvcTestResult takeOff(Api by) {
        return by.put(new HeaterOutRequest(slot, null), "/api/heater-outs/{id}", fresh());
    }

    private HeaterSlotRequest onHeater() {
        return new HeaterSlotRequest(cell, "Plate", 1, new Typed("450", "degC"), 50, null, null, null);
    }

    private Object flame() {
        return new SignOffRequest(team(), "flame", Zone.FLAME.points(), 60, null);
    }

    private Object incident() {
        return new IncidentRequest(day(), null, "glass", "A plate broke", "Swept up", null, Bench.NOTICED);
    }

    private Object announcement() {
        return new AnnouncementRequest(day(), "Goggles on.", null);
    }

    private Object timer() {
        return new TimerRequest(day(), "Bake", 60, null, null);
    }

    private UUID team() {
        return Bench.teamId(own);
    }

    private UUID day() {
        return bench.day.id();
    }

    private static UUID fresh() {
        return UUID.randomUUID();
    }
}
