/** Figures are carried in SI; on the screen power per area stands in µW/cm², which fits a school's cells. */

/** 1 µW/cm² in W/m². */
export const MICROWATT_PER_CM2 = 0.01;
