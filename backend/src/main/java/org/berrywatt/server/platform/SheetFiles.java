package org.berrywatt.server.platform;

import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Puts style sheets together that follow each other in a page, each at its place, so that the cascade stays. A sheet with
 * an id stays apart: somebody switches it.
 */
final class SheetFiles {

    private static final String LINK = "<link rel=\"stylesheet\" href=\"([^\"]+)\"(?: media=\"([^\"]+)\")?>\\s*";
    private static final Pattern SHEET = Pattern.compile(LINK);
    private static final Pattern NEIGHBOURS = Pattern.compile("(?:" + LINK + ")+");

    private final UnaryOperator<String> text;

    /** Sheets whose text is had by their address. */
    SheetFiles(UnaryOperator<String> text) {
        this.text = text;
    }

    /** A page, and the sheets by their names that it asks for. */
    record Dressed(String page, Map<String, String> sheets) {}

    /** The page with the given name, asking for a few sheets below a folder in place of its many. */
    Dressed dress(String page, String name, String folder) {
        var sheets = new TreeMap<String, String>();
        var count = new AtomicInteger();
        var dressed = NEIGHBOURS.matcher(page).replaceAll(found -> {
            var file = name + (count.incrementAndGet() > 1 ? "-" + count : "") + ".css";
            sheets.put(file, together(found.group()));
            return "<link rel=\"stylesheet\" href=\"" + folder + file + "\">\n";
        });
        return new Dressed(dressed, sheets);
    }

    private String together(String links) {
        return SHEET.matcher(links).results().map(this::sheet).collect(Collectors.joining("\n"));
    }

    private String sheet(MatchResult link) {
        var rules = text.apply(link.group(1));
        return link.group(2) == null ? rules : "@media " + link.group(2) + " {\n" + rules + "}\n";
    }
}
