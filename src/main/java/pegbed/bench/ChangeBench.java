package pegbed.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import pegbed.geometry.PegWater;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.surface.BottomChange;
import pegbed.surface.BottomModel;
import pegbed.surface.FittedBottom;
import pegbed.surface.Survey;

/** Whether a bottom that changed between two visits is told, and one that did not is left alone. */
final class ChangeBench {
    private static final int REPEATS = 24;
    private static final int ORDINARY = 5;

    /** Radius of 1.5 square metres. */
    private static final double RADIUS_METRES = Math.sqrt(1.5 / Math.PI);

    private static final double AMOUNT_METRES = 0.25;

    /** A change told so near counts as the one that was made, metres. */
    private static final double NEAR_METRES = 1.5;

    /** A place whose depth was known so well before is a known one, standard deviation in metres. */
    private static final double KNOWN_METRES = 0.07;

    private ChangeBench() {}

    static String table(Path practice, List<PracticePeg> pegs) throws InputException {
        StringBuilder out = new StringBuilder(
                "| first visit | told where it changed | of places known to 7 cm before | amount RMSE mm | false alarms |\n|---|---|---|---|---|\n");
        for (String table : VisitsBench.TABLES) {
            Tally told = new Tally();
            Tally known = new Tally();
            Tally amount2 = new Tally();
            Tally alarms = new Tally();
            for (PracticePeg peg : pegs) {
                told.group();
                known.group();
                amount2.group();
                alarms.group();
                Peg first = peg.with(practice.resolve(peg.name()).resolve(table));
                for (int repeat = 0; repeat < REPEATS; repeat++) {
                    Random chance =
                            new Random(77L * table.hashCode() + 13L * peg.name().hashCode() + repeat);
                    one(peg, first, chance, told, known, amount2, alarms);
                }
            }
            out.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %s | %s |%n",
                    table,
                    share(told),
                    share(known) + " (" + known.count() + ")",
                    VisitsBench.millimetres(amount2),
                    share(alarms)));
        }
        return out.toString();
    }

    private static String share(Tally tally) {
        return String.format(Locale.ROOT, "%.1f ± %.1f %%", 100 * tally.mean(), 100 * tally.error());
    }

    private static void one(
            PracticePeg peg, Peg first, Random chance, Tally told, Tally known, Tally amount2, Tally alarms)
            throws InputException {
        PegWater water = PegWater.of(first);
        FittedBottom before = BottomModel.fit(Survey.of(first, water), Monitor.NONE);
        Place centre = centre(peg, water, chance);
        double amount = chance.nextBoolean() ? AMOUNT_METRES : -AMOUNT_METRES;
        DoubleBinaryOperator truth = peg.truth()::depthAt;
        DoubleBinaryOperator changed = (x, y) ->
                truth.applyAsDouble(x, y) + (centre.distanceTo(new Place(x, y)) <= RADIUS_METRES ? amount : 0);
        List<BottomChange> changes = changes(peg, first, water, centre, changed, chance);
        Optional<BottomChange> there = changes.stream()
                .filter(c -> Math.hypot(c.xMetres() - centre.xMetres(), c.yMetres() - centre.yMetres()) <= NEAR_METRES
                        && c.deeperMetres() * amount > 0)
                .findFirst();
        told.add(there.isPresent() ? 1 : 0);
        if (before.at(centre.xMetres(), centre.yMetres()).sdMetres() <= KNOWN_METRES) {
            known.add(there.isPresent() ? 1 : 0);
        }
        there.ifPresent(c -> amount2.add((c.deeperMetres() - amount) * (c.deeperMetres() - amount)));
        alarms.add(changes(peg, first, water, centre, truth, chance).isEmpty() ? 0 : 1);
    }

    /** Any place in the water in front whose whole patch is water, at least 0.4 m deep. */
    private static Place centre(PracticePeg peg, PegWater water, Random chance) {
        double reach = Math.min(13, water.reachMetres() - RADIUS_METRES);
        while (true) {
            Place place = new Place(reach * (2 * chance.nextDouble() - 1), reach * chance.nextDouble());
            boolean inWater = Math.abs(place.angleDegrees()) <= 62 && place.distanceMetres() <= reach;
            for (int a = 0; a < 360 && inWater; a += 45) {
                Place edge = Place.polar(RADIUS_METRES, a);
                double x = place.xMetres() + edge.xMetres();
                double y = place.yMetres() + edge.yMetres();
                inWater = water.isWater(x, y) && peg.truth().depthAt(x, y) >= 0.3;
            }
            if (inWater) {
                return place;
            }
        }
    }

    /** What is told after five ordinary readings and two that fall into the patch. */
    private static List<BottomChange> changes(
            PracticePeg peg, Peg first, PegWater water, Place centre, DoubleBinaryOperator bottom, Random chance) {
        SecondVisit visit = new SecondVisit(peg, bottom, VisitsBench.HIGHER_METRES, chance);
        List<Reading> readings = new ArrayList<>(visit.ordinary(first, ORDINARY));
        int inside = 0;
        while (inside < 2) {
            Place step = Place.polar(RADIUS_METRES * Math.sqrt(chance.nextDouble()), 360 * chance.nextDouble());
            Place wanted = new Place(centre.xMetres() + step.xMetres(), centre.yMetres() + step.yMetres());
            Place reached = visit.reached(wanted);
            Optional<Reading> reading =
                    reached.distanceTo(centre) <= RADIUS_METRES ? visit.readAt(wanted, reached) : Optional.empty();
            if (reading.isPresent()) {
                readings.add(reading.get());
                inside++;
            }
        }
        FittedBottom bottomSeen = BottomModel.fit(Survey.of(SecondVisit.after(first, readings), water), Monitor.NONE);
        return bottomSeen.changes();
    }
}
