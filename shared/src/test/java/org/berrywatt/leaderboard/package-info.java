@NullMarked
package org.berrywatt.leaderboard;

import org.jspecify.annotations.NullMarked;
