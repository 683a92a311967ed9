package org.berrywatt.server.access;

/** Text of strangers for the log: nothing in it can end a line, hide, turn the line round or close a quotation. */
final class Visible {

    private static final int LONGEST = 80;

    private Visible() {}

    /** At most 80 characters; all but letters, marks, digits, punctuation and the plain space as {@code \\u{HEX}}. */
    static String of(String text) {
        var visible = new StringBuilder();
        text.codePoints().limit(LONGEST).forEach(character -> append(visible, character));
        return text.codePointCount(0, text.length()) > LONGEST
                ? visible.append('\u2026').toString()
                : visible.toString();
    }

    private static void append(StringBuilder visible, int character) {
        if (isPlain(character)) {
            visible.appendCodePoint(character);
        } else {
            visible.append(String.format("\\u{%x}", character));
        }
    }

    private static boolean isPlain(int character) {
        return switch (Character.getType(character)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            case Character.SPACE_SEPARATOR -> character == ' ';
            default -> character != '"' && character != '\\';
        };
    }
}
