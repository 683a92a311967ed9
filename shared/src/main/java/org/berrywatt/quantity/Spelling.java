package org.berrywatt.quantity;

import java.text.Normalizer;
import java.util.Locale;

/** Makes the many spellings of the same signs one. */
final class Spelling {

    private Spelling() {}

    /**
     * Text with plain digits, spaces and minus signs. Compatibility forms (NFKC) turn thin spaces into spaces, ² into 2 and
     * full-width digits into digits; a raised digit after a digit is a power, not a digit, and becomes ^.
     */
    static String plain(String text) {
        String signs = text.replaceAll("(?<=\\d)[\\u00b2\\u00b3\\u00b9\\u2070-\\u209f]", "^")
                .replaceAll("[\\u00ba\\u02da]", "°")
                .replaceAll("[\\u200b\\u200e\\u200f\\u2060\\ufeff]", "")
                .replaceAll("[\\u2018\\u2019]", "'");
        return Normalizer.normalize(signs, Normalizer.Form.NFKC)
                .replaceAll("[\\u2010-\\u2015\\u2212]", "-")
                .replaceAll("\\s+", " ")
                .strip();
    }

    /** A unit without spaces, with u for micro, in small letters but for a leading m or M: milli is not mega. */
    static String unit(String symbol) {
        String tight = plain(symbol).replaceAll("[ \\u00b7\\u22c5]", "").replace('\u03bc', 'u');
        return tight.startsWith("M") ? "M" + small(tight.substring(1)) : small(tight);
    }

    private static String small(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
