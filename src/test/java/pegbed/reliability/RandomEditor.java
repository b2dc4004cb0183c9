package pegbed.reliability;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import pegbed.model.Bottom;
import pegbed.model.DayEvent;
import pegbed.model.Extras;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.model.Typed;
import pegbed.session.DayEdits;
import pegbed.session.ReadingAt;
import pegbed.session.ReadingEdits;
import pegbed.session.Session;

/**
 * Works on a session as a person in a hurry might: adds, changes and deletes readings, undoes, redoes, saves, saves
 * under other names; a {@link #fishing} one taps, mends and deletes what is caught and fed, above all. Tells a
 * {@link Listener} what it tries before the disk hears of it, and what the session then confirms.
 */
final class RandomEditor {
    /** So many readings are enough; more are deleted again. */
    private static final int MOST_READINGS = 40;

    /** Notes that a file has to hold as they are. */
    private static final List<String> NOTES = List.of(
            "", "weed", "\"soft\", silt", "=1+1", "\u0000\u0001", "half \uD83D", "fish \uD83D\uDC1F", "a\nb", "é");

    /** So many events of a day are enough; more are deleted again. */
    private static final int MOST_EVENTS = 60;

    /** Is told of each step. */
    interface Listener {
        void tries(String state);

        void confirms(String state);

        void moves(Path to);

        void moved(boolean done);
    }

    private final Random random;
    private final Listener listener;
    private final Deque<Runnable> disk = new ArrayDeque<>();
    private final Session session;
    private final List<String> refusals = new ArrayList<>();
    private boolean fishing;
    private Instant now = Instant.parse("2026-06-13T06:00:00Z");

    /**
     * @param journals where the session keeps its journals
     * @param clockGoesBack whether the clock jumps back and forth by hours
     */
    RandomEditor(Path journals, Random random, boolean clockGoesBack, Listener listener) {
        this.random = random;
        this.listener = listener;
        InstantSource clock = () -> {
            now = now.plusMillis(clockGoesBack ? random.nextInt(20_000_000) - 10_000_000 : 100);
            return now;
        };
        session = new Session(journals, new Session.Executors(Runnable::run, work -> {}, disk::add), clock);
    }

    /** From now on two steps of three are of the day's log. */
    RandomEditor fishing() {
        fishing = true;
        return this;
    }

    Session session() {
        return session;
    }

    /** What the session refused, in its own words, oldest first. */
    List<String> refusals() {
        return refusals;
    }

    /** Opens a file; false if it was refused. */
    boolean open(Path file) {
        int before = refusals.size();
        session.open(file, refusals::add);
        drain();
        return refusals.size() == before;
    }

    /** Begins a peg that has no file. */
    void begin(Peg peg) {
        session.begin(peg);
        drain();
    }

    /** Takes up what an earlier run left; false if it left nothing. */
    boolean takeUp() {
        boolean[] nothing = {false};
        session.takeUpLeftBehind(() -> nothing[0] = true);
        drain();
        return !nothing[0];
    }

    void close(boolean giveUp) {
        session.close(giveUp, () -> {});
        drain();
    }

    private void drain() {
        while (!disk.isEmpty()) {
            disk.poll().run();
        }
    }

    /** Does one thing, of which a twelfth are saves. */
    void step() {
        long before = session.revision();
        int choice = random.nextInt(24);
        if (choice < 2) {
            save();
            return;
        }
        try {
            edit(choice);
        } catch (InputException e) {
            refusals.add(e.getMessage());
        }
        if (session.revision() != before) {
            String state = WorkRecord.hash(session.peg());
            listener.tries(state);
            drain();
            if (session.kept()) {
                listener.confirms(state);
            } else if (session.trouble().isBlank()) {
                throw new AssertionError("An edit is not kept, and nobody is told.");
            } else {
                refusals.add(session.trouble());
            }
        }
    }

    private void edit(int choice) throws InputException {
        if (fishing && random.nextInt(3) > 0) {
            fish(choice);
            return;
        }
        int readings = session.peg().visits().get(0).readings().size();
        if (readings > MOST_READINGS || (choice < 5 && readings > 0)) {
            session.edit(ReadingEdits.delete(new ReadingAt(0, random.nextInt(readings))));
        } else if (choice < 8 && readings > 0) {
            session.edit(ReadingEdits.note(new ReadingAt(0, random.nextInt(readings)), note()));
        } else if (choice < 11) {
            session.undo();
        } else if (choice < 13) {
            session.redo();
        } else {
            session.edit(ReadingEdits.add(reading()));
        }
    }

    private void fish(int choice) throws InputException {
        int visit = session.peg().visits().size() - 1;
        int events = session.peg().today().day().events().size();
        if (events > MOST_EVENTS || (choice < 4 && events > 0)) {
            session.edit(DayEdits.delete(visit, random.nextInt(events)));
        } else if (choice < 6 && events > 0) {
            session.edit(DayEdits.change(visit, random.nextInt(events), event()));
        } else if (choice < 8) {
            session.undo();
        } else {
            session.edit(DayEdits.add(event()));
        }
    }

    private DayEvent event() {
        DayEvent.Kind kind = DayEvent.Kind.values()[random.nextInt(DayEvent.Kind.values().length)];
        DayEvent event = DayEvent.of(
                now.atOffset(ZoneOffset.ofHours(1)).withNano(0),
                kind == DayEvent.Kind.NOTE ? DayEvent.Kind.FISH : kind,
                Optional.of(Place.polar(2 + random.nextInt(10), random.nextInt(120) - 60)));
        return event.named(note(), "").noted(note());
    }

    private String note() {
        return NOTES.get(random.nextInt(NOTES.size()));
    }

    private Reading reading() {
        return new Reading(
                new Typed("s" + random.nextInt(10), "20L", "4'6"),
                Place.polar(1 + random.nextInt(1200) / 100.0, random.nextInt(120) - 60),
                Precision.PLAIN,
                random.nextInt(300) / 100.0,
                Bottom.values()[random.nextInt(Bottom.values().length)],
                note(),
                Optional.empty(),
                Extras.NONE);
    }

    private void save() {
        String state = WorkRecord.hash(session.peg());
        boolean[] saved = {false};
        session.save(() -> saved[0] = true, refusals::add);
        drain();
        if (saved[0]) {
            listener.confirms(state);
        }
    }

    /** Saves under a name, which the session works on from then on. */
    void saveAs(Path file) {
        String state = WorkRecord.hash(session.peg());
        boolean[] saved = {false};
        listener.moves(file);
        session.saveAs(file, () -> saved[0] = true, refusals::add);
        drain();
        listener.moved(saved[0]);
        if (saved[0]) {
            listener.confirms(state);
        }
    }
}
