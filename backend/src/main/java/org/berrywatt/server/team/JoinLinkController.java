package org.berrywatt.server.team;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Addresses;
import org.berrywatt.server.platform.LinkPicture;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Join links as QR pictures, for those who may see the code. */
@RestController
class JoinLinkController {

    private static final MediaType SVG = MediaType.valueOf("image/svg+xml");

    private final LabDays labDays;
    private final Teams teams;
    private final Addresses addresses;

    JoinLinkController(LabDays labDays, Teams teams, Addresses addresses) {
        this.labDays = labDays;
        this.teams = teams;
        this.addresses = addresses;
    }

    @GetMapping("/api/labdays/{id}/link.svg")
    ResponseEntity<String> ofLabDay(@PathVariable UUID id, Caller caller, HttpServletRequest request) {
        return picture(labDays.show(id, caller).code(), request);
    }

    @GetMapping("/api/teams/{id}/link.svg")
    ResponseEntity<String> ofTeam(@PathVariable UUID id, Caller caller, HttpServletRequest request) {
        caller.requireTeam(id);
        var team = teams.find(id).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
        return picture(codeOf(team, caller), request);
    }

    private @Nullable String codeOf(Team team, Caller caller) {
        return teams.list(team.labDayId(), caller).stream()
                .filter(it -> it.id().equals(team.id()))
                .map(it -> it.code())
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    private ResponseEntity<String> picture(@Nullable String code, HttpServletRequest request) {
        if (code == null) {
            throw Refusal.of(ProblemCode.NOT_ALLOWED);
        }
        return ResponseEntity.ok()
                .contentType(SVG)
                .cacheControl(CacheControl.noStore())
                .body(LinkPicture.svg(addresses.reachableFrom(request) + "/join.html#" + code));
    }
}
