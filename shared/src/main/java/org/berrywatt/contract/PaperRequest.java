package org.berrywatt.contract;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a class wrote on paper, typed into the tables that this server gives out.
 *
 * @param zone time zone of times without an offset, for example {@code "Europe/Berlin"}; null for the server's own
 */
public record PaperRequest(List<PaperFile> files, @Nullable String zone) {

    /**
     * One table. Which one it is follows from the names in its first line.
     *
     * @param name of the file, to tell it from the others
     * @param csv lines parted by commas, semicolons or tabs (RFC 4180), with or without a byte order mark
     */
    public record PaperFile(String name, String csv) {}
}
