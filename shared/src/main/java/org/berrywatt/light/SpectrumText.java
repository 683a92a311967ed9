package org.berrywatt.light;

import java.util.ArrayList;
import java.util.List;

/** The door for spectra as text: checks every row, then the whole. */
final class SpectrumText {
    private static final int MOST_LINES = 10_000;
    private static final int EXCERPT = 40;
    private static final double VISIBLE_FROM_NM = 400;
    private static final double VISIBLE_TO_NM = 700;
    private static final String TWO_NUMBERS = "two numbers";

    private record Line(int row, double nm, double power) {}

    private SpectrumText() {}

    static Spectrum read(String csv) {
        var lines = lines(csv);
        requireNumber(lines.size());
        requireRising(lines);
        requireBand(lines);
        return new Spectrum(
                        lines.stream().mapToDouble(Line::nm).toArray(),
                        lines.stream().mapToDouble(Line::power).toArray())
                .finer();
    }

    private static List<Line> lines(String csv) {
        var rows = csv.split("\\R", MOST_LINES + 2_000);
        var lines = new ArrayList<Line>();
        for (int i = 0; i < rows.length; i++) {
            var text = rows[i].replace("\uFEFF", "").strip();
            if (!text.isEmpty() && !text.startsWith("#") && !isHeading(text, lines.isEmpty())) {
                lines.add(line(i + 1, text));
            }
        }
        return lines;
    }

    private static boolean isHeading(String text, boolean first) {
        return first && Character.isLetter(text.codePointAt(text.startsWith("\"") && text.length() > 1 ? 1 : 0));
    }

    private static Line line(int row, String text) {
        var cells = cells(text);
        if (cells.length < 2) {
            throw new SpectrumRefused(SpectrumFault.NOT_TWO_NUMBERS, row, excerpt(text), TWO_NUMBERS);
        }
        var nm = number(row, cells[0]);
        var power = number(row, cells[1]);
        require(nm >= 100 && nm <= 20_000, SpectrumFault.WAVELENGTH, row, nm, "[100, 20000] nm");
        require(power >= 0 && power <= Double.MAX_VALUE, SpectrumFault.POWER, row, power, "[0, ∞)");
        return new Line(row, nm, power);
    }

    private static String[] cells(String text) {
        return text.contains(";") || text.contains("\t")
                ? text.replace(',', '.').split("\\s*[;\\t]\\s*")
                : text.split("\\s*,\\s*|\\s+");
    }

    private static double number(int row, String cell) {
        try {
            return Double.parseDouble(cell);
        } catch (NumberFormatException e) {
            throw new SpectrumRefused(SpectrumFault.NOT_TWO_NUMBERS, row, excerpt(cell), TWO_NUMBERS);
        }
    }

    private static void requireNumber(int lines) {
        require(lines >= 2 && lines <= MOST_LINES, SpectrumFault.NUMBER_OF_LINES, 0, lines, "[2, " + MOST_LINES + "]");
    }

    private static void requireRising(List<Line> lines) {
        for (int i = 1; i < lines.size(); i++) {
            var line = lines.get(i);
            var before = lines.get(i - 1).nm();
            require(
                    line.nm() > before,
                    SpectrumFault.NOT_RISING,
                    line.row(),
                    line.nm(),
                    "(" + shown(before) + ", 20000] nm");
        }
    }

    private static void requireBand(List<Line> lines) {
        var from = lines.get(0).nm();
        var to = lines.get(lines.size() - 1).nm();
        if (!(from <= VISIBLE_FROM_NM && to >= VISIBLE_TO_NM)) {
            throw new SpectrumRefused(
                    SpectrumFault.BAND, 0, "[" + shown(from) + ", " + shown(to) + "] nm", "[400, 700] nm");
        }
        if (lines.stream().noneMatch(line -> line.power() > 0)) {
            throw new SpectrumRefused(SpectrumFault.DARK, 0, "0", "(0, ∞)");
        }
    }

    /** Without the .0 that nobody typed. */
    private static String shown(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? String.valueOf((long) value)
                : String.valueOf(value);
    }

    private static String excerpt(String text) {
        return text.length() <= EXCERPT ? text : text.substring(0, EXCERPT) + "…";
    }

    private static void require(boolean good, SpectrumFault fault, int row, double value, String limit) {
        if (!good) {
            throw new SpectrumRefused(fault, row, shown(value), limit);
        }
    }
}
