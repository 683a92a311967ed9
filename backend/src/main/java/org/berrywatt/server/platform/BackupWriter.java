package org.berrywatt.server.platform;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.function.Predicate;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A backup in the making: a zip file whose last entry says that nothing is missing. */
final class BackupWriter implements AutoCloseable {

    static final String DATABASE = "database/";
    static final String SEAL = "berrywatt.backup";

    private final ZipOutputStream zip;
    private int entries;

    private BackupWriter(ZipOutputStream zip) {
        this.zip = zip;
    }

    /** Readable by its owner alone: it holds what the teachers' passwords are checked against. */
    static BackupWriter create(Path file) throws IOException {
        Files.deleteIfExists(file);
        return new BackupWriter(new ZipOutputStream(Files.newOutputStream(OwnerOnly.create(file))));
    }

    /** A database's folder with all folders and files that are wanted by their path below it, empty folders too. */
    void tree(Path folder, Predicate<String> wanted) throws IOException {
        try (var paths = Files.walk(folder)) {
            for (var path : (Iterable<Path>) paths.filter(path -> !path.equals(folder))::iterator) {
                var below = folder.relativize(path).toString().replace('\\', '/');
                if (wanted.test(below)) {
                    add(below, path);
                }
            }
        } catch (UncheckedIOException gone) {
            throw gone.getCause();
        }
    }

    private void add(String below, Path path) throws IOException {
        if (Files.isDirectory(path)) {
            entry(DATABASE + below + "/", new byte[0]);
        } else {
            file(DATABASE + below, path);
        }
    }

    /** A file that has vanished meanwhile is left out: what it held is in the log of changes. */
    void file(String name, Path path) throws IOException {
        try (var in = Files.newInputStream(path)) {
            zip.putNextEntry(new ZipEntry(name));
            in.transferTo(zip);
            zip.closeEntry();
            entries++;
        } catch (NoSuchFileException vanished) {
            return;
        }
    }

    void text(String name, String text) throws IOException {
        entry(name, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Says how many entries there are; a backup without this is not complete. */
    void seal() throws IOException {
        text(SEAL, "entries=" + entries + "\npostgresql=" + Cluster.MAJOR + "\nmade=" + Instant.now() + "\n");
    }

    private void entry(String name, byte[] content) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(content);
        zip.closeEntry();
        entries++;
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
