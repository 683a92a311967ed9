package org.berrywatt.server.leaderboard;

import java.util.Map;
import java.util.UUID;
import org.berrywatt.contract.Figure;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.light.Station;

/**
 * The cells of a lab day with all that is measured of them, as of one instant.
 *
 * @param cells by id
 * @param stations where the reading that counts was taken, by cell
 * @param ratiosToControl power per area over that of the control cell, read at the same station near in time, by cell; empty
 *     where nobody asked for it
 */
public record MeasuredDay(
        LabDay day,
        LeaderboardState board,
        Map<UUID, Cell> cells,
        Map<UUID, Station> stations,
        Map<UUID, Figure> ratiosToControl) {}
