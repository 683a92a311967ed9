package org.berrywatt.server.live;

import java.util.function.Function;
import java.util.function.Supplier;

/**
 * What a feed tells of.
 *
 * @param kind of its messages, also the last part of its topic's name
 * @param state computes the state from what is recorded now
 * @param body what a message says of the state when it leaves
 */
record Subject<S>(String kind, Supplier<S> state, Function<S, Object> body) {}
