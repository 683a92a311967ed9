package org.berrywatt.contract;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What files of paper records hold, and everything in them that must be mended first.
 *
 * @param faults in the order of the tables, then from the top; 200 at most
 * @param faultCount how many there are
 * @param kept whether the entries are on this server now; false after a check, and with any fault
 */
public record PaperAnswer(List<Sheet> sheets, List<Fault> faults, int faultCount, boolean kept) {

    /**
     * One file.
     *
     * @param table key of the table; null where no table has its columns
     * @param rows with anything in them, below the first line
     * @param fresh entries that are new; a sweep is one entry, however many rows it has
     * @param already entries that came before
     */
    public record Sheet(String file, @Nullable String table, int rows, int fresh, int already) {}

    /**
     * Something to mend.
     *
     * @param row line of the file, the first being 1; null for the file as a whole
     * @param column as the file names it; null for the line as a whole
     * @param value as it stands there, shortened
     * @param code see {@link ProblemCode}
     * @param detail a whole sentence with what is accepted and the way out
     */
    public record Fault(
            String file, @Nullable Integer row, @Nullable String column, String value, String code, String detail) {}
}
