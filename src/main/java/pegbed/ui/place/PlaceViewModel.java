package pegbed.ui.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import pegbed.geodesy.LocalFrame;
import pegbed.geodesy.Resection;
import pegbed.geodesy.SightedMark;
import pegbed.model.BankPoint;
import pegbed.model.Extras;
import pegbed.model.Hazard;
import pegbed.model.InputException;
import pegbed.model.Limits;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.model.Position;
import pegbed.model.Typed;
import pegbed.model.Units;
import pegbed.notation.LatitudeLongitude;
import pegbed.notation.Line;
import pegbed.notation.LineBounds;
import pegbed.notation.Notation;
import pegbed.notation.ShortForm;
import pegbed.session.Edit;
import pegbed.session.PlaceEdits;
import pegbed.session.PlaceEdits.Bank;
import pegbed.session.Session;
import pegbed.ui.controls.Texts;

/** The place in forms: banks, marks, hazards, limits, the pole, the names and the units. */
public final class PlaceViewModel {
    /** What a row of the list is. */
    public enum Kind {
        NEAR_BANK("near bank"),
        FAR_BANK("far bank"),
        MARK("mark"),
        HAZARD("hazard");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /**
     * One thing of the place.
     *
     * @param kind what it is
     * @param index its place in the peg's list of its kind
     * @param name of a mark; kind of a hazard; else empty
     * @param where distance and direction as they would be typed, then depth of an edge or radius of a hazard
     */
    public record Row(Kind kind, int index, String name, String where) {}

    private final Session session;
    private final ObservableList<Row> rows = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper error = new ReadOnlyStringWrapper("");
    private final List<Runnable> listeners = new ArrayList<>();

    /** The position that marks gave last. */
    private Optional<Resection> byMarks = Optional.empty();

    private Peg shownPeg;

    public PlaceViewModel(Session session) {
        this.session = session;
        session.onChange(this::refresh);
        refresh();
    }

    /** Near bank, far bank, marks and hazards, in this order. */
    public ObservableList<Row> rows() {
        return rows;
    }

    /** Why the last change was refused, one sentence; empty if it was not. */
    ReadOnlyStringProperty errorProperty() {
        return error.getReadOnlyProperty();
    }

    /** Run when names, pole, limits or units may have changed. */
    void onChange(Runnable listener) {
        listeners.add(listener);
        listener.run();
    }

    PegName name() {
        return session.peg().name();
    }

    Units units() {
        return session.peg().units();
    }

    /** Latitude and longitude of the seat as they are typed; empty if they are not known. */
    String seat() {
        return session.peg()
                .position()
                .map(at -> new LatitudeLongitude(at.latitudeDegrees(), at.longitudeDegrees()).text())
                .orElse("");
    }

    /** The true bearing of straight out, degrees; empty if it is not known. */
    String bearing() {
        return session.peg().position().map(at -> plain(at.bearingDegrees())).orElse("");
    }

    /** How well the position is known, in a few words, or how well marks agreed on it; empty where that is not told. */
    String accuracy() {
        if (byMarks.isPresent()
                && session.peg().position().equals(Optional.of(byMarks.get().position()))) {
            return "marks agree within " + Texts.number(byMarks.get().rmsMetres(), 1) + " m";
        }
        OptionalDouble metres =
                session.peg().position().map(Position::accuracyMetres).orElse(OptionalDouble.empty());
        return metres.isPresent() ? "± " + plain(metres.getAsDouble()) + " m" : "";
    }

    /**
     * Where on the earth the seat is, and which way it looks; both empty takes the position away. Instead of latitude
     * and longitude marks may be typed with theirs, {@code gate=52.1,-1.2; split ash=52.1,-1.3}, which give both.
     */
    boolean setPosition(String seat, String bearing) {
        if (seat.strip().equals(seat()) && bearing.strip().equals(bearing())) {
            error.set("");
            return true;
        }
        return tried(() -> PlaceEdits.position(position(seat.strip(), bearing.strip())));
    }

