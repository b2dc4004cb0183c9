package pegbed.bench.visits;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import pegbed.bench.practice.PracticePeg;
import pegbed.bench.practice.SecondVisit;
import pegbed.bench.practice.Tally;
import pegbed.findings.Zones;
import pegbed.geometry.PegWater;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.surface.BottomModel;
import pegbed.surface.FittedBottom;
import pegbed.surface.posterior.BottomChange;
import pegbed.surface.survey.Survey;

/** Whether a bottom that changed between two visits is reported, and one that did not is left alone. */
final class ChangeBench {
    private static final int REPEATS = 24;
    private static final int ORDINARY = 5;

    /** Radius of 1.5 square metres. */
    private static final double RADIUS_METRES = Math.sqrt(1.5 / Math.PI);

    private static final double AMOUNT_METRES = 0.25;

    /** A change reported so near counts as the one that was made, metres. */
    private static final double NEAR_METRES = 1.5;

    /** A place whose depth was known so well before is a known one, standard deviation in metres. */
    private static final double KNOWN_METRES = 0.07;

    private final PracticePeg peg;
    private final Peg first;
    private final PegWater water;
    private final FittedBottom before;

    private ChangeBench(PracticePeg peg, Peg first) throws InputException {
        this.peg = peg;
        this.first = first;
        water = PegWater.of(first);
        before = BottomModel.fit(Survey.of(first, water), Monitor.NONE);
    }

    /** What came of all runs of one kind of first visit. */
    private record Reported(
            Tally reported,
            Tally ceiling,
            Tally known,
            Tally amount2,
            Tally alarms,
            List<List<Double>> with,
            List<Double> without) {
        Reported() {
            this(new Tally(), new Tally(), new Tally(), new Tally(), new Tally(), new ArrayList<>(), new ArrayList<>());
        }

        void group() {
            for (Tally tally : List.of(reported, ceiling, known, amount2, alarms)) {
                tally.group();
            }
            with.add(new ArrayList<>());
        }

        String row(String plan) {
            Tally unknown = new Tally();
            for (List<Double> ofPeg : with) {
                unknown.group();
                ChangeCeiling.reported(ofPeg, without).forEach(unknown::add);
            }
            return String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %s | %s (%d) | %s | %s |%n",
                    plan,
                    VisitsBench.share(reported),
                    VisitsBench.share(unknown),
                    VisitsBench.share(ceiling),
                    VisitsBench.share(known),
                    known.count(),
                    VisitsBench.millimetres(amount2),
                    VisitsBench.share(alarms));
        }
    }

    static String table(FirstVisits visits, List<PracticePeg> pegs) throws InputException {
        StringBuilder out = new StringBuilder(
                "| first visit | reported where it changed | ceiling, place not known | ceiling, place known | reported at places known to 7 cm before | amount RMSE mm | false alarms |\n|---|---|---|---|---|---|---|\n");
        for (String plan : visits.plans()) {
            Reported reported = new Reported();
            for (int p = 0; p < pegs.size(); p++) {
                PracticePeg peg = pegs.get(p);
                reported.group();
                ChangeBench bench = new ChangeBench(peg, visits.after(plan).get(p));
                for (int repeat = 0; repeat < REPEATS; repeat++) {
                    bench.one(
                            new Random(77L * plan.hashCode() + 13L * peg.name().hashCode() + repeat), reported);
                }
            }
            out.append(reported.row(plan));
        }
        return out.toString();
    }

    private void one(Random chance, Reported reported) {
        Place centre = centre(peg, water, chance);
        double amount = chance.nextBoolean() ? AMOUNT_METRES : -AMOUNT_METRES;
        DoubleBinaryOperator truth = peg.truth()::depthAt;
        DoubleBinaryOperator changed = (x, y) ->
                truth.applyAsDouble(x, y) + (centre.distanceTo(new Place(x, y)) <= RADIUS_METRES ? amount : 0);
        List<Reading> readings = readings(centre, changed, chance);
        Optional<BottomChange> there = changes(readings).stream()
                .filter(c -> Math.hypot(c.xMetres() - centre.xMetres(), c.yMetres() - centre.yMetres()) <= NEAR_METRES
                        && c.deeperMetres() * amount > 0)
                .findFirst();
        reported.reported().add(there.isPresent() ? 1 : 0);
        if (before.at(centre.xMetres(), centre.yMetres()).sdMetres() <= KNOWN_METRES) {
            reported.known().add(there.isPresent() ? 1 : 0);
        }
        there.ifPresent(c -> reported.amount2().add((c.deeperMetres() - amount) * (c.deeperMetres() - amount)));
        reported.alarms().add(changes(readings(centre, truth, chance)).isEmpty() ? 0 : 1);
        ChangeCeiling.Reported most = new ChangeCeiling(peg, before, AMOUNT_METRES, NEAR_METRES).of(readings, chance);
        reported.ceiling().add(most.known());
        reported.with().get(reported.with().size() - 1).addAll(most.with());
        reported.without().addAll(most.without());
    }

    /** Any place in the water in front whose whole patch is water, at least 0.4 m deep. */
    private static Place centre(PracticePeg peg, PegWater water, Random chance) {
        double reach = Math.min(13, water.reachMetres() - RADIUS_METRES);
        while (true) {
            Place place = new Place(reach * (2 * chance.nextDouble() - 1), reach * chance.nextDouble());
            boolean inWater = Math.abs(place.angleDegrees()) <= Zones.WIDEST_DEGREES && place.distanceMetres() <= reach;
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

    /** Five ordinary readings and two that fall into the patch. */
    private List<Reading> readings(Place centre, DoubleBinaryOperator bottom, Random chance) {
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
        return readings;
    }

    private List<BottomChange> changes(List<Reading> readings) {
        return BottomModel.fit(Survey.of(SecondVisit.after(first, readings), water), Monitor.NONE)
                .changes();
    }
}
