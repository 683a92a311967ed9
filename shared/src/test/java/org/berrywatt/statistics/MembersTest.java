package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MembersTest {

    @Test
    void gathersTheIndicesOfEveryBlockRising() {
        assertThat(Members.of(new int[] {2, 0, 2, 0, 3})).isDeepEqualTo(new int[][] {{1, 3}, {}, {0, 2}, {4}});
    }

    @Test
    void knowsNoBlockWhereThereIsNoMember() {
        assertThat(Members.of(new int[0])).isEmpty();
    }
}
