package pegbed.ui.reading;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import pegbed.geometry.Doubts;
import pegbed.guidance.NextReading;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.notation.Line;
import pegbed.notation.LineBounds;
import pegbed.notation.Notation;
import pegbed.notation.ShortForm;
import pegbed.session.Answer;
import pegbed.session.Edit;
import pegbed.session.LineEdits;
import pegbed.session.Session;
import pegbed.ui.controls.Keys;
import pegbed.wording.MapWords;
import pegbed.wording.Quantities;
import pegbed.wording.TypedLineWords;

/** The box into which readings, edges and snags are typed, a line each. */
public final class ReadingBoxViewModel {
    private final Session session;
    private final Clock clock;
    private final ObservableValue<Optional<NextReading>> next;
    private final StringProperty text = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper echo = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper error = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper added = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyBooleanWrapper kept = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyStringWrapper question = new ReadOnlyStringWrapper("");
    private final List<String> entered = new ArrayList<>();
    private static final int NOT_RECALLING = Integer.MAX_VALUE;

    /** Place in the lines while recalling. */
    private int recalled = NOT_RECALLING;

    private boolean replacing;
    private Runnable filled = () -> {};

    /** No revision reaches this. */
    private static final long NOT_YET = Long.MAX_VALUE;

    /** The revision that the last added line made. */
    private long addedRevision;

    /** Whether that line was a reading. */
    private boolean readingAdded;

    /** @param next the reading to take next, which Enter in the empty box takes up */
    public ReadingBoxViewModel(Session session, Clock clock, ObservableValue<Optional<NextReading>> next) {
        this.session = session;
        this.next = next;
        this.clock = clock;
        text.addListener((property, before, now) -> typed(now));
        session.onChange(this::refresh);
    }

    private void refresh() {
        if (added.get() && session.revision() != addedRevision) {
            // Undone, or followed by another edit or another peg: it is no longer what was done last.
            added.set(false);
            echo.set("");
        }
        kept.set(session.keptRevision() >= addedRevision);
        question.set(added.get() && readingAdded ? question() : "");
    }

    /** What the reading that was added last is asked; empty while nothing speaks against it. */
    private String question() {
        int last = session.peg().readings().size() - 1;
        return session.answer()
                .shown()
                .filter(ready -> ready.revision() == addedRevision)
                .flatMap(ready -> ready.map().suspicious().stream()
                        .filter(check -> check.sounding() == last)
                        .findFirst())
                .map(check -> MapWords.of(session.peg()).questioned(check) + " Plumb it again; " + Keys.UNDO.words()
                        + " takes it back.")
                .orElse("");
    }

    /** Run when a line or its beginning was put into the box: typing goes on behind it. */
    void onFilled(Runnable listener) {
        filled = listener;
    }

    /** What stands in the box. */
    public StringProperty textProperty() {
        return text;
    }

    /** How the line was understood; empty while it can't be. */
    public ReadOnlyStringProperty echoProperty() {
        return echo.getReadOnlyProperty();
    }

    /** What was wrong with the line that was entered, one sentence; empty if nothing. */
    public ReadOnlyStringProperty errorProperty() {
        return error.getReadOnlyProperty();
    }

    /** Whether the echo is of a line that has been added, not of one that stands in the box. */
    public ReadOnlyBooleanProperty addedProperty() {
        return added.getReadOnlyProperty();
    }

    /** Whether what was added last is on the disk, so that nothing can take it away any more. */
    public ReadOnlyBooleanProperty keptProperty() {
        return kept.getReadOnlyProperty();
    }

    /** Why the reading that was added last is likely wrong, and the way back; empty if nothing speaks against it. */
    public ReadOnlyStringProperty questionProperty() {
        return question.getReadOnlyProperty();
    }

    private void typed(String now) {
        if (replacing) {
            return;
        }
        error.set("");
        added.set(false);
        question.set("");
        recalled = NOT_RECALLING;
        try {
            echo.set(now.isBlank() ? "" : understood(session.peg(), now));
        } catch (InputException unfinished) {
            echo.set("");
        }
    }

    private static String understood(Peg peg, String line) throws InputException {
        return TypedLineWords.of(peg).understood(Notation.of(peg).parse(line));
    }

