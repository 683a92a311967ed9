package org.berrywatt.server.platform;

import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * The server's own settings, prefix {@code berrywatt}. Beside these, {@code berrywatt.home} names the folder with its
 * data and {@code berrywatt.programs} the one where the database's programs are unpacked ({@code home/programs}).
 *
 * @param demo {@code "off"}, {@code "on"} (the invented day) or {@code "live"} (the invented day, replayed)
 * @param publicAddress base address to print and to put into QR codes, when the machine's own ones will not do
 */
@ConfigurationProperties("berrywatt")
public record BerrywattSettings(
        @DefaultValue("off") String demo, @Nullable String publicAddress) {

    /** @throws StartProblem for another word than these three */
    public BerrywattSettings {
        if (!Set.of("off", "on", "live").contains(demo)) {
            throw new StartProblem("demoUnknown", Map.of("value", demo));
        }
    }

    public boolean isDemo() {
        return !demo.equals("off");
    }
}
