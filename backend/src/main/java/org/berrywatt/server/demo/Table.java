package org.berrywatt.server.demo;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.springframework.core.io.ClassPathResource;

/** A file of the demo day. */
final class Table {

    private static final CSVFormat RFC_4180_WITH_HEADER = CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setNullString("")
            .get();

    private Table() {}

    /** The rows of {@code demo-data/NAME.csv}; an empty column is absent. */
    static Stream<Row> rows(String name) {
        try (Reader file = open("demo-data/" + name + ".csv")) {
            return RFC_4180_WITH_HEADER.parse(file).getRecords().stream().map(Row::new);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Reader open(String path) throws IOException {
        return new InputStreamReader(new ClassPathResource(path).getInputStream(), StandardCharsets.UTF_8);
    }
}
