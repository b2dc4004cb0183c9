package pegbed.lake;

import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import pegbed.model.Monitor;
import pegbed.model.Parallel;
import pegbed.surface.prior.Hyperparameters;
import pegbed.surface.survey.Scale;

/**
 * The bottom of a whole water, fitted to its log. Places are metres in the log's frame.
 *
 * <p>Immutable; any number of threads may ask it.
 */
public final class LakeBottom {
    /** Above this standard deviation no depth is given, as on a peg; metres, times the vertical scale. */
    private static final double MOST_SD_METRES = 0.35;

    /** A depth is borne so many times as far from a sounding as soundings lie apart, whatever was learned. */
    private static final double NEAR = 3;

    /** A learned range is borne out so many times as far at most: a small patch says little of a long range. */
    private static final double FAR = 10;

    private final LakeField field;
    private final boolean learned;
    private final double borneMetres;

    LakeBottom(LakeField field, boolean learned) {
        this.field = field;
        this.learned = learned;
        double apart = field.near().apart();
        borneMetres = Math.max(NEAR * apart, Math.min(field.covariance().rangeMetres(), FAR * apart));
    }

    /**
     * A sounding that differs from what those around it expect by more than five times its doubt. It is kept as a hole
     * or a hump of its own; it may also be a false echo.
     *
     * @param xMetres its place
     * @param yMetres its place
     * @param depthMetres its depth, metres
     * @param differenceMetres its depth less what those around it expect, metres
     */
    public record StandsOut(double xMetres, double yMetres, double depthMetres, double differenceMetres) {}

    /** Number of soundings in the log. */
    public int soundings() {
        return field.soundings().frame.logged();
    }

    /** Number of soundings that it was fitted to, near ones having become one. */
    public int fittedSoundings() {
        return field.soundings().count;
    }

    /** Whether the hyperparameters were learned from the soundings; else they are the priors' medians. */
    public boolean learned() {
        return learned;
    }

    public Hyperparameters hyperparameters() {
        return field.hyper();
    }

    /** The scale of the water beside a peg's that the priors were multiplied by. */
    public Scale scale() {
        return field.soundings().scale;
    }

    /** The smallest convex shape about all soundings: a polygon, or a line or point where they make no more. */
    public Geometry hull() {
        return field.soundings().frame.hull().copy();
    }

    /** The soundings that stand out, those that differ most first. */
    public List<StandsOut> standsOut() {
        LakeSoundings s = field.soundings();
        return field.outstanding()
                .all()
                .mapToObj(i -> new StandsOut(
                        s.x[i] + s.frame.originX(),
                        s.y[i] + s.frame.originY(),
                        s.depth[i],
                        field.outstanding().heightMetres(i)))
                .sorted(java.util.Comparator.comparingDouble(each -> -Math.abs(each.differenceMetres())))
                .toList();
    }

    /** Whether a place is under water and its depth known well enough to be given. */
    public boolean tells(LakeDepths depths, int place) {
        return depths.sdMetres()[place] <= MOST_SD_METRES * scale().vertical() && depths.depthMetres()[place] >= 0;
    }

    /**
     * The bottom at places, in their order. Its standard deviation is infinite further from every sounding than three
     * times the distance at which soundings lie apart, and than the learned range, or ten times that distance where the
     * range is longer: a long range learned in a small patch bears no answer far outside it.
     */
    public LakeDepths depths(double[] xMetres, double[] yMetres, Monitor monitor) {
        double originX = field.soundings().frame.originX();
        double originY = field.soundings().frame.originY();
        double[] x = Arrays.stream(xMetres).map(each -> each - originX).toArray();
        double[] y = Arrays.stream(yMetres).map(each -> each - originY).toArray();
        LakeDepths depths = PartitionOfUnity.depths(field, x, y, monitor);
        Parallel.each(x.length, i -> {
            if (field.near().toNearest(x[i], y[i]) > borneMetres) {
                depths.sdMetres()[i] = Double.POSITIVE_INFINITY;
            }
        });
        return depths;
    }
}
