package org.berrywatt.server.platform;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** Files that nobody but their owner can read, where the file system knows owners. */
final class OwnerOnly {

    private OwnerOnly() {}

    /** Writes all or nothing: a kill in between leaves no half-written file under this name. */
    static void write(Path file, String text) throws IOException {
        var draft = file.resolveSibling(file.getFileName() + ".new");
        Files.deleteIfExists(draft);
        Files.writeString(create(draft), text);
        Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
    }

    /** An empty file that was not there. */
    static Path create(Path file) throws IOException {
        return Files.createFile(file, rights("rw-------"));
    }

    static Path folder(Path path) throws IOException {
        return Files.createDirectories(path, rights("rwx------"));
    }

    private static FileAttribute<?>[] rights(String permissions) {
        return FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }
}
