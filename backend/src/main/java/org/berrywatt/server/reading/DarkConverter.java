package org.berrywatt.server.reading;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.quantity.Field;
import org.berrywatt.quantity.Units;
import org.berrywatt.reading.Fields;
import org.berrywatt.reading.LeadSwap;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.TypedAmount;
import org.berrywatt.server.typed.TypedValues;
import org.berrywatt.server.typed.TypedValues.Unusual;
import org.jspecify.annotations.Nullable;

/** Reads a dark check: the covered cell, and with the leads swapped where the team did that. */
record DarkConverter(ReadingRequest request, Unusual unusual) {

    private static final MathContext SHOWN = new MathContext(4);

    /**
     * The dark check in SI units.
     *
     * @throws Refusal when a number is refused; {@code dark.leads}, until confirmed, for a pair that leaves more for the meter's
     *     zero than a meter has, see {@link LeadSwap#limit}
     */
    static MeterReading reading(ReadingRequest request, Unusual unusual) {
        return new DarkConverter(request, unusual).reading();
    }

    private MeterReading reading() {
        var voltage = amount("voltage", request.voltage(), Fields.VOLTAGE);
        var current = amount("current", request.current(), Fields.CURRENT);
        return new MeterReading(
                ReadingKind.DARK,
                null,
                voltage,
                current,
                swapped("swappedVoltage", request.swappedVoltage(), voltage, Fields.VOLTAGE),
                swapped("swappedCurrent", request.swappedCurrent(), current, Fields.CURRENT),
                List.of(),
                List.of(),
                request.unusualConfirmed());
    }

    private @Nullable TypedAmount swapped(String path, @Nullable Typed typed, TypedAmount straight, Field field) {
        if (TypedValues.isLeftOut(typed)) {
            return null;
        }
        var swapped = amount(path, typed, field);
        var swap = Leads.swap(straight, swapped);
        if (unusual == Unusual.ASK && !swap.consistent()) {
            throw refusal(path, straight, swapped, swap);
        }
        return swapped;
    }

    private TypedAmount amount(String path, @Nullable Typed typed, Field field) {
        return TypedAmount.of(TypedValues.number(path, typed, unusual, field));
    }

    private static Refusal refusal(String path, TypedAmount straight, TypedAmount swapped, LeadSwap swap) {
        var limit = shown(swap.limit(), swapped.unit());
        return Refusal.of(ProblemCode.DARK_LEADS)
                .field(path)
                .value(shown(swap.zero(), swapped.unit()) + " " + symbol(swapped.unit()))
                .limit("[-" + limit + ", " + limit + "] " + symbol(swapped.unit()))
                .with("straight", shown(straight.valueSi(), swapped.unit()))
                .with("swapped", shown(swapped.valueSi(), swapped.unit()));
    }

    private static String shown(double valueSi, String unitKey) {
        var value = Units.of(unitKey).orElseThrow().fromSi(valueSi);
        return new BigDecimal(value).round(SHOWN).stripTrailingZeros().toPlainString();
    }

    private static String symbol(String unitKey) {
        return Units.of(unitKey).orElseThrow().symbol();
    }
}
