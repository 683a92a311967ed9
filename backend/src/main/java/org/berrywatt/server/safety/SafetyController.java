package org.berrywatt.server.safety;

import org.berrywatt.contract.SafetyAnswer;
import org.springframework.http.CacheControl;
import org.springframework.http.ResponseEntity;
import org.springframework.util.DigestUtils;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;

/** Zones and hazards over HTTP: the same for everybody until the server is updated. */
@RestController
class SafetyController {

    private final SafetyAnswer catalogue = SafetyCatalogue.answer();
    private final String tag;

    SafetyController(JsonMapper json) {
        this.tag = "\"" + DigestUtils.md5DigestAsHex(json.writeValueAsBytes(catalogue)) + "\"";
    }

    @GetMapping("/api/safety")
    ResponseEntity<SafetyAnswer> show() {
        return ResponseEntity.ok()
                .cacheControl(CacheControl.noCache().cachePublic())
                .eTag(tag)
                .body(catalogue);
    }
}
