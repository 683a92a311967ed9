package org.berrywatt.server.archive;

import java.io.OutputStream;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;

/** Counts the rows that are written to it, keeps nothing, and ends with {@code archive.tooLarge} at one without end. */
final class RowCount extends OutputStream {

    private static final int LONGEST_ROW = 256 * 1024;

    private long count;
    private int length;

    @Override
    public void write(int character) {
        boolean ends = character == '\n';
        count += ends ? 1 : 0;
        length = ends ? 0 : length + 1;
        if (length > LONGEST_ROW) {
            throw Refusal.of(ProblemCode.ARCHIVE_TOO_LARGE).limit(LONGEST_ROW / 1024 + " KB");
        }
    }

    long count() {
        return count;
    }
}
