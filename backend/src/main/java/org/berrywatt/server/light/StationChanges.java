package org.berrywatt.server.light;

import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.SpectrumRequest;
import org.berrywatt.contract.StationAnswer;
import org.berrywatt.contract.StationCorrectionRequest;
import org.berrywatt.light.OwnSpectrum;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.SpectrumTable;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What a teacher changes of a station after the fact: its name and settings typed wrong, the spectrum of its own lamp. Also
 * while the day is closed, until its results are final; nothing earlier is lost. Each can be asked about before.
 */
@Service
public class StationChanges {

    static final int LONGEST_REASON = 120;
    private static final int LONGEST_SPECTRUM_NAME = 60;

    private final ChangeWriting writing;
    private final StationNames names;

    StationChanges(ChangeWriting writing, StationNames names) {
        this.writing = writing;
        this.names = names;
    }

    /**
     * Corrects a station's name and settings; they count as if it had been set up so.
     *
     * @throws Refusal {@code notFound}, {@code labday.final}, {@code name.taken}, or when a setting or the reason is refused
     */
    @Transactional
    public StationAnswer correct(UUID stationId, UUID id, StationCorrectionRequest request, Caller caller, Instant at) {
        var teacher = caller.requireTeacher();
        return writing.once(stationId, id, request, station -> {
            var setup = corrected(request, station);
            var reason = Words.line("reason", request.reason(), LONGEST_REASON);
            return new StationCorrection(id, stationId, setup, reason, teacher, at);
        });
    }

    /** The station as it would be with these settings; nothing is written. */
    @Transactional(readOnly = true)
    public Station ifCorrected(UUID stationId, StationCorrectionRequest request, Caller caller) {
        caller.requireTeacher();
        var record = writing.record(stationId);
        return record.with(corrected(request, record)).view();
    }

    /**
     * Gives the spectrum of a station's own lamp, or takes it back.
     *
     * @throws Refusal {@code notFound}, {@code labday.final}, {@code spectrum...} naming the row, or when the name is refused
     */
    @Transactional
    public StationAnswer give(UUID stationId, UUID id, SpectrumRequest request, Caller caller, Instant at) {
        var teacher = caller.requireTeacher();
        return writing.once(stationId, id, request, station -> {
            var name = Words.line("name", request.name(), LONGEST_SPECTRUM_NAME);
            spectrum(request);
            return new StationSpectrum(id, stationId, name, request.csv(), teacher, at);
        });
    }

    /** The station as it would be under a lamp of this spectrum; nothing is written. */
    @Transactional(readOnly = true)
    public Station ifLitBy(UUID stationId, SpectrumRequest request, Caller caller) {
        caller.requireTeacher();
        return writing.record(stationId).with(spectrum(request)).view();
    }

    private StationSetup corrected(StationCorrectionRequest request, StationRecord record) {
        var setup = StationConverter.setup(request);
        names.requireFree(setup.name(), record.station().id(), record.station().labDayId());
        return setup;
    }

    private static @Nullable OwnSpectrum spectrum(SpectrumRequest request) {
        var csv = request.csv();
        return csv == null ? null : SpectrumTable.read("csv", KnownSpectra.nameOf(csv), csv);
    }
}
