package pegbed.surface.prior;

import pegbed.surface.gaussian.Exponential;
import pegbed.surface.gaussian.Matern;
import pegbed.surface.survey.Scale;

/**
 * How depths at two places vary together: a cross-profile that holds along the water, what is local, the level, and how
 * deep this water's track is.
 *
 * <p>k = h·h'·(σp²·M52(|Δu|/Lu)·M52(|Δv|/ℓv) + σr²·M32(r/ℓr)) + σl² + σt²·t·t' with r = √(Δx²+Δy²) and h the
 * {@link Roughness} of a place. In open water there is no bank for a profile to follow and no slope to expect: the first
 * term is σp²·M52(r/ℓv) and h is 1, so that turning the map changes nothing. Where other pegs of the water have told of
 * this one, what they leave open is one more term ({@link SharedProfile}).
 */
public final class BottomCovariance implements Covariance {
    /** Standard deviation of the whole bottom's level about the tub, metres on a peg. */
    private static final double LEVEL_SD = 0.10;

    /** Standard deviation of the track's depth about the tub's, metres on a peg. */
    private static final double TRACK_SD = 0.45;

    private static final double THIRD = 1.0 / 3;

    public final double profile2;
    public final double across;
    public final double along;
    public final double local2;
    public final double local;
    /** Variance of the whole bottom's level, and of the water's where it is told at a later visit's. */
    public final double level2;

    public final double track2;
    /** Whether there are no banks, so that no direction is unlike another. */
    final boolean open;

    public BottomCovariance(Hyperparameters hyper, Scale scale, boolean open) {
        this(hyper, scale, open, 0, 1);
    }

    /**
     * How depths vary together when they are told at a level that is itself unsure.
     *
     * @param levelVariance of the water's level at the visit that is shown, square metres
     * @param ownTrack share of the track's variance that no other peg of the water has told, 0 to 1
     */
    public BottomCovariance(Hyperparameters hyper, Scale scale, boolean open, double levelVariance, double ownTrack) {
        this.open = open;
        profile2 = hyper.profileSdMetres() * hyper.profileSdMetres();
        across = hyper.acrossMetres();
        along = hyper.alongMetres();
        local2 = hyper.localSdMetres() * hyper.localSdMetres();
        local = hyper.localMetres();
        level2 = LEVEL_SD * LEVEL_SD * scale.vertical() * scale.vertical() + levelVariance;
        track2 = TRACK_SD * TRACK_SD * scale.vertical() * scale.vertical() * ownTrack;
    }

    @Override
    public double between(PlaceCoordinates a, int i, PlaceCoordinates b, int j) {
        double dx = a.x[i] - b.x[j];
        double dy = a.y[i] - b.y[j];
        double distance = Math.sqrt(dx * dx + dy * dy);
        double profile = open
                ? Matern.fiveHalves(distance / across)
                : Matern.fiveHalvesProduct(Math.abs(a.u[i] - b.u[j]) / along, Math.abs(a.v[i] - b.v[j]) / across);
        double varied = profile2 * profile + local2 * Matern.threeHalves(distance / local);
        double own = a.roughness[i] * b.roughness[j] * varied + level2 + track2 * a.t[i] * b.t[j];
        return a.told == null ? own : own + told(a.told[i], b.told[j]);
    }

    /** What two places have in common because other pegs have told of both. */
    public static double told(double[] a, double[] b) {
        double sum = 0;
        for (int r = 1; r < a.length; r++) {
            sum += a[r] * b[r];
        }
        return sum;
    }

    /**
     * Covariances of all places of one set with one other, as {@link #between(Places, int, Places, int)} gives them, many
     * at once: every loop counts from 0 in all its arrays and does little, else the compiler takes one number at a time.
     *
     * @param row filled as far as there are places
     */
    public void between(PlaceCoordinates a, PlaceCoordinates b, int j, double[] row) {
        between(a, b, j, row, new double[a.count], new double[a.count]);
    }

    /**
     * Covariances of all places of one set with all of another.
     *
     * @param rows filled, one for each place of the other set, as far as there are places of the first
     */
    public void between(PlaceCoordinates a, PlaceCoordinates b, double[][] rows) {
        double[] distance = new double[a.count];
        double[] exponential = new double[a.count];
        for (int j = 0; j < b.count; j++) {
            between(a, b, j, rows[j], distance, exponential);
        }
    }

    private void between(
            PlaceCoordinates a, PlaceCoordinates b, int j, double[] row, double[] distance, double[] exponential) {
        distances(a, b, j, distance);
        if (open) {
            ofDistance(distance, exponential, row);
        } else {
            alongTheWater(a.u, b.u[j], exponential, row);
            acrossIt(a.v, b.v[j], exponential, row);
        }
        Exponential.ofNegative(exponential, 0, a.count);
        for (int i = 0; i < a.count; i++) {
            row[i] *= exponential[i];
        }
        double perLocal = Matern.ROOT3 / local;
        for (int i = 0; i < distance.length; i++) {
            distance[i] *= perLocal;
            exponential[i] = distance[i];
        }
        Exponential.ofNegative(exponential, 0, a.count);
        double share = track2 * b.t[j];
        double rough = b.roughness[j];
        double[] t = a.t;
        double[] roughness = a.roughness;
        for (int i = 0; i < a.count; i++) {
            double varied = row[i] + local2 * (1 + distance[i]) * exponential[i];
            row[i] = rough * roughness[i] * varied + level2 + share * t[i];
        }
        for (int i = 0; i < a.count && a.told != null; i++) {
            row[i] += told(a.told[i], b.told[j]);
        }
    }

    private static void distances(PlaceCoordinates a, PlaceCoordinates b, int j, double[] distance) {
        double x = b.x[j];
        double y = b.y[j];
        double[] xs = a.x;
        double[] ys = a.y;
        for (int i = 0; i < distance.length; i++) {
            double dx = xs[i] - x;
            double dy = ys[i] - y;
            distance[i] = Math.sqrt(dx * dx + dy * dy);
        }
    }

    /** The profile's variance and polynomial in open water; the exponents are set. */
    private void ofDistance(double[] distance, double[] exponential, double[] row) {
        double perAcross = Matern.ROOT5 / across;
        for (int i = 0; i < exponential.length; i++) {
            double s = distance[i] * perAcross;
            exponential[i] = s;
            row[i] = profile2 * (1 + s + s * s * THIRD);
        }
    }

    /** The profile's variance and its polynomial along the water; the exponents are set. */
    private void alongTheWater(double[] us, double u, double[] exponential, double[] row) {
        double perAlong = Matern.ROOT5 / along;
        for (int i = 0; i < exponential.length; i++) {
            double s = Math.abs(us[i] - u) * perAlong;
            exponential[i] = s;
            row[i] = profile2 * (1 + s + s * s * THIRD);
        }
    }

    /** The profile's polynomial across the water on top, and its exponents. */
    private void acrossIt(double[] vs, double v, double[] exponential, double[] row) {
        double perAcross = Matern.ROOT5 / across;
        for (int i = 0; i < exponential.length; i++) {
            double s = Math.abs(vs[i] - v) * perAcross;
            exponential[i] += s;
            row[i] *= 1 + s + s * s * THIRD;
        }
    }
}
