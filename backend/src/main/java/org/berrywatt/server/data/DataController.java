package org.berrywatt.server.data;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.platform.Texts;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;

/** A day's tables as files, for teachers. */
@RestController
@RequestMapping("/api/labdays/{id}")
class DataController {

    private final Tables tables;
    private final Texts texts;
    private final JsonMapper json;

    DataController(Tables tables, Texts texts, JsonMapper json) {
        this.tables = tables;
        this.texts = texts;
        this.json = json;
    }

    /**
     * @param spreadsheet whether to begin with the mark by which spreadsheets know UTF-8; R and pandas need none
     * @param decimalComma whether that spreadsheet speaks a language that writes 0,45
     */
    @GetMapping(path = "/tables/{name}.csv", produces = "text/csv")
    void table(
            @PathVariable UUID id,
            @PathVariable String name,
            @RequestParam(defaultValue = "false") boolean spreadsheet,
            @RequestParam(defaultValue = "false") boolean decimalComma,
            Caller caller,
            HttpServletResponse response)
            throws IOException {
        LabDay day = dayFor(caller, id);
        if (!Tables.NAMES.contains(name)) {
            throw Refusal.of(ProblemCode.NOT_FOUND);
        }
        response.setContentType("text/csv;charset=utf-8");
        attach(response, day.date() + " " + name + ".csv");
        var out = new OutputStreamWriter(response.getOutputStream(), StandardCharsets.UTF_8);
        tables.write(name, id, Layout.of(spreadsheet, decimalComma), out);
        out.flush();
    }

    @GetMapping("/tables")
    DataPackage description(@PathVariable UUID id, Caller caller) {
        return DataPackage.of(dayFor(caller, id), tables, texts);
    }

    /** All tables and their description. */
    @GetMapping(path = "/tables.zip", produces = "application/zip")
    void all(@PathVariable UUID id, Caller caller, HttpServletResponse response) throws IOException {
        LabDay day = dayFor(caller, id);
        response.setContentType("application/zip");
        attach(response, day.date() + " " + day.title() + " tables.zip");
        var zip = new ZipOutputStream(response.getOutputStream());
        zip.putNextEntry(new ZipEntry(DataPackage.FILE));
        zip.write(json.writerWithDefaultPrettyPrinter().writeValueAsBytes(DataPackage.of(day, tables, texts)));
        tables.writeAll(id, zip);
        zip.finish();
    }

    private LabDay dayFor(Caller caller, UUID id) {
        caller.requireTeacher();
        return tables.day(id);
    }

    private static void attach(HttpServletResponse response, String name) {
        var attachment = ContentDisposition.attachment().filename(name, StandardCharsets.UTF_8);
        response.setHeader(HttpHeaders.CONTENT_DISPOSITION, attachment.build().toString());
    }
}
