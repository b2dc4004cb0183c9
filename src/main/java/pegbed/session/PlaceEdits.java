package pegbed.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import pegbed.geometry.Shoreline;
import pegbed.model.BankPoint;
import pegbed.model.Extras;
import pegbed.model.Hazard;
import pegbed.model.Limits;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.model.Position;
import pegbed.model.Typed;
import pegbed.model.Units;

/** Edits of the place: its banks, marks, hazards, limits, and of the pole and the units. */
public final class PlaceEdits {
    private PlaceEdits() {}

    /** One of the two banks. */
    public enum Bank {
        NEAR(Shoreline.NEAR),
        FAR(Shoreline.FAR);

        private final Shoreline line;

        Bank(Shoreline line) {
            this.line = line;
        }

        private String words() {
            return line.kind().words();
        }
    }

    /**
     * A further point of a bank, put in its order along it; it is an island's where that is nearer than either bank
     * ({@link Shoreline#named}).
     */
    public static Edit addBankPoint(Bank bank, BankPoint point) {
        return Edit.of("Add " + bank.words() + " point", peg -> {
            Shoreline line = Shoreline.named(peg.banks(), point.place(), bank.line);
            return peg.withBanks(line.with(peg.banks(), point));
        });
    }

    /** Moves a point of a bank; what was typed for it no longer holds. A drag is undone as one. */
    public static Edit moveBankPoint(Bank bank, int index, Place place) {
        return Edit.step(
                "Move " + bank.words() + " point",
                bank + " " + index,
                peg -> points(peg, bank, points -> {
                    BankPoint old = points.get(index);
                    points.set(index, new BankPoint(place, old.depthMetres(), Typed.NOTHING, old.extras()));
                }));
    }

    /** Puts another point in the place of one. */
    public static Edit changeBankPoint(Bank bank, int index, BankPoint point) {
        return Edit.of(
                "Change " + bank.words() + " point",
                peg -> points(
                        peg,
                        bank,
                        points -> points.set(
                                index,
                                new BankPoint(
                                        point.place(),
                                        point.depthMetres(),
                                        point.typed(),
                                        points.get(index).extras()))));
    }

    public static Edit deleteBankPoint(Bank bank, int index) {
        return Edit.of("Delete " + bank.words() + " point", peg -> points(peg, bank, points -> points.remove(index)));
    }

    /** A whole bank at once. */
    public static Edit bank(Bank bank, List<BankPoint> points) {
        return Edit.of("Set " + bank.words(), peg -> peg.withBanks(bank.line.in(peg.banks(), points)));
    }

    private static Peg points(Peg peg, Bank bank, Consumer<List<BankPoint>> change) {
        List<BankPoint> points = new ArrayList<>(bank.line.of(peg.banks()));
        change.accept(points);
        return peg.withBanks(bank.line.in(peg.banks(), points));
    }

    public static Edit addMark(String name, Place place) {
        return Edit.of("Add mark", peg -> marks(peg, marks -> marks.add(new Mark(name.strip(), place, Extras.NONE))));
    }

    /** Moves a mark. A drag is undone as one. */
    public static Edit moveMark(int index, Place place) {
        return Edit.step(
                "Move mark",
                "mark " + index,
                peg -> marks(peg, marks -> {
                    Mark old = marks.get(index);
                    marks.set(index, new Mark(old.name(), place, old.extras()));
                }));
    }

    public static Edit renameMark(int index, String name) {
        return Edit.of(
                "Rename mark",
                peg -> marks(peg, marks -> {
                    Mark old = marks.get(index);
                    marks.set(index, new Mark(name.strip(), old.place(), old.extras()));
                }));
    }

    public static Edit deleteMark(int index) {
        return Edit.of("Delete mark", peg -> marks(peg, marks -> marks.remove(index)));
    }

    private static Peg marks(Peg peg, Consumer<List<Mark>> change) {
        List<Mark> marks = new ArrayList<>(peg.marks());
        change.accept(marks);
        return peg.withMarks(marks);
    }

    public static Edit addHazard(Hazard hazard) {
        return Edit.of("Add " + hazard.kind().word(), peg -> hazards(peg, hazards -> hazards.add(hazard)));
    }

    /** Moves a hazard so that its first point lies at a place. A drag is undone as one. */
    public static Edit moveHazard(int index, Place place) {
        return Edit.step(
                "Move hazard",
                "hazard " + index,
                peg -> hazards(peg, hazards -> {
                    Hazard old = hazards.get(index);
                    double dx = place.xMetres() - old.outline().get(0).xMetres();
                    double dy = place.yMetres() - old.outline().get(0).yMetres();
                    List<Place> outline = old.outline().stream()
                            .map(p -> new Place(p.xMetres() + dx, p.yMetres() + dy))
                            .toList();
                    hazards.set(
                            index,
                            new Hazard(
                                    old.kind(), outline, old.radiusMetres(), old.note(), Typed.NOTHING, old.extras()));
                }));
    }

    public static Edit changeHazard(int index, Hazard hazard) {
        return Edit.of("Change hazard", peg -> hazards(peg, hazards -> hazards.set(index, hazard)));
    }

    public static Edit deleteHazard(int index) {
        return Edit.of("Delete hazard", peg -> hazards(peg, hazards -> hazards.remove(index)));
    }

    private static Peg hazards(Peg peg, Consumer<List<Hazard>> change) {
        List<Hazard> hazards = new ArrayList<>(peg.hazards());
        change.accept(hazards);
        return peg.withHazards(hazards);
    }

    public static Edit limits(Limits limits) {
        return Edit.of("Change limits", peg -> peg.withLimits(limits));
    }

    public static Edit pole(Pole pole) {
        return Edit.of("Change pole", peg -> peg.withPole(pole));
    }

    public static Edit units(Units units) {
        return Edit.of("Change units", peg -> peg.withUnits(units));
    }

    /** Where on the earth the seat is; empty where it is no longer wanted. */
    public static Edit position(Optional<Position> position) {
        return Edit.of("Change position", peg -> peg.withPosition(position));
    }

    public static Edit name(PegName name) {
        return Edit.step("Change name", "name", peg -> peg.withName(name));
    }
}
