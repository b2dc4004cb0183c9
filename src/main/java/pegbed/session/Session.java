package pegbed.session;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.storage.disk.ProgramLog;

/**
 * One window's work: the open peg with its edits, the answers to it, and its place on the disk. The one owner of all
 * that changes. Belongs to one thread, the owner's; what takes time is done by others.
 */
public final class Session {
    private final InstantSource clock;
    private final Executor owner;
    private final ProgramLog log;
    private final BackgroundTask disk;
    private final BackgroundTask opening;
    private final Filing filing;
    private final NeighbouringPegSource beside;
    private final Recomputation recomputation;
    private final List<Runnable> listeners = new ArrayList<>();
    private final List<Runnable> progressListeners = new ArrayList<>();
    private final List<Consumer<PegMap>> mappedListeners = new CopyOnWriteArrayList<>();
    private OpenPeg open;
    private Optional<Path> file = Optional.empty();
    private long keptRevision;
    private String trouble = "";
    private String news = "";
    private String failure = "";
    private boolean changedByAnother;

    /**
     * Who does what takes time.
     *
     * @param owner runs what belongs to the owner's thread, later or at once
     * @param worker works out the answers, one piece after the other
     * @param afterwards works out anew what can be shown in part before, once that part is on the screen
     * @param disk reads and writes files, one piece after the other
     */
    public record Executors(Executor owner, Executor worker, Executor afterwards, Executor disk) {
        /** With nothing to wait for. */
        public Executors(Executor owner, Executor worker, Executor disk) {
            this(owner, worker, worker, disk);
        }

        /** Everything at once, on the calling thread. */
        public static final Executors AT_ONCE = new Executors(Runnable::run, Runnable::run, Runnable::run);
    }

    /**
     * @param journals the folder in which edits are kept between saves; the log of errors is written beside it
     * @param executors who does what takes time
     * @param clock shows which steps belong to one burst
     */
    public Session(Path journals, Executors executors, InstantSource clock) {
        this(journals, executors, clock, new NeighbouringPegSource());
    }

    private Session(Path journals, Executors executors, InstantSource clock, NeighbouringPegSource beside) {
        this(journals, executors, clock, beside, beside);
    }

    Session(Path journals, Executors executors, InstantSource clock, Recomputation.Fitting fitting) {
        this(journals, executors, clock, fitting, new NeighbouringPegSource());
    }

    private Session(
            Path journals,
            Executors executors,
            InstantSource clock,
            Recomputation.Fitting fitting,
            NeighbouringPegSource beside) {
        this.beside = beside;
        this.clock = clock;
        this.owner = executors.owner();
        log = new ProgramLog(journals.toAbsolutePath().normalize().resolveSibling(""));
        disk = new BackgroundTask(
                "The disk's work was not done, so save under another name", executors.disk(), owner, log);
        opening = new BackgroundTask(
                "It could not be opened, so the peg that was open stays", executors.disk(), owner, log);
        filing = new Filing(journals);
        recomputation = new Recomputation(
                fitting,
                executors,
                log,
                this::callListeners,
                map -> mappedListeners.forEach(listener -> listener.accept(map)),
                () -> List.copyOf(progressListeners).forEach(Runnable::run));
        open = new OpenPeg(Peg.EMPTY, Optional.empty(), clock::instant);
    }

    /** Adds a listener that is called on the owner's thread whenever anything here has changed. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }

    /** Adds a listener that is called on the owner's thread whenever the work for the answers has gone on. */
    public void onProgress(Runnable listener) {
        progressListeners.add(listener);
    }

    /**
     * Adds a listener that gets each bottom as soon as it is known, on the worker's thread and before anything is found
     * on it; the owner may not want it any more.
     */
    public void onMapped(Consumer<PegMap> listener) {
        mappedListeners.add(listener);
    }

    private void callListeners() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    public Peg peg() {
        return open.peg();
    }

    /** Rises with every change of the peg. */
    public long revision() {
        return open.revision();
    }

    /** How far the answers are. */
    public Answer answer() {
        return recomputation.answer();
    }

    /** How much of the work for the answers is done, 0 to 1. */
    public double progress() {
        return recomputation.progress();
    }

    /** Stops working out the answers. */
    public void cancelComputing() {
        recomputation.cancel();
    }

    /** The peg's file; empty where it has none yet. */
    public Optional<Path> file() {
        return file;
    }

    /** Whether there are edits that the file does not hold. */
    public boolean unsaved() {
        return open.unsaved();
    }

    /** Whether every edit is on the disk, in the file or in the journal. */
    public boolean kept() {
        return keptRevision == open.revision();
    }

    /** The latest revision that is on the disk, in the file or in the journal, with all before it. */
    public long keptRevision() {
        return keptRevision;
    }

    /** Why edits are not kept, one sentence; empty if all is well. */
    public String trouble() {
        return trouble;
    }

    /** What the person should hear about the peg that was opened, one sentence; empty if nothing. */
    public String news() {
        return news;
    }

    /** Keeps errors that nobody expected. */
    public ProgramLog log() {
        return log;
    }

    /** What went wrong in the program itself, for the person; empty if nothing or if it was read. */
    public String failure() {
        return failure;
    }

    /** Something went wrong in the program itself, and there is no better place to say so. */
    public void fail(String words) {
        failure = words;
        callListeners();
    }

    /** The failure was read. */
    public void dismissFailure() {
        failure = "";
    }