    /**
     * Adds what stands in the box. A line that can't be read, or lies beyond reach, stays in the box. An empty box
     * takes up the place of the reading to take next.
     *
     * @return whether it was added
     */
    public boolean enter() {
        String line = text.get().strip();
        if (line.isEmpty()) {
            next.getValue().ifPresent(reading -> fillFrom(reading.place()));
            return false;
        }
        try {
            Line parsed = Notation.of(session.peg()).parse(line);
            Edit edit = edit(parsed, line);
            String words = TypedLineWords.of(session.peg()).understood(parsed) + warning(parsed);
            added.set(false);
            addedRevision = NOT_YET;
            kept.set(false);
            session.edit(edit);
            addedRevision = session.revision();
            entered.remove(line);
            entered.add(line);
            replace("");
            echo.set(words);
            added.set(true);
            readingAdded = parsed instanceof Line.ReadingLine;
            refresh();
            return true;
        } catch (InputException e) {
            addedRevision = 0;
            echo.set("");
            error.set(e.getMessage());
            return false;
        }
    }

    /**
     * Adds pasted rows, a line each, as one edit. Where a row can't be read none is added, the sentence names the row,
     * and what stands in the box stays.
     *
     * @return whether it is rows; a single one is for the box
     */
    boolean enterRows(String pasted) {
        List<String> rows =
                pasted.lines().map(String::strip).filter(row -> !row.isEmpty()).toList();
        if (rows.size() < 2) {
            return false;
        }
        Notation notation = Notation.of(session.peg());
        List<Line> lines = new ArrayList<>();
        try {
            for (String row : rows) {
                lines.add(stamped(notation.parse(row), row));
            }
            addedRevision = NOT_YET;
            session.edit(LineEdits.addAll(lines));
            addedRevision = session.revision();
            readingAdded = false;
            entered.removeAll(rows);
            entered.addAll(rows);
            error.set("");
            echo.set(rows.size() + " pasted lines");
            added.set(true);
            refresh();
        } catch (InputException e) {
            addedRevision = 0;
            added.set(false);
            question.set("");
            echo.set("");
            error.set("None of the " + rows.size() + " pasted lines was added. Line " + (lines.size() + 1) + ": "
                    + e.getMessage());
        }
        return true;
    }

    private Edit edit(Line line, String typed) throws InputException {
        return LineEdits.add(session.peg(), stamped(line, typed));
    }

    /** @throws InputException if it is a reading beyond reach, or can't be meant otherwise */
    private Line stamped(Line line, String typed) throws InputException {
        if (line instanceof Line.ReadingLine reading) {
            refuseBeyondReach(reading.reading().place());
        } else {
            LineBounds.refuse(session.peg(), line, typed);
        }
        return LineEdits.at(OffsetDateTime.now(clock), line);
    }

    private void refuseBeyondReach(Place place) throws InputException {
        double reach = session.peg().pole().reachMetres();
        if (place.distanceMetres() > reach + Doubts.REACH_SLACK_METRES) {
            Quantities quantities = Quantities.of(session.peg());
            throw new InputException(quantities.distance(place.distanceMetres()) + " is beyond the reach of your pole, "
                    + quantities.distance(reach) + "; give a nearer place, or a longer pole under Place.");
        }
    }

    private String warning(Line line) {
        return TypedLineWords.aside(
                session.peg(), line, session.answer().shown().map(Answer.Ready::map));
    }

    /** Puts the line before into the box, as often as there are lines: those entered here, then the peg's readings. */
    void recallOlder() {
        List<String> lines = lines();
        int at = Math.min(recalled, lines.size()) - 1;
        if (at >= 0) {
            recall(at, lines.get(at));
        }
    }

    /** Back towards the empty box. */
    void recallNewer() {
        List<String> lines = lines();
        if (recalled < lines.size()) {
            int at = recalled + 1;
            recall(at, at == lines.size() ? "" : lines.get(at));
        }
    }

    private void recall(int at, String line) {
        text.set(line);
        recalled = at;
        filled.run();
    }

    private List<String> lines() {
        if (!entered.isEmpty()) {
            return entered;
        }
        ShortForm form = form(session.peg());
        return session.peg().today().readings().stream().map(form::printReading).toList();
    }

    private static ShortForm form(Peg peg) {
        return new ShortForm(peg.units(), peg.pole(), '.');
    }

    /** Puts a place's distance and direction into the box, before the depth if that was typed already. */
    public void fillFrom(Place place) {
        ShortForm form = form(session.peg());
        String[] pieces = text.get().strip().split("\\s+", 3);
        String rest = pieces.length == 3 ? pieces[2] : "";
        text.set(form.printDistance(place.distanceMetres()) + " " + form.printDirection(place.angleDegrees()) + " "
                + rest);
        filled.run();
    }

    private void replace(String line) {
        replacing = true;
        text.set(line);
        replacing = false;
        error.set("");
        recalled = NOT_RECALLING;
    }
}
