package org.berrywatt.server.platform;

import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import org.jspecify.annotations.Nullable;
import org.springframework.util.FileSystemUtils;

/** Makes a new home of a backup: unpacked beside its place, checked to the last entry, then moved there at once. */
final class Restore {

    private final Path file;
    private final Path unpacked;
    private int entries;
    private String seal = "";
    private String password = "";

    private Restore(Path file, Path home) {
        this.file = file;
        this.unpacked = home.resolve("database.restoring");
    }

    /**
     * Fills a home that has no data yet.
     *
     * @throws StartProblem when the home has data or is in use, or the backup is not one, not complete or of another
     *     PostgreSQL
     */
    static void of(Path file, Path home) {
        if (!Files.isRegularFile(file)) {
            throw new StartProblem("restoreNoFile", Map.of("file", file));
        }
        if (Files.exists(Home.database(home))) {
            throw new StartProblem("restoreNotEmpty", Map.of("home", home));
        }
        try (var locked = Home.open(home, null)) {
            new Restore(file, home).run(locked);
        } catch (ZipException | EOFException broken) {
            throw incomplete(file, broken);
        } catch (IOException cause) {
            throw DiskTrouble.writing(home, cause);
        }
    }

    private void run(Home locked) throws IOException {
        FileSystemUtils.deleteRecursively(unpacked);
        try {
            unpack();
            requireComplete();
            OwnerOnly.write(locked.password(), password);
            Files.move(unpacked, locked.database(), StandardCopyOption.ATOMIC_MOVE);
        } finally {
            FileSystemUtils.deleteRecursively(unpacked);
        }
    }

    private void unpack() throws IOException {
        OwnerOnly.folder(unpacked);
        try (var zip = new ZipInputStream(Files.newInputStream(file))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                take(entry.getName(), zip);
            }
        }
    }

    private void take(String name, ZipInputStream zip) throws IOException {
        if (name.equals(BackupWriter.SEAL)) {
            seal = text(zip);
            return;
        }
        entries++;
        if (name.equals(Home.PASSWORD)) {
            password = text(zip);
        } else if (name.startsWith(BackupWriter.DATABASE)) {
            place(below(name), name.endsWith("/"), zip);
        } else {
            throw incomplete(file, null);
        }
    }

    /** A folder comes before what lies in it. */
    private void place(Path target, boolean folder, ZipInputStream zip) throws IOException {
        if (folder) {
            OwnerOnly.folder(target);
        } else {
            try (var out = Files.newOutputStream(OwnerOnly.create(target))) {
                zip.transferTo(out);
            }
        }
    }

    /** A name that climbs out of the folder is none of ours. */
    private Path below(String name) {
        var target =
                unpacked.resolve(name.substring(BackupWriter.DATABASE.length())).normalize();
        if (!target.startsWith(unpacked)) {
            throw incomplete(file, null);
        }
        return target;
    }

    private void requireComplete() {
        if (!seal.contains("entries=" + entries + "\n") || password.isEmpty()) {
            throw incomplete(file, null);
        }
        if (!seal.contains("postgresql=" + Cluster.MAJOR + "\n")) {
            throw new StartProblem("restoreOtherVersion", Map.of("file", file, "needed", Cluster.MAJOR));
        }
    }

    private static String text(ZipInputStream zip) throws IOException {
        return new String(zip.readAllBytes(), StandardCharsets.UTF_8);
    }

    private static StartProblem incomplete(Path file, @Nullable Throwable cause) {
        return new StartProblem("restoreIncomplete", Map.of("file", file), cause);
    }
}
