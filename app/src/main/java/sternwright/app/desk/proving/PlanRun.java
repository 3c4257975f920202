package sternwright.app.desk.proving;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import sternwright.visit.BoatAnswer;
import sternwright.visit.BoatPlan;
import sternwright.visit.BoatVisits;
import sternwright.visit.LeftAnswer;
import sternwright.visit.solver.SolveLimits;

/** One boat's plan while it is being proved, and what was asked about it. */
public final class PlanRun {
    private static final double SECONDS = 20;
    private static final double SECONDS_TO_ARGUE = 8;
    private static final int QUESTIONS_KEPT = 20;

    private final Supplier<BoatVisits> question;
    private final AtomicBoolean taken = new AtomicBoolean();
    private final Map<LeftQuestion, Left> lefts = new LinkedHashMap<>();

    @Nullable
    private BoatVisits visits;

    @Nullable
    private BoatAnswer first;

    private volatile boolean stopped;

    @Nullable
    private volatile BoatAnswer proved;

    @Nullable
    private volatile Alternatives alternatives;

    private volatile boolean failed;

    PlanRun(Supplier<BoatVisits> question) {
        this.question = question;
    }

    /**
     * The best plans with another number of visits.
     *
     * @param fewer with one visit fewer
     * @param more with one visit more
     */
    public record Alternatives(BoatAnswer fewer, BoatAnswer more) {}

    /** What leaving a work costs. */
    public static final class Left {
        @Nullable
        private volatile LeftAnswer answer;

        private volatile boolean known;

        /**
         * Whether it has been worked out.
         *
         * @return true once it has
         */
        public boolean known() {
            return known;
        }

        /**
         * The answer.
         *
         * @return empty as long as it is not known, and if no such work is planned
         */
        public Optional<LeftAnswer> answer() {
            return Optional.ofNullable(answer);
        }
    }

    /**
     * The plan as it is known now: proved, or the one made at once.
     *
     * @return a plan, or what clashes
     */
    public BoatAnswer answer() {
        BoatAnswer best = proved;
        return best == null ? first() : best;
    }

    /**
     * The plans that somebody may have been shown: a proof that ends takes nobody's plan from under his eyes.
     *
     * @return the best first; none where there is no plan
     */
    public List<BoatPlan> shown() {
        BoatAnswer now = answer();
        BoatAnswer before;
        synchronized (this) {
            before = first;
        }
        return Stream.of(now, before == null ? now : before)
                .filter(BoatPlan.class::isInstance)
                .map(BoatPlan.class::cast)
                .distinct()
                .toList();
    }

    private synchronized BoatAnswer first() {
        BoatAnswer now = first;
        if (now == null) {
            now = visits().first(limits(SECONDS));
            first = now;
        }
        return now;
    }

    /**
     * The question behind it, for plans under other demands.
     *
     * @return the boat's visits
     */
    public synchronized BoatVisits visits() {
        BoatVisits known = visits;
        if (known == null) {
            known = question.get();
            visits = known;
        }
        return known;
    }

    /**
     * Whether something is still being worked out.
     *
     * @return false once all that was asked is known
     */
    public boolean running() {
        return !failed && (alternatives == null || nextLeft() != null);
    }

    /**
     * Whether the proof is done.
     *
     * @return true once the plan will not change any more
     */
    public boolean proofDone() {
        return failed || proved != null;
    }

    /**
     * The best plans with one visit fewer and one more.
     *
     * @return empty as long as they are not known, and where there is no plan
     */
    public Optional<Alternatives> alternatives() {
        return Optional.ofNullable(alternatives);
    }

    /** Ends the search; the best plan so far is kept. */
    public void stop() {
        stopped = true;
    }

    Left left(LeftQuestion question) {
        synchronized (lefts) {
            if (lefts.size() >= QUESTIONS_KEPT && !lefts.containsKey(question)) {
                lefts.remove(lefts.keySet().iterator().next());
            }
            return lefts.computeIfAbsent(question, q -> new Left());
        }
    }

    boolean wantsWork() {
        return running() && taken.compareAndSet(false, true);
    }

    void notTaken() {
        taken.set(false);
    }

    /** Works out what is missing, the proof first. */
    void work() {
        try {
            prove();
            for (Map.Entry<LeftQuestion, Left> next = nextLeft(); next != null; next = nextLeft()) {
                settle(next.getKey(), next.getValue());
            }
        } catch (RuntimeException e) {
            failed = true;
            throw e;
        } finally {
            taken.set(false);
        }
    }

    private void prove() {
        if (proved == null) {
            proved = stopped ? first() : visits().plan(limits(SECONDS));
        }
        if (alternatives == null) {
            BoatAnswer answer = answer();
            alternatives = answer instanceof BoatPlan plan && !stopped
                    ? new Alternatives(
                            visits().withVisits(plan, -1, limits(SECONDS_TO_ARGUE)),
                            visits().withVisits(plan, 1, limits(SECONDS_TO_ARGUE)))
                    : new Alternatives(answer, answer);
        }
    }

    private void settle(LeftQuestion question, Left left) {
        if (answer() instanceof BoatPlan plan) {
            left.answer = visits().leftUntil(
                            plan, question.part(), question.ruleId(), question.until(), limits(SECONDS_TO_ARGUE))
                    .orElse(null);
        }
        left.known = true;
    }

    private Map.@Nullable Entry<LeftQuestion, Left> nextLeft() {
        synchronized (lefts) {
            return lefts.entrySet().stream()
                    .filter(e -> !e.getValue().known)
                    .findFirst()
                    .map(e -> Map.entry(e.getKey(), e.getValue()))
                    .orElse(null);
        }
    }

    private SolveLimits limits(double seconds) {
        return SolveLimits.ofSeconds(() -> stopped ? Long.MAX_VALUE / 2 : System.nanoTime(), seconds);
    }
}
