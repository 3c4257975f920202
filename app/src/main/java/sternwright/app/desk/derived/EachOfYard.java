package sternwright.app.desk.derived;

import sternwright.app.desk.open.OpenYard;

/**
 * Answers to questions about a yard, the last few kept as long as nothing in it changes and the day is the same. Any number of
 * threads may ask; two that ask the same at once may both work it out.
 *
 * @param <Q> a question, compared by what it says
 * @param <A> an answer; never changed once it is made
 */
public final class EachOfYard<Q, A> {
    private final OfYard<LastFew<Q, A>> known;

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
        known = new OfYard<>(yard, y -> new LastFew<>(most));
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
        LastFew<Q, A> now = known.get();
        A before = now.find(question);
        if (before != null) {
            return before;
        }
        A answer = work.answer();
        now.keep(question, answer);
        return answer;
    }
}
