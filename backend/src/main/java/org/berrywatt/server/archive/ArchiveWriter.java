package org.berrywatt.server.archive;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.json.JsonMapper;

/** Writes the rows of a lab day into a file, one row a line, and last what the file says of itself. */
final class ArchiveWriter {

    private final JdbcClient store;
    private final JsonMapper json;

    ArchiveWriter(JdbcClient store, JsonMapper json) {
        this.store = store;
        this.json = json;
    }

    /** @param blank the manifest, its list of tables still empty */
    void write(Manifest blank, Path file) throws IOException {
        try (var zip = new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(file)))) {
            List<Manifest.Part> parts = DaySchema.of(store).stream()
                    .map(table -> part(table, blank.labDayId(), zip))
                    .toList();
            zip.putNextEntry(new ZipEntry(Manifest.ENTRY));
            zip.write(json.writeValueAsBytes(blank.with(parts)));
        } catch (UncheckedIOException cause) {
            throw cause.getCause();
        }
    }

    private Manifest.Part part(DayTable table, UUID labDayId, ZipOutputStream zip) {
        try {
            zip.putNextEntry(new ZipEntry(Manifest.Part.entry(table.name())));
            var sum = new Checksum();
            long rows = lines(table, labDayId, sum.passingOn(zip));
            return new Manifest.Part(table.name(), rows, sum.hex());
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    private long lines(DayTable table, UUID labDayId, OutputStream out) {
        try (var rows = store.sql(table.select()).param("day", labDayId).query(String.class).stream()) {
            return rows.peek(row -> write(row, out)).count();
        }
    }

    private static void write(String row, OutputStream out) {
        try {
            out.write((row + "\n").getBytes(StandardCharsets.UTF_8));
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