    private Optional<Position> position(String seat, String bearing) throws InputException {
        if (seat.isEmpty() && bearing.isEmpty()) {
            return Optional.empty();
        }
        if (seat.isEmpty()) {
            throw new InputException(
                    "A bearing alone says nothing without a position; type latitude and longitude of the"
                            + " seat as well, such as 52.1234,-1.2345.");
        }
        if (seat.contains("=")) {
            List<SightedMark> marks = new ArrayList<>();
            for (String each : seat.split(";", -1)) {
                String[] parts = each.split("=", 2);
                marks.add(SightedMark.of(session.peg(), parts[0], parts.length == 2 ? parts[1] : ""));
            }
            Resection fit = Resection.of(marks, OptionalDouble.empty());
            byMarks = Optional.of(fit);
            return Optional.of(fit.position());
        }
        LatitudeLongitude at = LatitudeLongitude.parse(seat);
        LocalFrame.refuseNearPole(at.latitudeDegrees());
        if (bearing.isEmpty()) {
            throw new InputException("A position alone does not say which way the peg looks; type the true bearing of"
                    + " straight out as well, such as 312.");
        }
        double degrees = degrees(bearing);
        // What is only shown with fewer digits is not changed by being left as it is.
        Optional<Position> before = session.peg().position();
        boolean sameSeat = seat.equals(seat());
        boolean sameBearing = bearing.equals(bearing());
        return Optional.of(new Position(
                sameSeat ? before.orElseThrow().latitudeDegrees() : at.latitudeDegrees(),
                sameSeat ? before.orElseThrow().longitudeDegrees() : at.longitudeDegrees(),
                sameBearing ? before.orElseThrow().bearingDegrees() : degrees,
                sameSeat ? before.orElseThrow().accuracyMetres() : OptionalDouble.empty()));
    }

    private static double degrees(String typed) throws InputException {
        try {
            double degrees = Double.parseDouble(typed.replace(',', '.').replaceAll("\\s*°$", ""));
            if (degrees >= 0 && degrees <= 360) {
                return degrees;
            }
        } catch (NumberFormatException notANumber) {
            // Said below.
        }
        throw new InputException("The bearing is true degrees clockwise from north, 0 to 360, such as 312.");
    }

    /** The pole's joints in metres as they are typed. */
    String joints() {
        return String.join(
                ", ",
                session.peg().pole().jointMetres().stream()
                        .map(PlaceViewModel::plain)
                        .toList());
    }

    /** The left limit in metres as it is typed, without sign; empty if there is none. */
    String leftLimit() {
        OptionalDouble left = session.peg().limits().leftMetres();
        return left.isPresent() ? plain(-left.getAsDouble()) : "";
    }

    /** The right limit in metres as it is typed; empty if there is none. */
    String rightLimit() {
        OptionalDouble right = session.peg().limits().rightMetres();
        return right.isPresent() ? plain(right.getAsDouble()) : "";
    }

    private static String plain(double value) {
        String words = Texts.number(value, 2);
        return words.replaceAll("0+$", "").replaceAll("\\.$", "");
    }

    private void refresh() {
        if (session.peg() == shownPeg) {
            return;
        }
        shownPeg = session.peg();
        List<Row> now = rows(session.peg());
        if (!now.equals(rows)) {
            rows.setAll(now);
        }
        listeners.forEach(Runnable::run);
    }

