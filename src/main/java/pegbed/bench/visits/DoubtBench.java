package pegbed.bench.visits;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import pegbed.surface.SteepnessDoubt;
import pegbed.surface.posterior.Prediction;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;
import pegbed.visits.LevelAnswer;

/**
 * What is too large or too small where the level is reported: how wrong first visits' maps and further readings are on
 * ground of a steepness, beside what the solve says of either, at all places where a check may be taken.
 */
final class DoubtBench {
    private static final double[] STEEPNESS = {0.05, 0.10, 0.20, 0.35, Double.POSITIVE_INFINITY};
    private static final int READINGS = 40;

    /**
     * Squares by class of steepness: map's errors, variances of the solve and reported, readings' errors, their
     * variances.
     */
    private final Tally[][] tallies = new Tally[STEEPNESS.length][5];

    private DoubtBench() {
        for (Tally[] ofClass : tallies) {
            for (int i = 0; i < ofClass.length; i++) {
                ofClass[i] = new Tally();
            }
        }
    }

    static String table(FirstVisits visits, List<PracticePeg> pegs) throws InputException {
        DoubtBench bench = new DoubtBench();
        for (int p = 0; p < pegs.size(); p++) {
            for (Tally[] ofClass : bench.tallies) {
                for (Tally tally : ofClass) {
                    tally.group();
                }
            }
            Random chance = new Random(19L * pegs.get(p).name().hashCode());
            for (String plan : visits.plans()) {
                bench.add(pegs.get(p), visits.after(plan).get(p), chance);
            }
        }
        return bench.table();
    }

    private void add(PracticePeg peg, Peg first, Random chance) throws InputException {
        PegWater water = PegWater.of(first);
        FittedBottom bottom = BottomModel.fit(Survey.of(first, water), Monitor.NONE);
        SecondVisit visit = new SecondVisit(peg, peg.truth()::depthAt, 0, chance);
        List<Sounding> places = new ArrayList<>();
        for (Place place : LevelAnswer.checkPlaces(first, water)) {
            if (!Double.isNaN(peg.truth().depthAt(place.xMetres(), place.yMetres()))) {
                places.add(Sounding.of(Reading.of(place.distanceMetres(), place.angleDegrees(), 0), 0));
            }
        }
        double[][] reported = SteepnessDoubt.covariance(bottom, places);
        for (int i = 0; i < places.size(); i++) {
            Sounding at = places.get(i);
            Prediction p = bottom.at(at.xMetres(), at.yMetres());
            double steepness = Math.hypot(p.slopeX(), p.slopeY());
            int steep = 0;
            while (steepness >= STEEPNESS[steep]) {
                steep++;
            }
            double truth = peg.truth().depthAt(at.xMetres(), at.yMetres());
            double error = p.depthMetres() - truth;
            double factor = SteepnessDoubt.bottom(steepness);
            Tally[] ofClass = tallies[steep];
            ofClass[0].add(error * error);
            ofClass[1].add(reported[i][i] / (factor * factor));
            ofClass[2].add(reported[i][i]);
            Place wanted = new Place(at.xMetres(), at.yMetres());
            for (int k = 0; k < READINGS; k++) {
                visit.read(wanted).ifPresent(r -> ofClass[3].add(Math.pow(r.depthMetres() - truth, 2)));
            }
            ofClass[4].add(bottom.readingVariance(at));
        }
    }

    private String table() {
        StringBuilder out = new StringBuilder(
                "| steepness expected | places | map RMSE mm | posterior sd | calibrated sd | a reading's RMSE mm | its sd in the fit of the level |\n|---|---|---|---|---|---|---|\n");
        for (int c = 0; c < STEEPNESS.length; c++) {
            Tally[] t = tallies[c];
            out.append(String.format(
                    Locale.ROOT,
                    "| %s | %d | %s | %.0f | %.0f | %s | %.0f |%n",
                    c + 1 < STEEPNESS.length
                            ? String.format(Locale.ROOT, "below %.2f", STEEPNESS[c])
                            : String.format(Locale.ROOT, "%.2f and more", STEEPNESS[c - 1]),
                    t[0].count(),
                    VisitsBench.millimetres(t[0]),
                    1000 * t[1].root(),
                    1000 * t[2].root(),
                    VisitsBench.millimetres(t[3]),
                    1000 * t[4].root()));
        }
        return out.toString();
    }
}
