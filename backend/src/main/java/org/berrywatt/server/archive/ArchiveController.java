package org.berrywatt.server.archive;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.UUID;
import org.berrywatt.contract.ArchiveAnswer;
import org.berrywatt.server.access.Caller;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Days as files, for teachers. */
@RestController
class ArchiveController {

    private static final String ZIP = "application/zip";

    private final Archives archives;
    private final Clock clock;

    ArchiveController(Archives archives, Clock clock) {
        this.archives = archives;
        this.clock = clock;
    }

    @GetMapping(path = "/api/labdays/{id}/archive", produces = ZIP)
    void write(@PathVariable UUID id, Caller caller, HttpServletResponse response) throws IOException {
        caller.requireTeacher();
        var day = archives.day(id);
        Path file = temporary();
        try {
            archives.write(day, clock.instant(), file);
            response.setContentType(ZIP);
            response.setContentLengthLong(Files.size(file));
            response.setHeader(HttpHeaders.CONTENT_DISPOSITION, attachment(day.date() + " " + day.title() + ".zip"));
            Files.copy(file, response.getOutputStream());
        } finally {
            Files.delete(file);
        }
    }

    /** The whole file is here before anything of it is believed. */
    @PostMapping(path = "/api/archives", consumes = ZIP)
    ArchiveAnswer take(@RequestParam(defaultValue = "false") boolean check, InputStream body, Caller caller)
            throws IOException {
        caller.requireTeacher();
        Path file = temporary();
        try {
            Files.copy(body, file, StandardCopyOption.REPLACE_EXISTING);
            return archives.take(file, check);
        } finally {
            Files.delete(file);
        }
    }

    private static Path temporary() throws IOException {
        return Files.createTempFile("berrywatt-archive-", ".zip");
    }

    private static String attachment(String name) {
        return ContentDisposition.attachment()
                .filename(name, StandardCharsets.UTF_8)
                .build()
                .toString();
    }
}
