package org.berrywatt.quantity;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Makes the many spellings of the same signs one. */
final class Spelling {

    private static final Pattern RAISED_DIGIT = Pattern.compile("(?<=\\d)[\\u00b2\\u00b3\\u00b9\\u2070-\\u209f]");
    private static final Pattern LIKE_DEGREE = Pattern.compile("[\\u00ba\\u02da]");
    private static final Pattern UNSEEN = Pattern.compile("[\\u200b\\u200e\\u200f\\u2060\\ufeff]");
    private static final Pattern LIKE_APOSTROPHE = Pattern.compile("[\\u2018\\u2019]");
    private static final Pattern LIKE_MINUS = Pattern.compile("[\\u2010-\\u2015\\u2212]");
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final Pattern SPACE_OR_DOT = Pattern.compile("[ \\u00b7\\u22c5]");

    private Spelling() {}

    /**
     * Text with plain digits, spaces and minus signs. Compatibility forms (NFKC) turn thin spaces into spaces, ² into 2 and
     * full-width digits into digits; a raised digit after a digit is a power, not a digit, and becomes ^.
     */
    static String plain(String text) {
        String known = with(LIKE_APOSTROPHE, "'", with(LIKE_DEGREE, "°", with(RAISED_DIGIT, "^", text)));
        String composed = Normalizer.normalize(with(UNSEEN, "", known), Normalizer.Form.NFKC);
        return with(SPACES, " ", with(LIKE_MINUS, "-", composed)).strip();
    }

    /** A unit without spaces and dots, with u for micro, in small letters but for a leading M: milli is not mega. */
    static String unit(String symbol) {
        String tight = with(SPACE_OR_DOT, "", plain(symbol)).replace('\u03bc', 'u');
        return tight.startsWith("M") ? "M" + small(tight.substring(1)) : small(tight);
    }

    private static String with(Pattern signs, String sign, String text) {
        return signs.matcher(text).replaceAll(sign);
    }

    private static String small(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
