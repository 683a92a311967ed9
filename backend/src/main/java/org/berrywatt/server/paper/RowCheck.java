package org.berrywatt.server.paper;

import java.util.Set;
import org.berrywatt.contract.Typed;
import org.berrywatt.quantity.Field;
import org.berrywatt.reading.Fields;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.TypedValues;
import org.berrywatt.server.typed.TypedValues.Unusual;

/**
 * Looks at each value of a row by itself, so that all that is wrong with a row is told at once; what only shows when they are
 * taken together is left to the doors.
 */
record RowCheck(PaperTime times, Choices choices, Faults faults) {

    /** Where a number that is possible but unusual waits to be confirmed, as it does on a phone. */
    private static final Set<PaperTable> ASKED = Set.of(PaperTable.READINGS, PaperTable.SWEEP_POINTS);

    boolean passes(PaperTable table, PaperRow row) {
        var before = faults.count();
        table.columns().forEach(column -> check(row, column, () -> look(table, row, column)));
        return faults.count() == before;
    }

    private void check(PaperRow row, PaperColumn column, Runnable look) {
        try {
            look.run();
        } catch (Refusal refusal) {
            faults.tell(row, column.key(), refusal);
        }
    }

    private void look(PaperTable table, PaperRow row, PaperColumn column) {
        if (column.needed()) {
            row.needed(column.key());
        }
        var typed = row.number(column.key());
        var field = column.field();
        if (typed == null) {
            return;
        }
        if (field != null) {
            number(column.key(), typed, field, ASKED.contains(table) && !isConfirmed(row));
        } else if (column.key().equals(PaperTime.COLUMN)) {
            times.of(row);
        } else if (column.choices().equals(YesNo.CHOICES)) {
            YesNo.of(column.key(), typed.text());
        } else if (!column.choices().isEmpty()) {
            Given.choice(column.key(), choices.read(column, typed.text()), column.choices());
        }
    }

    private static void number(String path, Typed typed, Field field, boolean asked) {
        if (field.equals(Fields.AREA)) {
            TypedValues.area(path, typed, field);
            return;
        }
        var amount = TypedValues.number(path, typed, Unusual.TAKE, field);
        if (asked && !(field.equals(Fields.LOAD) && amount.valueSi() == 0)) {
            TypedValues.number(path, typed, Unusual.ASK, field);
        }
    }

    private static boolean isConfirmed(PaperRow row) {
        try {
            return YesNo.of("confirmed", row.text("confirmed"));
        } catch (Refusal unclear) {
            return false;
        }
    }
}
