package sternwright.season.arrays;

/** Follows the lags from operation to operation until no window gets narrower. */
final class Windows {
    private Windows() {}

    /** Narrows {@code earliest} and {@code latest} in place; a contradiction leaves a window that ends before it begins. */
    static void tighten(SeasonArrays a, int[] earliest, int[] latest) {
        int[] queue = new int[a.n];
        boolean[] waiting = new boolean[a.n];
        int[] visits = new int[a.n];
        int head = 0;
        int size = a.n;
        for (int i = 0; i < a.n; i++) {
            queue[i] = i;
            waiting[i] = true;
        }
        while (size > 0) {
            int i = queue[head];
            head = (head + 1) % a.n;
            size--;
            waiting[i] = false;
            if (earliest[i] > latest[i] || ++visits[i] > a.n + 1) {
                continue;
            }
            int[] lags = a.lags[i];
            for (int x = 0; x < lags.length; x += 3) {
                int j = lags[x];
                if (narrow(earliest, latest, i, j, lags[x + 1], lags[x + 2]) && !waiting[j]) {
                    queue[(head + size) % a.n] = j;
                    size++;
                    waiting[j] = true;
                }
            }
        }
    }

    private static boolean narrow(int[] earliest, int[] latest, int i, int j, int min, int max) {
        int least = Math.max(earliest[j], earliest[i] + min);
        int most = Math.min(latest[j], latest[i] + max);
        boolean narrower = least > earliest[j] || most < latest[j];
        earliest[j] = least;
        latest[j] = most;
        return narrower;
    }

    /** Latest starts if every date is kept that its own window allows. */
    static int[] easyLatest(SeasonArrays a) {
        int[] earliest = a.earliest.clone();
        int[] latest = a.latest.clone();
        for (int i = 0; i < a.n; i++) {
            if (a.latePerQ[i] > 0) {
                latest[i] = Math.min(latest[i], Math.max(earliest[i], a.due[i] - a.length[i]));
            }
        }
        tighten(a, earliest, latest);
        for (int i = 0; i < a.n; i++) {
            latest[i] = Math.min(a.latest[i], Math.max(a.earliest[i], latest[i]));
        }
        return latest;
    }
}
