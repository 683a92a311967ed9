package org.berrywatt.server.light;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.berrywatt.light.OwnSpectrum;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Remembers spectra that were read before, with what was worked out of them: a table once written never changes. */
@Component
class KnownSpectra {

    /** A spectrum of 2000 lines takes some 50 kB. */
    private static final int MOST = 100;

    private final Cache<UUID, OwnSpectrum> spectra =
            Caffeine.newBuilder().maximumSize(MOST).build();

    /** The spectrum of a stored table; null where it was taken back. */
    @Nullable
    OwnSpectrum of(StationSpectrum given) {
        var csv = given.csv();
        return csv == null ? null : spectra.get(given.id(), id -> OwnSpectrum.read(nameOf(csv), csv));
    }

    /** The same table is the same light wherever it shines, so that its results share what is uncertain about it. */
    static String nameOf(String csv) {
        return UUID.nameUUIDFromBytes(csv.getBytes(StandardCharsets.UTF_8)).toString();
    }
}
