package pegbed.session;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.storage.disk.ProgramLog;

/**
 * Keeps the answers in step with the peg. The newest request wins: older work is cancelled, and what it yields is not
 * shown as current. A change of the target alone keeps the bottom and only looks for the flat spots again; one reading
 * more is shown at once on what was learned before, and a peg that was just opened by its own readings, until all is
 * worked out. Belongs to one thread, the owner's; the work is done by a worker.
 */
final class Recomputation {
    /** Finds the bottom of a peg. */
    @FunctionalInterface
    interface Fitting {
        PegMap fit(Peg peg, Monitor monitor) throws InputException;

        /**
         * The bottom by what the peg's own readings say, to be shown until {@link #fit} has taken in what else is
         * known.
         *
         * @return empty where there is nothing else that would take long
         */
        default Optional<PegMap> alone(Peg peg, Monitor monitor) throws InputException {
            return Optional.empty();
        }
    }

    /** Progress is reported in steps of this share. */
    private static final double STEP = 0.05;

    private static final String FAILURE = "The bottom could not be worked out, so undo the last change";

    private final Fitting fitting;
    private final Executor owner;
    private final BackgroundTask first;
    private final BackgroundTask afterwards;
    private final Runnable changed;
    private final Consumer<PegMap> mapped;
    private final Runnable progressed;
    private Answer answer = new Answer.NothingYet(Optional.empty());
    /** Set by the owner, looked at by the workers too. */
    private volatile Request newest;

    /** What is shown of a peg by its own readings alone, until all is worked out. */
    private Optional<PegMap> alone = Optional.empty();

    private double progress;
    private int document;

    /**
     * @param fitting the work
     * @param executors who does it
     * @param log keeps errors that nobody expected
     * @param changed run on the owner's thread when the answer has changed
     * @param mapped gets new bottoms on the worker's thread, before anything is found on them
     * @param progressed run on the owner's thread when the work has gone on
     */
    Recomputation(
            Fitting fitting,
            Session.Executors executors,
            ProgramLog log,
            Runnable changed,
            Consumer<PegMap> mapped,
            Runnable progressed) {
        this.fitting = fitting;
        owner = executors.owner();
        first = new BackgroundTask(FAILURE, executors.worker(), owner, log);
        afterwards = new BackgroundTask(FAILURE, executors.afterwards(), owner, log);
        this.changed = changed;
        this.mapped = mapped;
        this.progressed = progressed;
        newest = new Request(-1, Peg.EMPTY, document);
    }

    Answer answer() {
        return answer;
    }

    /** How much of the running work is done, 0 to 1. */
    double progress() {
        return progress;
    }

    /** Another peg altogether: its answers have nothing to do with the old ones. */
    void forget() {
        stop();
        document++;
        newest = new Request(-1, Peg.EMPTY, document);
        answer = new Answer.NothingYet(Optional.empty());
        alone = Optional.empty();
    }

    private void stop() {
        first.cancel();
        afterwards.cancel();
    }

    /** The peg has changed. */
    void request(long revision, Peg peg) {
        stop();
        Request request = new Request(revision, peg, document);
        newest = request;
        progress = 0;
        Optional<Answer> missing = MissingInputs.of(peg);
        if (missing.isPresent()) {
            Optional<Answer.Ready> old = answer.picture();
            answer = old.isPresent() ? MissingInputs.with(missing.get(), old.get()) : missing.get();
            changed.run();
            // Who heard of it may have asked for something newer.
            if (request == newest) {
                first.latest(
                        monitor -> drawPlace(request, monitor),
                        outcome(request, place -> place.ifPresent(drawn -> showPlace(missing.get(), drawn))));
            }
            return;
        }
        Optional<Answer.Ready> before = answer.shown();
        answer = new Answer.Computing(revision, before);
        Optional<PegMap> known = before.map(Answer.Ready::map).filter(this::isWorkedOut);
        Optional<PegMap> sameBottom =
                known.filter(map -> PegMap.bottomOf(map.peg()).equals(PegMap.bottomOf(peg)));
        if (sameBottom.isPresent()) {
            // Quick, and worth showing though overtaken, as the steps of a drag are.
            first.run(
                    monitor -> publishLater(request, sameBottom.get().withPeg(peg), monitor),
                    outcome(request, published -> {}));
        } else {
            first.latest(
                    monitor -> work(request, known, before.isEmpty(), monitor),
                    outcome(request, soon -> soon.ifPresent(shown -> showMeanwhile(request, shown))));
        }
        changed.run();
    }

    private <T> BackgroundTask.Outcome<T> outcome(Request request, Consumer<T> done) {
        return new BackgroundTask.Outcome<>(done, why -> fail(request, why));
    }

