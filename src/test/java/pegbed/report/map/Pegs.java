package pegbed.report.map;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Extras;
import pegbed.model.Hazard;
import pegbed.model.InputException;
import pegbed.model.Mark;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.model.Reading;
import pegbed.model.Typed;
import pegbed.model.Visit;

/** Invented pegs to draw: a straight cut 11 m wide with a dished track, and a pond. */
public final class Pegs {
    static final double REACH = 13;

    private Pegs() {}

    /** Depth of the invented cut: shelves under both banks, a track between. */
    static double depth(Place place) {
        double fromNear = place.yMetres() + 0.5;
        double fromFar = 10.5 - place.yMetres();
        double across = Math.max(0, Math.min(fromNear, fromFar));
        return 0.25 + 1.45 * (1 - Math.exp(-across * across / 8)) + 0.03 * place.xMetres() / 10;
    }

    static Peg cut() {
        return Peg.EMPTY
                .withName(new PegName("Mallowfield Pools", "Tansy Cut", "9"))
                .withPole(Pole.USUAL.withReach(REACH))
                .withBanks(new Banks(bank(-0.5), bank(10.5), List.of()));
    }

    static Peg pond() {
        return Peg.EMPTY
                .withName(new PegName("Mallowfield Pools", "Hobbrel Pond", "3"))
                .withPole(Pole.USUAL.withReach(REACH))
                .withBanks(new Banks(bank(-0.5), List.of(), List.of()));
    }

    /** A seat in a bay: the near bank comes forward on both sides. */
    static Peg bay() {
        List<BankPoint> near = new ArrayList<>();
        for (int x = -15; x <= 15; x += 3) {
            near.add(BankPoint.at(x, -0.5 + 0.012 * x * x));
        }
        return cut().withBanks(new Banks(near, bank(10.5), List.of()));
    }

    static Peg withIsland(Peg peg) {
        List<BankPoint> island = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            double turn = 2 * Math.PI * i / 10;
            island.add(BankPoint.at(-3 + 1.2 * Math.cos(turn), 7 + 1.2 * Math.sin(turn)));
        }
        return peg.withBanks(new Banks(peg.banks().near(), peg.banks().far(), List.of(island)));
    }

    private static List<BankPoint> bank(double y) {
        List<BankPoint> points = new ArrayList<>();
        for (int x = -15; x <= 15; x += 3) {
            points.add(BankPoint.at(x, y));
        }
        return points;
    }

    /** So many readings on radials, depths of the invented cut. */
    static List<Reading> fan(int count) {
        List<Reading> readings = new ArrayList<>();
        double[] angles = {0, -25, 25, -50, 50, -12, 12, -38, 38};
        double[] distances = {3, 5, 7, 9, 4, 6, 8, 10};
        for (int i = 0; i < count; i++) {
            double angle = angles[i % angles.length];
            double distance = distances[i / angles.length % distances.length];
            readings.add(Reading.of(distance, angle, depth(Place.polar(distance, angle))));
        }
        return readings;
    }

    static Peg withReadings(Peg peg, List<Reading> readings) {
        return peg.withVisits(List.of(visit("2026-05-12T07:30:00+01:00", 0.32, readings)));
    }

    static Visit visit(String start, double boardToWaterMetres, List<Reading> readings) {
        return new Visit(
                Optional.of(OffsetDateTime.parse(start)),
                OptionalDouble.of(boardToWaterMetres),
                readings,
                "",
                Extras.NONE);
    }

    static Mark mark(String name, double distanceMetres, double angleDegrees) {
        return new Mark(name, Place.polar(distanceMetres, angleDegrees), Extras.NONE);
    }

    static Hazard hazard(Hazard.Kind kind, double distanceMetres, double angleDegrees, double radiusMetres) {
        return new Hazard(
                kind, List.of(Place.polar(distanceMetres, angleDegrees)), radiusMetres, "", Typed.NOTHING, Extras.NONE);
    }

    /** The cut with everything on it that a map shows. */
    public static Peg full() {
        return withReadings(cut(), fan(30))
                .withMarks(List.of(
                        mark("leaning post", 12, -24),
                        mark("split ash", 11.6, 8),
                        mark("white pipe", 13.5, 33),
                        mark("gate", 16, -45)))
                .withHazards(List.of(
                        hazard(Hazard.Kind.SNAG, 8, 20, 0.8),
                        hazard(Hazard.Kind.LILIES_OR_REEDS, 5, -80, 0.8),
                        hazard(Hazard.Kind.LOW_BRANCH, 10.5, -40, 1),
                        hazard(Hazard.Kind.OVERHEAD_LINE, 9, 70, 1.5),
                        hazard(Hazard.Kind.OTHER, 4, 75, 0)));
    }

    static MapDrawing drawing(Peg peg) {
        return drawing(peg, MapOptions.USUAL);
    }

    static MapDrawing drawing(Peg peg, MapOptions options) {
        PegMap map = map(peg);
        return MapDrawing.of(map, Findings.of(map, OptionalDouble.empty()), options);
    }

    static PegMap map(Peg peg) {
        try {
            return PegMap.of(peg, Monitor.NONE);
        } catch (InputException e) {
            throw new IllegalStateException(e);
        }
    }
}
