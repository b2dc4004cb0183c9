package pegbed.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import pegbed.analysis.DoubtSummary;
import pegbed.analysis.Zones;
import pegbed.geometry.PegWater;
import pegbed.model.Place;
import pegbed.surface.FittedBottom;
import pegbed.surface.Prediction;

/** How right the map of a second visit is on flat ground, all of it and where it is not drawn as a guess. */
final class FlatGround {
    static final String HEADER =
            "| first visit | map RMSE on flat ground mm | by the same readings at the first level | median error mm | not drawn as a guess | RMSE there mm | median error there mm |\n|---|---|---|---|---|---|---|\n";

    /** Ground no steeper than this counts as flat, rise over run. */
    private static final double FLAT = 0.1;

    private final Tally map = new Tally();
    private final Tally without = new Tally();
    private final Tally drawn = new Tally();
    private final Tally drawnMap = new Tally();
    private final List<Double> errors = new ArrayList<>();
    private final List<Double> drawnErrors = new ArrayList<>();

    /** Flat ground in truth within 11 m and 62°, on a metre's grid. */
    static List<Place> of(PracticePeg peg, PegWater water) {
        List<Place> flat = new ArrayList<>();
        for (double y = 0.5; y <= 11; y++) {
            for (double x = -11; x <= 11; x++) {
                Place place = new Place(x, y);
                if (place.distanceMetres() <= 11
                        && Math.abs(place.angleDegrees()) <= Zones.WIDEST_DEGREES
                        && water.isWater(x, y)
                        && peg.truth().disc(x, y).slope() <= FLAT) {
                    flat.add(place);
                }
            }
        }
        return flat;
    }

    /** Begins a peg. */
    void group() {
        for (Tally tally : List.of(map, without, drawn, drawnMap)) {
            tally.group();
        }
    }

    /**
     * One place.
     *
     * @param truthMetres its depth at the first visit's level
     * @param bottom of the second visit
     * @param same from the same readings had the water not risen
     */
    void add(double truthMetres, Place place, FittedBottom bottom, FittedBottom same) {
        Prediction told = bottom.at(place.xMetres(), place.yMetres());
        double error = Math.abs(told.depthMetres() - truthMetres - VisitsBench.HIGHER_METRES);
        double rest = same.at(place.xMetres(), place.yMetres()).depthMetres() - truthMetres;
        map.add(error * error);
        without.add(rest * rest);
        errors.add(error);
        boolean sure = told.sdMetres() <= DoubtSummary.GUESS_SD_METRES;
        drawn.add(sure ? 1 : 0);
        if (sure) {
            drawnMap.add(error * error);
            drawnErrors.add(error);
        }
    }

    String row(String plan) {
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s | %.0f | %s | %s | %.0f |%n",
                plan,
                VisitsBench.millimetres(map),
                VisitsBench.millimetres(without),
                1000 * median(errors),
                VisitsBench.share(drawn),
                VisitsBench.millimetres(drawnMap),
                1000 * median(drawnErrors));
    }

    private static double median(List<Double> values) {
        List<Double> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        return sorted.isEmpty() ? Double.NaN : sorted.get(sorted.size() / 2);
    }
}
