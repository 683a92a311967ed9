package org.berrywatt.server.light;

import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.contract.GridRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Typed;
import org.berrywatt.quantity.Amount;
import org.berrywatt.quantity.Field;
import org.berrywatt.quantity.Quantity;
import org.berrywatt.reading.Fields;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.TypedAmount;
import org.berrywatt.server.typed.TypedValues;
import org.berrywatt.server.typed.TypedValues.Unusual;
import org.jspecify.annotations.Nullable;

/** Reads a grid of light readings as typed. */
final class GridConverter {

    private static final int FEWEST = 2;
    private static final int MOST = 25;

    private GridConverter() {}

    /** All in the kind of unit of the first: lx and W/m2 do not compare. */
    static List<TypedAmount> places(GridRequest request) {
        var typed = Given.need("readings", request.readings());
        if (typed.size() < FEWEST || typed.size() > MOST) {
            throw Refusal.of(ProblemCode.CALCULATION_LIST_LENGTH)
                    .field("readings")
                    .value(typed.size())
                    .limit("[" + FEWEST + ", " + MOST + "]");
        }
        var field = fieldOf(typed.get(0));
        return IntStream.range(0, typed.size())
                .mapToObj(i -> TypedAmount.of(place("readings[" + i + "]", typed.get(i), field)))
                .toList();
    }

    static int columns(GridRequest request) {
        return Given.between("columns", request.columns(), 1, MOST);
    }

    private static Field fieldOf(@Nullable Typed first) {
        var amount = TypedValues.number("readings[0]", first, Unusual.TAKE, Fields.ILLUMINANCE, Fields.IRRADIANCE);
        return amount.quantity() == Quantity.ILLUMINANCE ? Fields.ILLUMINANCE : Fields.IRRADIANCE;
    }

    private static Amount place(String path, @Nullable Typed typed, Field field) {
        var amount = TypedValues.number(path, typed, Unusual.TAKE, field);
        TypedValues.requirePositive(path, amount, field);
        return amount;
    }
}
