package org.berrywatt.demo;

import org.berrywatt.demo.Life.StageEnd;

/** The words that a team added to an outcome. */
final class Note {

    private Note() {}

    static String on(PlannedCell cell, StageEnd end) {
        return switch (end.failure()) {
            case "washedOff" ->
                "white flakes in the " + (cell.dye().equals("onionSkin") ? "onion broth" : "berry juice");
            case "crackedWhileDrying" -> "dried in the sun, crazed like mud";
            case "stayedBrown" -> "caramel brown even when cold";
            case "glassBent" -> "corner sagged, will not close";
            case "leaked" -> "ran out under the clip";
            case "electrodesTouch" -> "0 mV whatever the light";
            default -> "";
        };
    }
}
