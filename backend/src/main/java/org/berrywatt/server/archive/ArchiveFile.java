package org.berrywatt.server.archive;

import static java.util.stream.Collectors.toCollection;

import java.io.BufferedReader;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.springframework.util.StreamUtils;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * An archive that arrived, looked through from end to end before anybody relies on it: nothing in it that its manifest
 * does not name, every row there, every byte as written. Its entries are never unpacked into files, so their names lead
 * nowhere.
 */
final class ArchiveFile implements AutoCloseable {

    /** What a day may hold when unpacked; a class of 40 takes some 5 MB. */
    private static final long MOST_UNPACKED = 512L * 1024 * 1024;

    private static final int LONGEST_MANIFEST = 256 * 1024;

    private final ZipFile zip;
    private final Manifest manifest;

    private ArchiveFile(ZipFile zip, Manifest manifest) {
        this.zip = zip;
        this.manifest = manifest;
    }

    /**
     * @throws Refusal {@code archive.unreadable} for what is no archive, {@code archive.altered} where a part is missing,
     *     added or changed, {@code archive.tooLarge}
     */
    static ArchiveFile open(Path file, JsonMapper json) throws IOException {
        var zip = zip(file);
        try {
            var archive = new ArchiveFile(zip, manifest(zip, json));
            archive.verify();
            return archive;
        } catch (Refusal | IOException no) {
            zip.close();
            throw no;
        }
    }

    Manifest manifest() {
        return manifest;
    }

    /** Every row of a table, in order. */
    void rows(String table, Consumer<String> each) throws IOException {
        try (var lines = new BufferedReader(
                new InputStreamReader(zip.getInputStream(entry(Manifest.Part.entry(table))), StandardCharsets.UTF_8))) {
            lines.lines().forEach(each);
        }
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }

    private static ZipFile zip(Path file) throws IOException {
        try {
            return new ZipFile(file.toFile());
        } catch (ZipException noZip) {
            throw Refusal.of(ProblemCode.ARCHIVE_UNREADABLE);
        }
    }

    private static Manifest manifest(ZipFile zip, JsonMapper json) throws IOException {
        ZipEntry entry = zip.getEntry(Manifest.ENTRY);
        if (entry == null || entry.getSize() > LONGEST_MANIFEST) {
            throw Refusal.of(ProblemCode.ARCHIVE_UNREADABLE);
        }
        try (var in = zip.getInputStream(entry)) {
            var manifest = json.readValue(in.readNBytes(LONGEST_MANIFEST), Manifest.class);
            if (!Manifest.FORMAT.equals(manifest.format())) {
                throw Refusal.of(ProblemCode.ARCHIVE_UNREADABLE);
            }
            return manifest;
        } catch (JacksonException noManifest) {
            throw Refusal.of(ProblemCode.ARCHIVE_UNREADABLE);
        } catch (ZipException | EOFException broken) {
            throw altered(Manifest.ENTRY);
        }
    }

    private void verify() throws IOException {
        Set<String> named = manifest.tables().stream().map(Manifest.Part::entry).collect(toCollection(TreeSet::new));
        named.add(Manifest.ENTRY);
        for (ZipEntry entry : Collections.list(zip.entries())) {
            if (!named.contains(entry.getName())) {
                throw altered(entry.getName());
            }
        }
        long left = MOST_UNPACKED;
        for (Manifest.Part part : manifest.tables()) {
            left -= verify(part, left);
        }
    }

    /** @return how many bytes this part has unpacked */
    private long verify(Manifest.Part part, long most) throws IOException {
        var sum = new Checksum();
        var rows = new RowCount();
        try (var in = sum.passingOn(zip.getInputStream(entry(part.entry())))) {
            long bytes = StreamUtils.copyRange(in, rows, 0, most);
            if (bytes > most) {
                throw Refusal.of(ProblemCode.ARCHIVE_TOO_LARGE).limit(MOST_UNPACKED / (1024 * 1024) + " MB");
            }
            if (!sum.hex().equals(part.sha256()) || rows.count() != part.rows()) {
                throw altered(part.entry());
            }
            return bytes;
        } catch (ZipException | EOFException broken) {
            throw altered(part.entry());
        }
    }

    private ZipEntry entry(String name) {
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) {
            throw altered(name);
        }
        return entry;
    }

    static Refusal altered(String part) {
        return Refusal.of(ProblemCode.ARCHIVE_ALTERED).value(part);
    }
}
