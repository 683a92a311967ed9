package org.berrywatt.server.findings;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Objects;
import org.berrywatt.cell.BuildParameter;
import org.berrywatt.quantity.Field;
import org.berrywatt.quantity.MeasuringUnit;
import org.berrywatt.quantity.Units;
import org.berrywatt.server.cell.RecipeEntry;
import org.jspecify.annotations.Nullable;

/**
 * The level of a build parameter at which a cell was built.
 *
 * @param key key of a sort's level; a number as text, so that 450 °C and 450,0 °C are one level
 * @param number a number in the parameter's default unit
 */
record RecordedLevel(String key, @Nullable Double number) {

    /** Further digits come from converting units, not from people. */
    private static final MathContext DIGITS = new MathContext(6);

    static RecordedLevel of(RecipeEntry entry, BuildParameter parameter) {
        Double valueSi = entry.valueSi();
        return valueSi == null
                ? new RecordedLevel(entry.text(), null)
                : number(new BigDecimal(unit(parameter).fromSi(valueSi), DIGITS));
    }

    /** The unit in which a numeric parameter is shown. */
    static MeasuringUnit unit(BuildParameter parameter) {
        Field field = Objects.requireNonNull(parameter.field());
        return Units.of(field.unitKeys().get(0)).orElseThrow();
    }

    private static RecordedLevel number(BigDecimal number) {
        return new RecordedLevel(number.stripTrailingZeros().toPlainString(), number.doubleValue());
    }
}
