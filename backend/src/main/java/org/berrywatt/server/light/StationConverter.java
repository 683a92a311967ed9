package org.berrywatt.server.light;

import org.berrywatt.contract.StationRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.quantity.Field;
import org.berrywatt.quantity.Quantity;
import org.berrywatt.reading.Fields;
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
        return new StationSetup(
                Words.line("name", request.name(), LONGEST_NAME),
                LightKeys.lamp(Given.choice("lamp", request.lamp(), LightKeys.LAMPS)),
                LightKeys.instrument(Given.choice("instrument", request.instrument(), LightKeys.INSTRUMENTS)),
                optional("distance", request.distance(), Fields.DISTANCE),
                optional("angle", request.angle(), Fields.ANGLE));
    }

    /** What the instrument shows; a zero is refused, since it tells only that the light is below the resolution. */
    static RawLight light(@Nullable Typed reading) {
        var amount = TypedValues.number("reading", reading, Unusual.TAKE, Fields.ILLUMINANCE, Fields.IRRADIANCE);
        var lux = amount.quantity() == Quantity.ILLUMINANCE;
        TypedValues.requirePositive("reading", amount, lux ? Fields.ILLUMINANCE : Fields.IRRADIANCE);
        return new RawLight(lux, TypedAmount.of(amount));
    }

    private static @Nullable TypedAmount optional(String path, @Nullable Typed typed, Field field) {
        var amount = TypedValues.optional(path, typed, field);
        return amount == null ? null : TypedAmount.of(amount);
    }
}
