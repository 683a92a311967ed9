/**
 * What travels between browser and server: requests, answers, live messages, problem codes. Records of keys, texts and
 * SI numbers only; the unit stands in the name. Nothing here computes and no science package looks in here.
 */
@NullMarked
package org.berrywatt.contract;

import org.jspecify.annotations.NullMarked;
