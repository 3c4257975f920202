package sternwright.app.desk.derived;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The last few answers to questions; what nobody has asked for longest is let go of first. Any number of threads may ask; two that ask
 * the same at once may both work it out.
 *
 * @param <Q> a question, compared by what it says
 * @param <A> an answer; never changed once it is made
 */
public final class LastFew<Q, A> {
    private final Map<Q, A> answers;

    /**
     * Ready to be asked.
     *
     * @param most how many answers are kept
     */
    public LastFew(int most) {
        answers = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Q, A> eldest) {
                return size() > most;
            }
        };
    }

    /**
     * An answer that is there.
     *
     * @param question the question
     * @return null if it was not kept, or is let go of
     */
    public synchronized @Nullable A find(Q question) {
        return answers.get(question);
    }

    /**
     * Keeps an answer.
     *
     * @param question the question
     * @param answer the answer
     */
    public synchronized void keep(Q question, A answer) {
        answers.put(question, answer);
    }

    /**
     * The answer that is there, or else a new one, which is kept.
     *
     * @param question the question
     * @param work works it out
     * @return the answer
     */
    public A of(Q question, Supplier<A> work) {
        A before = find(question);
        if (before != null) {
            return before;
        }
        A answer = work.get();
        keep(question, answer);
        return answer;
    }
}
