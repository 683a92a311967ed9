package org.berrywatt.server.platform;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.springframework.stereotype.Component;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** SHA-256 over a value's canonical JSON: properties and map keys in alphabetical order, no white space. */
@Component
public class Fingerprint {

    private final JsonMapper canonical;

    Fingerprint(JsonMapper json) {
        canonical = json.rebuild()
                .enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
                .disable(SerializationFeature.INDENT_OUTPUT)
                .build();
    }

    public String of(Object value) {
        return HexFormat.of().formatHex(sha256().digest(canonical.writeValueAsBytes(value)));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java platform has SHA-256", missing);
        }
    }
}
