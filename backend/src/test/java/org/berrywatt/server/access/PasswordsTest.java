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
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PasswordsTest {

    private static final String PASSWORD = "seven slow brass kettles";

    private static final String NAME = "Ada Rowan";

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
                "0 7 3 / 5 1 % 8",
                "\u00e4\u00f6\u00fc\u00df\u65e5\u672c\u8a9e\ud83e\uded0\u0441\u043b",
                "sixty-four characters are allowed, as the standard asks: 64 it is"
            })
    void takesAnyCharacters(String password) {
        assertThatCode(() -> Passwords.check(password, NAME)).doesNotThrowAnyException();
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
                .isThrownBy(() -> Passwords.check("123456789", NAME))
                .satisfies(refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.PASSWORD_WEAK))
                .satisfies(refusal -> assertThat(refusal.values().get("value")).isNull());
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> Passwords.check("x".repeat(201), NAME))
                .satisfies(refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.TEXT_TOO_LONG))
                .satisfies(refusal -> assertThat(refusal.values().get("value")).isEqualTo("\u2026"));
    }

    /** The kinds that NIST SP 800-63B-4, section 3.1.1.2, wants refused, and OWASP ASVS 5.0, items 6.1.2, 6.2.4 and 6.2.11. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            a common password with a year, Passw0rd2026
            a common password in German,   passwort123
            a digit run,                   1234567890
            one character,                 aaaaaaaaaaaa
            nothing but spaces,            '            '
            the same again,                trustno1trustno1
            a keyboard row,                qwertyuiop
            a German keyboard row,         qwertzuiop
            keys in a pattern,             1q2w3e4r5t
            letters in a row,              abcdefghij
            the own name,                  ada rowan1
            the own name with a year,      ada.rowan1985
            the product's name,            Berrywatt2026
            a word of the lab,             solarzelle!
            a word of a school,            lehrerin2026
            a season with a year,          sommer2026!
            """)
    void refusesWhatIsGuessedFirst(String kind, String password) {
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> Passwords.check(password, NAME))
                .satisfies(refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.PASSWORD_GUESSABLE))
                .satisfies(refusal -> assertThat(refusal.values())
                        .containsEntry("limit", "100\u00a0000\u00a0000")
                        .doesNotContainValue(password));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "seven slow brass kettles",
                "tisch stuhl lampe regen",
                "x7Kp2mQz9wBf",
                "hedgerow cells",
                "Ada Rowan likes slow kettles"
            })
    void takesAFewWordsThatHaveNothingToDoWithEachOther(String password) {
        assertThatCode(() -> Passwords.check(password, NAME)).doesNotThrowAnyException();
    }

    /** The estimate of a long text would take seconds. */
    @Test
    void looksAtTheBeginningOfALongPasswordOnly() {
        assertThat(Guessing.tries("x".repeat(64), NAME)).isEqualTo(Guessing.tries("x".repeat(200), NAME));
    }
}
