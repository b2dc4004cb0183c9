package pegbed.session;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Wishes;

/**
 * Keeps the answers in step with the peg. The newest request wins: older work is cancelled, and what it yields is not
 * shown as current. A change of the target alone keeps the bottom and only looks for the flat spots again; one reading
 * more is shown at once on what was learned before, until all is worked out anew. Belongs to one thread, the owner's; the
 * work is done by a worker.
 */
final class Recomputation {
    /** Finds the bottom of a peg. */
    @FunctionalInterface
    interface Fitting {
        PegMap fit(Peg peg, Monitor monitor) throws InputException;
    }

    /** Progress is reported in steps of this share. */
    private static final double STEP = 0.05;

    private final Fitting fitting;
    private final Session.Executors executors;
    private final Runnable changed;
    private final Consumer<Answer.Ready> found;
    private final Runnable progressed;
    private Answer answer = new Answer.NothingYet(Optional.empty());
    private Request newest;
    private double progress;
    private int document;

    /**
     * @param fitting the work
     * @param executors who does it
     * @param changed run on the owner's thread when the answer has changed
     * @param found gets new answers on the worker's thread, before the owner has them
     * @param progressed run on the owner's thread when the work has gone on
     */
    Recomputation(
            Fitting fitting,
            Session.Executors executors,
            Runnable changed,
            Consumer<Answer.Ready> found,
            Runnable progressed) {
        this.fitting = fitting;
        this.executors = executors;
        this.changed = changed;
        this.found = found;
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
        Optional<Answer> missing = MissingInputs.of(peg);
        if (missing.isPresent()) {
            Optional<Answer.Ready> old = answer.picture();
            answer = old.isPresent() ? MissingInputs.with(missing.get(), old.get()) : missing.get();
            changed.run();
            Request lacking = newest;
            executors.worker().execute(() -> drawPlace(lacking, missing.get()));
            return;
        }
        Optional<Answer.Ready> before = answer.shown();
        answer = new Answer.Computing(revision, before);
        Request request = newest;
        Optional<PegMap> known = before.map(Answer.Ready::map).filter(map -> !map.isProvisional());
        executors.worker().execute(() -> work(request, known));
        changed.run();
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

    private void work(Request request, Optional<PegMap> known) {
        Optional<PegMap> sameBottom = known.filter(map -> bottomOf(map.peg()).equals(bottomOf(request.peg)));
        if (sameBottom.isPresent()) {
            workOut(request, () -> sameBottom.get().withPeg(request.peg));
        } else if (!shownMeanwhile(request, known)) {
            fit(request);
        }
    }

    /** Shows one reading more on what was known before, and works all out anew afterwards. */
    private boolean shownMeanwhile(Request request, Optional<PegMap> known) {
        if (request.cancelled || known.isEmpty()) {
            return false;
        }
        try {
            Optional<PegMap> more = known.get().withOneMore(request.peg);
            more.map(map -> found(request, map))
                    .ifPresent(soon -> executors.owner().execute(() -> {
                        showMeanwhile(request, soon);
                        executors.afterwards().execute(() -> fit(request));
                    }));
            return more.isPresent();
        } catch (InputException | RuntimeException saidByTheWorkItself) {
            return false;
        }
    }

    private void fit(Request request) {
        if (!request.cancelled) {
            workOut(request, () -> fitting.fit(request.peg, request));
        }
    }

    /** Brings a map. */
    private interface Bringing {
        PegMap bring() throws InputException;
    }

    private void workOut(Request request, Bringing bringing) {
        try {
            Answer.Ready ready = found(request, bringing.bring());
            executors.owner().execute(() -> publish(request, ready));
        } catch (Monitor.Cancelled nobodyWantsIt) {
            // A newer request is on its way.
        } catch (InputException e) {
            executors.owner().execute(() -> fail(request, e.getMessage()));
        } catch (RuntimeException e) {
            executors
                    .owner()
                    .execute(() ->
                            fail(request, "The bottom could not be worked out (" + e + "); undo the last change."));
        }
    }

    private Answer.Ready found(Request request, PegMap map) {
        Answer.Ready ready = new Answer.Ready(request.revision, map, Findings.of(map, OptionalDouble.empty()));
        if (!request.cancelled) {
            found.accept(ready);
        }
        return ready;
    }

    /** The newest reading is on the map before all is worked out anew. */
    private void showMeanwhile(Request request, Answer.Ready soon) {
        if (request == newest && answer instanceof Answer.Computing) {
            answer = new Answer.Computing(request.revision, Optional.of(soon));
            changed.run();
        }
    }

    /** Makes a picture of a place of which too little is known to find anything. */
    private void drawPlace(Request request, Answer lack) {
        if (request.cancelled) {
            return;
        }
        try {
            PegMap map = fitting.fit(MissingInputs.drawable(bottomOf(request.peg)), request);
            Answer.Ready place = found(request, map);
            executors.owner().execute(() -> {
                if (request == newest) {
                    answer = MissingInputs.with(lack, place);
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
        private volatile double reported;

        Request(long revision, Peg peg) {
            this.revision = revision;
            this.peg = peg;
        }

        @Override
        public void progress(double share) {
            if (share < reported + STEP && share < 1) {
                return;
            }
            reported = share;
            executors.owner().execute(() -> {
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
