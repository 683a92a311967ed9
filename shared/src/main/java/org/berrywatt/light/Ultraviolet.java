package org.berrywatt.light;

/** How much of a lamp's light lies below 388 nm, where bare titania answers (band gap of anatase 3.2 eV). */
public enum Ultraviolet {
    /** Sun, also behind window glass. */
    RICH,
    /** A trace. */
    POOR,
    /** White LEDs of blue light and phosphor. */
    NONE
}
