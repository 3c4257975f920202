package sternwright.app.desk.derived;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.open.OpenYard;

/**
 * Answers to questions about a yard, the last few kept as long as nothing in it changes and the day is the same. Any number of
 * threads may ask; two that ask the same at once may both work it out.
 *
 * @param <Q> a question, compared by what it says
 * @param <A> an answer; never changed once it is made
 */
public final class EachOfYard<Q, A> {
    private final OfYard<Known<Q, A>> known;

    private static final class Known<Q, A> {
        private final Map<Q, A> answers;

        Known(int most) {
            answers = new LinkedHashMap<>(16, 0.75f, true) {
                private static final long serialVersionUID = 1;

                @Override
                protected boolean removeEldestEntry(Map.Entry<Q, A> eldest) {
                    return size() > most;
                }
            };
        }

        synchronized @Nullable A find(Q question) {
            return answers.get(question);
        }

        synchronized void keep(Q question, A answer) {
            answers.put(question, answer);
        }
    }

    /**
     * How a question is answered.
     *
     * @param <A> an answer
     * @param <E> what may keep it from being answered; nothing is kept then
     */
    @FunctionalInterface
    public interface Work<A, E extends Exception> {
        /**
         * Works it out.
         *
         * @return the answer
         * @throws E if it cannot be
         */
        A answer() throws E;
    }

    /**
     * Ready to be asked.
     *
     * @param yard the yard
     * @param most how many answers are kept
     */
    public EachOfYard(OpenYard yard, int most) {
        known = new OfYard<>(yard, y -> new Known<>(most));
    }

    /**
     * Answers a question.
     *
     * @param <E> what may keep it from being answered
     * @param question the question
     * @param work answers it from the yard as it is now
     * @return the answer
     * @throws E if it cannot be answered
     */
    public <E extends Exception> A of(Q question, Work<A, E> work) throws E {
        Known<Q, A> now = known.get();
        A before = now.find(question);
        if (before != null) {
            return before;
        }
        A answer = work.answer();
        now.keep(question, answer);
        return answer;
    }
}
