package org.berrywatt.server.live;

import java.util.UUID;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.contract.LiveMessage;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Refusal;
import org.springframework.http.CacheControl;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** The snapshots that a page starts from and heals with. Public: who knows the day's id may look at its Wall. */
@RestController
class LiveController {

    private final LabDays days;
    private final Feeds<LeaderboardState> leaderboards;
    private final Feeds<Room> rooms;

    LiveController(LabDays days, Feeds<LeaderboardState> leaderboards, Feeds<Room> rooms) {
        this.days = days;
        this.leaderboards = leaderboards;
        this.rooms = rooms;
    }

    /** @param id lab day; the {@code ETag} lets thirty pages return at once for the price of a look */
    @GetMapping("/api/labdays/{id}/leaderboard")
    ResponseEntity<LiveMessage> leaderboard(@PathVariable UUID id) {
        LiveMessage snapshot = leaderboards.snapshot(known(id));
        return ResponseEntity.ok()
                .cacheControl(CacheControl.noCache())
                .eTag(snapshot.epoch() + "." + snapshot.seq())
                .body(snapshot);
    }

    /** @param id lab day; small and never from a cache, since it tells the time */
    @GetMapping("/api/labdays/{id}/room")
    ResponseEntity<LiveMessage> room(@PathVariable UUID id) {
        return ResponseEntity.ok().cacheControl(CacheControl.noStore()).body(rooms.snapshot(known(id)));
    }

    /** Nobody opens feeds of days that are none. */
    private UUID known(UUID id) {
        return days.find(id)
                .orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND))
                .id();
    }
}
