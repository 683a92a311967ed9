package org.berrywatt.server.platform;

import java.util.List;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** Tells a page which addresses phones can open. */
@RestController
class AddressController {

    private final Addresses addresses;

    AddressController(Addresses addresses) {
        this.addresses = addresses;
    }

    @GetMapping("/api/addresses")
    List<String> addresses() {
        return addresses.baseUrls();
    }
}
