package org.berrywatt.server.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.berrywatt.contract.IrradianceAnswer;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.SpectrumAnswer;
import org.berrywatt.contract.SpectrumAnswer.SpectrumPoint;
import org.berrywatt.contract.SpectrumRequest;
import org.berrywatt.contract.StationAnswer;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class StationSpectraTest {

    private static final String SPECTRUM = "/api/stations/{stationId}/spectra/{id}";
    private final Bench bench;
    private final Api teacher;
    private final UUID station;

    @Autowired
    StationSpectraTest(MockMvcTester server, JsonMapper json) {
        this.bench = new Bench(server, json);
        this.teacher = bench.teacher;
        this.station = bench.station("Lamp");
    }

    /** Planck's law at 2856 K from 300 to 2500 nm shines with 20.157342 lm/W (computed with mpmath, reference table). */
    @Test
    void standInForTheKindOfLamp() {
        var before = read("2050");
        var given = give("Bulb of 2856 K", planck(2856));
        assertThat(total(given)).isCloseTo(2050 / 20.157342, within(0.05));
        assertThat(given.readings().get(0).id()).isEqualTo(before.id());

        var back = give("It was another lamp", null);
        assertThat(total(back)).isEqualTo(before.totalIrradianceWm2().value());
        assertThat(back.spectra())
                .extracting(SpectrumAnswer::name)
                .containsExactly("Bulb of 2856 K", "It was another lamp");
        assertThat(back.spectra()).allMatch(spectrum -> spectrum.outline().isEmpty());
    }

    @Test
    void areShownWithTheirHighestPowerAsOne() {
        var outline = give("Two lines", "wavelength_nm,relative\n400,0\n450,2\n611,8\n700,0")
                .spectra()
                .get(0)
                .outline();
        assertThat(outline).contains(new SpectrumPoint(611, 1)).last().isEqualTo(new SpectrumPoint(700, 0));
        assertThat(outline).first().isEqualTo(new SpectrumPoint(400, 0));
    }

    @ParameterizedTest(name = "{0} is refused with {1}: {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "400,1 | spectrum.rows | The table has 1 rows with numbers; it needs [2, 10000].",
                "400,1/500/700,1 | spectrum.numbers | Row 2 holds “500”, not a wavelength in nm and a power.",
                "0.4,1/0.7,1 | spectrum.wavelength | Row 1: a wavelength of 0.4 nm cannot be; it must lie in [100, 20000]"
                        + " nm.",
                "400,1/600,1/500,1/700,1 | spectrum.rising | Row 3: 500 nm does not go on from the row before; it must lie"
                        + " in (600, 20000] nm.",
                "400,1/500,-1/700,1 | spectrum.power | Row 2: a power of -1 cannot be; it must lie in [0, ∞).",
                "400,0/700,0 | spectrum.dark | The power is 0 in every row; somewhere it must lie in (0, ∞).",
                "450,1/700,1 | spectrum.band | The table covers [450, 700] nm; it must cover [400, 700] nm at least.",
            })
    void areRefusedByRowValueAndLimit(String csv, String code, String sentence) {
        var request = new SpectrumRequest("Mine", csv.replace('/', '\n'));
        var refused = teacher.put(request, SPECTRUM, station, UUID.randomUUID());
        assertThat(refused).hasStatus(422);
        var problem = teacher.problem(refused, code);
        assertThat(problem.field()).isEqualTo("csv");
        assertThat(problem.detail()).startsWith(sentence);
        assertThat(problem.wayOut()).isNotBlank();
    }

    @Test
    void areRefusedWhenTheyAreTooLong() {
        var tooLong = new SpectrumRequest("Mine", "400,1\n".repeat(6_667));
        var problem = teacher.problem(teacher.put(tooLong, SPECTRUM, station, UUID.randomUUID()), "spectrum.tooLarge");
        assertThat(problem.value()).isEqualTo("40002");
        assertThat(problem.limit()).isEqualTo("[0, 40000]");
    }

    @Test
    void areForTeachersOnly() {
        var request = new SpectrumRequest("Mine", "400,1\n700,1");
        assertThat(bench.team("Sloe").put(request, SPECTRUM, station, UUID.randomUUID()))
                .hasStatus(403);
    }

    private StationAnswer give(String name, @Nullable String csv) {
        var request = new SpectrumRequest(name, csv);
        return teacher.answer(teacher.put(request, SPECTRUM, station, UUID.randomUUID()), StationAnswer.class);
    }

    private IrradianceAnswer read(String lux) {
        var request = new IrradianceRequest(station, new Typed(lux, "lx"), null, Bench.NOTICED);
        return teacher.answer(teacher.put(request, "/api/irradiances/{id}", UUID.randomUUID()), IrradianceAnswer.class);
    }

    private static double total(StationAnswer station) {
        return station.readings().get(0).totalIrradianceWm2().value();
    }

    /** λ⁻⁵/(exp(hc/λkT) − 1), with hc/k = 1.438776877 cm K (CODATA 2018), every 5 nm. */
    private static String planck(double kelvin) {
        return IntStream.rangeClosed(60, 500)
                .map(line -> 5 * line)
                .mapToObj(nm -> nm + ";" + Math.pow(nm / 1000.0, -5) / Math.expm1(14387.76877 / (nm / 1000.0 * kelvin)))
                .collect(Collectors.joining("\n"));
    }
}
