package org.berrywatt.contract;

/** What a light reading should have been, asked about before it is corrected. */
public record LightPreviewRequest(Typed reading) {}
