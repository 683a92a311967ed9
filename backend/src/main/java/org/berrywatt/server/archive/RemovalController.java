package org.berrywatt.server.archive;

import java.util.UUID;
import org.berrywatt.contract.RemovalRequest;
import org.berrywatt.server.access.Caller;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** The way out for a lab day, for teachers. */
@RestController
class RemovalController {

    private final Removals removals;

    RemovalController(Removals removals) {
        this.removals = removals;
    }

    @PostMapping("/api/labdays/{id}/removal")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void remove(@PathVariable UUID id, @RequestBody RemovalRequest request, Caller caller) {
        caller.requireTeacher();
        removals.remove(id, request.title() == null ? "" : request.title());
    }
}
