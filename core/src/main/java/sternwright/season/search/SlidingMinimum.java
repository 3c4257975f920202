package sternwright.season.search;

import sternwright.season.arrays.MarginalCost;

/** Minimum of an array over a window that slides with the index of another array. */
final class SlidingMinimum {
    private int[] queue = new int[1024];

    /**
     * For every t from {@code pLow} to {@code pHigh}: out[t - pBase] += min of up[u - uBase] over u in [t + min, t + max] and
     * [uLow, uHigh]; {@link MarginalCost#NEVER} where that window is empty or impossible.
     */
    void addTo(int[] out, int pBase, int pLow, int pHigh, int[] up, int uBase, int uLow, int uHigh, int min, int max) {
        if (queue.length < uHigh - uLow + 2) {
            queue = new int[2 * (uHigh - uLow + 2)];
        }
        int head = 0;
        int tail = 0;
        int next = uLow;
        for (int t = pLow; t <= pHigh; t++) {
            int last = Math.min(uHigh, t + max);
            for (; next <= last; next++) {
                int value = up[next - uBase];
                while (tail > head && up[queue[tail - 1] - uBase] >= value) {
                    tail--;
                }
                queue[tail++] = next;
            }
            while (head < tail && queue[head] < t + min) {
                head++;
            }
            int least = head < tail ? up[queue[head] - uBase] : MarginalCost.NEVER;
            out[t - pBase] = Math.min(MarginalCost.NEVER, out[t - pBase] + least);
        }
    }
}
