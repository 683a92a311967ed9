/** Team results under a rule and places that say how sure they are. */
@NullMarked
package org.berrywatt.leaderboard;

import org.jspecify.annotations.NullMarked;
