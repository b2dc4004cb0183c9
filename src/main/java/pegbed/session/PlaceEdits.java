package pegbed.session;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import pegbed.geometry.BankOrder;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Extras;
import pegbed.model.Hazard;
import pegbed.model.Limits;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.model.Typed;
import pegbed.model.Units;

/** Edits of the place: its banks, marks, hazards, limits, and of the pole and the units. */
public final class PlaceEdits {
    private PlaceEdits() {}

    /** One of the two banks. */
    public enum Bank {
        NEAR("near bank"),
        FAR("far bank");

        private final String words;

        Bank(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** The points of this bank. */
        public List<BankPoint> of(Banks banks) {
            return this == NEAR ? banks.near() : banks.far();
        }

        private Banks in(Banks banks, List<BankPoint> points) {
            return this == NEAR
                    ? new Banks(points, banks.far(), banks.islands())
                    : new Banks(banks.near(), points, banks.islands());
        }
    }

    /** A further point of a bank, put in its order along it. */
    public static Edit addBankPoint(Bank bank, BankPoint point) {
        return Edit.of(
                "Add " + bank.words() + " point",
                peg -> peg.withBanks(bank.in(peg.banks(), BankOrder.with(bank.of(peg.banks()), point, false))));
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
        return Edit.of("Set " + bank.words(), peg -> peg.withBanks(bank.in(peg.banks(), points)));
    }

    /**
     * Which bank a point of the water's edge belongs to: the one whose points are nearer; while there are too few, the
     * near bank if it is within 3 m of the seat or more than 60° to the side and within 7 m, else the far bank.
     */
    public static Bank bankFor(Peg peg, Place place) {
        OptionalDouble near = nearest(peg.banks().near(), place);
        OptionalDouble far = nearest(peg.banks().far(), place);
        if (near.isPresent() && far.isPresent()) {
            return near.getAsDouble() <= far.getAsDouble() ? Bank.NEAR : Bank.FAR;
        }
        boolean beside = Math.abs(place.angleDegrees()) > 60 && place.distanceMetres() <= 7;
        return place.distanceMetres() <= 3 || beside ? Bank.NEAR : Bank.FAR;
    }

    private static OptionalDouble nearest(List<BankPoint> points, Place place) {
        return points.stream().mapToDouble(p -> p.place().distanceTo(place)).min();
    }

    private static Peg points(Peg peg, Bank bank, Consumer<List<BankPoint>> change) {
        List<BankPoint> points = new ArrayList<>(bank.of(peg.banks()));
        change.accept(points);
        return peg.withBanks(bank.in(peg.banks(), points));
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

    public static Edit name(PegName name) {
        return Edit.step("Change name", "name", peg -> peg.withName(name));
    }
}
