package pegbed.ui.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import pegbed.model.Bottom;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.notation.Line;
import pegbed.notation.LineBounds;
import pegbed.notation.Notation;
import pegbed.notation.ShortForm;
import pegbed.session.Answer;
import pegbed.session.ReadingAt;
import pegbed.session.ReadingEdits;
import pegbed.session.Session;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.wording.MapWords;
import pegbed.wording.Quantities;

/** The table of readings. */
public final class ReadingsViewModel {
    /** What a cell holds. */
    enum Piece {
        DISTANCE,
        DIRECTION,
        DEPTH
    }

    private final Session session;
    private final ObservableList<ReadingRow> rows = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper error = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper count = new ReadOnlyStringWrapper("");

    private Peg shownPeg;
    private Answer shownAnswer;

    public ReadingsViewModel(Session session) {
        this.session = session;
        session.onChange(this::refresh);
        refresh();
    }

    /** One row a reading, in the order in which they were taken. */
    ObservableList<ReadingRow> rows() {
        return rows;
    }

    /** Why the last change was refused, one sentence; empty if it was not. */
    ReadOnlyStringProperty errorProperty() {
        return error.getReadOnlyProperty();
    }

    /** How many there are and how many are suspicious, in words. */
    ReadOnlyStringProperty countProperty() {
        return count.getReadOnlyProperty();
    }

    private void refresh() {
        if (session.peg() == shownPeg && session.answer() == shownAnswer) {
            return;
        }
        shownPeg = session.peg();
        shownAnswer = session.answer();
        List<ReadingRow> now = rows(session.peg(), doubts());
        if (!now.equals(rows)) {
            rows.setAll(now);
            long suspicious = now.stream().filter(ReadingRow::suspicious).count();
            count.set(Quantities.readings(now.size()) + (suspicious == 0 ? "" : ", " + suspicious + " to check"));
        }
    }

    /** Sentences about suspicious readings by their place among all. Those of an old map hold for old readings only. */
    private Map<Integer, String> doubts() {
        Map<Integer, String> doubts = new HashMap<>();
        if (session.answer() instanceof Answer.Ready ready) {
            MapWords words = MapWords.of(session.peg());
            int readings = session.peg().readings().size();
            for (ReadingCheck check : ready.map().suspicious()) {
                if (check.sounding() < readings) {
                    doubts.put(check.sounding(), words.suspiciousHere(check));
                }
            }
        }
        return doubts;
    }

    private static List<ReadingRow> rows(Peg peg, Map<Integer, String> doubts) {
        ShortForm form = new ShortForm(peg.units(), peg.pole(), '.');
        List<ReadingRow> rows = new ArrayList<>();
        List<Reading> readings = peg.readings();
        for (int i = 0; i < readings.size(); i++) {
            Reading r = readings.get(i);
            double distance = r.place().distanceMetres();
            double angle = r.place().angleDegrees();
            rows.add(new ReadingRow(
                    ReadingAt.ofFlat(peg, i),
                    i + 1,
                    said(r.typed().distance(), form.printDistance(distance)),
                    said(r.typed().direction(), form.printDirection(angle)),
                    said(r.typed().depth(), form.printDepth(r.depthMetres())),
                    r.depthMetres(),
                    distance,
                    angle,
                    r.bottom() == Bottom.UNKNOWN ? "" : r.bottom().word(),
                    r.note(),
                    doubts.getOrDefault(i, "")));
        }
        return rows;
    }

    private static String said(String typed, String printed) {
        return typed.isEmpty() ? printed : typed;
    }

    /**
     * Changes one piece of a reading by what was typed for it.
     *
     * @return whether it was changed; if not, {@link #errorProperty} says why
     */
    boolean change(ReadingRow row, Piece piece, String typed) {
        String line = String.join(
                " ",
                piece == Piece.DISTANCE ? typed.strip() : row.distance(),
                piece == Piece.DIRECTION ? typed.strip() : row.direction(),
                (piece == Piece.DEPTH ? typed.strip() : row.depth()).replaceAll("\\h+", ""));
        return tried(() -> {
            Line parsed = Notation.of(session.peg()).parse(line);
            if (!(parsed instanceof Line.ReadingLine reading)) {
                throw new InputException(
                        "A reading is changed by its distance, direction or depth, like 11, 20L or 4'6.");
            }
            if (piece != Piece.DEPTH) {
                LineBounds.refuse(session.peg(), parsed, typed);
            }
            Reading old = row.at().in(session.peg());
            Reading now = reading.reading();
            boolean placeStays = piece == Piece.DEPTH;
            session.edit(ReadingEdits.change(
                    row.at(),
                    new Reading(
                            placeStays
                                    ? new pegbed.model.Typed(
                                            old.typed().distance(),
                                            old.typed().direction(),
                                            now.typed().depth())
                                    : now.typed(),
                            placeStays ? old.place() : now.place(),
                            placeStays ? old.precision() : now.precision(),
                            placeStays ? now.depthMetres() : old.depthMetres(),
                            old.bottom(),
                            old.note(),
                            old.time(),
                            old.extras())));
        });
    }

    boolean changeBottom(ReadingRow row, Bottom bottom) {
        return tried(() -> session.edit(ReadingEdits.bottom(row.at(), bottom)));
    }

    boolean changeNote(ReadingRow row, String note) {
        return tried(() -> session.edit(ReadingEdits.note(row.at(), note.strip())));
    }

    boolean delete(ReadingRow row) {
        return tried(() -> session.edit(ReadingEdits.delete(row.at())));
    }

    private interface Change {
        void make() throws InputException;
    }

    private boolean tried(Change change) {
        try {
            change.make();
            error.set("");
            return true;
        } catch (InputException e) {
            error.set(e.getMessage());
            return false;
        }
    }
}
