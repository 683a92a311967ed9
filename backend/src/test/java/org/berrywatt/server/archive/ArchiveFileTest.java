package org.berrywatt.server.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/** Archives that were cut, changed, or made to do harm. */
class ArchiveFileTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String TEAMS = "{\"name\": \"Larch\"}\n{\"name\": \"Rowan\"}\n";

    @TempDir
    Path folder;

    private final Map<String, byte[]> entries = new TreeMap<>();

    @Test
    void readsRowsInOrder() throws IOException {
        holdTeams(TEAMS, 2, sum(TEAMS));
        try (var archive = open()) {
            var rows = new ArrayList<String>();
            archive.rows("team", rows::add);
            assertThat(rows).containsExactly("{\"name\": \"Larch\"}", "{\"name\": \"Rowan\"}");
        }
    }

    @Test
    void refusesWhatIsNoArchive() throws IOException {
        Path file = folder.resolve("notes.txt");
        Files.writeString(file, "Dear diary");
        refuses(file, ProblemCode.ARCHIVE_UNREADABLE);
    }

    @Test
    void refusesAnEmptyFile() throws IOException {
        refuses(Files.createFile(folder.resolve("empty.zip")), ProblemCode.ARCHIVE_UNREADABLE);
    }

    @Test
    void refusesAnArchiveCutShort() throws IOException {
        holdTeams(TEAMS, 2, sum(TEAMS));
        byte[] whole = Files.readAllBytes(zipped());
        for (int length : List.of(1, whole.length / 3, whole.length / 2, whole.length - 1)) {
            Path cut = folder.resolve("cut.zip");
            Files.write(cut, Arrays.copyOf(whole, length));
            refuses(cut, ProblemCode.ARCHIVE_UNREADABLE);
        }
    }

    @Test
    void refusesAZipOfSomethingElse() throws IOException {
        entries.put("holiday.txt", bytes("sun"));
        refuses(zipped(), ProblemCode.ARCHIVE_UNREADABLE);
    }

    @Test
    void refusesAnotherFormat() throws IOException {
        entries.put(Manifest.ENTRY, bytes("{\"format\": \"something-else\"}"));
        refuses(zipped(), ProblemCode.ARCHIVE_UNREADABLE);
    }

    @Test
    void refusesRowsThatWereChanged() throws IOException {
        holdTeams(TEAMS.replace("Rowan", "Rowen"), 2, sum(TEAMS));
        refuses(zipped(), ProblemCode.ARCHIVE_ALTERED);
    }

    @Test
    void refusesRowsThatAreNotThere() throws IOException {
        holdTeams(TEAMS, 3, sum(TEAMS));
        refuses(zipped(), ProblemCode.ARCHIVE_ALTERED);
    }

    @Test
    void refusesATableThatIsMissing() throws IOException {
        holdTeams(TEAMS, 2, sum(TEAMS));
        entries.remove("rows/team.jsonl");
        refuses(zipped(), ProblemCode.ARCHIVE_ALTERED);
    }

    @Test
    void refusesAnEntryThatNobodyNamed() throws IOException {
        holdTeams(TEAMS, 2, sum(TEAMS));
        entries.put("../climbed.txt", bytes("harm"));
        refuses(zipped(), ProblemCode.ARCHIVE_ALTERED);
        assertThat(folder.resolveSibling("climbed.txt")).doesNotExist();
    }

    /** A thousand times as large when unpacked; it is refused at the first row that is too long for a row. */
    @Test
    void refusesAnArchiveThatBlowsUp() throws IOException {
        String zeros = "0".repeat(8 * 1024 * 1024);
        holdTeams(zeros, 0, sum(zeros));
        Path file = zipped();
        assertThat(Files.size(file)).isLessThan(100_000);
        refuses(file, ProblemCode.ARCHIVE_TOO_LARGE);
    }

    private void holdTeams(String rows, long count, String sum) {
        entries.put("rows/team.jsonl", bytes(rows));
        var manifest = new Manifest(
                Manifest.FORMAT,
                Instant.EPOCH,
                new UUID(0, 1),
                "A day",
                LocalDate.EPOCH,
                List.of(1),
                "",
                List.of(new Manifest.Part("team", count, sum)));
        entries.put(Manifest.ENTRY, JSON.writeValueAsBytes(manifest));
    }

    private ArchiveFile open() throws IOException {
        return ArchiveFile.open(zipped(), JSON);
    }

    private Path zipped() throws IOException {
        Path file = folder.resolve("day.zip");
        try (var zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (var entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
            }
        }
        return file;
    }

    private static void refuses(Path file, ProblemCode code) {
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> ArchiveFile.open(file, JSON).close())
                .matches(refusal -> refusal.code() == code, "refused as " + code);
    }

    private static String sum(String text) {
        return Checksum.of(bytes(text));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
