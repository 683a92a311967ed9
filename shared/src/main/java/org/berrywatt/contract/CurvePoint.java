package org.berrywatt.contract;

/** A point of an I-V curve, delivered current positive. */
public record CurvePoint(double voltageV, double currentA) {}
