package org.berrywatt.server.paper;

import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.light.Stations;
import org.berrywatt.server.reading.Readings;
import org.berrywatt.server.team.Teams;
import org.springframework.stereotype.Component;

/** The features through which a person's entries go, and through which paper's go as well. */
@Component
record Doors(Teams teams, Stations stations, Cells cells, Readings readings) {}
