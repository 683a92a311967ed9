package org.berrywatt.server.paper;

import java.util.Arrays;
import java.util.List;
import org.berrywatt.contract.CellAnswer;
import org.berrywatt.contract.PaperAnswer;
import org.berrywatt.contract.PaperAnswer.Fault;
import org.berrywatt.contract.PaperRequest;
import org.berrywatt.contract.PaperRequest.PaperFile;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.server.Bench;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

/** A teacher with filled-in tables in front of a day. */
final class PaperDesk {

    static final PaperFile TEAMS = file("teams.csv", "team", "Larch", "Rowan");
    static final PaperFile STATIONS =
            file("stations.csv", "station,lamp,instrument,distance_cm", "Lamp 1,halogen,luxMeter,30");
    static final PaperFile CELLS = file(
            "cells.csv",
            "team,cell,area_cm2,dye_source,bake_temperature_deg_c",
            "Larch,L1,15 x 15 mm,hibiscus,450",
            "Rowan,R1,2.25,Hibiscus flower,400");
    static final PaperFile IRRADIANCE =
            file("irradiance.csv", "station,read_at,illuminance_lx", "Lamp 1,10:00,12000", "Lamp 1,11:00,12100");
    static final PaperFile READINGS = file(
            "readings.csv",
            "cell,kind,station,read_at,voltage_mv,current_ua",
            "L1,dark,,10:05,0,0",
            "L1,light,Lamp 1,10:10,412,95",
            "R1,light,Lamp 1,10:20,0.38 V,80");
    static final PaperFile SWEEP = file(
            "sweep_points.csv",
            "cell,station,read_at,load_ohm,voltage_mv",
            "L1,Lamp 1,10:30,100,9.4",
            "L1,Lamp 1,,1000,93",
            "L1,Lamp 1,,3300,270",
            "L1,Lamp 1,,10k\u03A9,385",
            "L1,Lamp 1,,100000,410");
    static final List<PaperFile> ALL = List.of(READINGS, SWEEP, IRRADIANCE, CELLS, STATIONS, TEAMS);

    final Bench bench;

    PaperDesk(MockMvcTester server, JsonMapper json) {
        bench = new Bench(server, json);
    }

    static PaperFile file(String name, String... lines) {
        return new PaperFile(name, String.join("\n", lines));
    }

    MvcTestResult send(boolean check, PaperFile... files) {
        return bench.teacher.post(
                new PaperRequest(Arrays.asList(files), "UTC"),
                "/api/labdays/{id}/paper?check={check}",
                bench.day.id(),
                check);
    }

    PaperAnswer look(PaperFile... files) {
        return bench.teacher.answer(send(true, files), PaperAnswer.class);
    }

    PaperAnswer write(PaperFile... files) {
        return bench.teacher.answer(send(false, files), PaperAnswer.class);
    }

    PaperAnswer writeAll() {
        return write(ALL.toArray(PaperFile[]::new));
    }

    /** The only thing to mend in a file. */
    Fault fault(PaperFile file) {
        var answer = look(file);
        if (answer.faults().size() != 1) {
            throw new AssertionError("one fault was expected: " + answer.faults());
        }
        return answer.faults().get(0);
    }

    List<CellAnswer> cells() {
        return bench.teacher.answers(bench.teacher.get("/api/labdays/{id}/cells", bench.day.id()), CellAnswer.class);
    }

    List<ReadingAnswer> readings(String label) {
        var cell = cells().stream()
                .filter(each -> each.label().equals(label))
                .findFirst()
                .orElseThrow();
        return bench.teacher.answers(bench.teacher.get("/api/cells/{id}/readings", cell.id()), ReadingAnswer.class);
    }
}