    private static List<Row> rows(Peg peg) {
        ShortForm form = new ShortForm(peg.units(), peg.pole(), '.');
        List<Row> rows = new ArrayList<>();
        edges(rows, Kind.NEAR_BANK, peg.banks().near(), form);
        edges(rows, Kind.FAR_BANK, peg.banks().far(), form);
        for (int i = 0; i < peg.marks().size(); i++) {
            Mark mark = peg.marks().get(i);
            rows.add(new Row(Kind.MARK, i, mark.name(), where(mark.place(), form)));
        }
        for (int i = 0; i < peg.hazards().size(); i++) {
            Hazard hazard = peg.hazards().get(i);
            rows.add(new Row(
                    Kind.HAZARD,
                    i,
                    hazard.kind().word(),
                    where(hazard.outline().get(0), form) + " " + plain(hazard.radiusMetres())));
        }
        return rows;
    }

    private static void edges(List<Row> rows, Kind kind, List<BankPoint> points, ShortForm form) {
        for (int i = 0; i < points.size(); i++) {
            BankPoint point = points.get(i);
            String depth = point.depthMetres().isPresent()
                    ? " " + form.printDepth(point.depthMetres().getAsDouble())
                    : "";
            rows.add(new Row(kind, i, "", where(point.place(), form) + depth));
        }
    }

    /** Where a row's thing is; empty if it is gone. */
    Optional<Place> place(Row row) {
        Peg peg = session.peg();
        List<Place> places = switch (row.kind()) {
            case NEAR_BANK -> peg.banks().near().stream().map(BankPoint::place).toList();
            case FAR_BANK -> peg.banks().far().stream().map(BankPoint::place).toList();
            case MARK -> peg.marks().stream().map(Mark::place).toList();
            case HAZARD ->
                peg.hazards().stream().map(hazard -> hazard.outline().get(0)).toList();
        };
        return row.index() < places.size() ? Optional.of(places.get(row.index())) : Optional.empty();
    }

    private static String where(Place place, ShortForm form) {
        return form.printDistance(place.distanceMetres()) + " " + form.printDirection(place.angleDegrees());
    }

    /**
     * Adds something.
     *
     * @param kind what
     * @param name of a mark, else the word of a hazard's kind; not looked at for banks
     * @param typed distance and direction, then an edge's depth or a hazard's radius where known
     */
    public boolean add(Kind kind, String name, String typed) {
        return tried(() -> switch (kind) {
            case NEAR_BANK -> PlaceEdits.addBankPoint(Bank.NEAR, edge(typed));
            case FAR_BANK -> PlaceEdits.addBankPoint(Bank.FAR, edge(typed));
            case MARK -> PlaceEdits.addMark(name, edge(typed).place());
            case HAZARD -> PlaceEdits.addHazard(hazard(name, typed));
        });
    }

    /** Changes where something is, from what was typed. */
    public boolean change(Row row, String typed) {
        return tried(() -> switch (row.kind()) {
            case NEAR_BANK -> PlaceEdits.changeBankPoint(Bank.NEAR, row.index(), edge(typed));
            case FAR_BANK -> PlaceEdits.changeBankPoint(Bank.FAR, row.index(), edge(typed));
            case MARK -> PlaceEdits.moveMark(row.index(), edge(typed).place());
            case HAZARD -> PlaceEdits.changeHazard(row.index(), moved(row, typed));
        });
    }

    /** Gives a mark another name, or a hazard another kind. */
    boolean rename(Row row, String name) {
        return tried(() -> switch (row.kind()) {
            case MARK -> PlaceEdits.renameMark(row.index(), name);
            case HAZARD -> {
                Hazard old = session.peg().hazards().get(row.index());
                yield PlaceEdits.changeHazard(
                        row.index(),
                        new Hazard(
                                kind(name), old.outline(), old.radiusMetres(), old.note(), old.typed(), old.extras()));
            }
            default -> throw new InputException("A point of a bank has no name.");
        });
    }

    boolean delete(Row row) {
        return tried(() -> switch (row.kind()) {
            case NEAR_BANK -> PlaceEdits.deleteBankPoint(Bank.NEAR, row.index());
            case FAR_BANK -> PlaceEdits.deleteBankPoint(Bank.FAR, row.index());
            case MARK -> PlaceEdits.deleteMark(row.index());
            case HAZARD -> PlaceEdits.deleteHazard(row.index());
        });
    }

