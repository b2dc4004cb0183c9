package pegbed.bench.visits;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import pegbed.bench.practice.PracticePeg;
import pegbed.bench.practice.SecondVisit;
import pegbed.bench.practice.Tally;
import pegbed.geometry.PegWater;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.surface.BottomModel;
import pegbed.surface.FittedBottom;
import pegbed.surface.posterior.VisitLevel;
import pegbed.surface.survey.Survey;
import pegbed.visits.LevelAnswer;

/** How well the level of a second visit is found from proposed checks, from random ones, and from ordinary readings. */
final class LevelBench {
    private static final int REPEATS = 12;
    private static final int ORDINARY = 5;

    private final FirstVisits visits;
    private final List<PracticePeg> pegs;

    private LevelBench(FirstVisits visits, List<PracticePeg> pegs) {
        this.visits = visits;
        this.pegs = pegs;
    }

    /** Squared errors and stated variances of one way to find the level. */
    private record Found(Tally error2, Tally stated2) {
        Found() {
            this(new Tally(), new Tally());
        }

        static Found together(List<Found> found) {
            return new Found(
                    Tally.together(found.stream().map(Found::error2).toList()),
                    Tally.together(found.stream().map(Found::stated2).toList()));
        }

        void group() {
            error2.group();
            stated2.group();
        }

        void add(VisitLevel level) {
            double error = level.higherMetres() - VisitsBench.HIGHER_METRES;
            error2.add(error * error);
            stated2.add(level.sdMetres() * level.sdMetres());
        }

        String row(String readings, String what) {
            return String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %.0f | %.2f |%n",
                    readings,
                    what,
                    VisitsBench.millimetres(error2),
                    1000 * stated2.root(),
                    stated2.root() / error2.root());
        }
    }

    static String table(FirstVisits visits, List<PracticePeg> pegs) throws InputException {
        return new LevelBench(visits, pegs).table();
    }

    private String table() throws InputException {
        StringBuilder out = new StringBuilder(
                "| first visit | second visit | level RMSE mm | stated sd mm | stated / RMSE |\n|---|---|---|---|---|\n");
        StringBuilder flat = new StringBuilder(FlatGround.HEADER);
        List<List<Found>> checks = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        for (String plan : visits.plans()) {
            List<Found> proposed = List.of(new Found(), new Found(), new Found());
            List<Found> random = List.of(new Found(), new Found(), new Found());
            Found ordinary = new Found();
            FlatGround map = new FlatGround();
            for (int p = 0; p < pegs.size(); p++) {
                proposed.forEach(Found::group);
                random.forEach(Found::group);
                ordinary.group();
                map.group();
                run(pegs.get(p), plan, visits.after(plan).get(p), proposed, random, ordinary, map);
            }
            for (int k = 0; k < 3; k++) {
                out.append(proposed.get(k).row(plan, (k + 1) + " proposed"));
                out.append(random.get(k).row(plan, (k + 1) + " by chance"));
                checks.get(k).add(proposed.get(k));
            }
            out.append(ordinary.row(plan, ORDINARY + " ordinary readings"));
            flat.append(map.row(plan));
        }
        for (int k = 0; k < checks.size(); k++) {
            out.append(Found.together(checks.get(k)).row("all of these", (k + 1) + " proposed"));
        }
        return out.append('\n').append(flat).toString();
    }

    private static void run(
            PracticePeg peg,
            String plan,
            Peg first,
            List<Found> proposed,
            List<Found> random,
            Found ordinary,
            FlatGround map)
            throws InputException {
        PegWater water = PegWater.of(first);
        List<FlatGround.Ground> flat = FlatGround.of(peg, water);
        Peg arrived = SecondVisit.after(first, List.of());
        LevelAnswer answer = LevelAnswer.of(arrived, water, fit(arrived, water));
        List<Place> wanted =
                answer.checks().stream().map(LevelAnswer.CheckReading::place).toList();
        List<Place> all = LevelAnswer.checkPlaces(arrived, water);
        for (int repeat = 0; repeat < REPEATS; repeat++) {
            Random chance =
                    new Random(1000L * plan.hashCode() + 31L * peg.name().hashCode() + repeat);
            SecondVisit visit = new SecondVisit(peg, peg.truth()::depthAt, VisitsBench.HIGHER_METRES, chance);
            List<Place> others = new ArrayList<>(all);
            java.util.Collections.shuffle(others, chance);
            levels(first, water, visit, wanted, proposed);
            levels(first, water, visit, others, random);
            Peg again = SecondVisit.after(first, visit.ordinary(first, ORDINARY));
            FittedBottom bottom = fit(again, water);
            ordinary.add(bottom.level(0));
            FittedBottom same = fit(first.withToday(v -> v.withReadings(lowered(again))), water);
            flat.forEach(ground -> map.add(ground, bottom, same));
        }
    }

    /** All readings as if the water had stood as at the first visit. */
    private static List<Reading> lowered(Peg twice) {
        List<Reading> all = new ArrayList<>(twice.visits().get(0).readings());
        for (Reading r : twice.today().readings()) {
            all.add(Reading.of(
                    r.place().distanceMetres(),
                    r.place().angleDegrees(),
                    Math.max(0.02, r.depthMetres() - VisitsBench.HIGHER_METRES)));
        }
        return all;
    }

    private static void levels(Peg first, PegWater water, SecondVisit visit, List<Place> wanted, List<Found> found) {
        List<Reading> readings = new ArrayList<>();
        for (Place place : wanted) {
            Optional<Reading> reading = visit.read(place);
            if (readings.size() < found.size() && reading.isPresent()) {
                readings.add(reading.get());
                found.get(readings.size() - 1)
                        .add(fit(SecondVisit.after(first, readings), water).level(0));
            }
        }
    }

    private static FittedBottom fit(Peg peg, PegWater water) {
        return BottomModel.fit(Survey.of(peg, water), Monitor.NONE);
    }
}
