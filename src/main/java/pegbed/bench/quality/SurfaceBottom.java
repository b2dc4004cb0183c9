package pegbed.bench.quality;

import java.util.Optional;
import java.util.OptionalDouble;
import pegbed.bench.methods.Surface;
import pegbed.bench.practice.DiscMeans;
import pegbed.findings.Confidence;
import pegbed.findings.DeepestSearch;
import pegbed.findings.PegMap;
import pegbed.findings.Zone;
import pegbed.findings.Zones;
import pegbed.model.Place;
import pegbed.surface.grid.GridFrame;

/**
 * The bottom as a general method draws it. Water and zones are the model's, and the deepest place is sought by the
 * model's score, so that only the surface differs; a surface is either steeper than the limit or not.
 */
final class SurfaceBottom implements SurveyedBottom {
    private static final double SLOPE_LIMIT = 0.20;
    private static final double BAND_METRES = 0.05;

    /** No method is believed more than this, metres. */
    private static final double LEAST_SD_METRES = 0.001;

    private final Surface surface;
    private final PegMap map;
    private final GridFrame frame;
    private final Zones zones;
    private final DiscMeans.Mean[] discs;

    SurfaceBottom(Surface surface, PegMap map) {
        this.surface = surface;
        this.map = map;
        frame = map.grid().frame();
        zones = map.zones();
        discs = new DiscMeans.Mean[frame.size()];
        for (int i = 0; i < discs.length; i++) {
            if (zones.isFishable(i)) {
                DiscMeans.Mean disc = DiscMeans.of(surface::depthAt, x(i), y(i));
                discs[i] = Double.isNaN(disc.depth()) ? null : disc;
            }
        }
    }

    private double x(int i) {
        return frame.x(i % frame.columns());
    }

    private double y(int i) {
        return frame.y(i / frame.columns());
    }

    private Place place(int i) {
        return new Place(x(i), y(i));
    }

    @Override
    public boolean answers(double x, double y) {
        return map.water().isWater(x, y) && !Double.isNaN(surface.depthAt(x, y));
    }

    @Override
    public double depthAt(double x, double y) {
        return surface.depthAt(x, y);
    }

    @Override
    public Optional<PredictedDepth> predicted(double x, double y) {
        double sd = surface.sdAt(x, y);
        return Double.isNaN(sd)
                ? Optional.empty()
                : Optional.of(PredictedDepth.normal(surface.depthAt(x, y), Math.max(LEAST_SD_METRES, sd)));
    }

    @Override
    public Place deepest() {
        int best = -1;
        for (int i = 0; i < discs.length; i++) {
            if (discs[i] != null && zones.isInFront(i) && (best < 0 || score(i) > score(best))) {
                best = i;
            }
        }
        return best < 0 ? new Place(0, 0) : place(best);
    }

    private double score(int i) {
        return DeepestSearch.score(discs[i].depth(), discs[i].slope() <= SLOPE_LIMIT ? 1 : 0);
    }

    @Override
    public Answer flat(Zone zone, double targetMetres) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < discs.length; i++) {
            if (discs[i] != null && zones.contains(zone, i)) {
                double cost = Math.abs(discs[i].depth() - targetMetres) / BAND_METRES + discs[i].slope() / SLOPE_LIMIT;
                if (cost < least) {
                    least = cost;
                    best = i;
                }
            }
        }
        return best < 0 ? null : new Answer(place(best), Confidence.NONE, OptionalDouble.empty());
    }
}
