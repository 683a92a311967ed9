/** Whatever may arrive at the port that no page of ours would send. */
package org.berrywatt.server.malformed;
