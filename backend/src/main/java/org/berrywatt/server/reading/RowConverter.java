package org.berrywatt.server.reading;

import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.contract.Typed;
import org.berrywatt.quantity.Amount;
import org.berrywatt.quantity.Field;
import org.berrywatt.reading.Fields;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.TypedValues;
import org.berrywatt.server.typed.TypedValues.Unusual;
import org.jspecify.annotations.Nullable;

/**
 * Reads a row of a sweep: any two of load, voltage and current; Ohm's law gives the third. What follows inherits the
 * resolution of the meter; the load counts as the resistor's nominal value.
 */
record RowConverter(String path, Unusual unusual) {

    /**
     * The row in V and A.
     *
     * @throws Refusal {@code sweep.rowIncomplete} for fewer than two, {@code quantity.impossible} for a voltage across
     *     no load, or when a number is refused
     */
    SweepRow row(SweepPoint point) {
        var load = load(point.load());
        var voltage = read("voltage", point.voltage(), Fields.VOLTAGE);
        var current = read("current", point.current(), Fields.CURRENT);
        if (voltage != null && current != null) {
            return new SweepRow(
                    load == null ? null : RowAmount.typed(load), RowAmount.typed(voltage), RowAmount.typed(current));
        }
        if (load != null && current != null) {
            return new SweepRow(RowAmount.typed(load), voltageAcross(load, current), RowAmount.typed(current));
        }
        if (load != null && voltage != null) {
            return new SweepRow(RowAmount.typed(load), RowAmount.typed(voltage), currentThrough(load, voltage));
        }
        throw Refusal.of(ProblemCode.SWEEP_ROW_INCOMPLETE).field(path);
    }

    /** A load of 0 is the short circuit, not a slip of the pen. */
    private @Nullable Amount load(@Nullable Typed typed) {
        var taken = TypedValues.isLeftOut(typed)
                ? null
                : TypedValues.number(path + ".load", typed, Unusual.TAKE, Fields.LOAD);
        return taken == null || taken.valueSi() == 0 ? taken : read("load", typed, Fields.LOAD);
    }

    private @Nullable Amount read(String name, @Nullable Typed typed, Field field) {
        return TypedValues.isLeftOut(typed) ? null : TypedValues.number(path + "." + name, typed, unusual, field);
    }

    private RowAmount voltageAcross(Amount load, Amount current) {
        var voltageV = load.valueSi() * current.valueSi();
        TypedValues.judge(path + ".load", voltageV, unusual, Fields.VOLTAGE);
        return RowAmount.derived(voltageV, load.valueSi() * current.resolutionSi());
    }

    private RowAmount currentThrough(Amount load, Amount voltage) {
        TypedValues.requirePositive(path + ".load", load, Fields.LOAD);
        var currentA = voltage.valueSi() / load.valueSi();
        TypedValues.judge(path + ".load", currentA, unusual, Fields.CURRENT);
        return RowAmount.derived(currentA, voltage.resolutionSi() / load.valueSi());
    }
}
