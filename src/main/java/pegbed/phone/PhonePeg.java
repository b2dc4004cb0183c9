package pegbed.phone;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import pegbed.findings.Findings;
import pegbed.findings.InformedBottom;
import pegbed.findings.PegMap;
import pegbed.guidance.Guidance;
import pegbed.guidance.NextReading;
import pegbed.model.Day;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.notation.Line;
import pegbed.notation.LineBounds;
import pegbed.notation.Notation;
import pegbed.plan.Plan;
import pegbed.session.Edit;
import pegbed.session.LineEdits;
import pegbed.session.MissingInputs;
import pegbed.session.OpenPeg;
import pegbed.storage.peg.PegWriter;
import pegbed.wording.MapWords;
import pegbed.wording.TypedLineWords;

/**
 * The peg that is open on a page: its edits, and its answers a stage at a time, each kept until an edit makes it old.
 * For one thread.
 */
public final class PhonePeg {
    private final OpenPeg open;
    private final InformedBottom informed;

    /** The time of the latest request, by which steps of one burst are told. */
    private Instant now = Instant.EPOCH;

    /** The latest bottom that was worked out in full, by whatever is known. */
    private Optional<PegMap> worked = Optional.empty();

    /** What is shown: worked out, or with one reading more. */
    private Optional<Shown> shown = Optional.empty();

    private Optional<Plan> plan = Optional.empty();
    private Optional<NextReading> next = Optional.empty();
    private long nextRevision = -1;

    /** The reading that was added last, as its index among all; empty if something else was done since. */
    private Optional<Integer> added = Optional.empty();

    /**
     * A bottom and what was found on it.
     *
     * @param revision of the peg that it is for
     * @param map the bottom
     * @param findings what was found on it at the target depth
     * @param inFull whether nothing better is to come
     * @param placeAlone whether too little is known to find anything, so that only the place may be drawn
     */
    record Shown(long revision, PegMap map, Findings findings, boolean inFull, boolean placeAlone) {}

    /**
     * @param peg as its file has it
     * @param others pegs of the same water that inform it
     */
    public PhonePeg(Peg peg, List<Peg> others) {
        open = new OpenPeg(peg, Optional.of(peg), () -> now);
        informed = new InformedBottom(others);
    }

    /** The peg as it stands. */
    public Peg peg() {
        return open.peg();
    }

    /** The text of its file. */
    public String text() {
        return PegWriter.text(open.peg());
    }

    /** Rises with every change. */
    public long revision() {
        return open.revision();
    }

    Optional<String> undoLabel() {
        return open.undoLabel();
    }

    Optional<String> redoLabel() {
        return open.redoLabel();
    }

    /** What must be given before a bottom can be found, one sentence; empty if nothing is missing. */
    public Optional<String> missing() {
        return MissingInputs.sentence(open.peg());
    }

    /**
     * How a line would be understood; nothing changes.
     *
     * @throws InputException if it can't be, or can't be meant
     */
    public String understood(String typed) throws InputException {
        return TypedLineWords.of(peg()).understood(line(typed));
    }

    private Line line(String typed) throws InputException {
        Line line = Notation.of(peg()).parse(typed);
        LineBounds.refuse(peg(), line, typed);
        return line;
    }

    /**
     * Adds a line as it would be typed.
     *
     * @param moment when it was typed
     * @return how it was understood, and what to mind about it
     * @throws InputException if it can't be read, or can't be meant; nothing has changed then
     */
    public String add(String typed, OffsetDateTime moment) throws InputException {
        Line line = line(typed);
        String understood =
                TypedLineWords.of(peg()).understood(line) + TypedLineWords.aside(peg(), line, shown.map(Shown::map));
        edit(LineEdits.add(peg(), LineEdits.at(moment, line)), moment);
        added = line instanceof Line.ReadingLine ? Optional.of(peg().readings().size() - 1) : Optional.empty();
        return understood;
    }

    /**
     * Makes an edit.
     *
     * @return whether the peg changed
     * @throws InputException if it can't be made; nothing has changed then
     */
    boolean edit(Edit edit, OffsetDateTime moment) throws InputException {
        now = moment.toInstant();
        added = Optional.empty();
        Peg before = peg();
        long revision = revision();
        boolean changed = open.apply(edit);
        keepWhereOnlyTheFishingChanged(before, revision);
        return changed;
    }

    /** What was worked out of a peg stays right where nothing changed but what was caught. */
    private void keepWhereOnlyTheFishingChanged(Peg before, long revision) {
        if (isAnswered(revision) && withoutFishing(before).equals(withoutFishing(peg()))) {
            Shown known = shown.orElseThrow();
            shown = Optional.of(new Shown(revision(), known.map(), known.findings(), true, known.placeAlone()));
            nextRevision = revision();
        }
    }

    private static Peg withoutFishing(Peg peg) {
        return peg.withVisits(
                peg.visits().stream().map(visit -> visit.withDay(Day.NONE)).toList());
    }

    /** Whether the bottom, where to plumb next and the lines are those of the peg as it stands. */
    boolean isAnswered() {
        return isAnswered(revision());
    }

    private boolean isAnswered(long revision) {
        return shown.filter(known -> known.revision() == revision && known.inFull())
                        .isPresent()
                && nextRevision == revision
                && shownPlan().isPresent();
    }

