package org.berrywatt.light;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Current per watt of a dyed cell: its bands in electrons per photon, times wavelength.
 *
 * <p>Centres follow published absorption maxima (anthocyanins on titanium dioxide about 540 nm, Cherepy et al. 1997; betalains
 * 480 and 540 nm, Calogero et al. 2012; chlorophylls about 430 and 665 nm; all from memory); widths are common practice, no
 * source. What is not known about the plant at hand is carried by moving the band.
 *
 * @param shiftNm how far the band of such a plant may lie to either side
 */
record DyeResponse(List<DyeBand> bands, double shiftNm) implements DoubleUnaryOperator {

    static DyeResponse of(DyeFamily dye) {
        return switch (dye) {
            case ANTHOCYANIN -> new DyeResponse(List.of(new DyeBand(540, 50, 1)), 20);
            case BETALAIN -> new DyeResponse(List.of(new DyeBand(510, 55, 1)), 20);
            case CHLOROPHYLL -> new DyeResponse(List.of(new DyeBand(430, 30, 1), new DyeBand(665, 20, 0.8)), 10);
            case UNDYED -> new DyeResponse(List.of(new DyeBand(340, 25, 1)), 10);
            case OTHER -> new DyeResponse(List.of(new DyeBand(530, 70, 1)), 40);
        };
    }

    @Override
    public double applyAsDouble(double nm) {
        var electrons = 0.0;
        for (var band : bands) {
            electrons += band.electronsPerPhoton(nm);
        }
        return nm * electrons;
    }

    /** The bands at their bluest, reddest, narrowest and widest plausible. */
    List<DyeResponse> alternatives() {
        return List.of(shifted(-shiftNm), shifted(shiftNm), widened(0.8), widened(1.25));
    }

    private DyeResponse shifted(double nm) {
        return new DyeResponse(bands.stream().map(band -> band.shifted(nm)).toList(), shiftNm);
    }

    private DyeResponse widened(double factor) {
        return new DyeResponse(bands.stream().map(band -> band.widened(factor)).toList(), shiftNm);
    }
}
