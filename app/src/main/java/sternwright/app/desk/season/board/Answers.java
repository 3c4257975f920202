package sternwright.app.desk.season.board;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Questions that take seconds, each worked out once behind the asker; the last few answers are kept. */
final class Answers<Q, A> {
    private static final int KEPT = 6;

    private final Executor worker;
    private final Map<Q, CompletableFuture<A>> known = new LinkedHashMap<>(16, 0.75f, true);

    Answers(Executor worker) {
        this.worker = worker;
    }

    /** The answer; empty while it is being worked out, or when so much waits that it could not be begun. */
    Optional<A> ask(Q question, Supplier<A> work) {
        CompletableFuture<A> answer;
        synchronized (known) {
            answer = known.get(question);
            if (answer == null) {
                try {
                    answer = CompletableFuture.supplyAsync(work, worker);
                } catch (RejectedExecutionException full) {
                    return Optional.empty();
                }
                known.put(question, answer);
                while (known.size() > KEPT) {
                    known.remove(known.keySet().iterator().next());
                }
            }
        }
        return now(answer);
    }

    /** A worker far less urgent than a page, one thing at a time. */
    static ThreadPoolExecutor behind(String name, int waiting) {
        ThreadPoolExecutor worker =
                new ThreadPoolExecutor(1, 1, 1, TimeUnit.MINUTES, new ArrayBlockingQueue<>(waiting), task -> {
                    Thread thread = new Thread(task, name);
                    thread.setDaemon(true);
                    thread.setPriority(Thread.MIN_PRIORITY);
                    return thread;
                });
        worker.allowCoreThreadTimeOut(true);
        return worker;
    }

    /** Lets go of an answer that is of no use any more; the question can be asked again. */
    void forget(Q question) {
        synchronized (known) {
            known.remove(question);
        }
    }

    /** Whether the question was asked and is not answered yet. */
    boolean underWay(Q question) {
        synchronized (known) {
            CompletableFuture<A> answer = known.get(question);
            return answer != null && !answer.isDone();
        }
    }

    /** The answer if the question was asked before. */
    Optional<A> known(Q question) {
        synchronized (known) {
            return now(known.get(question));
        }
    }

    private static <A> Optional<A> now(@Nullable CompletableFuture<A> answer) {
        if (answer == null || !answer.isDone()) {
            return Optional.empty();
        }
        try {
            return Optional.of(answer.join());
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException own) {
                throw own;
            }
            throw e;
        }
    }
}
