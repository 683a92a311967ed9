package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.springframework.util.FileSystemUtils;

/** The server as somebody without special rights; when the build itself runs as root, as the user nobody. */
@EnabledOnOs(OS.LINUX)
class OrdinaryUserIT {

    private static Path place;

    /** The build's own folder may lie where nobody else can look, so the server is put elsewhere. */
    @BeforeAll
    static void putTheServerWhereEverybodyCanReadIt() throws IOException {
        place = openToAll();
        Files.copy(ServerProcess.JAR, place.resolve("berrywatt.jar"));
        FileSystemUtils.copyRecursively(ServerProcess.JAR.resolveSibling("lib"), place.resolve("lib"));
    }

    @AfterAll
    static void tidyUp() throws IOException {
        FileSystemUtils.deleteRecursively(place);
    }

    @Test
    void runsWithoutSpecialRights() throws Exception {
        var home = place.resolve("home");
        try (var server = start(home).ready()) {
            assertThat(server.get("/api/access").body()).contains("\"setupNeeded\":true");
            assertThat(Files.getOwner(home).getName()).isNotEqualTo("root");
        }
    }

    @Test
    void endsWithOneSentenceWhenTheHomeMayNotBeWritten() throws Exception {
        var folder = Files.createDirectory(place.resolve("read-only"));
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
        try (var server = start(folder.resolve("home"))) {
            assertThat(server.exitCode()).isNotZero();
            assertThat(server.errors()).contains("cannot be written").hasLineCount(1);
        }
    }

    private static ServerProcess start(Path home) throws IOException {
        return ServerProcess.start(asOrdinaryUser(), place.resolve("berrywatt.jar"), ServerProcess.freePort(), home);
    }

    private static Path openToAll() throws IOException {
        var folder = Files.createTempDirectory("berrywatt-ordinary-user");
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxrwxrwx"));
        return folder;
    }

    private static List<String> asOrdinaryUser() {
        return System.getProperty("user.name").equals("root")
                ? List.of("setpriv", "--reuid=nobody", "--regid=nogroup", "--clear-groups")
                : List.of();
    }
}