    /** Stops the running work; the old answers stay, marked as old. */
    void cancel() {
        if (answer instanceof Answer.Computing computing) {
            stop();
            answer = new Answer.Failed(
                    computing.revision(), "Stopped; change anything to work it out again.", computing.before());
            changed.run();
        }
    }

    /** Whether nothing more is to come for a bottom. */
    private boolean isWorkedOut(PegMap map) {
        return !map.isProvisional() && !alone.map(map::differsInWishesOnly).orElse(false);
    }

    /**
     * Finds the answers, or others to be shown meanwhile: those in which one reading more was added to what was known
     * before, and, where nothing is shown yet, those of the peg's own readings.
     */
    private Optional<Answer.Ready> work(Request request, Optional<PegMap> known, boolean nothingShown, Monitor monitor)
            throws InputException {
        Optional<PegMap> soon = withOneMore(request, known);
        if (soon.isEmpty() && nothingShown) {
            soon = fitting.alone(request.peg, new Progress(request, monitor));
        }
        if (soon.isPresent()) {
            return Optional.of(found(request, soon.get(), monitor));
        }
        fit(request, monitor);
        return Optional.empty();
    }

    private static Optional<PegMap> withOneMore(Request request, Optional<PegMap> known) {
        try {
            return known.isPresent() ? known.get().withOneMore(request.peg) : Optional.empty();
        } catch (InputException | RuntimeException saidByTheWorkItself) {
            return Optional.empty();
        }
    }

    private Answer.Ready fit(Request request, Monitor monitor) throws InputException {
        monitor.check();
        return publishLater(request, fitting.fit(request.peg, new Progress(request, monitor)), monitor);
    }

    /** Also what was overtaken: it may be newer than what is shown. */
    private Answer.Ready publishLater(Request request, PegMap map, Monitor monitor) {
        Answer.Ready ready = found(request, map, monitor);
        owner.execute(() -> publish(request, ready));
        return ready;
    }

    private Answer.Ready found(Request request, PegMap map, Monitor monitor) {
        if (request == newest && !monitor.cancelled()) {
            mapped.accept(map);
        }
        return new Answer.Ready(request.revision, map, Findings.of(map, OptionalDouble.empty()));
    }

    /** The newest reading, or the peg that was opened, is on the map before all is worked out. */
    private void showMeanwhile(Request request, Answer.Ready soon) {
        alone = soon.map().isProvisional() ? Optional.empty() : Optional.of(soon.map());
        answer = new Answer.Computing(request.revision, Optional.of(soon));
        changed.run();
        if (request == newest && answer instanceof Answer.Computing) {
            afterwards.latest(monitor -> fit(request, monitor), outcome(request, published -> {}));
        }
    }

    /**
     * Makes a picture of a place of which too little is known to find anything; what is missing is said all the same.
     */
    private Optional<Answer.Ready> drawPlace(Request request, Monitor monitor) {
        try {
            PegMap map =
                    fitting.fit(MissingInputs.drawable(PegMap.bottomOf(request.peg)), new Progress(request, monitor));
            return Optional.of(found(request, map, monitor));
        } catch (InputException noPicture) {
            return Optional.empty();
        }
    }

    private void showPlace(Answer lack, Answer.Ready place) {
        answer = MissingInputs.with(lack, place);
        changed.run();
    }

    private void publish(Request request, Answer.Ready ready) {
        if (request == newest) {
            answer = ready;
            progress = 1;
            changed.run();
        } else if (request.document == document
                && answer instanceof Answer.Computing computing
                && computing
                        .before()
                        .map(old -> old.revision() < request.revision)
                        .orElse(true)) {
            answer = new Answer.Computing(computing.revision(), Optional.of(ready));
            changed.run();
        }
    }

    private void fail(Request request, String why) {
        if (request == newest) {
            answer = new Answer.Failed(request.revision, why, answer.shown());
            changed.run();
        }
    }

    /** One wish for answers. */
    private static final class Request {
        private final long revision;
        private final Peg peg;
        private final int document;

        Request(long revision, Peg peg, int document) {
            this.revision = revision;
            this.peg = peg;
            this.document = document;
        }
    }

    /** Tells the owner how far the work for a wish is. */
    private final class Progress implements Monitor {
        private final Request request;
        private final Monitor monitor;
        private volatile double reported;

        Progress(Request request, Monitor monitor) {
            this.request = request;
            this.monitor = monitor;
        }

        @Override
        public void progress(double share) {
            if (share < reported + STEP && share < 1) {
                return;
            }
            reported = share;
            owner.execute(() -> {
                if (request == newest && answer instanceof Answer.Computing) {
                    progress = share;
                    progressed.run();
                }
            });
        }

        @Override
        public boolean cancelled() {
            return monitor.cancelled();
        }
    }
}
