package org.berrywatt.statistics;

import java.util.Arrays;

/** Who belongs to which block: of cells by the thousand there are blocks by the hundred, so this counts rather than streams. */
public final class Members {

    private Members() {}

    /**
     * Indices of every block's members, rising; none for a number that no block has.
     *
     * @param blocks block of every member, each in [0, ∞)
     */
    public static int[][] of(int[] blocks) {
        int[] sizes = new int[Arrays.stream(blocks).max().orElse(-1) + 1];
        for (int block : blocks) {
            sizes[block]++;
        }
        int[][] members = Arrays.stream(sizes).mapToObj(int[]::new).toArray(int[][]::new);
        Arrays.fill(sizes, 0);
        for (int i = 0; i < blocks.length; i++) {
            members[blocks[i]][sizes[blocks[i]]++] = i;
        }
        return members;
    }
}
