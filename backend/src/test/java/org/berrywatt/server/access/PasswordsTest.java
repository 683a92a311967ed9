package org.berrywatt.server.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.Arrays;
import java.util.HexFormat;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PasswordsTest {

    private static final String PASSWORD = "seven slow brass kettles";

    private final Passwords passwords = new Passwords();

    /** OWASP Password Storage Cheat Sheet, PBKDF2: HMAC-SHA-512 with 210 000 rounds; worked out anew with the platform's own. */
    @Test
    void keepsAPasswordAsIsRecommended() throws Exception {
        var kept = HexFormat.of().parseHex(passwords.hash(PASSWORD).replace("{pbkdf2-sha512}", ""));
        var salt = Arrays.copyOf(kept, 16);
        var hash = Arrays.copyOfRange(kept, 16, kept.length);
        var spec = new PBEKeySpec(PASSWORD.toCharArray(), salt, 210_000, 512);
        assertThat(SecretKeyFactory.getInstance("PBKDF2WithHmacSHA512")
                        .generateSecret(spec)
                        .getEncoded())
                .isEqualTo(hash);
    }

    @Test
    void saltsEveryPasswordAnew() {
        assertThat(passwords.hash(PASSWORD)).isNotEqualTo(passwords.hash(PASSWORD));
    }

    /** A pair of the test vectors that came with the first bcrypt for Java, from memory. */
    @Test
    void opensWhatAnEarlierServerKeptAndKnowsItForOld() {
        var old = "{bcrypt}$2a$10$WvvTPHKwdBJ3uk0Z37EMR.hLA2W6N9AEBhEgrAOljy2Ae5MtaSIUi";
        assertThat(passwords.matches("abc", old)).isTrue();
        assertThat(passwords.matches("abd", old)).isFalse();
        assertThat(passwords.isOld(old)).isTrue();
        assertThat(passwords.isOld(passwords.hash(PASSWORD))).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0123456789",
                "          ",
                "\u00e4\u00f6\u00fc\u00df\u65e5\u672c\u8a9e\ud83e\uded0\u0441\u043b",
                "sixty-four characters are allowed, as the standard asks: 64 it is"
            })
    void takesAnyCharacters(String password) {
        assertThatCode(() -> Passwords.check(password)).doesNotThrowAnyException();
    }

    /** The second half of a long password counts: bcrypt would have stopped after 72 bytes. */
    @Test
    void readsAPasswordToItsEnd() {
        var hash = passwords.hash("x".repeat(199) + "a");
        assertThat(passwords.matches("x".repeat(199) + "a", hash)).isTrue();
        assertThat(passwords.matches("x".repeat(199) + "b", hash)).isFalse();
    }

    @Test
    void refusesShortAndEndlessPasswordsWithoutRepeatingThem() {
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> Passwords.check("123456789"))
                .satisfies(refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.PASSWORD_WEAK))
                .satisfies(refusal -> assertThat(refusal.values().get("value")).isNull());
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> Passwords.check("x".repeat(201)))
                .satisfies(refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.TEXT_TOO_LONG))
                .satisfies(refusal -> assertThat(refusal.values().get("value")).isEqualTo("\u2026"));
    }
}
