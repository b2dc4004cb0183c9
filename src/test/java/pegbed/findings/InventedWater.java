package pegbed.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import pegbed.guidance.Guidance;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Extras;
import pegbed.model.Hazard;
import pegbed.model.InputException;
import pegbed.model.Limits;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.model.Reading;
import pegbed.model.Typed;

/** Invented pegs with invented bottoms, to plumb without errors. */
public final class InventedWater {
    private InventedWater() {}

    /** A straight cut 11.5 m wide, from half a metre behind the seat. */
    public static Peg cut() {
        return Peg.EMPTY.withPole(Pole.USUAL.withReach(13)).withBanks(new Banks(bank(-0.5), bank(11), List.of()));
    }

    /** Open water with a straight near bank. */
    public static Peg pond() {
        return Peg.EMPTY.withPole(Pole.USUAL.withReach(14.5)).withBanks(new Banks(bank(-0.5), List.of(), List.of()));
    }

    /** The cut with an island, limits and a snag. */
    public static Peg crowded() {
        List<BankPoint> island =
                List.of(BankPoint.at(1, 6), BankPoint.at(4, 6), BankPoint.at(4, 8), BankPoint.at(1, 8));
        return cut().withBanks(new Banks(bank(-0.5), bank(11), List.of(island)))
                .withLimits(new Limits(OptionalDouble.of(-5), OptionalDouble.of(6.5)))
                .withHazards(List.of(
                        new Hazard(Hazard.Kind.SNAG, List.of(new Place(-2, 5)), 1.2, "", Typed.NOTHING, Extras.NONE)));
    }

    private static List<BankPoint> bank(double y) {
        List<BankPoint> points = new ArrayList<>();
        for (int x = -14; x <= 14; x += 2) {
            points.add(BankPoint.at(x, y));
        }
        return points;
    }

    /** Depth of the cut: ledges of 0.8 m, a track of 1.6 m that deepens to the left. */
    public static double cutDepth(double x, double y) {
        double fromNear = y + 0.5;
        double fromFar = 11 - y;
        double side = Math.min(fromNear - 2, fromFar - 2.5);
        double t = Math.max(0, Math.min(1, side / 1.5));
        return 0.8 + (0.8 - 0.012 * x) * t * t * (3 - 2 * t) + 0.01 * Math.sin(x + y);
    }

    /** Depth of the pond: a ledge, a drop-off, then a level bottom. */
    public static double pondDepth(double x, double y) {
        double t = Math.max(0, Math.min(1, (y - 3) / 3));
        return 0.9 + 1.1 * t * t * (3 - 2 * t) - 0.01 * x;
    }

    public static Reading read(Place place, DoubleBinaryOperator depth) {
        return Reading.of(
                place.distanceMetres(), place.angleDegrees(), depth.applyAsDouble(place.xMetres(), place.yMetres()));
    }

    /** The peg after so many guided readings. */
    public static Peg guided(Peg peg, DoubleBinaryOperator depth, int count) throws InputException {
        Peg current = peg;
        PegMap map = PegMap.of(current, Monitor.NONE);
        for (int i = 0; i < count; i++) {
            current = current.withReading(read(Guidance.next(map).place(), depth));
            map = PegMap.of(current, Monitor.NONE);
        }
        return current;
    }

    public static PegMap map(Peg peg) throws InputException {
        return PegMap.of(peg, Monitor.NONE);
    }

    /** The peg seen in a mirror along straight out. */
    public static Peg mirrored(Peg peg) {
        return peg.withBanks(new Banks(
                        mirrored(peg.banks().near()),
                        mirrored(peg.banks().far()),
                        peg.banks().islands().stream()
                                .map(InventedWater::mirrored)
                                .toList()))
                .withToday(visit -> visit.withReadings(visit.readings().stream()
                        .map(r -> Reading.of(
                                r.place().distanceMetres(), -r.place().angleDegrees(), r.depthMetres()))
                        .toList()));
    }

    private static List<BankPoint> mirrored(List<BankPoint> bank) {
        List<BankPoint> points = new ArrayList<>();
        for (BankPoint point : bank) {
            points.add(0, BankPoint.at(-point.place().xMetres(), point.place().yMetres()));
        }
        return points;
    }
}
