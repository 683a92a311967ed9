package org.berrywatt.server.typed;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;

/** Short texts that people type and others read: names, labels, notes. */
public final class Words {

    /**
     * Controls, invisible and direction-turning characters, unassigned ones, letters and marks that show nothing (of those that
     * choose a form only the one behind a picture sign), piles of marks, and marks without a letter.
     */
    private static final Pattern UNFIT = Pattern.compile(
            "[\\p{Cc}\\p{Cf}\\p{Cs}\\p{Co}\\p{Cn}\\p{Zl}\\p{Zp}\\u115F\\u1160\\u2800\\u3164\\uFFA0]"
                    + "|[\\u034F\\u17B4\\u17B5\\u180B-\\u180D\\u180F\\uFE00-\\uFE0E\\x{E0100}-\\x{E01EF}]|(?<!\\p{So})\\uFE0F|\\p{M}{4}|^\\p{M}");

    /** Latin and Cyrillic within one word, whose letters look alike. Greek stays: a note may speak of kiloohms and micrometres. */
    private static final Pattern MIXED =
            Pattern.compile("\\p{IsLatin}[\\p{L}\\p{M}]*\\p{IsCyrillic}|\\p{IsCyrillic}[\\p{L}\\p{M}]*\\p{IsLatin}");

    /** Small letters that look like a Latin one, and that one (Unicode Technical Standard 39, confusables). */
    private static final String LOOK_ALIKES = "\u0430\u0435\u043E\u0440\u0441\u0443\u0445\u0456\u0458\u0455\u03BF";

    private static final String LATIN = "aeopcyxijso";

    private static final Pattern SPACES = Pattern.compile("\\p{Zs}+");
    private static final int EXCERPT = 40;

    private Words() {}

    /**
     * The text on one line: composed, without outer spaces, inner spaces single.
     *
     * @param path the field's path in the request
     * @param most longest length in characters
     * @throws Refusal {@code text.empty}, {@code text.unfit} with a control or invisible character, or {@code
     *     text.tooLong}
     */
    public static String line(String path, @Nullable String typed, int most) {
        var line = tidy(Given.need(path, typed));
        if (line.isEmpty()) {
            throw Refusal.of(ProblemCode.TEXT_EMPTY).field(path).limit("1 to " + most);
        }
        if (isUnfit(line)) {
            throw Refusal.of(ProblemCode.TEXT_UNFIT).field(path).value(excerpt(line));
        }
        return within(path, line, most);
    }

    /**
     * A line that says enough to be understood, such as a reason.
     *
     * @throws Refusal as {@link #line}, and {@code text.tooShort} with fewer than {@code least} characters
     */
    public static String sentence(String path, @Nullable String typed, int least, int most) {
        var line = line(path, typed, most);
        if (line.codePointCount(0, line.length()) >= least) {
            return line;
        }
        throw Refusal.of(ProblemCode.TEXT_TOO_SHORT)
                .field(path)
                .value(excerpt(line))
                .limit(least);
    }

    /** Whether a text holds a control or invisible character, or a word of two alphabets that look alike. */
    public static boolean isUnfit(String text) {
        return !isPlain(text)
                && (UNFIT.matcher(text).find() || MIXED.matcher(text).find());
    }

    /** Letters, digits and signs of ASCII are all fit, and quickly told. */
    private static boolean isPlain(String text) {
        for (var i = 0; i < text.length(); i++) {
            if (text.charAt(i) < ' ' || text.charAt(i) > '~') {
                return false;
            }
        }
        return true;
    }

    /** The key under which two lines count as the same: without differences of case and width, and of what looks the same. */
    public static String key(String line) {
        var folded = Normalizer.normalize(line, Normalizer.Form.NFKC)
                .toLowerCase(Locale.ROOT)
                .replace("\uFE0F", "");
        return isPlain(folded)
                ? folded
                : folded.codePoints()
                        .map(Words::latin)
                        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                        .toString();
    }

    private static int latin(int letter) {
        var at = LOOK_ALIKES.indexOf(letter);
        return at < 0 ? letter : LATIN.charAt(at);
    }

    /** What a refusal may repeat of a text: at most 40 characters, nothing invisible. */
    public static String excerpt(String text) {
        var shown = UNFIT.matcher(text).replaceAll("\u25A1");
        return shown.codePointCount(0, shown.length()) <= EXCERPT
                ? shown
                : shown.substring(0, shown.offsetByCodePoints(0, EXCERPT)) + "\u2026";
    }

    private static String tidy(String typed) {
        return SPACES.matcher(Normalizer.normalize(typed.strip(), Normalizer.Form.NFC))
                .replaceAll(" ")
                .strip();
    }

    private static String within(String path, String line, int most) {
        var length = line.codePointCount(0, line.length());
        if (length <= most) {
            return line;
        }
        throw Refusal.of(ProblemCode.TEXT_TOO_LONG)
                .field(path)
                .value(excerpt(line))
                .limit(most)
                .with("length", length);
    }
}