    /** Files of other pegs beside the peg's own that could not be read, a sentence each. */
    public List<String> passedOver() {
        return beside.passedOver();
    }

    /** Whether another window or program has changed the file since. */
    public boolean changedByAnother() {
        return changedByAnother;
    }

    /**
     * Makes an edit.
     *
     * @return whether the peg changed
     * @throws InputException if it can't be made; nothing has changed then
     */
    public boolean edit(Edit edit) throws InputException {
        boolean changed = open.apply(edit);
        if (changed) {
            moved();
        }
        return changed;
    }

    /** The drag or the typing is over: the next step is undone on its own. */
    public void endBurst() {
        open.endBurst();
    }

    public boolean undo() {
        boolean changed = open.undo();
        if (changed) {
            moved();
        }
        return changed;
    }

    public boolean redo() {
        boolean changed = open.redo();
        if (changed) {
            moved();
        }
        return changed;
    }

    public Optional<String> undoLabel() {
        return open.undoLabel();
    }

    public Optional<String> redoLabel() {
        return open.redoLabel();
    }

    private void moved() {
        Peg peg = open.peg();
        long revision = open.revision();
        OpenPeg of = open;
        onDisk(() -> filing.keep(peg), () -> {
            if (of == open) {
                keptRevision = Math.max(keptRevision, revision);
                trouble = "";
            }
        });
        recomputation.request(revision, peg);
    }

    /** Work that waits for the disk. */
    private interface DiskWork {
        void run() throws InputException;
    }

    private void onDisk(DiskWork work, Runnable done) {
        onDisk(work, done, sentence -> trouble = sentence);
    }

    private void onDisk(DiskWork work, Runnable done, Consumer<String> refused) {
        disk.run(
                monitor -> {
                    work.run();
                    return "";
                },
                new BackgroundTask.Outcome<>(
                        nothing -> {
                            done.run();
                            callListeners();
                        },
                        refusal -> {
                            refused.accept(refusal);
                            callListeners();
                        }));
    }

    /** Begins with a peg that has no file. */
    public void begin(Peg peg) {
        arrive(() -> filing.begin(peg), sentence -> {
            take(new Filing.Arrival(peg, Optional.of(peg), Optional.empty(), ""));
            trouble = sentence;
        });
    }

    /** Opens a file; {@code refused} gets one sentence if it can't be opened, and the open peg stays. */
    public void open(Path path, Consumer<String> refused) {
        arrive(() -> filing.open(path), refused);
    }

    /** Takes up a peg that an earlier run left without saving; else does what is to be done without one. */
    public void takeUpLeftBehind(Runnable otherwise) {
        opening.run(
                monitor -> filing.leftBehind(),
                new BackgroundTask.Outcome<>(left -> left.ifPresentOrElse(this::take, otherwise), why -> {
                    trouble = why;
                    otherwise.run();
                }));
    }

    /** Work on the disk that brings a peg. */
    private interface Bringing {
        Filing.Arrival bring() throws InputException;
    }

    private void arrive(Bringing bringing, Consumer<String> refused) {
        opening.run(monitor -> bringing.bring(), new BackgroundTask.Outcome<>(this::take, why -> {
            refused.accept(why);
            callListeners();
        }));
    }

    private void take(Filing.Arrival arrival) {
        open = new OpenPeg(arrival.peg(), arrival.saved(), clock::instant);
        file = arrival.file();
        news = arrival.news();
        failure = "";
        keptRevision = open.revision();
        trouble = "";
        changedByAnother = false;
        beside.at(file);
        recomputation.forget();
        recomputation.request(open.revision(), open.peg());
        callListeners();
    }

    /** Saves to the peg's own file; one of the two is called in the end, {@code refused} with one sentence. */
    public void save(Runnable done, Consumer<String> refused) {
        Peg peg = open.peg();
        saving(() -> filing.save(peg), peg, file, done, refused);
    }

    /** Saves under a name, which is the peg's own from then on. */
    public void saveAs(Path path, Runnable done, Consumer<String> refused) {
        Peg peg = open.peg();
        saving(() -> filing.saveAs(path, peg), peg, Optional.of(path), done, refused);
    }

    private void saving(DiskWork work, Peg peg, Optional<Path> target, Runnable done, Consumer<String> refused) {
        OpenPeg of = open;
        long revision = open.revision();
        onDisk(
                work,
                () -> {
                    if (of == open) {
                        open.saved(peg);
                        keptRevision = Math.max(keptRevision, revision);
                        if (!file.equals(target)) {
                            beside.at(target);
                        }
                        file = target;
                        changedByAnother = false;
                        trouble = "";
                        news = "";
                    }
                    done.run();
                },
                refused);
    }

    /** Looks whether another window or program has changed the file. */
    public void lookForOtherChanges() {
        OpenPeg of = open;
        disk.run(
                monitor -> filing.changedByAnother(),
                new BackgroundTask.Outcome<>(
                        changed -> {
                            if (of == open && changed != changedByAnother) {
                                changedByAnother = changed;
                                callListeners();
                            }
                        },
                        this::fail));
    }

    /** Ends the work. Edits that were not saved are given up only if the person said so; else they stay kept. */
    public void close(boolean giveUp, Runnable done) {
        recomputation.forget();
        onDisk(
                () -> {
                    if (giveUp) {
                        filing.giveUp();
                    }
                    filing.leave();
                },
                done,
                sentence -> done.run());
    }
}
