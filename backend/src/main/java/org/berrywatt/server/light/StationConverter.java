package org.berrywatt.server.light;

import java.math.BigDecimal;
import java.math.MathContext;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.StationCorrectionRequest;
import org.berrywatt.contract.StationRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.quantity.Amount;
import org.berrywatt.quantity.Field;
import org.berrywatt.quantity.Quantity;
import org.berrywatt.quantity.Units;
import org.berrywatt.reading.Fields;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.TypedAmount;
import org.berrywatt.server.typed.TypedValues;
import org.berrywatt.server.typed.TypedValues.Unusual;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;

/** Reads stations and their light as typed. */
final class StationConverter {

    private static final int LONGEST_NAME = 24;

    private StationConverter() {}

    static StationSetup setup(StationRequest request) {
        return setup(request.name(), request.lamp(), request.instrument(), request.distance(), request.angle());
    }

    /** What takes the place of the earlier name and settings. */
    static StationSetup setup(StationCorrectionRequest request) {
        return setup(request.name(), request.lamp(), request.instrument(), request.distance(), request.angle());
    }

    private static StationSetup setup(
            String name, String lamp, String instrument, @Nullable Typed distance, @Nullable Typed angle) {
        return new StationSetup(
                Words.line("name", name, LONGEST_NAME),
                LightKeys.lamp(Given.choice("lamp", lamp, LightKeys.LAMPS)),
                LightKeys.instrument(Given.choice("instrument", instrument, LightKeys.INSTRUMENTS)),
                optional("distance", distance, Fields.DISTANCE),
                optional("angle", angle, Fields.ANGLE));
    }

    /**
     * What the instrument shows. A display of zero is refused: it tells only that the light is below its last digit, and a
     * station without light has nothing to bring to a reference.
     *
     * @throws org.berrywatt.server.platform.Refusal {@code light.belowResolution} for zero, or when the number is refused
     */
    static RawLight light(@Nullable Typed reading) {
        var amount = TypedValues.number("reading", reading, Unusual.TAKE, Fields.ILLUMINANCE, Fields.IRRADIANCE);
        var lux = amount.quantity() == Quantity.ILLUMINANCE;
        if (amount.valueSi() == 0) {
            throw belowResolution(amount);
        }
        return new RawLight(lux, TypedAmount.of(amount));
    }

    /** Below one step of the last digit, censored rather than zero. */
    private static Refusal belowResolution(Amount amount) {
        var unit = Units.of(amount.unitKey()).orElseThrow();
        var step = new BigDecimal(unit.fromSi(amount.resolutionSi()))
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
        return Refusal.of(ProblemCode.LIGHT_BELOW_RESOLUTION)
                .field("reading")
                .value(amount.text().strip() + (amount.text().matches(".*\\p{L}.*") ? "" : " " + unit.symbol()))
                .limit("< " + step + " " + unit.symbol());
    }

    private static @Nullable TypedAmount optional(String path, @Nullable Typed typed, Field field) {
        var amount = TypedValues.optional(path, typed, field);
        return amount == null ? null : TypedAmount.of(amount);
    }
}
