package org.berrywatt.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.GIGA;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static javax.measure.MetricPrefix.NANO;
import static javax.measure.MetricPrefix.PICO;
import static tech.units.indriya.AbstractUnit.ONE;
import static tech.units.indriya.unit.Units.AMPERE;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.DAY;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.LUX;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.MOLE;
import static tech.units.indriya.unit.Units.OHM;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.VOLT;
import static tech.units.indriya.unit.Units.WATT;

import java.math.BigDecimal;
import java.util.List;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import tech.units.indriya.AbstractUnit;

/** The units themselves, with their factors from the JSR 385 unit library. */
final class UnitTable {

    static final List<MeasuringUnit> ALL = List.of(
            unit("V", Quantity.VOLTAGE, VOLT, "V", "volt", "volts"),
            unit("mV", Quantity.VOLTAGE, MILLI(VOLT), "mV", "millivolt", "millivolts"),
            unit("uV", Quantity.VOLTAGE, MICRO(VOLT), "µV", "uV"),
            unit("A", Quantity.CURRENT, AMPERE, "A", "amp", "amps"),
            unit("mA", Quantity.CURRENT, MILLI(AMPERE), "mA", "milliamp", "milliamps"),
            unit("uA", Quantity.CURRENT, MICRO(AMPERE), "µA", "uA", "microamp", "microamps"),
            unit("nA", Quantity.CURRENT, NANO(AMPERE), "nA"),
            unit("pA", Quantity.CURRENT, PICO(AMPERE), "pA"),
            unit("ohm", Quantity.RESISTANCE, OHM, "Ω", "ohm", "ohms", "R"),
            unit("mohm", Quantity.RESISTANCE, MILLI(OHM), "mΩ", "mohm"),
            unit("kohm", Quantity.RESISTANCE, KILO(OHM), "kΩ", "kohm", "kohms", "k"),
            unit("Mohm", Quantity.RESISTANCE, MEGA(OHM), "MΩ", "Mohm", "Mohms"),
            unit("Gohm", Quantity.RESISTANCE, GIGA(OHM), "GΩ", "Gohm", "Gohms"),
            unit("m", Quantity.LENGTH, METRE, "m"),
            unit("cm", Quantity.LENGTH, CENTI(METRE), "cm"),
            unit("mm", Quantity.LENGTH, MILLI(METRE), "mm"),
            unit("um", Quantity.LENGTH, MICRO(METRE), "µm", "um"),
            unit("nm", Quantity.LENGTH, NANO(METRE), "nm"),
            unit("m2", Quantity.AREA, METRE.pow(2), "m²", "m2", "m^2", "sqm"),
            unit("cm2", Quantity.AREA, CENTI(METRE).pow(2), "cm²", "cm2", "cm^2", "sqcm"),
            unit("mm2", Quantity.AREA, MILLI(METRE).pow(2), "mm²", "mm2", "mm^2", "sqmm"),
            unit(
                    "Wm2",
                    Quantity.IRRADIANCE,
                    WATT.divide(METRE.pow(2)),
                    "W/m²",
                    "W/m2",
                    "W/m^2",
                    "Wm-2",
                    "Wm^-2",
                    "Wm2"),
            unit(
                    "mWcm2",
                    Quantity.IRRADIANCE,
                    MILLI(WATT).divide(CENTI(METRE).pow(2)),
                    "mW/cm²",
                    "mW/cm2",
                    "mW/cm^2",
                    "mWcm-2",
                    "mWcm2"),
            unit(
                    "uWcm2",
                    Quantity.IRRADIANCE,
                    MICRO(WATT).divide(CENTI(METRE).pow(2)),
                    "µW/cm²",
                    "uW/cm2",
                    "uW/cm^2",
                    "uWcm-2",
                    "uWcm2"),
            unit(
                    "kWm2",
                    Quantity.IRRADIANCE,
                    KILO(WATT).divide(METRE.pow(2)),
                    "kW/m²",
                    "kW/m2",
                    "kW/m^2",
                    "kWm-2",
                    "kWm2"),
            unit("lx", Quantity.ILLUMINANCE, LUX, "lx", "lux"),
            unit("klx", Quantity.ILLUMINANCE, KILO(LUX), "klx", "klux"),
            unit("degC", Quantity.TEMPERATURE, CELSIUS, "°C", "C", "°", "degC", "celsius"),
            unit("K", Quantity.TEMPERATURE, KELVIN, "K", "kelvin"),
            unit("s", Quantity.DURATION, SECOND, "s", "sec", "second", "seconds"),
            unit("min", Quantity.DURATION, MINUTE, "min", "Min", "mins", "minute", "minutes"),
            unit("h", Quantity.DURATION, HOUR, "h", "hr", "hrs", "hour", "hours"),
            unit("d", Quantity.DURATION, DAY, "d", "day", "days"),
            unit("g", Quantity.MASS, GRAM, "g", "gram", "grams"),
            unit("mg", Quantity.MASS, MILLI(GRAM), "mg"),
            unit("ug", Quantity.MASS, MICRO(GRAM), "µg", "ug"),
            unit("kg", Quantity.MASS, KILO(GRAM), "kg"),
            unit("L", Quantity.VOLUME, LITRE, "L", "litre", "liter"),
            unit("mL", Quantity.VOLUME, MILLI(LITRE), "mL"),
            unit("uL", Quantity.VOLUME, MICRO(LITRE), "µL", "uL"),
            unit("molL", Quantity.CONCENTRATION, MOLE.divide(LITRE), "mol/L", "molL", "M"),
            unit("mmolL", Quantity.CONCENTRATION, MILLI(MOLE).divide(LITRE), "mmol/L", "mmolL", "mM"),
            unit("pH", Quantity.ACIDITY, ONE, "pH"),
            unit("percent", Quantity.FRACTION, PERCENT, "%", "percent"),
            unit("one", Quantity.FRACTION, ONE, "1"),
            unit("count", Quantity.COUNT, ONE, "×", "x", "layer", "layers", "drop", "drops"),
            unit("deg", Quantity.ANGLE, RADIAN.multiply(Math.PI).divide(180), "°", "deg", "degree", "degrees"),
            unit("rad", Quantity.ANGLE, RADIAN, "rad"));

    private UnitTable() {}

    private static MeasuringUnit unit(String key, Quantity quantity, Unit<?> unit, String... symbols) {
        UnitConverter toSi = ((AbstractUnit<?>) unit).getSystemConverter();
        BigDecimal zero = decimal(toSi.convert((Number) BigDecimal.ZERO));
        BigDecimal one = decimal(toSi.convert((Number) BigDecimal.ONE));
        return new MeasuringUnit(
                key, quantity, List.of(symbols), one.subtract(zero).doubleValue(), zero.doubleValue());
    }

    private static BigDecimal decimal(Number number) {
        return new BigDecimal(number.toString());
    }
}
