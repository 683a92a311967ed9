package org.berrywatt.server.light;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.GridAnswer;
import org.berrywatt.contract.GridRequest;
import org.berrywatt.contract.IrradianceAnswer;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.StationAnswer;
import org.berrywatt.contract.StationRequest;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Light stations and their readings over HTTP. */
@RestController
@RequestMapping("/api")
class StationController {

    private final Stations stations;
    private final Clock clock;

    StationController(Stations stations, Clock clock) {
        this.stations = stations;
        this.clock = clock;
    }

    @PutMapping("/stations/{id}")
    StationAnswer put(@PathVariable UUID id, @RequestBody StationRequest request, Caller caller) {
        return stations.put(id, request, caller, clock.instant());
    }

    @PutMapping("/irradiances/{id}")
    IrradianceAnswer putIrradiance(@PathVariable UUID id, @RequestBody IrradianceRequest request, Caller caller) {
        return stations.putIrradiance(id, request, caller, clock.instant());
    }

    @PutMapping("/grids/{id}")
    GridAnswer putGrid(@PathVariable UUID id, @RequestBody GridRequest request, Caller caller) {
        return stations.putGrid(id, request, caller, clock.instant());
    }

    @GetMapping("/labdays/{labDayId}/stations")
    List<StationAnswer> list(@PathVariable UUID labDayId, Caller caller) {
        return stations.list(labDayId, caller);
    }
}
