package org.berrywatt.server.demo;

/** The teacher looked at the incident of the entry's id; there is nothing more to say. */
record IncidentLook() {}
