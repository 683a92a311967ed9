package org.berrywatt.server;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.berrywatt.contract.ControlCellRequest;
import org.berrywatt.contract.GridRequest;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.LightPreviewRequest;
import org.berrywatt.contract.SetAsideRequest;
import org.berrywatt.contract.SpectrumRequest;
import org.berrywatt.contract.StationCorrectionRequest;
import org.berrywatt.contract.StationRequest;
import org.berrywatt.contract.Typed;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The doors of the light stations, for {@link Doors}. */
final class LightDoors {

    private final Bench bench;
    private final UUID cell;
    private final UUID station;

    LightDoors(Bench bench, UUID cell) {
        this.bench = bench;
        this.cell = cell;
        station = bench.station("Lamp");
    }

    Map<String, Function<Api, MvcTestResult>> all() {
        return Map.ofEntries(
                entry("PUT /api/stations/{id}", this::setUpStation),
                entry("GET /api/labdays/{labDayId}/stations", by -> by.get("/api/labdays/{id}/stations", day())),
                entry("PUT /api/stations/{stationId}/corrections/{id}", this::correctStation),
                entry("POST /api/stations/{id}/corrections/preview", this::askAboutStation),
                entry("PUT /api/stations/{stationId}/spectra/{id}", this::giveSpectrum),
                entry("POST /api/stations/{id}/spectra/preview", this::askAboutSpectrum),
                entry("PUT /api/irradiances/{id}", this::readLight),
                entry("POST /api/irradiances/{id}/preview", this::askAboutCorrection),
                entry("PUT /api/light-set-asides/{id}", by -> by.put(aside(), "/api/light-set-asides/{id}", fresh())),
                entry("POST /api/light-set-asides/preview", by -> by.post(aside(), "/api/light-set-asides/preview")),
                entry("GET /api/stations/{id}/cells", by -> by.get("/api/stations/{id}/cells", station)),
                entry("PUT /api/grids/{id}", this::readGrid),
                entry(
                        "PUT /api/labdays/{labDayId}/control-cell",
                        by -> by.put(new ControlCellRequest(cell), "/api/labdays/{id}/control-cell", day())),
                entry(
                        "GET /api/labdays/{labDayId}/control-cell",
                        by -> by.get("/api/labdays/{id}/control-cell", day())));
    }

    private MvcTestResult setUpStation(Api by) {
        var setup = new StationRequest(day(), "Window", "window", "luxMeter", null, null);
        return by.put(setup, "/api/stations/{id}", fresh());
    }

    private MvcTestResult readLight(Api by) {
        var light = new IrradianceRequest(station, new Typed("2050", "lx"), null, Bench.NOTICED);
        return by.put(light, "/api/irradiances/{id}", fresh());
    }

    private MvcTestResult askAboutCorrection(Api by) {
        return by.post(new LightPreviewRequest(new Typed("2050", "lx")), "/api/irradiances/{id}/preview", fresh());
    }

    private MvcTestResult readGrid(Api by) {
        var readings = List.of(new Typed("900", "lx"), new Typed("1000", "lx"));
        return by.put(new GridRequest(station, readings, 2, Bench.NOTICED), "/api/grids/{id}", fresh());
    }

    private MvcTestResult correctStation(Api by) {
        return by.put(corrected(), "/api/stations/{id}/corrections/{correction}", station, fresh());
    }

    private MvcTestResult askAboutStation(Api by) {
        return by.post(corrected(), "/api/stations/{id}/corrections/preview", station);
    }

    private static StationCorrectionRequest corrected() {
        return new StationCorrectionRequest("LED lamp", "coolLed", "luxMeter", null, null, "It was the LED lamp");
    }

    private MvcTestResult giveSpectrum(Api by) {
        return by.put(flat(), "/api/stations/{id}/spectra/{spectrum}", station, fresh());
    }

    private MvcTestResult askAboutSpectrum(Api by) {
        return by.post(flat(), "/api/stations/{id}/spectra/preview", station);
    }

    private static SpectrumRequest flat() {
        return new SpectrumRequest("Flat", "400,1\n700,1");
    }

    private static SetAsideRequest aside() {
        return new SetAsideRequest(fresh(), "A hand over the meter");
    }

    private UUID day() {
        return bench.day.id();
    }

    private static UUID fresh() {
        return UUID.randomUUID();
    }
}
