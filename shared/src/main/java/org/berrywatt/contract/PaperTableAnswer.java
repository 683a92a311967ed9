package org.berrywatt.contract;

import java.util.List;

/**
 * A table into which paper records are typed.
 *
 * @param table its key, and the name of its file
 */
public record PaperTableAnswer(String table, List<Column> columns) {

    /**
     * A column.
     *
     * @param name as in the first line; ends with the unit of its numbers
     * @param meaning what it is, in words
     * @param needed whether every row has something in it
     * @param names names with other units that are taken, too
     * @param choices what may stand in it; empty for numbers and free words
     */
    public record Column(String name, String meaning, boolean needed, List<String> names, List<Choice> choices) {}

    /** One of the choices: its key, or in words. */
    public record Choice(String key, String words) {}
}