    /** The drag is over: the next step is undone on its own. */
    void endBurst() {
        open.endBurst();
    }

    /** Undoes the last edit; false if there is none. */
    public boolean undo() {
        return again(open::undo);
    }

    /** Makes the edit again that was last undone; false if there is none. */
    public boolean redo() {
        return again(open::redo);
    }

    private boolean again(BooleanSupplier step) {
        added = Optional.empty();
        Peg before = peg();
        long revision = revision();
        boolean done = step.getAsBoolean();
        keepWhereOnlyTheFishingChanged(before, revision);
        return done;
    }

    /**
     * The bottom soon: that of before with the one reading that was added since, or, of a peg that was just opened, by
     * its own readings, while other pegs wait to be fitted.
     *
     * @return whether there is one; else {@link #map} has to be waited for
     */
    public boolean mapSoon() {
        if (isCurrent()) {
            return true;
        }
        if (missing().isPresent()) {
            return false;
        }
        try {
            Optional<PegMap> soon = worked.isPresent() ? worked.get().withOneMore(peg()) : Optional.empty();
            if (soon.isPresent()) {
                shown = Optional.of(new Shown(revision(), soon.get(), soonFound(soon.get()), false, false));
            } else if (shown.isEmpty()) {
                Optional<PegMap> alone = informed.alone(peg(), Monitor.NONE);
                if (alone.isPresent()) {
                    show(alone.get(), false, false);
                }
            }
            return isCurrent();
        } catch (InputException saidByTheWorkItself) {
            return false;
        }
    }

    /** What was found before, with the deepest place as it is now: flat spots wait for the bottom in full. */
    private Findings soonFound(PegMap map) {
        Optional<Findings> before = shown.filter(known -> !known.placeAlone()).map(Shown::findings);
        return before.isPresent()
                ? new Findings(
                        map,
                        before.get().targetMetres(),
                        before.get().targetFollows(),
                        before.get().flats())
                : Findings.of(map, OptionalDouble.empty());
    }

    /**
     * The bottom in full; where too little is known, the place alone.
     *
     * @throws InputException if the banks can't be used
     */
    public PegMap map() throws InputException {
        if (isCurrent() && shown.orElseThrow().inFull()) {
            return shown.orElseThrow().map();
        }
        if (missing().isPresent()) {
            worked = Optional.empty();
            show(informed.fit(MissingInputs.drawable(PegMap.bottomOf(peg())), Monitor.NONE), true, true);
        } else {
            Peg bottom = PegMap.bottomOf(peg());
            Optional<PegMap> same =
                    worked.filter(known -> PegMap.bottomOf(known.peg()).equals(bottom));
            worked = Optional.of(same.isPresent() ? same.get().withPeg(peg()) : informed.fit(peg(), Monitor.NONE));
            show(worked.get(), true, false);
        }
        return shown.orElseThrow().map();
    }

    private void show(PegMap map, boolean inFull, boolean placeAlone) {
        shown = Optional.of(new Shown(revision(), map, Findings.of(map, OptionalDouble.empty()), inFull, placeAlone));
    }

    private boolean isCurrent() {
        return shown.filter(known -> known.revision() == revision()).isPresent();
    }

    /** What is shown, of this revision or an older one; empty before the first map. */
    Optional<Shown> shown() {
        return shown;
    }

    /** What was found on the bottom. */
    public Findings findings() throws InputException {
        map();
        return shown.orElseThrow().findings();
    }

    /**
     * Lines and rigs.
     *
     * @throws InputException if something is missing, or the banks can't be used
     */
    public Plan plan() throws InputException {
        refuseIfMissing();
        Findings findings = findings();
        if (plan.filter(known -> known.findings() == findings).isEmpty()) {
            plan = Optional.of(Plan.of(findings, peg().wishes()));
        }
        return plan.orElseThrow();
    }

    private void refuseIfMissing() throws InputException {
        Optional<String> missing = missing();
        if (missing.isPresent()) {
            throw new InputException(missing.get());
        }
    }

    /** The plan for what is shown, or on a provisional map the one before; empty while there is none. */
    Optional<Plan> shownPlan() {
        return plan.filter(known -> shown.filter(
                        map -> !map.placeAlone() && (map.map().isProvisional() || map.findings() == known.findings()))
                .isPresent());
    }

    /**
     * Where to plumb next.
     *
     * @throws InputException if there is nowhere left to plumb, or the banks can't be used
     */
    public NextReading next() throws InputException {
        boolean known = next.isPresent() && nextRevision == revision();
        if (!known) {
            next = Optional.of(Guidance.next(map()));
            nextRevision = revision();
        }
        return next.orElseThrow();
    }

    /** Where to plumb next, while it is known for the peg as it stands. */
    Optional<NextReading> knownNext() {
        return next.filter(reading -> nextRevision == revision());
    }

    /** Why the reading that was added last is likely wrong; empty while nothing speaks against it. */
    public Optional<String> question() {
        return added.flatMap(last -> shown.filter(known -> isCurrent()).stream()
                .flatMap(known -> known.map().suspicious().stream())
                .filter(check -> check.sounding() == last)
                .findFirst()
                .map(check -> MapWords.of(peg()).questioned(check) + " Plumb it again; Undo takes it back."));
    }
}
