package sternwright.app.desk.derived;

import java.lang.ref.SoftReference;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import sternwright.app.desk.open.OpenYard;

/**
 * Something worked out from a whole yard, good as long as nothing in the yard changes and the day is the same. Any number of threads
 * may ask; those that come while it is worked out wait for it. It is given up when memory runs short, and worked out again.
 *
 * @param <T> what it is; never changed once it is made
 */
public final class OfYard<T> {
    private final OpenYard yard;
    private final Function<OpenYard, T> work;
    private final ReentrantLock working = new ReentrantLock();
    private volatile SoftReference<Known<T>> known = new SoftReference<>(null);

    private record Known<T>(String state, T what) {}

    /**
     * Ready to be asked; nothing is worked out yet.
     *
     * @param yard the yard
     * @param work works it out
     */
    public OfYard(OpenYard yard, Function<OpenYard, T> work) {
        this.yard = yard;
        this.work = work;
    }

    /**
     * What it is as the yard stands now.
     *
     * @return the same object until the yard or the day is another one
     */
    public T get() {
        String state = yard.state() + " " + yard.today();
        Known<T> now = known.get();
        if (now != null && now.state().equals(state)) {
            return now.what();
        }
        working.lock();
        try {
            now = known.get();
            if (now != null && now.state().equals(state)) {
                return now.what();
            }
            Known<T> made = new Known<>(state, work.apply(yard));
            known = new SoftReference<>(made);
            return made.what();
        } finally {
            working.unlock();
        }
    }
}
