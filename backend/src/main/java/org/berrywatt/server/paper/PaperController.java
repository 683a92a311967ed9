package org.berrywatt.server.paper;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.apache.commons.csv.CSVFormat;
import org.berrywatt.contract.PaperAnswer;
import org.berrywatt.contract.PaperRequest;
import org.berrywatt.contract.PaperTableAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.platform.Texts;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Tables for paper records and what was typed into them, for teachers. */
@RestController
@RequestMapping("/api")
class PaperController {

    private static final String MARK = "\uFEFF";

    private final PaperImports imports;
    private final Texts texts;
    private final Clock clock;

    PaperController(PaperImports imports, Texts texts, Clock clock) {
        this.imports = imports;
        this.texts = texts;
        this.clock = clock;
    }

    @GetMapping("/paper")
    List<PaperTableAnswer> tables(Caller caller) {
        caller.requireTeacher();
        return Arrays.stream(PaperTable.values()).map(this::answer).toList();
    }

    /**
     * An empty table: its line of names, with the mark by which spreadsheets know UTF-8.
     *
     * @param decimalComma whether the spreadsheet speaks a language that writes 0,45 and parts columns by semicolons
     */
    @GetMapping(path = "/paper/{table}.csv", produces = "text/csv")
    void table(
            @PathVariable String table,
            @RequestParam(defaultValue = "false") boolean decimalComma,
            Caller caller,
            HttpServletResponse response)
            throws IOException {
        caller.requireTeacher();
        var known = PaperTable.of(table).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
        response.setContentType("text/csv;charset=utf-8");
        var attachment = ContentDisposition.attachment().filename(table + ".csv", StandardCharsets.UTF_8);
        response.setHeader(HttpHeaders.CONTENT_DISPOSITION, attachment.build().toString());
        var out = new OutputStreamWriter(response.getOutputStream(), StandardCharsets.UTF_8);
        out.write(MARK);
        var format = CSVFormat.RFC4180.builder().setDelimiter(decimalComma ? ';' : ',');
        format.get()
                .printRecord(
                        out, known.columns().stream().map(PaperColumn::header).toArray());
        out.flush();
    }

    /** @param check whether to tell what would come in, and to leave everything as it is */
    @PostMapping("/labdays/{id}/paper")
    PaperAnswer take(
            @PathVariable UUID id,
            @RequestParam(defaultValue = "false") boolean check,
            @RequestBody PaperRequest request,
            Caller caller) {
        return imports.take(id, request, check, caller.requireTeacher(), clock.instant());
    }

    private PaperTableAnswer answer(PaperTable table) {
        var choices = new Choices(texts);
        var columns = table.columns().stream()
                .map(column -> new PaperTableAnswer.Column(
                        column.header(),
                        texts.say(column.meaning()),
                        column.needed(),
                        column.headers(),
                        choices.of(column)))
                .toList();
        return new PaperTableAnswer(table.key(), columns);
    }
}
