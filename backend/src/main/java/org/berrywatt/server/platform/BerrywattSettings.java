package org.berrywatt.server.platform;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * The server's own settings, prefix {@code berrywatt}.
 *
 * @param home folder with the server's data
 * @param binaries folder where the database's programs are unpacked; {@code home/programs} when not set
 * @param demo {@code "off"}, {@code "on"} (the invented day) or {@code "live"} (the invented day, replayed)
 * @param publicAddress base address to print and to put into QR codes, when the machine's own ones will not do
 */
@ConfigurationProperties("berrywatt")
public record BerrywattSettings(
        Path home,
        @Nullable Path binaries,
        @DefaultValue("off") String demo,
        @Nullable String publicAddress) {

    public boolean isDemo() {
        return !demo.equals("off");
    }
}
