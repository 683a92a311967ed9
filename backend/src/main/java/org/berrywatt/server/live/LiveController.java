package org.berrywatt.server.live;

import java.util.UUID;
import org.berrywatt.contract.LiveMessage;
import org.springframework.http.CacheControl;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** The snapshot that a page starts from and heals with. Public: who knows the day's id may look at its Wall. */
@RestController
class LiveController {

    private final Feeds feeds;

    LiveController(Feeds feeds) {
        this.feeds = feeds;
    }

    /** @param id lab day; the {@code ETag} lets thirty pages return at once for the price of a look */
    @GetMapping("/api/labdays/{id}/leaderboard")
    ResponseEntity<LiveMessage> leaderboard(@PathVariable UUID id) {
        LiveMessage snapshot = feeds.snapshot(id);
        return ResponseEntity.ok()
                .cacheControl(CacheControl.noCache())
                .eTag(snapshot.epoch() + "." + snapshot.seq())
                .body(snapshot);
    }
}
