package pegbed.session;

import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Consumer;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.storage.disk.ProgramLog;

/**
 * Work that is done in the background for an owner. Its result, or one text for the person where there is none, reaches
 * the owner's thread in any case, unless the work was cancelled; an error that nobody expected is in the log, which the
 * text names. {@link #latest} is for work of which only the newest request counts, {@link #run} for work all of which
 * is to be done. Belongs to the owner's thread.
 */
public final class BackgroundTask {
    /** What is done in the background. */
    @FunctionalInterface
    public interface Work<T> {
        /**
         * Does the work.
         *
         * @param monitor knows whether the result is still wanted
         * @throws InputException if it can't be done, with a sentence for the person
         * @throws Monitor.Cancelled if it was not wanted any more
         */
        T run(Monitor monitor) throws InputException;
    }

    /**
     * What becomes of it, on the owner's thread; one of the two is called.
     *
     * @param done gets the result
     * @param failed gets the text for the person
     */
    public record Outcome<T>(Consumer<T> done, Consumer<String> failed) {}

    /** One piece of work. */
    private static final class Request implements Monitor {
        private volatile boolean cancelled;

        @Override
        public void progress(double share) {
            // Nobody looks.
        }

        @Override
        public boolean cancelled() {
            return cancelled;
        }
    }

    private final String failure;
    private final Executor worker;
    private final Executor owner;
    private final ProgramLog log;
    private Request newest = new Request();

    /**
     * @param failure what is said of an error that nobody expected, a sentence without its full stop, such as
     *     {@code The card could not be drawn}
     * @param worker does the work
     * @param owner runs what belongs to the owner's thread
     * @param log keeps errors that nobody expected
     */
    public BackgroundTask(String failure, Executor worker, Executor owner, ProgramLog log) {
        this.failure = failure;
        this.worker = worker;
        this.owner = owner;
        this.log = log;
    }

    /**
     * Asks for work that takes the place of what was asked for before: that is cancelled, and what it yields dropped.
     */
    public <T> void latest(Work<T> work, Outcome<T> outcome) {
        cancel();
        Request request = new Request();
        newest = request;
        start(request, work, outcome);
    }

    /** Cancels the {@link #latest} work; neither a result nor a failure of it is delivered. */
    public void cancel() {
        newest.cancelled = true;
    }

    /** Asks for work that nothing cancels. */
    public <T> void run(Work<T> work, Outcome<T> outcome) {
        start(new Request(), work, outcome);
    }

    private <T> void start(Request request, Work<T> work, Outcome<T> outcome) {
        try {
            worker.execute(() -> work(request, work, outcome));
        } catch (RejectedExecutionException e) {
            outcome.failed().accept(log.report(failure, e));
        }
    }

    private <T> void work(Request request, Work<T> work, Outcome<T> outcome) {
        if (request.cancelled) {
            return;
        }
        T result;
        try {
            result = work.run(request);
        } catch (InputException e) {
            deliver(request, outcome.failed(), e.getMessage());
            return;
        } catch (Throwable e) {
            if (!(e instanceof Monitor.Cancelled && request.cancelled)) {
                deliver(request, outcome.failed(), log.report(failure, e));
            }
            return;
        }
        deliver(request, outcome.done(), result);
    }

    private <T> void deliver(Request request, Consumer<T> to, T what) {
        owner.execute(() -> {
            if (!request.cancelled) {
                to.accept(what);
            }
        });
    }
}
