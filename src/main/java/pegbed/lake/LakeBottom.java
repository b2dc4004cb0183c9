package pegbed.lake;

import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import pegbed.model.Monitor;
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

    private final LakeField field;
    private final boolean learned;

    LakeBottom(LakeField field, boolean learned) {
        this.field = field;
        this.learned = learned;
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

    /** The bottom at places, in their order. */
    public LakeDepths depths(double[] xMetres, double[] yMetres, Monitor monitor) {
        double originX = field.soundings().frame.originX();
        double originY = field.soundings().frame.originY();
        return PartitionOfUnity.depths(
                field,
                Arrays.stream(xMetres).map(x -> x - originX).toArray(),
                Arrays.stream(yMetres).map(y -> y - originY).toArray(),
                monitor);
    }
}
