package org.berrywatt.server.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The errand of somebody who forgot the password, and the key that it leaves in the home. */
class KeyInHomeTest {

    private static final Instant NOON = Instant.parse("2026-11-27T12:00:00Z");

    @TempDir
    private Path home;

    private final ByteArrayOutputStream console = new ByteArrayOutputStream();
    private final ByteArrayOutputStream complaints = new ByteArrayOutputStream();

    @Test
    void printsAKeyThatOpensOnce() {
        assertThat(errand(home)).isZero();
        var printed = console.toString(StandardCharsets.UTF_8);
        var key = Pattern.compile("[a-z2-9]{4}(-[a-z2-9]{4}){3}").matcher(printed);
        assertThat(key.find()).isTrue();
        assertThat(printed).contains(home.toString());
        var server = new KeyInHome(home, Clock.systemUTC());
        assertThat(server.opens(key.group().toUpperCase(Locale.ROOT).replace('-', ' ')))
                .isTrue();
        assertThat(server.spend()).isTrue();
        assertThat(server.spend()).isFalse();
        assertThat(server.opens(key.group())).isFalse();
    }

    @Test
    void refusesAHomeThatIsNotThere() {
        assertThat(errand(home.resolve("elsewhere"))).isEqualTo(1);
        assertThat(complaints.toString(StandardCharsets.UTF_8)).contains("elsewhere", "--berrywatt.home=");
        assertThat(home.resolve("elsewhere")).doesNotExist();
    }

    @Test
    void keepsTheKeyItselfOutOfTheHomeAndOthersOutOfTheFile() throws Exception {
        var key = at(NOON).make().text();
        var file = home.resolve("new-password.key");
        assertThat(Files.readString(file)).doesNotContain(key, key.replace("-", ""));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
    }

    @Test
    void endsTheKeyAfterAnHour() throws Exception {
        var key = at(NOON).make().text();
        assertThat(at(NOON.plus(Duration.ofMinutes(59))).opens(key)).isTrue();
        assertThat(at(NOON.plus(Duration.ofHours(1))).opens(key)).isFalse();
    }

    @Test
    void opensToNoOtherKeyAndToNoneWithoutAFile() throws Exception {
        assertThat(at(NOON).opens("")).isFalse();
        var earlier = at(NOON).make().text();
        at(NOON).make();
        assertThat(at(NOON).opens(earlier)).isFalse();
        Files.writeString(home.resolve("new-password.key"), "no key at all");
        assertThat(at(NOON).opens("no key at all")).isFalse();
    }

    private KeyInHome at(Instant now) {
        return new KeyInHome(home, Clock.fixed(now, ZoneOffset.UTC));
    }

    private int errand(Path place) {
        return Errand.of(new String[] {"--new-password", "--berrywatt.home=" + place}, Map.of())
                .orElseThrow()
                .run(
                        new PrintStream(console, true, StandardCharsets.UTF_8),
                        new PrintStream(complaints, true, StandardCharsets.UTF_8));
    }
}
