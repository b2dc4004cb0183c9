package pegbed.bench.visits;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import pegbed.bench.practice.PracticePeg;
import pegbed.bench.practice.Tally;
import pegbed.bench.practice.Truth;
import pegbed.findings.DoubtSummary;
import pegbed.findings.Zones;
import pegbed.geometry.PegWater;
import pegbed.model.Place;
import pegbed.surface.FittedBottom;
import pegbed.surface.posterior.Prediction;

/**
 * How right the map of a second visit is on flat ground: where a rig and its feed can lie level, a circle of
 * {@value #AROUND_METRES} m no more than {@value #BAND_METRES} m deeper or shallower than its middle, and no steeper
 * than 1 in 10. Beside it stands all ground no steeper than that, crests and holes among it.
 */
final class FlatGround {
    static final String HEADER =
            "| first visit | map RMSE on flat ground mm | by the same readings at the first level | median error mm | not drawn as a guess | RMSE there mm | median error there mm | RMSE on all ground no steeper than 1 in 10, mm | median error there mm |\n|---|---|---|---|---|---|---|---|---|\n";

    /** Ground no steeper than this counts as flat, rise over run. */
    private static final double FLAT = 0.1;

    /** A circle of 1.8 square metres. */
    private static final double AROUND_METRES = 0.75;

    private static final double BAND_METRES = 0.05;

    private final Tally map = new Tally();
    private final Tally without = new Tally();
    private final Tally drawn = new Tally();
    private final Tally drawnMap = new Tally();
    private final Tally gentleMap = new Tally();
    private final List<Double> errors = new ArrayList<>();
    private final List<Double> drawnErrors = new ArrayList<>();
    private final List<Double> gentleErrors = new ArrayList<>();

    /**
     * A place on gentle ground.
     *
     * @param depthMetres its true depth at the first visit's level
     * @param flat whether the ground about it is flat
     */
    record Ground(Place place, double depthMetres, boolean flat) {}

    /** Ground no steeper than 1 in 10 in truth within 11 m and 62°, on a metre's grid. */
    static List<Ground> of(PracticePeg peg, PegWater water) {
        List<Ground> gentle = new ArrayList<>();
        for (double y = 0.5; y <= 11; y++) {
            for (double x = -11; x <= 11; x++) {
                Place place = new Place(x, y);
                if (place.distanceMetres() <= 11
                        && Math.abs(place.angleDegrees()) <= Zones.WIDEST_DEGREES
                        && water.isWater(x, y)
                        && peg.truth().disc(x, y).slope() <= FLAT) {
                    gentle.add(new Ground(place, peg.truth().depthAt(x, y), isFlat(peg.truth(), place)));
                }
            }
        }
        return gentle;
    }

    private static boolean isFlat(Truth truth, Place middle) {
        double depth = truth.depthAt(middle.xMetres(), middle.yMetres());
        for (double r = 0.25; r <= AROUND_METRES; r += 0.25) {
            for (int a = 0; a < 360; a += 30) {
                Place step = Place.polar(r, a);
                double there = truth.depthAt(middle.xMetres() + step.xMetres(), middle.yMetres() + step.yMetres());
                // Land is not flat.
                if (!(Math.abs(there - depth) <= BAND_METRES)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Begins a peg. */
    void group() {
        for (Tally tally : List.of(map, without, drawn, drawnMap, gentleMap)) {
            tally.group();
        }
    }

    /**
     * One place.
     *
     * @param bottom of the second visit
     * @param same from the same readings had the water not risen
     */
    void add(Ground ground, FittedBottom bottom, FittedBottom same) {
        double x = ground.place().xMetres();
        double y = ground.place().yMetres();
        Prediction reported = bottom.at(x, y);
        double error = Math.abs(reported.depthMetres() - ground.depthMetres() - VisitsBench.HIGHER_METRES);
        gentleMap.add(error * error);
        gentleErrors.add(error);
        if (!ground.flat()) {
            return;
        }
        double rest = same.at(x, y).depthMetres() - ground.depthMetres();
        map.add(error * error);
        without.add(rest * rest);
        errors.add(error);
        boolean sure = reported.sdMetres() <= DoubtSummary.GUESS_SD_METRES;
        drawn.add(sure ? 1 : 0);
        if (sure) {
            drawnMap.add(error * error);
            drawnErrors.add(error);
        }
    }

    String row(String plan) {
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s | %.0f | %s | %s | %.0f | %s | %.0f |%n",
                plan,
                VisitsBench.millimetres(map),
                VisitsBench.millimetres(without),
                1000 * median(errors),
                VisitsBench.share(drawn),
                VisitsBench.millimetres(drawnMap),
                1000 * median(drawnErrors),
                VisitsBench.millimetres(gentleMap),
                1000 * median(gentleErrors));
    }

    private static double median(List<Double> values) {
        List<Double> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        return sorted.isEmpty() ? Double.NaN : sorted.get(sorted.size() / 2);
    }
}
