package pegbed.session;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;
import pegbed.analysis.Findings;
import pegbed.analysis.PegMap;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Wishes;

/**
 * Keeps the answers in step with the peg. The newest request wins: older work is cancelled, and what it yields is not
 * shown as current. A change of the target alone keeps the bottom and only looks for the flat spots again. Belongs to
 * one thread, the owner's; the work is done by a worker.
 */
final class Recomputation {
    /** Finds the bottom of a peg. */
    @FunctionalInterface
    interface Fitting {
        PegMap fit(Peg peg, Monitor monitor) throws InputException;
    }

    /** Progress is told in steps of this share. */
    private static final double STEP = 0.05;

    private final Fitting fitting;
    private final Executor worker;
    private final Executor owner;
    private final Runnable changed;
    private final Runnable progressed;
    private Answer answer = new Answer.NothingYet(Optional.empty());
    private Request newest;
    private double progress;
    private int document;

    /**
     * @param fitting the work
     * @param worker does it, one piece after the other
     * @param owner runs what belongs to the owner's thread
     * @param changed told on the owner's thread when the answer has changed
     * @param progressed told on the owner's thread when the work has gone on
     */
    Recomputation(Fitting fitting, Executor worker, Executor owner, Runnable changed, Runnable progressed) {
        this.fitting = fitting;
        this.worker = worker;
        this.owner = owner;
        this.changed = changed;
        this.progressed = progressed;
        newest = new Request(-1, Peg.EMPTY);
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
        newest.cancelled = true;
        document++;
        newest = new Request(-1, Peg.EMPTY);
        answer = new Answer.NothingYet(Optional.empty());
    }

    /** The peg has changed. */
    void request(long revision, Peg peg) {
        newest.cancelled = true;
        newest = new Request(revision, peg);
        progress = 0;
        Optional<Answer> missing = Needs.of(peg);
        if (missing.isPresent()) {
            Optional<Answer.Ready> old = answer.picture();
            answer = old.isPresent() ? Needs.with(missing.get(), old.get()) : missing.get();
            changed.run();
            Request lacking = newest;
            worker.execute(() -> drawPlace(lacking, missing.get()));
            return;
        }
        Optional<Answer.Ready> before = answer.shown();
        answer = new Answer.Computing(revision, before);
        changed.run();
        Request request = newest;
        Optional<PegMap> sameBottom =
                before.map(Answer.Ready::map).filter(map -> bottomOf(map.peg()).equals(bottomOf(peg)));
        worker.execute(() -> work(request, sameBottom));
    }

    /** Stops the running work; the old answers stay, marked as old. */
    void cancel() {
        if (answer instanceof Answer.Computing computing) {
            newest.cancelled = true;
            answer = new Answer.Failed(
                    computing.revision(), "Stopped; change anything to work it out again.", computing.before());
            changed.run();
        }
    }

    /** The part of a peg that its bottom depends on. */
    private static Peg bottomOf(Peg peg) {
        return peg.withWishes(Wishes.NONE.withByItself(peg.wishes().byItself()));
    }

    private void work(Request request, Optional<PegMap> sameBottom) {
        if (request.cancelled && sameBottom.isEmpty()) {
            return;
        }
        try {
            PegMap map =
                    sameBottom.isPresent() ? sameBottom.get().withPeg(request.peg) : fitting.fit(request.peg, request);
            Answer.Ready ready = new Answer.Ready(request.revision, map, Findings.of(map, OptionalDouble.empty()));
            owner.execute(() -> publish(request, ready));
        } catch (Monitor.Cancelled nobodyWantsIt) {
            // A newer request is on its way.
        } catch (InputException e) {
            owner.execute(() -> fail(request, e.getMessage()));
        } catch (RuntimeException e) {
            owner.execute(() -> fail(request, "The bottom could not be worked out (" + e + "); undo the last change."));
        }
    }

    /** Makes a picture of a place of which too little is known to find anything. */
    private void drawPlace(Request request, Answer lack) {
        if (request.cancelled) {
            return;
        }
        try {
            PegMap map = fitting.fit(Needs.drawable(bottomOf(request.peg)), request);
            Answer.Ready place = new Answer.Ready(request.revision, map, Findings.of(map, OptionalDouble.empty()));
            owner.execute(() -> {
                if (request == newest) {
                    answer = Needs.with(lack, place);
                    changed.run();
                }
            });
        } catch (Monitor.Cancelled | InputException noPicture) {
            // What is missing is said all the same.
        }
    }

    private void publish(Request request, Answer.Ready ready) {
        if (request == newest) {
            answer = ready;
            progress = 1;
            changed.run();
        } else if (request.inDocument == document
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

    /** One wish for answers; work for it stops once it is cancelled. */
    private final class Request implements Monitor {
        private final long revision;
        private final Peg peg;
        private final int inDocument = document;
        private volatile boolean cancelled;
        private volatile double told;

        Request(long revision, Peg peg) {
            this.revision = revision;
            this.peg = peg;
        }

        @Override
        public void progress(double share) {
            if (share < told + STEP && share < 1) {
                return;
            }
            told = share;
            owner.execute(() -> {
                if (this == newest && answer instanceof Answer.Computing) {
                    progress = share;
                    progressed.run();
                }
            });
        }

        @Override
        public boolean cancelled() {
            return cancelled;
        }
    }
}
