package org.berrywatt.server.catalogue;

import org.berrywatt.contract.CatalogueAnswer;
import org.springframework.http.CacheControl;
import org.springframework.http.ResponseEntity;
import org.springframework.util.DigestUtils;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;

/** The catalogue over HTTP: the same for everybody until the server is updated, so a phone asks and mostly keeps it. */
@RestController
class CatalogueController {

    private final CatalogueAnswer catalogue = Catalogue.answer();
    private final String tag;

    CatalogueController(JsonMapper json) {
        this.tag = "\"" + DigestUtils.md5DigestAsHex(json.writeValueAsBytes(catalogue)) + "\"";
    }

    @GetMapping("/api/catalogue")
    ResponseEntity<CatalogueAnswer> show() {
        return ResponseEntity.ok()
                .cacheControl(CacheControl.noCache().cachePublic())
                .eTag(tag)
                .body(catalogue);
    }
}
