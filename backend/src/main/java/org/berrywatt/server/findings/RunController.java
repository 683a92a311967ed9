package org.berrywatt.server.findings;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.FindingsAnswer;
import org.berrywatt.contract.FindingsDaysRequest;
import org.berrywatt.contract.FindingsRunAnswer;
import org.berrywatt.contract.FindingsTableAnswer;
import org.berrywatt.contract.FindingsTableRequest;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Many cells at once, for teachers: several lab days, or a table of a file. Nothing of it is stored. */
@RestController
class RunController {

    private final Runs runs;
    private final SeveralDays days;

    RunController(Runs runs, SeveralDays days) {
        this.runs = runs;
        this.days = days;
    }

    @PostMapping("/api/findings/days")
    FindingsRunAnswer days(@RequestBody FindingsDaysRequest body, Caller caller) {
        caller.requireTeacher();
        var wanted = days.known(body);
        var measure = Measure.ofDays(body.measure());
        var filter = Filter.of(body.only());
        return runs.start(() -> days.question(wanted, measure, filter)).progress();
    }

    /** What a file holds, and everything in it that must be mended. */
    @PostMapping("/api/findings/table/look")
    FindingsTableAnswer look(@RequestBody FindingsTableRequest body, Caller caller) {
        caller.requireTeacher();
        return new CsvTable(body).look();
    }

    @PostMapping("/api/findings/table")
    FindingsRunAnswer table(@RequestBody FindingsTableRequest body, Caller caller) {
        caller.requireTeacher();
        var table = new CsvTable(body);
        var question =
                new FindingsAnswers(Measure.OUTCOME, table.outcome(), table.study(), Filter.of(body.only()), List.of());
        return runs.start(() -> question).progress();
    }

    @GetMapping("/api/findings/runs/{id}")
    FindingsRunAnswer progress(@PathVariable UUID id, Caller caller) {
        caller.requireTeacher();
        return runs.find(id).progress();
    }

    @GetMapping("/api/findings/runs/{id}/answer")
    FindingsAnswer answer(@PathVariable UUID id, Caller caller) {
        caller.requireTeacher();
        return runs.answer(id);
    }

    @PutMapping("/api/findings/runs/{id}/end")
    FindingsRunAnswer end(@PathVariable UUID id, Caller caller) {
        caller.requireTeacher();
        var run = runs.find(id);
        run.end();
        return run.progress();
    }
}