    boolean setName(PegName name) {
        return tried(() -> PlaceEdits.name(name));
    }

    public boolean setUnits(Units units) {
        return tried(() -> PlaceEdits.units(units));
    }

    /** Sets the pole from its joints in metres, parted by blanks or commas. */
    boolean setJoints(String typed) {
        return tried(() -> PlaceEdits.pole(pole(typed)));
    }

    static Pole pole(String typed) throws InputException {
        try {
            List<Double> joints = Arrays.stream(typed.strip().split("[,;\\s]+"))
                    .map(Double::valueOf)
                    .toList();
            return new Pole(joints);
        } catch (NumberFormatException e) {
            throw new InputException(
                    "The pole's joints are metres, one for each section, such as 2.6, 4, 5.5, 7, 8.5, 10.", e);
        } catch (IllegalArgumentException e) {
            throw new InputException(e.getMessage(), e);
        }
    }

    /** Sets how far the person's own water goes, in metres to each side; empty for no limit. */
    boolean setLimits(String left, String right) {
        return tried(() -> {
            OptionalDouble l = limit(left, "left");
            OptionalDouble r = limit(right, "right");
            try {
                return PlaceEdits.limits(new Limits(l.isPresent() ? OptionalDouble.of(-l.getAsDouble()) : l, r));
            } catch (IllegalArgumentException e) {
                throw new InputException(e.getMessage(), e);
            }
        });
    }

    private static OptionalDouble limit(String typed, String side) throws InputException {
        if (typed.isBlank()) {
            return OptionalDouble.empty();
        }
        try {
            double metres = Double.parseDouble(typed.strip().replace(',', '.').replaceAll("m$", ""));
            if (metres > 0 && metres < 1000) {
                return OptionalDouble.of(metres);
            }
        } catch (NumberFormatException notANumber) {
            // Said below.
        }
        throw new InputException("The " + side + " limit is metres from the seat, such as 6.5, or empty for none.");
    }

    private BankPoint edge(String typed) throws InputException {
        Line line = Notation.of(session.peg()).parse("edge " + typed);
        LineBounds.refuse(session.peg(), line, typed);
        return ((Line.EdgeLine) line).point();
    }

    private Hazard hazard(String kind, String typed) throws InputException {
        Hazard snag = ((Line.SnagLine) Notation.of(session.peg()).parse("snag " + typed)).hazard();
        Hazard hazard =
                new Hazard(kind(kind), snag.outline(), snag.radiusMetres(), snag.note(), snag.typed(), Extras.NONE);
        LineBounds.refuse(hazard, typed);
        return hazard;
    }

    private Hazard moved(Row row, String typed) throws InputException {
        Hazard now = hazard(row.name(), typed);
        Hazard old = session.peg().hazards().get(row.index());
        double dx = now.outline().get(0).xMetres() - old.outline().get(0).xMetres();
        double dy = now.outline().get(0).yMetres() - old.outline().get(0).yMetres();
        List<Place> outline = old.outline().stream()
                .map(p -> new Place(p.xMetres() + dx, p.yMetres() + dy))
                .toList();
        Typed said = outline.size() == 1 ? now.typed() : Typed.NOTHING;
        return new Hazard(old.kind(), outline, now.radiusMetres(), old.note(), said, old.extras());
    }

    private static Hazard.Kind kind(String word) {
        return Arrays.stream(Hazard.Kind.values())
                .filter(kind -> kind.word().equals(word.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElse(Hazard.Kind.OTHER);
    }

    private interface Change {
        Edit edit() throws InputException;
    }

    private boolean tried(Change change) {
        try {
            session.edit(change.edit());
            error.set("");
            return true;
        } catch (InputException e) {
            error.set(e.getMessage());
            return false;
        }
    }
}
