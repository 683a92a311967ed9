package org.berrywatt.server.calculator;

/** What the calculator takes: wider than any cell or module, narrow enough that every answer is finite. */
final class Ranges {

    static final double ROOM_C = 25;

    static final Range VOLTAGE_V = Range.closed(-1e4, 1e4, "V");
    static final Range CURRENT_A = Range.closed(-1e4, 1e4, "A");
    static final Range LOAD_OHM = Range.closed(0, 1e9, "Ω");
    static final Range VOLTAGE_UNCERTAINTY_V = Range.closed(0, 1e4, "V");
    static final Range CURRENT_UNCERTAINTY_A = Range.closed(0, 1e4, "A");
    static final Range AREA_CM2 = Range.closed(1e-6, 1e4, "cm²");
    static final Range AREA_UNCERTAINTY_CM2 = Range.closed(0, 1e4, "cm²");
    static final Range IRRADIANCE_WM2 = Range.closed(1e-3, 1e5, "W/m²");
    static final Range ILLUMINANCE_LX = Range.closed(1e-3, 1e6, "lx");
    static final Range LIGHT_RESOLUTION = Range.closed(0, 1e6, "lx or W/m²");
    static final Range LIGHT_AGE_MINUTES = Range.closed(0, 1440, "min");
    static final Range PERCENT = Range.closed(0, 100, "%");
    static final Range CELL_C = Range.closed(-40, 120, "°C");
    static final Range TEMPERATURE_UNCERTAINTY_C = Range.closed(0, 100, "°C");
    static final Range PER_KELVIN = Range.closed(-0.05, 0.05, "per K");
    static final Range ESTIMATE = Range.closed(-1e30, 1e30, "");
    static final Range STANDARD_UNCERTAINTY = Range.closed(0, 1e30, "");
    static final Range DEGREES_OF_FREEDOM = Range.closed(1, 1e6, "");
    static final Range RESULT = Range.closed(0, 1e9, "");
    static final Range RESULT_END = Range.closed(-1e9, 1e9, "");
    static final Range TEMPERATURE_C = Range.closed(-100, 300, "°C");
    static final Range FIT_TEMPERATURE_C = Range.closed(-100, 200, "°C");
    static final Range PHOTOCURRENT_A = Range.closed(0, 1e4, "A");
    static final Range SATURATION_CURRENT_A = Range.closed(1e-100, 1e4, "A");
    static final Range IDEALITY_FACTOR = Range.closed(0.1, 100, "");
    static final Range SERIES_OHM = Range.closed(0, 1e9, "Ω");
    static final Range SHUNT_OHM = Range.closed(1e-6, 1e15, "Ω");
    static final Range BLACK_BODY_K = Range.closed(1000, 20_000, "K");
    static final Range DISTANCE_M = Range.closed(1e-3, 1000, "m");
    static final Range DIAMETER_M = Range.closed(1e-6, 10, "m");
    static final Range ANGLE_DEG = Range.below(90, "°");

    private Ranges() {}
}
